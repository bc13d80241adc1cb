/** How do I tap this hole by hand, with which taps and how long a wrench? */

import { styleName } from '../../words/names';
import { LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { FLUTES, HOLES, INPUTS, SETS, type Name } from './inputs';
import {
  HINTS,
  HOLE_LABELS,
  SET_LABELS,
  WORDS,
} from '../../words/en/calculators/hand-tapping/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <ThreadField form={form} name="thread" />
      <Tiles
        form={form}
        name="hole"
        choices={HOLES.map((value) => ({ value, label: HOLE_LABELS[value] }))}
      />
      <LengthField form={form} name="full" />
      {form.values.hole === 'blind' && (
        <LengthField form={form} name="shoulder" hint={HINTS.shoulder} />
      )}
      <Tiles
        form={form}
        name="set"
        hint={HINTS.set}
        choices={SETS.map((value) => ({ value, label: SET_LABELS[value] }))}
      />
      <Tiles
        form={form}
        name="flutes"
        choices={FLUTES.map((value) => ({ value, label: styleName(value) }))}
      />
      <MaterialField form={form} name="material" optional />
    </>
  );
}

export function HandTapping({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
