/** How long is this tap's chamfer, what is it called, and what does it do? */

import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS, TAPS, type Name } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/chamfer/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <ThreadField form={form} name="thread" />
      <TextField {...bind(form, 'count')} unit="threads" hint={HINTS.count} digits />
      <Tiles
        form={form}
        name="tap"
        choices={TAPS.map((value) => ({ value, label: styleName(value) }))}
      />
      <MaterialField form={form} name="material" optional />
      <LengthField
        form={form}
        name="thickness"
        hint={HINTS.thickness}
        empty={HINTS.thick}
        optional
      />
    </>
  );
}

export function Chamfer({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
