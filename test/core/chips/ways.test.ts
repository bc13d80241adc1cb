/** Flutes, ways out for a chip-ahead tap in a blind hole, and which way the hole faces. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chipFit } from '../../../core/chips/fit';
import { fluteDuty } from '../../../core/chips/duty';
import { ORIENTATIONS, orientationNotes } from '../../../core/chips/orientation';
import { coneLength } from '../../../core/chips/room';
import { chipStudy } from '../../../core/plan/chip-study';
import { threadThatFits, waysForAhead, type AheadInput } from '../../../core/chips/ways';

const groove = { major: 10, pitch: 1.5, hole: 8.5 };

describe('flutes', () => {
  it('hold about twice what each mm of thread removes (M10: 18 mm² over 8.85), less than chips take', () => {
    const duty = fluteDuty(groove, 4.85, 'long');
    expect(duty.section / duty.solid).toBeGreaterThan(1.8);
    expect(duty.section / duty.solid).toBeLessThan(2.4);
    expect(duty.duty).toBeGreaterThan(4);
    expect(fluteDuty(groove, 4.85, 'short').duty).toBeGreaterThan(1);
  });

  it('a web that fills the hole leaves no duty to state', () => {
    expect(fluteDuty(groove, 8.5, 'long').duty).toBeNull();
  });
});

const input: AheadInput = {
  groove,
  bulk: 'medium',
  fullThread: 20,
  nose: 8.25,
  clearance: 1.5,
  shoulder: 40,
  pointAngle: 118,
  forming: 'yes',
};

/** Do the chips fit, by the fit itself: the room and the packed volume, not the lengths solved here. */
function fits({ fullThread, shoulder, nose, bulk, clearance }: AheadInput): boolean {
  const free = shoulder - fullThread - nose;
  const found = chipFit({ ...groove, fullThread, free, pointAngle: 118 });
  const packed = found.packed.find((each) => each.bulk === bulk);
  return Boolean(packed?.fits) && free >= clearance - 1e-9;
}

describe('what would have to change', () => {
  it('M10, 20 deep, medium chips: 3.6 D of free hole', () => {
    const [first] = waysForAhead(input);
    expect(first?.way).toBe('deeper-hole');
    const free = (first?.numbers['to'] ?? 0) - 20 - 8.25;
    // The trade figure leaves out the drill's cone, which stands for a third of its length.
    expect((free + coneLength(8.5, 118) / 3) / 10).toBeCloseTo(3.6, 1);
  });

  it('offers a shorter thread, a chip that breaks, drawing back, forming and going through', () => {
    expect(waysForAhead({ ...input, shoulder: 48 }).map(({ way }) => way)).toEqual([
      'deeper-hole',
      'shorter-thread',
      'chip-that-breaks',
      'draw-chips-back',
      'form-instead',
      'hole-through',
    ]);
    const iron = waysForAhead({ ...input, bulk: 'short', forming: 'no', shoulder: 30 });
    const ways = iron.map(({ way }) => way);
    expect(ways).not.toContain('form-instead');
    expect(ways).not.toContain('chip-that-breaks');
  });

  it('says so where nothing has to change, and the shoulder that would do', () => {
    const enough = waysForAhead(input)[0]!.numbers['to']!;
    for (const shoulder of [Infinity, enough]) {
      expect(waysForAhead({ ...input, shoulder })).toEqual([
        { way: 'fits-already', numbers: { shoulder: enough } },
      ]);
    }
    expect(waysForAhead({ ...input, shoulder: enough - 0.01 })[0]).toMatchObject({
      way: 'deeper-hole',
      numbers: { by: expect.closeTo(0.01, 6) },
    });
  });

  const factorOf = (change: Partial<AheadInput>) =>
    waysForAhead({ ...input, ...change }).find(({ way }) => way === 'chip-that-breaks')?.numbers;

  it('a chip that breaks must pack as tightly as it takes, and no tighter', () => {
    const needs = (bulk: AheadInput['bulk']) =>
      waysForAhead({ ...input, bulk, shoulder: 30 })[0]!.numbers['to']!;
    expect(factorOf({ bulk: 'long', shoulder: needs('medium') })).toEqual({ factor: 8 });
    expect(factorOf({ bulk: 'long', shoulder: needs('medium') - 0.01 })).toEqual({ factor: 4 });
    expect(factorOf({ bulk: 'long', shoulder: needs('short') })).toEqual({ factor: 4 });
    expect(factorOf({ bulk: 'long', shoulder: needs('short') - 0.01 })).toBeUndefined();
  });

  it('a shorter thread is offered down to one pitch: chips aside, the stop leaves 1.5 mm', () => {
    const shallow = { ...input, bulk: 'short', nose: 8, clearance: 20 } as const;
    const shorter = (shoulder: number) =>
      waysForAhead({ ...shallow, shoulder }).find(({ way }) => way === 'shorter-thread')?.numbers;
    expect(shorter(29.5)).toEqual({ to: 1.5 });
    expect(shorter(29.49)).toBeUndefined();
    expect(threadThatFits({ ...shallow, shoulder: 20 })).toBe(0);
  });

  it.each([
    ['yes', true],
    ['if-ductile', true],
    ['marginal', false],
    ['rarely', false],
    ['no', false],
  ] as const)('forming %s: a form tap is offered: %s', (forming, offered) => {
    const ways = waysForAhead({ ...input, forming }).map(({ way }) => way);
    expect(ways.includes('form-instead')).toBe(offered);
  });

  it('each way really leads out: deeper and shorter both fit, by a hair', () => {
    const depth = fc.double({ min: 20, max: 120, noNaN: true });
    fc.assert(
      fc.property(depth, fc.constantFrom('short', 'medium', 'long'), (shoulder, bulk) => {
        const asked: AheadInput = { ...input, shoulder, bulk };
        for (const { way, numbers } of waysForAhead(asked)) {
          const to = numbers['to'];
          if (way === 'deeper-hole') {
            expect(fits({ ...asked, shoulder: to! + 1e-6 })).toBe(true);
            expect(fits({ ...asked, shoulder: to! - 0.01 })).toBe(false);
          }
          if (way === 'shorter-thread') {
            expect(fits({ ...asked, fullThread: to! - 1e-6 })).toBe(true);
            expect(fits({ ...asked, fullThread: to! + 0.01 })).toBe(false);
          }
        }
      }),
    );
  });

  it('a deeper hole never allows less thread', () => {
    const depth = fc.double({ min: 1, max: 200, noNaN: true });
    fc.assert(
      fc.property(depth, depth, (a, b) => {
        const at = (shoulder: number) => threadThatFits({ ...input, shoulder });
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) - 1e-9);
      }),
    );
  });
});

describe('which way the hole faces', () => {
  it('chips driven ahead fall to the floor of a blind hole, and out of it overhead', () => {
    expect(orientationNotes('down', 'ahead', true)).toContain('chips-fall-to-floor');
    expect(orientationNotes('down', 'ahead', false)).toContain('ahead-falls-clear');
    expect(orientationNotes('up', 'ahead', true)).toContain('chips-fall-out');
    expect(orientationNotes('up', 'ahead', false)).toContain('ahead-against-gravity');
  });

  it.each([
    ['down', 'ahead', true, ['fluid-stays', 'chips-fall-to-floor']],
    ['down', 'ahead', false, ['fluid-stays', 'ahead-falls-clear']],
    ['down', 'back', true, ['fluid-stays', 'back-must-be-lifted']],
    ['down', 'back', false, ['fluid-stays', 'back-must-be-lifted']],
    ['down', 'stays', true, ['fluid-stays', 'chips-fall-to-floor']],
    ['down', 'stays', false, ['fluid-stays']],
    ['up', 'ahead', true, ['fluid-falls-away', 'chips-fall-out', 'stand-clear-below']],
    ['up', 'ahead', false, ['fluid-falls-away', 'ahead-against-gravity', 'stand-clear-below']],
    ['up', 'back', true, ['fluid-falls-away', 'back-falls-clear', 'stand-clear-below']],
    ['up', 'stays', false, ['fluid-falls-away', 'chips-fall-out', 'stand-clear-below']],
    ['sideways', 'stays', false, ['fluid-runs-out', 'chips-lie-on-low-side']],
    ['sideways', 'none', false, ['fluid-runs-out']],
  ] as const)('tap going %s, chips %s, blind %s: %j', (orientation, course, blind, notes) => {
    expect(orientationNotes(orientation, course, blind)).toEqual(notes);
  });

  it('sideways every chip lies on the low side, and the fluid runs out', () => {
    for (const course of ['ahead', 'back', 'stays'] as const) {
      expect(orientationNotes('sideways', course, true)).toEqual([
        'fluid-runs-out',
        'chips-lie-on-low-side',
      ]);
    }
  });

  it('overhead always says who stands below; a form tap leaves only the fluid to think of', () => {
    for (const orientation of ORIENTATIONS) {
      const notes = orientationNotes(orientation, 'none', true);
      expect(notes.includes('stand-clear-below')).toBe(orientation === 'up');
      expect(notes.some((note) => note.startsWith('chips'))).toBe(false);
    }
  });
});

describe('in a study of one hole', () => {
  it('the first way out is the depth the study asks for, or nothing has to change', () => {
    const depth = fc.double({ min: 12, max: 150, noNaN: true });
    fc.assert(
      fc.property(
        depth,
        fc.constantFrom('al-wrought', 'brass-free', 'steel-alloy-30hrc'),
        (full, material) => {
          for (const shoulder of [full + 20, full + 60, 10 * full]) {
            const found = chipStudy({
              thread: 'M10x1.5',
              fullThread: full,
              shoulder,
              chamfer: 'plug',
              material,
              pointAngle: 118,
            });
            if (!found.ok) return;
            const [first] = found.value.ways;
            const { own } = found.value;
            if (own.fits) expect(first?.way).toBe('fits-already');
            else {
              expect(first?.way).toBe('deeper-hole');
              expect(first?.numbers['by']).toBeCloseTo(own.deeper, 6);
            }
          }
        },
      ),
    );
  });
});
