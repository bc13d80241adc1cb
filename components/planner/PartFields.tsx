/** What surrounds the hole, one step away: each is listed as assumed away until it is said. */

import { ChecksField } from '../fields/ChecksField';
import { ChoiceField } from '../fields/ChoiceField';
import { Fold } from '../fields/Fold';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { CROSSINGS, DUTIES, LABELS, LATER, TEXT } from '../words/en/planner';
import { DUTIES as DUTY_CHOICES, LATER_PROCESSES, laterChosen, PART_NAMES } from './inputs';
import { bind, LengthField, type FormState } from './PlannerForm';
import { YesField } from './YesField';

function EntryFields({ form }: { form: FormState }) {
  return (
    <>
      <TextField {...bind(form, 'entry')} unit="°" hint={TEXT.slopeHint} digits />
      {form.values.entry.trim() !== '' && (
        <YesField form={form} name="entry-flat" label={TEXT.flat} />
      )}
    </>
  );
}

function CrossingFields({ form }: { form: FormState }) {
  const { crossing } = form.values;
  return (
    <>
      <SelectField
        {...bind(form, 'crossing')}
        empty={TEXT.nothingCrosses}
        choices={(['bore', 'slot'] as const).map((value) => ({ value, label: CROSSINGS[value] }))}
      />
      {crossing === '' ? (
        <YesField form={form} name="interrupted" label={TEXT.crossed} />
      ) : (
        <>
          <div class="row level">
            <LengthField form={form} name="crossing-width" />
            {crossing === 'bore' && (
              <LengthField form={form} name="crossing-from" empty={TEXT.fromUnknown} />
            )}
          </div>
          <ChoiceField
            {...bind(form, 'crossing-cut')}
            choices={[
              { value: 'before', label: TEXT.before },
              { value: 'after', label: TEXT.after },
            ]}
          />
        </>
      )}
    </>
  );
}

function CounterboreFields({ form }: { form: FormState }) {
  return (
    <>
      <p class="hint">{TEXT.counterboreHint}</p>
      <div class="row level">
        <LengthField form={form} name="bore-diameter" empty={TEXT.none} />
        <LengthField form={form} name="bore-depth" empty={TEXT.none} />
      </div>
    </>
  );
}

export function PartFields({ form }: { form: FormState }) {
  const used = PART_NAMES.some((name) => form.values[name] !== '');
  return (
    <Fold summary={TEXT.around} open={used} drawn="at-opening">
      <EntryFields form={form} />
      <CounterboreFields form={form} />
      <CrossingFields form={form} />
      <YesField form={form} name="cored" label={TEXT.cored} />
      <ChecksField
        name="later"
        label={LABELS.later}
        choices={LATER_PROCESSES.map((value) => ({ value, label: LATER[value] }))}
        chosen={laterChosen(form.values.later)}
        onChoose={(chosen) => {
          form.set('later', chosen.join(','));
          form.settle('later');
        }}
      />
      <SelectField
        {...bind(form, 'duty')}
        hint={TEXT.dutyHint}
        empty={TEXT.noDuty}
        choices={DUTY_CHOICES.map((value) => ({ value, label: DUTIES[value] }))}
      />
    </Fold>
  );
}
