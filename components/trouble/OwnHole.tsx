/** The hole it happened in, as the planner asks it, so that its own numbers speak too. */

import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { ChoiceField } from '../fields/ChoiceField';
import { Fold } from '../fields/Fold';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { MEASURED_STYLES, type InputName } from '../planner/inputs';
import { LABELS, TEXT } from '../words/en/planner';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { chamferText, materialGroups, materialName, styleName } from '../words/names';
import { causeText, planFactText } from '../words/trouble';
import type { OwnPlan } from './engine';
import type { FinderValues, Name } from './inputs';

export interface OwnHoleProps {
  values: FinderValues;
  unit: Unit;
  own: OwnPlan | null;
  failed: boolean;
  started: boolean;
  plannerHref: string;
  set: (name: Name, value: string) => void;
  settle: () => void;
}

function Facts({ own, unit, plannerHref }: { own: OwnPlan; unit: Unit; plannerHref: string }) {
  if (own.designation === '') return null;
  return (
    <div class="own-facts">
      <p>
        <strong>{TROUBLE.ownSays.replace('{thread}', own.designation)}</strong>
      </p>
      <ul>
        {own.facts.map((fact) => (
          <li key={fact.code}>
            {planFactText(fact, unit)}
            {fact.speaksFor.length > 0 && (
              <span class="quiet">
                {' '}
                (
                {TROUBLE.ownPoints.replace(
                  '{causes}',
                  fact.speaksFor
                    .map((cause) => causeText(cause, unit).name.toLowerCase())
                    .join('; '),
                )}
                )
              </span>
            )}
          </li>
        ))}
      </ul>
      <p class="no-print">
        <a href={plannerHref}>{TROUBLE.ownPlan}</a>
      </p>
    </div>
  );
}

export function OwnHole(props: OwnHoleProps) {
  const { values, unit, own, set, settle, started } = props;
  const chamfers = own?.chamfers ?? 'metric';
  const waiting = own?.designation === '' ? own.problems : [];
  const bind = (name: Name, label: string) => ({
    name,
    label,
    value: values[name],
    onInput: (value: string) => set(name, value),
    onSettle: settle,
  });
  const hole = (name: InputName) => bind(name, LABELS[name]);
  const through = values.hole === 'through';
  return (
    <Fold summary={TROUBLE.own} open={started}>
      <div class="own-hole">
        <p class="hint">{TROUBLE.ownHint}</p>
        <TextField {...hole('thread')} />
        <ChoiceField
          {...hole('hole')}
          choices={[
            { value: 'blind', label: TEXT.blind },
            { value: 'through', label: TEXT.through },
          ]}
        />
        {through ? (
          <TextField {...hole('thickness')} unit={unit} />
        ) : (
          <div class="row level">
            <TextField {...hole('depth')} unit={unit} />
            <TextField {...hole('limit')} unit={unit} />
          </div>
        )}
        <SelectField
          {...hole('material')}
          empty={TEXT.chooseMaterial}
          groups={materialGroups.map(({ label, ids }) => ({
            label,
            choices: ids.map((value) => ({ value, label: materialName(value) })),
          }))}
        />
        <TextField {...bind('torque', TROUBLE.ownTorque)} unit="N·m" optional />
        <SelectField
          {...bind('tap', TROUBLE.ownStyle)}
          empty={TROUBLE.bestTap}
          choices={MEASURED_STYLES.map((value) => ({ value, label: styleName(value) }))}
          optional
        />
        <SelectField
          {...bind('chamfer', TROUBLE.ownChamfer)}
          empty={TROUBLE.bestTap}
          choices={CHAMFER_CLASSES.map((value) => ({
            value,
            label: chamferText(
              chamferOf(value, chamfers),
              chamfers === 'inch' ? 'unified' : 'metric',
            ),
          }))}
          optional
        />
        <TextField {...bind('ran', TROUBLE.ownRpm)} unit="rpm" digits optional />
        <div role="status">
          {props.failed && <p>{TROUBLE.ownFailed}</p>}
          {started && waiting.length > 0 && (
            <>
              <p>{TROUBLE.ownProblem}:</p>
              <ul>
                {waiting.map(({ field, text }) => (
                  <li key={field}>
                    <a href={`#field-${field}`}>{text}</a>
                  </li>
                ))}
              </ul>
            </>
          )}
        </div>
        {own && <Facts own={own} unit={unit} plannerHref={props.plannerHref} />}
      </div>
    </Fold>
  );
}
