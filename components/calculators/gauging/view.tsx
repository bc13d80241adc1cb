/** What do the gauges say about this hole? */

import { PLAIN_READINGS } from '../../../core/gauge/plain';
import { Fold } from '../../fields/Fold';
import { TextField } from '../../fields/TextField';
import { bind, LengthField, ThreadField, Tiles } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator } from '../useCalculator';
import { EXAMPLE } from './examples';
import { GO_READINGS, INPUTS } from './inputs';
import { GO_LABELS, HINTS, PLAIN_LABELS, WORDS } from '../../words/en/calculators/gauging/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

export function Gauging({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  const { form } = state;
  const { made, full } = form.values;
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <ThreadField form={form} name="thread" />
      <Tiles
        form={form}
        name="go"
        choices={GO_READINGS.map((value) => ({ value, label: GO_LABELS[value] }))}
      />
      <TextField {...bind(form, 'turns')} hint={HINTS.turns} digits />
      <Tiles
        form={form}
        name="plain"
        choices={PLAIN_READINGS.map((value) => ({ value, label: PLAIN_LABELS[value] }))}
      />
      <Fold summary={HINTS.more} open={made !== '' || full !== ''}>
        <TextField {...bind(form, 'made')} hint={HINTS.made} digits optional />
        <LengthField form={form} name="full" hint={HINTS.full} optional />
      </Fold>
    </Frame>
  );
}
