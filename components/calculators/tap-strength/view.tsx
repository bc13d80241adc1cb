/** What breaks this tap, how near is a job to it, and where should a clutch let go? */

import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, LengthField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { FLUTES, INPUTS, TAPS, type Name } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/tap-strength/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  const { tap } = form.values;
  return (
    <>
      <ThreadField form={form} name="thread" />
      <Tiles
        form={form}
        name="tap"
        choices={TAPS.map((value) => ({ value, label: styleName(value) }))}
      />
      {tap === 'straight-flute' && (
        <Tiles
          form={form}
          name="flutes"
          choices={[
            { value: '', label: HINTS.flutesUsual },
            ...FLUTES.map((value) => ({ value, label: HINTS.flutes[value] })),
          ]}
        />
      )}
      {tap !== 'form' && <LengthField form={form} name="web" hint={HINTS.web} optional />}
      <TextField
        {...bind(form, 'torque')}
        unit="N·m"
        hint={HINTS.torque}
        reading={form.reading('torque')}
        optional
      />
    </>
  );
}

export function TapStrength({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
