/** Any one of drilled depth, full thread and chamfer, from the other two. */

import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { driveName } from '../../words/names';
import { bind, chamferChoices, LengthField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { DRIVES, FINDS, INPUTS, type Name } from './inputs';
import { FIND_LABELS, HINTS, WORDS } from '../../words/en/calculators/blind-hole-depth/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  const { find, centre, point } = form.values;
  const chamfers = [
    ...chamferChoices(form.system('thread')),
    { value: 'form-f', label: HINTS.formF },
  ];
  return (
    <>
      <Tiles
        form={form}
        name="find"
        choices={FINDS.map((value) => ({ value, label: FIND_LABELS[value] }))}
      />
      <ThreadField form={form} name="thread" />
      {find !== 'full' && <LengthField form={form} name="full" />}
      {find !== 'hole' && <LengthField form={form} name="hole" hint={HINTS.shoulder} />}
      {find !== 'chamfer' && (
        <SelectField {...bind(form, 'chamfer')} empty={HINTS.chooseChamfer} choices={chamfers} />
      )}
      <SelectField
        {...bind(form, 'drive')}
        choices={DRIVES.map((value) => ({ value, label: driveName(value) }))}
      />
      <Fold summary={HINTS.more} open={centre !== '' || point !== ''}>
        <LengthField form={form} name="centre" hint={HINTS.centre} />
        <TextField {...bind(form, 'point')} unit="°" hint={HINTS.point} digits />
      </Fold>
    </>
  );
}

export function BlindHoleDepth({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
