/** Which drill for this thread, and is it inside the class? */

import { Fold } from '../../fields/Fold';
import { DRAWERS } from '../drawer';
import { LengthField, MaterialField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS } from './inputs';
import { HINTS, WORDS } from '../../words/en/calculators/tap-drill/messages';
import { DRAWER_LABELS } from '../../words/en/calculators/shared';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

export function TapDrill({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  const { form } = state;
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <ThreadField form={form} name="thread" />
      <MaterialField form={form} name="material" optional />
      <Tiles
        form={form}
        name="drills"
        choices={DRAWERS.map((value) => ({ value, label: DRAWER_LABELS[value] }))}
      />
      <Fold summary={HINTS.more} open={form.values.oversize !== ''}>
        <LengthField form={form} name="oversize" hint={HINTS.oversize} optional />
      </Fold>
    </Frame>
  );
}
