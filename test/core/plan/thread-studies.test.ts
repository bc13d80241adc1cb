import { describe, expect, it } from 'vitest';
import { findMaterial, readThread, type Thread } from '../../../core';
import { drillStudy } from '../../../core/plan/drill-study';
import { engagementStudy } from '../../../core/plan/engagement-study';
import { formStudy } from '../../../core/plan/form-study';
import { gaugeStudy } from '../../../core/plan/gauge-study';
import { limitsStudy } from '../../../core/plan/limits-study';
import { platingStudy } from '../../../core/plan/plating-study';
import type { Outcome } from '../../../core';

function thread(text: string): Thread {
  const read = readThread(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}

function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const code = (outcome: Outcome<unknown>) => (outcome.ok ? 'ok' : outcome.problems[0]?.code);

describe('limits and length of engagement', () => {
  it('a long Unified engagement widens the pitch diameter by 1.25, then 1.5', () => {
    const quarter = thread('1/4-20-2B');
    expect(value(limitsStudy(quarter, 9)).long).toBeNull();
    const long = value(limitsStudy(quarter, 12));
    expect(long.longFactor).toBe(1.25);
    // 2B tolerance .0049 × 1.25 = .0061 from the unrounded one.
    expect(long.long?.pitch.max).toBeCloseTo(0.2236, 4);
    expect(value(limitsStudy(quarter, 25)).longFactor).toBe(1.5);
  });

  it('a metric engagement changes the usual class, not the limits', () => {
    const found = value(limitsStudy(thread('M8'), 14));
    expect(found.group).toMatchObject({ group: 'L', usualClass: '7H' });
    expect(found.long).toBeNull();
  });

  it('a taper pipe thread comes with its gauge, an empty engagement is refused', () => {
    expect(value(limitsStudy(thread('1/4 NPT'))).reference.pipe?.gauge?.turns).toBe(1);
    expect(code(limitsStudy(thread('M8'), 0))).toBe('engagement-not-positive');
  });
});

describe('the drill', () => {
  it('1/2-13-2B: 27/64, not 7/16', () => {
    const { drill, drills } = value(drillStudy({ thread: thread('1/2-13-2B') }));
    expect(drill?.name).toBe('27/64');
    expect(drills.find(({ name }) => name === '7/16')?.trap?.classes).toEqual(['2B', '3B']);
  });

  it('work hard on taps takes the largest that surely passes; so does cast iron for M12', () => {
    const found = value(
      drillStudy({ thread: thread('M12'), material: findMaterial('iron-grey')! }),
    );
    expect(found.largest).toBe(true);
    expect(found.drill?.diameter).toBeCloseTo(10.3, 6);
  });

  it('a measured oversize outranks the likely one', () => {
    const close = value(drillStudy({ thread: thread('M8'), oversize: 0 }));
    expect(close.drills.find(({ name }) => name === '6.9')?.verdict).toBe('inside');
    const wide = value(drillStudy({ thread: thread('M8'), oversize: 0.2 }));
    expect(wide.drills.find(({ name }) => name === '6.8')?.verdict).toBe('risk');
    expect(code(drillStudy({ thread: thread('M8'), oversize: -0.1 }))).toBe('oversize-negative');
  });

  it('keeps to the drawer', () => {
    const { drills, drill } = value(drillStudy({ thread: thread('M8'), series: ['letter'] }));
    expect(drills.every(({ series }) => series === 'letter')).toBe(true);
    expect(drill?.name).toBe('H');
  });

  it('has nothing to judge by for a taper thread', () => {
    expect(code(drillStudy({ thread: thread('1/4 NPT') }))).toBe('taper-pipe');
  });
});

describe('the hole before a form tap', () => {
  it('judges a measured hole', () => {
    const at = (hole: number) => value(formStudy({ thread: thread('M6'), hole })).measured;
    expect(at(5.55)).toMatchObject({ verdict: 'inside' });
    expect(at(5.6)).toMatchObject({ verdict: 'thin' });
    expect(at(5.45)).toMatchObject({ verdict: 'tight' });
    expect(at(5.55)?.percent).toBeCloseTo(66.2, 1);
  });

  it('refuses what cannot be formed, and what no rule is held for', () => {
    const iron = findMaterial('iron-grey')!;
    expect(code(formStudy({ thread: thread('M6'), material: iron }))).toBe('not-formable');
    expect(code(formStudy({ thread: thread('EG M6') }))).toBe('form-other-thread');
    expect(code(formStudy({ thread: thread('G1/4') }))).toBe('form-other-thread');
    expect(code(formStudy({ thread: thread('M6'), hole: 6.1 }))).toBe('hole-out-of-range');
  });
});

describe('gauges read together', () => {
  const base = { thread: thread('M10'), go: 'all', plain: 'right', goTurns: 12 } as const;

  it('2.5 turns: one rule passes it, the other does not', () => {
    const { advice } = value(gaugeStudy({ ...base, notGoTurns: 2.5, fullThread: 15 }));
    expect(advice.findings).toContain('rules-disagree');
    expect(advice.rules.map(({ accepts }) => accepts)).toEqual([true, false]);
    expect(advice.passes).toBeNull();
  });

  it('twelve turns of the GO prove 16.5 to 17.25 mm', () => {
    const { proved, advice } = value(gaugeStudy({ ...base, notGoTurns: 0, fullThread: 15 }));
    expect(proved).toEqual({ min: 16.5, max: 17.25 });
    expect(advice.passes).toBe(true);
  });

  it('says what it does not know when no depth was asked', () => {
    const { advice } = value(gaugeStudy({ ...base, notGoTurns: 0 }));
    expect(advice.depth).toBe('depth-unchecked');
  });

  it('sends pipe threads to their own gauges', () => {
    expect(code(gaugeStudy({ ...base, thread: thread('1/4 NPT'), notGoTurns: 0 }))).toBe(
      'gauge-taper',
    );
    expect(code(gaugeStudy({ ...base, thread: thread('G1/4'), notGoTurns: 0 }))).toBe('gauge-pipe');
  });
});

describe('a coated thread', () => {
  it('1/4-20-2B, .0002 to .0003 in: tap .2187 to .2232, drill into .1966 to .2074', () => {
    const found = value(platingStudy(thread('1/4-20-2B'), [0.00508, 0.00762]));
    expect(found.before.pitch.min).toBeCloseTo(0.2187, 6);
    expect(found.before.pitch.max).toBeCloseTo(0.2232, 6);
    expect(found.hole.min / 25.4).toBeCloseTo(0.1966, 6);
    expect(found.listed.map(({ name, verdict }) => [name, verdict])).toEqual([['H5', 'inside']]);
    expect(found.best[0]?.verdict).toBe('inside');
    expect(found.drill?.verdict).toBe('inside');
  });

  it('without a coating nothing moves', () => {
    const { before, limits } = value(platingStudy(thread('1/4-20-2B'), [0, 0], 'after'));
    expect(before.pitch).toEqual(limits.pitch);
    expect(before.extraSteps).toBe(0);
  });
});

describe('how deep is enough', () => {
  const ask = (have: number) =>
    value(
      engagementStudy({
        thread: thread('M10'),
        screw: '8.8',
        material: findMaterial('al-wrought')!,
        have,
      }),
    ).have?.verdict;

  it('M10 8.8 in 6061: 10 strips, 12 has no margin, 13.1 has', () => {
    expect([ask(10), ask(12), ask(13.1)]).toEqual(['strips', 'bare', 'enough']);
  });

  it('compares every other grade in the same metal', () => {
    const base = {
      thread: thread('M10'),
      screw: '8.8',
      material: findMaterial('al-wrought')!,
    } as const;
    expect(value(engagementStudy(base)).others).toHaveLength(8);
    expect(code(engagementStudy({ ...base, purpose: 'lifting' }))).toBe('not-rated');
    expect(code(engagementStudy({ ...base, thread: thread('1/4 NPT') }))).toBe(
      'engagement-other-thread',
    );
    expect(code(engagementStudy({ ...base, have: 0 }))).toBe('have-not-positive');
    expect(code(engagementStudy({ ...base, shear: -1 }))).toBe('shear-not-positive');
    const nickel = findMaterial('nickel')!;
    expect(code(engagementStudy({ ...base, material: nickel }))).toBe('strength-unknown');
    expect(code(engagementStudy({ ...base, material: nickel, shear: 500 }))).toBe('ok');
  });
});
