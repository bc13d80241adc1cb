/** Where do this tap's chips go, and is that right for this hole? */

import { TextField } from '../../fields/TextField';
import { bind, MaterialField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { HANDS, HOLES, INPUTS, SEEN, type Name } from './inputs';
import {
  HAND_LABELS,
  HINTS,
  HOLE_LABELS,
  SEEN_LABELS,
  WORDS,
} from '../../words/en/calculators/chip-direction/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <Tiles
        form={form}
        name="see"
        hint={HINTS.see}
        choices={SEEN.map((value) => ({ value, label: SEEN_LABELS[value] }))}
      />
      {form.values.see === 'angle' && (
        <TextField {...bind(form, 'angle')} unit="°" hint={HINTS.angle} />
      )}
      <Tiles
        form={form}
        name="hand"
        choices={HANDS.map((value) => ({ value, label: HAND_LABELS[value] }))}
      />
      <Tiles
        form={form}
        name="hole"
        choices={HOLES.map((value) => ({ value, label: HOLE_LABELS[value] }))}
      />
      <MaterialField form={form} name="material" optional />
    </>
  );
}

export function ChipDirection({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
