/** The cost of a hole in words. English. Money is in whatever currency was typed. */

import type { HoleCost } from '../../../../../core/job/cost';
import type { Part } from '../../../answer';
import { decimals, percent } from '../../../format';
import type { CostAnswer } from '../../../../calculators/cost-per-hole/state';

export const TEXT = {
  lines: 'Line by line, a hole',
  line: 'Line',
  plan: 'This plan',
  other: 'The other',
  total: 'A hole',
  job: 'The job',
  equation: 'The equation',
  equationText:
    'time × rate + tap ÷ its life + drill ÷ its life + gauging ÷ every n-th + set-up ÷ holes + cost of a break ÷ holes between breaks',
  assumed: [
    'Lives and breaks are averages. Change taps at 70 to 80 % of the worst life you saw, not of the mean.',
    'One break in so many holes is the hardest number to know: try it at half and at double.',
    'A quote is as good as these numbers: within half is usual.',
  ],
  howLong: 'How long one hole takes',
} as const;

/** Money to the hundredth; below a unit to the thousandth, for a hole costs little. */
export function money(value: number): string {
  return decimals(value, value < 1 ? 3 : 2, 2);
}

export const LINES: readonly { key: keyof HoleCost; name: string }[] = [
  { key: 'time', name: 'Machine time' },
  { key: 'tools', name: 'Tap and drill' },
  { key: 'gauging', name: 'Gauging' },
  { key: 'setup', name: 'Set-up' },
  { key: 'breakage', name: 'Risk of a broken tap' },
];

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ cost, other }: CostAnswer): Part[] {
  const risk: Part[] = [
    { text: ' a hole; the risk of a broken tap is ' },
    strong(percent(cost.breakageShare)),
    { text: ' of it.' },
  ];
  if (!other) return [strong(money(cost.total)), ...risk];
  const cheaper = cost.total <= other.cost.total ? cost : other.cost;
  const dearer = cheaper === cost ? other.cost : cost;
  return [
    strong(money(cost.total)),
    { text: ' a hole beside ' },
    strong(money(other.cost.total)),
    { text: `: the ${cheaper === cost ? 'first' : 'other'} plan saves ` },
    strong(money(dearer.job - cheaper.job)),
    { text: ' on the job.' },
  ];
}

/** The equation with its numbers. */
export function sumText({ input, cost }: CostAnswer): string {
  const n = (value: number) => decimals(value, 3);
  return [
    `${n(input.seconds)} s × ${n(input.machineRate)} ÷ 3600`,
    `${n(input.tapPrice)} ÷ ${n(input.tapLife)}`,
    `${n(input.drillPrice)} ÷ ${n(input.drillLife)}`,
    `${n(input.gaugeSeconds)} s × ${n(input.gaugeRate)} ÷ 3600 ÷ ${n(input.gaugeEvery)}`,
    `${n(input.setupMinutes)} min × ${n(input.machineRate)} ÷ 60 ÷ ${n(input.holes)}`,
    `${n(input.breakCost)} ÷ ${n(input.breaksIn)}`,
  ]
    .join(' + ')
    .concat(` = ${money(cost.total)}`);
}
