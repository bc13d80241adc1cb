/** How hard does this tap work, and will it or the spindle stand it? */

import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { styleName } from '../../words/names';
import { bind, chamferChoices, LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { EDGES, FLUIDS, HOLES, INPUTS, SIDES, TAPS, type Name } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/torque/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

interface Props {
  form: FormOf<Name>;
}

const filled = ({ values }: FormOf<Name>, names: readonly Name[]) =>
  names.some((name) => values[name] !== '');

function TapInHand({ form }: Props) {
  const cuts = form.values.tap !== 'form';
  return (
    <Fold summary={HINTS.tap} open={filled(form, ['chamfer', 'web', 'nose'])}>
      <SelectField
        {...bind(form, 'chamfer')}
        empty={HINTS.chamfer}
        choices={chamferChoices(form.system('thread'), form.values.tap === 'spiral-point')}
      />
      {cuts && <LengthField form={form} name="web" hint={HINTS.web} />}
      {cuts && <LengthField form={form} name="nose" hint={HINTS.nose} />}
    </Fold>
  );
}

function Circumstances({ form }: Props) {
  const crossed = form.values.cross !== '';
  return (
    <Fold summary={HINTS.job} open={crossed || form.values.fluid === 'dry'}>
      <Tiles
        form={form}
        name="fluid"
        choices={FLUIDS.map((value) => ({ value, label: HINTS.fluids[value] }))}
      />
      <LengthField form={form} name="cross" hint={HINTS.cross} />
      {crossed && <LengthField form={form} name="crossAt" />}
      {crossed && (
        <Tiles
          form={form}
          name="crossSides"
          choices={SIDES.map((value) => ({ value, label: HINTS.sides[value] }))}
        />
      )}
    </Fold>
  );
}

function Reading({ form }: Props) {
  const read = form.values.measured !== '';
  return (
    <Fold summary={HINTS.shop} open={read}>
      <TextField {...bind(form, 'measured')} hint={HINTS.measured} />
      {read && (
        <Tiles
          form={form}
          name="edge"
          choices={EDGES.map((value) => ({ value, label: HINTS.edges[value] }))}
        />
      )}
    </Fold>
  );
}

function OwnMaterial({ form }: Props) {
  return (
    <Fold summary={HINTS.own} open={filled(form, ['own', 'kc', 'mc', 'hardness'])}>
      <p class="hint">{HINTS.ownText}</p>
      <TextField {...bind(form, 'own')} />
      <TextField {...bind(form, 'kc')} unit="N/mm²" hint={HINTS.kc} digits />
      <TextField {...bind(form, 'mc')} hint={HINTS.mc} digits />
      <TextField {...bind(form, 'hardness')} hint={HINTS.hardness} />
    </Fold>
  );
}

function Fields({ form }: Props) {
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
      <TapInHand form={form} />
      <Circumstances form={form} />
      <Reading form={form} />
      <OwnMaterial form={form} />
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
