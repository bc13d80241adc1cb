import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { tapLoads, usualChamfer, type TapLoad } from '../../../core/plan/tap-load';

function loads(request: HoleRequest, chamfer = usualChamfer(request)): TapLoad[] {
  const outcome = tapLoads(request, chamfer);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
const of = (list: TapLoad[], style: string) => list.find((each) => each.style === style)!;

describe('jobs an experienced setter checked (common practice; torque within the model’s own band)', () => {
  // The figures of common practice are for the middle of a band of drills: the drill alone moves torque by a sixth.
  const within = (found: number, expected: number) =>
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.2);

  it('M12×1.75 blind 24 in grey iron, straight flute: 9 N·m, 0.11 of the tap sharp, 0.18 worn', () => {
    const tap = of(
      loads({ thread: 'M12x1.75', fullThread: 24, hole: { kind: 'blind' }, material: 'iron-grey' }),
      'straight-flute',
    );
    within(tap.torque.expected, 9);
    within(tap.share.sharp, 0.11);
    within(tap.share.worn, 0.18);
  });

  it('1/2-13 blind 3/4 in, alloy steel of 30 HRC, spiral flute: 16 N·m (11–22), worn 27: 0.9 of 30 N·m', () => {
    const tap = of(
      loads({
        thread: '1/2-13 UNC-2B',
        fullThread: 19.05,
        hole: { kind: 'blind' },
        material: 'steel-alloy-30hrc',
        spindle: { drive: 'synchronous', torque: 30 },
      }),
      'spiral-flute',
    );
    within(tap.torque.expected, 16);
    within(tap.torque.low, 11);
    within(tap.torque.high, 22);
    within(tap.worn.expected, 27);
    within(tap.spindle!.worn, 0.9);
    within(tap.share.sharp, 0.25);
  });

  it('M30×3.5 through 45 in 1045: 74 N·m with a spiral point, 109 with straight flutes, against 30', () => {
    const list = loads({
      thread: 'M30x3.5',
      hole: { kind: 'through', thickness: 45 },
      material: 'steel-medium',
      spindle: { drive: 'synchronous', torque: 30 },
    });
    within(of(list, 'spiral-point').torque.expected, 74);
    within(of(list, 'straight-flute').torque.expected, 109);
    expect(of(list, 'spiral-point').spindle!.sharp).toBeGreaterThan(2.2);
  });

  it('M5×0.8 through 3 mm of stainless: the chamfer is never engaged whole', () => {
    const thin = of(
      loads({
        thread: 'M5x0.8',
        hole: { kind: 'through', thickness: 3 },
        material: 'stainless-austenitic',
      }),
      'spiral-point',
    );
    within(thin.torque.expected, 0.8);
    expect(thin.engaged).toBeLessThan(1);
    expect(thin.engaged).toBeGreaterThan(0.8);
  });
});

describe('agrees with the plan', () => {
  const requests: HoleRequest[] = [
    {
      thread: 'M8x1.25',
      fullThread: 16,
      hole: { kind: 'blind' },
      material: 'stainless-austenitic',
    },
    {
      thread: '1/4-20 UNC-2B',
      hole: { kind: 'through', thickness: 6 },
      material: 'al-wrought',
      spindle: { drive: 'floating', torque: 12 },
    },
    {
      thread: 'M6x1 LH',
      hole: { kind: 'through', thickness: 12 },
      material: 'brass-free',
      tapWeb: 2.4,
    },
  ];

  it.each(requests)('$thread in $material, every style and chamfer', (request) => {
    const plan = planHole(request);
    if (!plan.ok) throw new Error('not planned');
    for (const chamfer of CHAMFER_CLASSES) {
      for (const tap of loads(request, chamfer)) {
        const planned = plan.value.taps.find(
          (each) => each.style === tap.style && each.chamfer.class === chamfer,
        )!;
        expect(tap.torque).toEqual(planned.torque);
        expect(tap.toothLoad).toBe(planned.toothLoad);
        expect({ sharp: tap.share.sharp, worn: tap.share.worn }).toEqual(planned.tapShare);
        expect(tap.spindle?.sharp).toBe(planned.spindleShare);
        expect(tap.drill).toEqual(planned.drill);
      }
    }
  });
});

describe('bounds', () => {
  const list = loads({
    thread: 'M10x1.5',
    fullThread: 15,
    hole: { kind: 'blind' },
    material: 'steel-medium',
    spindle: { drive: 'synchronous', torque: 20 },
  });

  it('the band holds the expected value, and the worst case is the worst', () => {
    for (const { torque, worn, share, spindle, breaks } of list) {
      expect(torque.low).toBeLessThan(torque.expected);
      expect(torque.high).toBeGreaterThan(torque.expected);
      expect(worn.expected).toBeGreaterThan(torque.expected);
      expect(share.worst).toBeGreaterThan(share.worn);
      expect(share.worn).toBeGreaterThan(share.sharp);
      expect(spindle!.worst).toBeGreaterThan(spindle!.worn);
      expect(breaks.low).toBeLessThan(breaks.expected);
    }
  });

  it('no form tap with a taper chamfer, none at all in iron', () => {
    const styles = (each: TapLoad[]) => each.map(({ style }) => style);
    const blind = { thread: 'M10', hole: { kind: 'blind' } } as const;
    expect(styles(loads({ ...blind, material: 'copper' }, 'taper'))).not.toContain('form');
    expect(styles(loads({ ...blind, material: 'copper' }))).toContain('form');
    expect(styles(loads({ ...blind, material: 'iron-grey' }))).not.toContain('form');
  });

  it('refuses hardened steel, and passes on what is wrong with the request', () => {
    const hard = tapLoads(
      { thread: 'M10', hole: { kind: 'blind' }, material: 'steel-hard' },
      'plug',
    );
    expect(hard).toMatchObject({ ok: false, problems: [{ code: 'too-hard', field: 'material' }] });
    const bad = tapLoads(
      { thread: 'M10x1.5', fullThread: -2, hole: { kind: 'blind' }, material: 'copper' },
      'plug',
    );
    expect(bad).toMatchObject({ ok: false, problems: [{ code: 'full-thread-not-positive' }] });
  });

  it('a chip too thin to cut is said: a taper chamfer on M2 (derived)', () => {
    const small = loads(
      { thread: 'M2x0.4', hole: { kind: 'blind' }, material: 'stainless-austenitic' },
      'taper',
    );
    expect(of(small, 'straight-flute').rubs).toBe(true);
    expect(of(list, 'straight-flute').rubs).toBe(false);
  });
});
