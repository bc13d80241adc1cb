/** What must be tapped so that the thread passes once it is coated? */

import { LengthField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS, RULES } from './inputs';
import { HINTS, RULE_LABELS, WORDS } from '../../words/en/calculators/plating/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

export function Plating({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  const { form } = state;
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <ThreadField form={form} name="thread" />
      <LengthField form={form} name="least" hint={HINTS.least} />
      <LengthField form={form} name="most" />
      <Tiles
        form={form}
        name="rule"
        hint={HINTS.rule}
        choices={RULES.map((value) => ({ value, label: RULE_LABELS[value] }))}
      />
    </Frame>
  );
}
