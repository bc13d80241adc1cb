/** Speed, exact feed and what rounding does to the thread; what the spindle can; the cycle as a skeleton. */

import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { driveName } from '../../words/names';
import { bind, LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { CYCLE_DRIVES, INPUTS, MODES, PROGRAM_UNITS, type Name } from './inputs';
import { CHOICES, HINTS, WORDS } from '../../words/en/calculators/speed-and-cycle/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

/** Inputs one step away. */
const MORE: readonly Name[] = ['tip', 'start', 'acceleration', 'most', 'retract'];

const choicesOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));

function Tap({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <div class="row">
        <SelectField {...bind(form, 'substrate')} choices={choicesOf(CHOICES.substrate)} />
        <SelectField {...bind(form, 'coating')} choices={choicesOf(CHOICES.coating)} />
      </div>
      <SelectField {...bind(form, 'fluid')} choices={choicesOf(CHOICES.fluid)} />
    </>
  );
}

function Machine({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <SelectField
        {...bind(form, 'drive')}
        choices={CYCLE_DRIVES.map((value) => ({ value, label: driveName(value) }))}
      />
      <TextField {...bind(form, 'acceleration')} unit="rev/s²" hint={HINTS.acceleration} digits />
      <TextField {...bind(form, 'most')} unit="rev/min" optional digits />
      <TextField {...bind(form, 'retract')} unit="×" hint={HINTS.retract} digits />
      <LengthField form={form} name="tip" empty={HINTS.usualTip} />
      <LengthField form={form} name="start" empty={HINTS.usualStart} />
    </>
  );
}

function Fields({ form }: { form: FormOf<Name> }) {
  const { values } = form;
  const feedUnit = `${values.program}/${values.mode === 'per-minute' ? 'min' : 'rev'}`;
  const open = MORE.some((name) => values[name] !== '');
  return (
    <>
      <ThreadField form={form} name="thread" />
      <LengthField form={form} name="full" empty={HINTS.usualFull} />
      <MaterialField form={form} name="material" />
      <Tiles
        form={form}
        name="program"
        choices={PROGRAM_UNITS.map((value) => ({ value, label: CHOICES.program[value] }))}
      />
      <Tiles
        form={form}
        name="mode"
        choices={MODES.map((value) => ({ value, label: CHOICES.mode[value] }))}
      />
      <TextField
        {...bind(form, 'rpm')}
        unit="rev/min"
        reading={values.rpm === '' ? HINTS.usualRpm : ''}
        digits
      />
      <TextField
        {...bind(form, 'feed')}
        unit={feedUnit}
        reading={values.feed === '' ? HINTS.noFeed : ''}
        digits
      />
      <Fold summary={HINTS.more} open={open}>
        <Tap form={form} />
        <Machine form={form} />
      </Fold>
    </>
  );
}

export function SpeedAndCycle({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
