/** Has this spindle the torque for this tap, and at which speeds? */

import { Fold } from '../../fields/Fold';
import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS, TAPS, type Name } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/spindle/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  const { depth, rpm, torque } = form.values;
  return (
    <>
      <ThreadField form={form} name="thread" />
      <Tiles
        form={form}
        name="tap"
        choices={TAPS.map((value) => ({ value, label: styleName(value) }))}
      />
      <MaterialField form={form} name="material" />
      <TextField {...bind(form, 'points')} hint={HINTS.points} />
      <Fold summary={HINTS.more} open={[depth, rpm, torque].some((typed) => typed !== '')}>
        <LengthField form={form} name="depth" hint={HINTS.depth} />
        <TextField {...bind(form, 'rpm')} unit="rev/min" hint={HINTS.rpm} digits />
        <TextField
          {...bind(form, 'torque')}
          unit="N·m"
          hint={HINTS.torque}
          reading={form.reading('torque')}
        />
      </Fold>
    </>
  );
}

export function Spindle({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
