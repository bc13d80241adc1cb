/** Inputs one step away: each has a usual value that is listed as assumed until it is changed. */

import { useRef } from 'preact/hooks';
import { ChecksField } from '../fields/ChecksField';
import { Fold } from '../fields/Fold';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { TAP_SUBSTRATES } from '../../core/cycle/tool-speed';
import { TAP_STEELS } from '../words/en/names';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { chamferText, styleName } from '../words/names';
import { drillsChosen, drillsText, MEASURED_STYLES, MORE_NAMES, type InputName } from './inputs';
import { DRILL_SERIES, LABELS, TEXT } from '../words/en/planner';
import { bind, LengthField, type FormState } from './PlannerForm';
import { YesField } from './YesField';

const SERIES = (['metric', 'fraction', 'number', 'letter'] as const).map((value) => ({
  value,
  label: DRILL_SERIES[value],
}));

function DrillFields({ form }: { form: FormState }) {
  const complaint = form.problem('drills');
  return (
    <>
      <TextField {...bind(form, 'point')} unit="°" hint={TEXT.pointHint} digits />
      <ChecksField
        name="drills"
        label={LABELS.drills}
        choices={SERIES}
        chosen={drillsChosen(form.values.drills)}
        onChoose={(chosen) => {
          form.set('drills', drillsText(chosen));
          form.settle('drills');
        }}
        {...(complaint ? { problem: complaint } : {})}
      />
    </>
  );
}

function CoatingFields({ form }: { form: FormState }) {
  const unit = form.unit === 'mm' ? 'µm' : 'in';
  return (
    <>
      <p class="hint">{TEXT.coatingHint}</p>
      <div class="row level">
        <LengthField form={form} name="coat-min" unit={unit} />
        <LengthField form={form} name="coat-max" unit={unit} />
      </div>
    </>
  );
}

function MeasuredFields({ form }: { form: FormState }) {
  return (
    <>
      <TextField
        {...bind(form, 'measured')}
        unit="N·m"
        hint={TEXT.measuredHint}
        reading={form.reading('measured')}
      />
      {form.values.measured.trim() !== '' && (
        <>
          <SelectField
            {...bind(form, 'measured-style')}
            empty={TEXT.chooseTap}
            choices={MEASURED_STYLES.map((value) => ({ value, label: styleName(value) }))}
          />
          <SelectField
            {...bind(form, 'measured-chamfer')}
            empty={TEXT.chooseChamfer}
            choices={CHAMFER_CLASSES.map((value) => ({
              value,
              label: chamferText(chamferOf(value, form.chamfers), form.system),
            }))}
          />
          <YesField form={form} name="measured-worn" label={TEXT.worn} />
        </>
      )}
    </>
  );
}

/** What only an address brings: shown so that it can be seen and changed, and not asked for. */
const BROUGHT = ['acceleration', 'learned', 'learned-band'] as const;

function BroughtFields({ form }: { form: FormState }) {
  // Kept while the form stands, so that a field that is emptied does not go from under the fingers.
  const shown = useRef(new Set<InputName>());
  for (const name of BROUGHT) if (form.values[name] !== '') shown.current.add(name);
  return (
    <>
      {BROUGHT.filter((name) => shown.current.has(name)).map((name) => (
        <TextField key={name} {...bind(form, name)} optional digits />
      ))}
    </>
  );
}

function OwnFields({ form }: { form: FormState }) {
  return (
    <>
      <TextField {...bind(form, 'own')} hint={TEXT.ownHint} optional />
      <TextField {...bind(form, 'kc')} unit="N/mm²" hint={TEXT.kcHint} digits />
      <TextField {...bind(form, 'mc')} hint={TEXT.mcHint} digits />
      <TextField {...bind(form, 'hardness')} hint={TEXT.hardnessHint} />
    </>
  );
}

export function MoreFields({ form }: { form: FormState }) {
  const used = MORE_NAMES.some((name) => form.values[name] !== '') || form.values.rpm !== '';
  const through = form.values.hole === 'through';
  return (
    <Fold summary={TEXT.more} open={used} drawn="at-opening">
      {through && <LengthField form={form} name="partial" />}
      {form.values.drive !== 'hand' && (
        <TextField {...bind(form, 'rpm')} unit="rev/min" optional digits />
      )}
      <DrillFields form={form} />
      <LengthField form={form} name="web" hint={TEXT.webHint} />
      <LengthField form={form} name="centre" hint={TEXT.centreHint} />
      <SelectField
        {...bind(form, 'substrate')}
        empty={TEXT.usualTool}
        choices={TAP_SUBSTRATES.map((value) => ({ value, label: TAP_STEELS[value] }))}
      />
      <YesField form={form} name="coated" label={TEXT.coatedTap} />
      <CoatingFields form={form} />
      <MeasuredFields form={form} />
      <BroughtFields form={form} />
      <OwnFields form={form} />
    </Fold>
  );
}
