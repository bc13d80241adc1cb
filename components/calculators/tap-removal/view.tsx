/** A tap broke off in the hole: how does it come out? */

import { Fold } from '../../fields/Fold';
import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { HOLDS, INPUTS, STUBS, TAPS, YES_NO, type Name } from './inputs';
import {
  HINTS,
  HOLD_LABELS,
  STUB_LABELS,
  WORDS,
  YES_NO_LABELS,
} from '../../words/en/calculators/tap-removal/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);
const yesNo = YES_NO.map((value) => ({ value, label: YES_NO_LABELS[value] }));

function Fields({ form }: { form: FormOf<Name> }) {
  const { values } = form;
  return (
    <>
      <ThreadField form={form} name="size" />
      <Tiles
        form={form}
        name="tap"
        choices={TAPS.map((value) => ({ value, label: styleName(value) }))}
      />
      <MaterialField form={form} name="material" />
      <Tiles
        form={form}
        name="stub"
        choices={STUBS.map((value) => ({ value, label: STUB_LABELS[value] }))}
      />
      <Tiles
        form={form}
        name="hold"
        hint={HINTS.hold}
        choices={HOLDS.map((value) => ({ value, label: HOLD_LABELS[value] }))}
      />
      <Tiles form={form} name="machine" choices={yesNo} />
      <Tiles form={form} name="boss" choices={yesNo} />
      <Tiles form={form} name="steel" hint={HINTS.steel} choices={yesNo} />
      <Fold summary={HINTS.more} open={values.value !== '' || values.cost !== ''}>
        <TextField {...bind(form, 'value')} hint={HINTS.value} digits optional />
        <TextField {...bind(form, 'cost')} digits optional />
      </Fold>
    </>
  );
}

export function TapRemoval({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
