/** What a tapped hole costs, and what the other way of making it would. */

import { Fold } from '../../fields/Fold';
import { TextField } from '../../fields/TextField';
import { bind } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS, OTHER, type Name } from './inputs';
import { HINTS, UNITS, WORDS } from '../../words/en/calculators/cost-per-hole/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

const MORE: readonly Name[] = [
  'drill',
  'drill-life',
  'setup',
  'gauge-seconds',
  'gauge-every',
  'gauge-rate',
];

function Amounts({ form, names }: { form: FormOf<Name>; names: readonly Name[] }) {
  return (
    <>
      {names.map((name) => (
        <TextField
          key={name}
          {...bind(form, name)}
          unit={UNITS[name]}
          hint={(HINTS as Record<string, string>)[name]}
          digits
        />
      ))}
    </>
  );
}

function Fields({ form }: { form: FormOf<Name> }) {
  const filled = (names: readonly Name[]) => names.some((name) => form.values[name] !== '');
  return (
    <>
      <Amounts form={form} names={['rate', 'holes', 'seconds', 'tap', 'tap-life']} />
      <Amounts form={form} names={['breaks', 'break-cost']} />
      <Fold summary={HINTS.more} open={filled(MORE)}>
        <Amounts form={form} names={MORE} />
      </Fold>
      <Fold summary={HINTS.other} open={filled(OTHER)}>
        <p class="hint">{HINTS.otherHint}</p>
        <Amounts form={form} names={OTHER} />
      </Fold>
    </>
  );
}

export function CostPerHole({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <Fields form={state.form} />
    </Frame>
  );
}
