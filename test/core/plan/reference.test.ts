import { describe, expect, it } from 'vitest';
import { referenceOf, standardThreads, threadReference } from '../../../core';
import type { ThreadReference } from '../../../core';

function reference(text: string): ThreadReference {
  const outcome = threadReference(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const traps = (text: string) =>
  reference(text).drills.flatMap(({ name, trap }) =>
    trap ? [`${name} ${trap.kind} ${trap.classes.join(' ')}`] : [],
  );

describe('trap drills are named', () => {
  it.each([
    ['1/2-13-2B', '7/16 plenty 2B 3B'],
    ['9/16-18-2B', '33/64 listed 2B 3B'],
    ['5/8-18-2B', '37/64 listed 2B 3B'],
    ['3/4-10-3B', '21/32 listed 3B'],
    ['3/4-10-2B', '21/32 listed 3B'],
    ['9/16-12-3B', '31/64 listed 3B'],
    ['7/8-14-3B', '13/16 listed 3B'],
    ['1-12-3B', '59/64 listed 3B'],
    ['M10', '8.7 plenty 6H'],
  ])('%s: %s', (thread, trap) => {
    expect(traps(thread)).toContain(trap);
  });

  // Lists known to break 3B: the remaining sizes of the handbook's drill list that its limits refuse.
  it.each(['1-1/8-12', '1-1/4-12', '1-3/8-6', '1-1/2-6', '1-1/2-12', '1-3/4-5'])(
    '%s: the listed drill is outside 3B and inside 2B',
    (thread) => {
      const listed = reference(`${thread}-2B`).drills.find((drill) => drill.listed)!;
      expect(listed.classes).toEqual([
        { class: '2B', verdict: expect.stringMatching(/inside|risk/) },
        { class: '3B', verdict: 'outside' },
      ]);
    },
  );

  it('an honest list drill is no trap', () => {
    expect(traps('M8').join()).not.toContain('6.8');
    expect(traps('1/4-20-2B').join()).not.toContain('#7');
  });
});

describe('what a thread’s page holds', () => {
  it('M8: window 67 to 83 % on the shop base, 80 to 100 % on the ISO base', () => {
    const { window } = reference('M8');
    expect(window?.percent.shop.min).toBeCloseTo(67, 0);
    expect(window?.percent.shop.max).toBeCloseTo(83.3, 1);
    expect(window?.percent.iso.max).toBeCloseTo(100, 0);
  });

  it('every class that the standard tabulates, and no other', () => {
    expect(reference('M8').classes.map((each) => each.class)).toEqual([
      '4H',
      '5H',
      '6H',
      '7H',
      '8H',
      '6G',
      '7G',
    ]);
    expect(reference('M1x0.2').classes.map((each) => each.class)).toEqual(['4H']);
    expect(reference('1/4-20').classes.map((each) => each.class)).toEqual(['1B', '2B', '3B']);
    expect(reference('#10-32').classes.map((each) => each.class)).toEqual(['2B', '3B']);
  });

  it('a wire-insert hole takes its own drills: M6, 6.22 to 6.41 by the closer minor diameter', () => {
    const { window, notes, drill, form, engagement } = reference('EG M6');
    expect(window?.hole.min).toBeCloseTo(6.217, 3);
    const closer = notes.find(({ code }) => code === 'insert-minor-closer');
    expect(closer?.numbers?.['minorMax']).toBeCloseTo(6.407, 3);
    expect(drill?.diameter).toBeCloseTo(6.3, 1);
    expect(form).toBeNull();
    expect(engagement).toEqual([]);
  });

  it('M6 has the hole of its wire insert and its J thread beside it', () => {
    const { insert, j } = reference('M6').relatives;
    expect(insert?.thread.designation).toBe('EG M6x1-6H');
    expect(insert?.drill?.name).toBe('6.3');
    expect(insert?.taps.map(({ name }) => name)).toEqual(['H3']);
    expect(j?.thread.designation).toBe('MJ6x1-4H5H');
    expect(j?.limits.minor).toEqual({ min: 5.026, max: 5.216 });
    expect(j?.taps.map(({ name }) => name)).toEqual(['ISO 1']);
    expect(reference('M1').relatives).toEqual({ insert: null, j: null });
    expect(reference('G1/4').relatives).toEqual({ insert: null, j: null });
  });

  it('a taper pipe thread has gauge and drill notes and no limits', () => {
    const { limits, pipe, drills, gauges, notes } = reference('1/4 NPT');
    expect(limits).toBeNull();
    expect(gauges).toBeNull();
    expect(drills).toEqual([]);
    expect(pipe?.gauge?.turns).toBe(1);
    expect(notes.map(({ code }) => code)).toContain('taper-pipe');
  });

  it('engagement for the common screws in the common metals', () => {
    const row = reference('M10').engagement.find(({ material }) => material === 'al-wrought')!;
    const eight = row.screws.find(({ screw }) => screw === '8.8')!;
    expect(eight.needed.matching).toBeCloseTo(10.4, 1);
  });

  it('UNJ says that its largest hole is a stand-in', () => {
    expect(reference('1/4-20 UNJC-3B').window?.uncertain).toBe(true);
  });

  it('refuses what cannot be read, and what is out of the tables', () => {
    expect(threadReference('banana').ok).toBe(false);
    expect(threadReference('M500').ok).toBe(false);
  });
});

describe('over every standard thread', () => {
  const all = standardThreads().map((thread) => {
    const outcome = referenceOf(thread);
    if (!outcome.ok) throw new Error(thread.designation);
    return outcome.value;
  });

  it('nothing is missing, and the window lies under the screw', () => {
    expect(all.length).toBeGreaterThanOrEqual(300);
    for (const { thread, window, limits, gauges, form, classes, engagement } of all) {
      expect(limits, thread.designation).not.toBeNull();
      expect(gauges?.gauges).toHaveLength(4);
      expect(form).not.toBeNull();
      expect(classes.map((each) => each.class)).toContain(thread.class);
      expect(window!.hole.min).toBeLessThan(window!.hole.max);
      expect(window!.hole.max).toBeLessThan(thread.diameter);
      expect(engagement.length).toBeGreaterThan(5);
    }
  });

  it('a drill called inside leaves the minor diameter in class even oversize; the pick is inside or at risk', () => {
    for (const { thread, drills, drill, window } of all) {
      for (const each of drills) {
        const inside =
          each.diameter >= window!.hole.min - 1e-6 &&
          // Recalled oversize cannot tell a hundredth: inside, with little room.
          each.likely <= window!.hole.max + (each.little ? 0.01 : 0) + 1e-6;
        expect(each.verdict === 'inside', `${thread.designation} ${each.name}`).toBe(inside);
      }
      if (drill) expect(drill.verdict).not.toBe('outside');
    }
  });

  it('every number is finite', () => {
    const walk = (value: unknown): void => {
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      else if (value && typeof value === 'object') Object.values(value).forEach(walk);
    };
    all.forEach(walk);
  });
});
