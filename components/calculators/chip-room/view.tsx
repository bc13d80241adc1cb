/** Will chips that are pushed ahead fit under the tap? */

import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { bind, chamferChoices, LengthField, MaterialField, ThreadField } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS, type Name } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/chip-room/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <ThreadField form={form} name="thread" />
      <LengthField form={form} name="full" />
      <LengthField form={form} name="hole" hint={HINTS.shoulder} />
      <MaterialField form={form} name="material" />
      <SelectField
        {...bind(form, 'chamfer')}
        choices={chamferChoices(form.system('thread'), true)}
      />
      <Fold summary={HINTS.more} open={form.values.point !== ''}>
        <TextField {...bind(form, 'point')} unit="°" hint={HINTS.point} digits />
      </Fold>
    </>
  );
}

export function ChipRoom({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
