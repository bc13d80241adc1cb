import { useState } from 'preact/hooks';
import { LimitBar } from '../../chart/LimitBar';
import { ChoiceField } from '../../fields/ChoiceField';
import { useUnit } from '../../state/units';
import { DRAWER } from '../../words/en/percents';
import { BAR } from '../../words/en/reference';
import { LengthStepper } from '../Stepper';
import { drawerBar, OVERSIZE, oversizeStep, type DrawerCase, type DrawerTrial } from './drawer';

interface Props {
  name: string;
  drawer: DrawerCase;
}

/** Drills of one drawer against a class, for drills that cut as large as the reader says. */
export function DrawerExplorer({ name, drawer }: Props) {
  const unit = useUnit();
  const start: DrawerTrial = { class: drawer.classes[0]!.name, oversize: drawer.oversize };
  const [trial, setTrial] = useState(start);
  const { bar, sentence } = drawerBar(drawer, trial, unit);
  const ready = trial.oversize !== null;
  return (
    <div class="explorer">
      <div class="explorer-controls needs-script">
        {drawer.classes.length > 1 && (
          <ChoiceField
            name={`${name}-class`}
            label={DRAWER.class}
            value={trial.class}
            choices={drawer.classes.map((each) => ({ value: each.name, label: each.name }))}
            onInput={(value) => setTrial({ ...trial, class: value })}
          />
        )}
        <div class="steppers">
          <LengthStepper
            name={`${name}-oversize`}
            label={DRAWER.oversize}
            hint={DRAWER.oversizeHint}
            unit={unit}
            value={trial.oversize}
            {...OVERSIZE}
            step={oversizeStep(unit)}
            onChange={(oversize) => setTrial({ ...trial, oversize })}
          />
        </div>
        <div class="actions">
          <button type="button" class="button plain" onClick={() => setTrial(start)}>
            {DRAWER.reset}
          </button>
        </div>
      </div>
      <div class="told" role="status">
        <p>{ready ? sentence : DRAWER.outside}</p>
      </div>
      {ready && <LimitBar bar={bar} id={`${name}-bar`} caption={BAR.key} />}
    </div>
  );
}
