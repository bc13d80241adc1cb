import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { useUnit } from '../../state/units';
import { REACH } from '../../words/en/cycle';
import { LateChart } from '../LateChart';
import { CountStepper } from '../Stepper';
import { ACCELERATION, reached, RPM, type ReachCase, type ReachTrial } from './reach';

interface Props {
  name: string;
  one: ReachCase;
  start: ReachTrial;
  /** The first case, drawn while the page is built. */
  children?: ComponentChildren;
}

/** Programmed speed and how fast the spindle gathers it: where more speed stops saving time. */
export function ReachExplorer({ name, one, start, children }: Props) {
  const unit = useUnit();
  const [trial, setTrial] = useState(start);
  const { chart, sentence } = reached(one, trial, unit);
  const ready = trial.rpm !== null && trial.acceleration !== null;
  return (
    <div class="explorer">
      <div class="explorer-controls needs-script">
        <div class="steppers">
          <CountStepper
            name={`${name}-rpm`}
            label={REACH.rpmField}
            hint={REACH.rpmHint}
            unit="rev/min"
            value={trial.rpm}
            {...RPM}
            onChange={(rpm) => setTrial({ ...trial, rpm })}
          />
          <CountStepper
            name={`${name}-acceleration`}
            label={REACH.accelerationField}
            hint={REACH.accelerationHint}
            unit="rev/s²"
            value={trial.acceleration}
            {...ACCELERATION}
            onChange={(acceleration) => setTrial({ ...trial, acceleration })}
          />
        </div>
        <div class="actions">
          <button type="button" class="button plain" onClick={() => setTrial(start)}>
            {REACH.reset}
          </button>
        </div>
      </div>
      <div class="told" role="status">
        {ready && <p>{sentence}</p>}
      </div>
      <LateChart
        still={trial === start && unit === 'mm'}
        id={`${name}-chart`}
        chart={chart}
        source={{ text: REACH.source, href: '/sources/#derived' }}
        refusal={ready ? undefined : REACH.outside}
      >
        {children}
      </LateChart>
    </div>
  );
}
