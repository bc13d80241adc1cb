/** Within which limits must this thread come out? */

import { LengthField, ThreadField } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/thread-limits/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

export function ThreadLimits({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <ThreadField form={state.form} name="thread" />
      <LengthField form={state.form} name="engagement" hint={HINTS.engagement} optional />
    </Frame>
  );
}
