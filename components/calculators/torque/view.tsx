/** How hard does this tap work, and will it or the spindle stand it? */

import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, chamferChoices, LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { HOLES, INPUTS, TAPS, type Name } from './inputs';
import { HINTS, WORDS } from './messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

function Fields({ form }: { form: FormOf<Name> }) {
  const { chamfer, web, tap } = form.values;
  return (
    <>
      <ThreadField form={form} name="thread" />
      <Tiles
        form={form}
        name="tap"
        choices={TAPS.map((value) => ({ value, label: styleName(value) }))}
      />
      <Tiles
        form={form}
        name="hole"
        choices={HOLES.map((value) => ({ value, label: HINTS[value] }))}
      />
      <LengthField form={form} name="depth" />
      <MaterialField form={form} name="material" />
      <TextField
        {...bind(form, 'spindle')}
        unit="N·m"
        hint={HINTS.spindle}
        reading={form.reading('spindle')}
        optional
      />
      <Fold summary={HINTS.more} open={chamfer !== '' || web !== ''}>
        <SelectField
          {...bind(form, 'chamfer')}
          empty={HINTS.chamfer}
          choices={chamferChoices(form.system('thread'), tap === 'spiral-point')}
        />
        <LengthField form={form} name="web" hint={HINTS.web} />
      </Fold>
    </>
  );
}

export function Torque({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
