/** How deep is enough for this screw in this metal? */

import { PURPOSES } from '../../../core/engagement/purposes';
import { SCREW_GRADES } from '../../../core/engagement/screws';
import { Fold } from '../../fields/Fold';
import { SelectField } from '../../fields/SelectField';
import { TextField } from '../../fields/TextField';
import { bind, LengthField, MaterialField, ThreadField } from '../fields';
import { Frame, type CalculatorProps } from '../Frame';
import { useCalculator } from '../useCalculator';
import { EXAMPLE } from './examples';
import { INPUTS } from './inputs';
import { HINTS, PURPOSE_LABELS, WORDS } from '../../words/en/calculators/engagement/messages';

const loadEngine = () => import('./engine').then(({ engine }) => engine);

export function Engagement({ lessons }: CalculatorProps) {
  const state = useCalculator(INPUTS, WORDS, loadEngine);
  const { form } = state;
  return (
    <Frame words={WORDS} state={state} example={EXAMPLE} lessons={lessons}>
      <ThreadField form={form} name="thread" />
      <SelectField
        {...bind(form, 'screw')}
        empty={HINTS.chooseScrew}
        choices={SCREW_GRADES.map((value) => ({ value, label: value }))}
      />
      <MaterialField form={form} name="material" />
      <SelectField
        {...bind(form, 'purpose')}
        hint={HINTS.purpose}
        choices={PURPOSES.map((value) => ({ value, label: PURPOSE_LABELS[value] }))}
      />
      <LengthField form={form} name="have" hint={HINTS.have} optional />
      <Fold summary={HINTS.more} open={form.values.shear !== ''}>
        <TextField {...bind(form, 'shear')} unit="N/mm²" hint={HINTS.shear} digits optional />
      </Fold>
    </Frame>
  );
}
