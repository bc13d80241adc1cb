/** What two calculators answer to their own worked examples, in words. */

import { describe, expect, test } from 'vitest';
import { EXAMPLE as COST } from '../../components/calculators/cost-per-hole/examples';
import {
  answerParts as costParts,
  sumText,
} from '../../components/words/en/calculators/cost-per-hole/sentences';
import { attempt as cost } from '../../components/calculators/cost-per-hole/state';
import { EXAMPLE as CYCLE } from '../../components/calculators/speed-and-cycle/examples';
import {
  answerParts,
  driftText,
  WORDS_OF,
} from '../../components/words/en/calculators/speed-and-cycle/sentences';
import { attempt as cycle } from '../../components/calculators/speed-and-cycle/state';
import { spoken } from '../../components/result/AnswerLine';
import { SKELETON_CODES } from '../../core/cycle/skeleton';

describe('speed and cycle', () => {
  test('F24 is refused, and 508 rev/min offered', () => {
    const { answer } = cycle(CYCLE, 'mm');
    if (!answer) throw new Error('no answer');
    expect(spoken(answerParts(answer))).toBe(
      'Not 24.000 in/min at 500 rev/min: it needs 24.606 in/min. At 508 rev/min it is 25.000 in/min with nothing to round.',
    );
    expect(answer.study.typed && driftText(answer.study.typed, 'mm')).toContain(
      '0.493 mm over 16 turns',
    );
  });

  test('F24.6 passes, typed with its letter and a decimal comma', () => {
    for (const feed of ['24.6', 'F24.6', '24,6 in/min']) {
      const { answer } = cycle({ ...CYCLE, feed }, 'mm');
      expect(answer?.study.typed?.verdict, feed).toBe('good');
    }
  });

  test('nothing typed for the speed: the middle of the range, whatever the tap and fluid', () => {
    const plain = cycle({ ...CYCLE, rpm: '', feed: '' }, 'mm').answer;
    const coated = cycle({ ...CYCLE, rpm: '', feed: '', coating: 'coated' }, 'mm').answer;
    const dry = cycle({ ...CYCLE, rpm: '', feed: '', fluid: 'dry' }, 'mm').answer;
    expect(plain!.study.range.max).toBeLessThan(coated!.study.range.max);
    expect(dry!.study.range.max).toBeLessThan(plain!.study.range.max);
    expect(plain!.study.sensible).toBe(true);
  });

  test('hardened steel is refused, not guessed', () => {
    const { answer, refusal } = cycle({ ...CYCLE, material: 'steel-hard' }, 'mm');
    expect(answer).toBeNull();
    expect(refusal?.code).toBe('no-tapping-speed');
  });

  test('bad numbers are complained of at their field', () => {
    const { problems } = cycle({ ...CYCLE, rpm: 'fast', retract: '9' }, 'mm');
    expect(problems.map(({ field }) => field)).toEqual(['rpm']);
    const range = cycle({ ...CYCLE, retract: '9' }, 'mm');
    expect(range.problems.map(({ field, problem }) => [field, problem.code])).toEqual([
      ['retract', 'cycle-number-out-of-range'],
    ]);
  });

  test('every word of the skeleton is explained', () => {
    expect(Object.keys(WORDS_OF).sort()).toEqual([...SKELETON_CODES].sort());
  });
});

describe('cost per hole', () => {
  test('0.38 beside 1.17, and the equation adds up', () => {
    const { answer } = cost(COST, 'mm');
    if (!answer) throw new Error('no answer');
    expect(answer.cost.total).toBeCloseTo(0.38, 2);
    expect(answer.other?.cost.total).toBeCloseTo(1.17, 2);
    expect(spoken(costParts(answer))).toMatch(
      /^0\.38 a hole beside 1\.17: the first plan saves 38\d\.\d\d on the job\.$/,
    );
    expect(sumText(answer)).toContain('200 ÷ 3000 = 0.38');
  });

  test('an empty form asks for what cannot be left out, and for no more', () => {
    const empty = Object.fromEntries(Object.keys(COST).map((name) => [name, ''])) as typeof COST;
    const { problems } = cost(empty, 'mm');
    expect(problems.map(({ field }) => field).sort()).toEqual(
      ['break-cost', 'breaks', 'holes', 'rate', 'seconds', 'tap', 'tap-life'].sort(),
    );
  });

  test('a life of nothing is complained of in the plan it stands in', () => {
    const { problems } = cost({ ...COST, 'b-tap-life': '0' }, 'mm');
    expect(problems.map(({ field }) => field)).toEqual(['b-tap-life']);
  });
});
