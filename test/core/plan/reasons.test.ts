/** What is said of each tap in a hole: the rules of the trade (common practice); numbers by hand from the chain of depths. */
import { describe, expect, it } from 'vitest';
import { planHole, type HolePlan, type HoleRequest, type TapChoice } from '../../../core';

function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const tapOf = ({ taps }: HolePlan, name: string): TapChoice =>
  taps.find(({ style, chamfer }) => `${style} ${chamfer.class}` === name)!;
const said = (request: HoleRequest, name: string) =>
  tapOf(plan(request), name).reasons.map(({ code }) => code);
const numbers = (request: HoleRequest, name: string, code: string) =>
  tapOf(plan(request), name).reasons.find((each) => each.code === code)?.numbers;

const MILL = 'thread-mill bottoming';
const blind = { kind: 'blind' } as const;
const floor = (depth: number) =>
  ({ kind: 'blind', limit: { at: 'shoulder', depth } }) as const satisfies HoleRequest['hole'];
const through = (thickness: number, more: { clearBelow?: number; chipsMayFall?: boolean } = {}) =>
  ({ kind: 'through', thickness, ...more }) as const;
const M8 = { thread: 'M8', fullThread: 12, hole: blind, material: 'steel-low' } as const;
const M10 = { thread: 'M10x1.5', fullThread: 15, hole: blind, material: 'al-wrought' } as const;
const open = { thread: 'M8', hole: through(20), material: 'steel-low' } as const;

type Row = [request: HoleRequest, tap: string, codes: string[]];

describe('a blind hole with long chips: drawn back, chamfer of 2 to 3 threads', () => {
  it.each<Row>([
    [M8, 'spiral-flute semi-bottoming', ['chips-come-back', 'reaches', 'chamfer-usual-blind']],
    [M8, 'spiral-flute plug', ['chips-come-back', 'reaches', 'chamfer-longer-than-wanted']],
    [M8, 'spiral-flute taper', ['chips-come-back', 'reaches', 'chamfer-longer-than-wanted']],
    [M8, 'spiral-flute bottoming', ['chips-come-back', 'reaches', 'chamfer-shorter-than-wanted']],
    [
      M8,
      'straight-flute semi-bottoming',
      ['chips-stay', 'chips-wrong-way', 'reaches', 'chamfer-usual-blind'],
    ],
    [M8, 'spiral-point plug', ['chips-ahead-no-room', 'fits-if-deeper']],
    [M8, 'form semi-bottoming', ['no-chips', 'reaches', 'chamfer-usual-blind', 'form-hole']],
    [M8, MILL, ['mill-limits']],
    [
      { ...M10, hole: floor(120), fullThread: 20 },
      'spiral-point plug',
      [
        'chips-go-ahead',
        'chips-wrong-way',
        'chips-ahead-fit',
        'reaches',
        'chamfer-longer-than-wanted',
      ],
    ],
  ])('%j %s: %j', (request, tap, codes) => expect(said(request, tap)).toEqual(codes));
});

describe('a blind hole with chips that break: left in a straight flute', () => {
  const iron = { ...M8, material: 'iron-grey' } as const;
  it.each<Row>([
    [
      iron,
      'straight-flute semi-bottoming',
      ['chips-stay', 'suits-short-chips', 'reaches', 'chamfer-usual-blind'],
    ],
    [
      iron,
      'spiral-flute semi-bottoming',
      ['chips-come-back', 'chips-wrong-way', 'reaches', 'chamfer-usual-blind'],
    ],
    [iron, 'form semi-bottoming', ['not-formable']],
  ])('%j %s: %j', (request, tap, codes) => expect(said(request, tap)).toEqual(codes));
});

describe('right through: chips ahead, chamfer of 3.5 to 5.5 threads', () => {
  it.each<Row>([
    [open, 'spiral-point plug', ['chips-go-ahead', 'chamfer-usual-through']],
    [
      open,
      'spiral-point semi-bottoming',
      ['chips-go-ahead', 'chamfer-shorter-than-wanted', 'not-stocked-usually'],
    ],
    [
      open,
      'spiral-point taper',
      ['chips-go-ahead', 'chamfer-longer-than-wanted', 'not-stocked-usually'],
    ],
    [
      open,
      'spiral-flute plug',
      ['chips-come-back', 'chips-wrong-way', 'chamfer-usual-through', 'weaker-core'],
    ],
    [open, 'straight-flute plug', ['chips-stay', 'chips-wrong-way', 'chamfer-usual-through']],
    [open, 'form plug', ['no-chips', 'chamfer-usual-through', 'form-hole']],
    [
      { ...open, material: 'iron-grey' },
      'straight-flute plug',
      ['chips-stay', 'suits-short-chips', 'chamfer-usual-through'],
    ],
    [
      { ...open, hole: through(20, { chipsMayFall: false }) },
      'spiral-point plug',
      ['chips-must-not-fall', 'fits-if-chips-may-fall'],
    ],
    [
      { ...open, hole: through(20, { chipsMayFall: false }) },
      'spiral-flute plug',
      ['chips-come-back', 'chamfer-usual-through', 'weaker-core'],
    ],
    [
      { ...open, hole: through(20, { chipsMayFall: false }) },
      'form plug',
      ['no-chips', 'chamfer-usual-through', 'form-hole', 'form-first-no-chips'],
    ],
    [
      { ...open, hole: through(20, { chipsMayFall: true }) },
      'form plug',
      ['no-chips', 'chamfer-usual-through', 'form-hole'],
    ],
  ])('%j %s: %j', (request, tap, codes) => expect(said(request, tap)).toEqual(codes));
});

describe('metals that ask for something of their own', () => {
  it.each<Row>([
    [
      { ...open, material: 'steel-alloy-30hrc' },
      'spiral-flute plug',
      ['chips-come-back', 'chips-wrong-way', 'chamfer-usual-through', 'low-helix'],
    ],
    [
      { ...M8, material: 'steel-40hrc' },
      'spiral-flute semi-bottoming',
      ['chips-come-back', 'reaches', 'chamfer-usual-blind', 'low-helix'],
    ],
    [
      { ...M8, material: 'steel-alloy-30hrc' },
      'form semi-bottoming',
      ['no-chips', 'reaches', 'chamfer-usual-blind', 'form-hole', 'form-marginal'],
    ],
    // M3 with 8 threads of chamfer: the chip is thinner than two edge radii, in a metal that hardens.
    [
      { thread: 'M3', fullThread: 4.5, hole: blind, material: 'stainless-austenitic' },
      'straight-flute taper',
      ['chips-stay', 'chips-wrong-way', 'reaches', 'chamfer-longer-than-wanted', 'rubs'],
    ],
    [
      { thread: 'M3', fullThread: 4.5, hole: blind, material: 'steel-low' },
      'straight-flute taper',
      ['chips-stay', 'chips-wrong-way', 'reaches', 'chamfer-longer-than-wanted'],
    ],
    [
      { thread: 'M3', fullThread: 4.5, hole: blind, material: 'stainless-austenitic' },
      'straight-flute bottoming',
      ['chips-stay', 'chips-wrong-way', 'reaches', 'chamfer-shorter-than-wanted'],
    ],
    [{ ...M8, material: 'steel-hard' }, 'spiral-flute semi-bottoming', ['too-hard']],
    [{ ...M8, material: 'steel-hard' }, 'form semi-bottoming', ['too-hard', 'not-formable']],
    [{ ...M8, material: 'steel-hard' }, MILL, ['mill-limits']],
  ])('%j %s: %j', (request, tap, codes) => expect(said(request, tap)).toEqual(codes));
});

describe('thin work: M5×0.8 with a chamfer of 4.5 threads, 3.6 mm, in its middle', () => {
  const sheet = (thickness: number) =>
    ({ thread: 'M5', hole: through(thickness), material: 'steel-low' }) as const;

  it('3 mm never holds all of it, 3.6 mm does', () => {
    const code = 'thin-work-never-fully-engaged';
    expect(numbers(sheet(3), 'spiral-point plug', code)).toEqual({
      pitches: expect.closeTo(3.75, 9),
    });
    expect(numbers(sheet(3.6), 'spiral-point plug', code)).toBeUndefined();
    expect(numbers(sheet(3), 'spiral-point semi-bottoming', code)).toBeUndefined();
  });
});

describe('a floor that the tap does not reach: M10×1.5, 15 mm to a shoulder at 16.5', () => {
  const asked = { ...M10, hole: floor(16.5) };

  it('says how much is missing, how deep it would have to be, and what can be had', () => {
    expect(said(asked, 'spiral-flute semi-bottoming')).toEqual([
      'does-not-reach',
      'fits-if-deeper',
      'fits-if-shorter-thread',
    ]);
    const of = (code: string) => numbers(asked, 'spiral-flute semi-bottoming', code);
    expect(of('does-not-reach')).toEqual({ needed: 21, short: 4.5, have: 16.5, obtainable: 10.5 });
    expect(of('fits-if-deeper')).toEqual({ by: 4.5, to: 21 });
    expect(of('fits-if-shorter-thread')).toEqual({ to: 10.5 });
  });

  it('a shorter thread is offered from one pitch up', () => {
    const offered = (depth: number) =>
      said({ ...M10, fullThread: 7, hole: floor(depth) }, 'spiral-flute semi-bottoming').includes(
        'fits-if-shorter-thread',
      );
    expect([7.4, 7.5].map(offered)).toEqual([false, true]);
  });

  it('chips and reach both ask for depth: only the deeper is said', () => {
    const codes = said(asked, 'spiral-point plug');
    expect(codes).toEqual(
      ['chips-ahead-no-room', 'does-not-reach', 'fits-if-shorter-thread'].flatMap((code) =>
        code === 'chips-ahead-no-room' ? [code, 'fits-if-deeper'] : [code],
      ),
    );
    const { to } = numbers(asked, 'spiral-point plug', 'fits-if-deeper')!;
    const { needed } = numbers(asked, 'spiral-point plug', 'chips-ahead-no-room')!;
    expect(to).toBeCloseTo(15 + 5.5 * 1.5 + needed!, 9);
  });

  it('as deep as it asks, the tap fits; a hundredth less, it does not', () => {
    const verdict = (depth: number) =>
      tapOf(plan({ ...M10, hole: floor(depth) }), 'spiral-flute semi-bottoming').verdict;
    expect([verdict(21), verdict(20.99)]).toEqual(['best', 'no']);
    const { to } = numbers(asked, 'spiral-point plug', 'fits-if-deeper')!;
    const pointed = (depth: number) =>
      tapOf(plan({ ...M10, hole: floor(depth) }), 'spiral-point plug').verdict;
    expect([pointed(to! + 1e-6), pointed(to! - 0.01)]).toEqual(['works', 'no']);
  });
});

describe('room below a through hole: M8 with 5.5 threads of chamfer and one pitch more, 8.125 mm', () => {
  const over = (clearBelow: number) => ({ ...open, hole: through(20, { clearBelow }) }) as const;

  it('3 mm are 5.125 too few', () => {
    expect(said(over(3), 'spiral-point plug')).toEqual(['below-clearance', 'fits-if-room-below']);
    const of = (code: string) => numbers(over(3), 'spiral-point plug', code);
    expect(of('below-clearance')).toEqual({ needed: 8.125, have: 3 });
    expect(of('fits-if-room-below')).toEqual({ by: 5.125, to: 8.125 });
  });

  it('what it asks is enough', () => {
    expect(tapOf(plan(over(8.125)), 'spiral-point plug').verdict).toBe('best');
    expect(tapOf(plan(over(8.12)), 'spiral-point plug').verdict).toBe('no');
  });

  it('a tap that is stopped below makes less thread: the room less chamfer and a pitch', () => {
    const { depth } = tapOf(plan(over(3)), 'spiral-point plug');
    expect(depth.fullThread).toBeCloseTo(20 + 3 - 8.125, 9);
    expect(depth.tip).toBe(23);
    expect(
      tapOf(plan({ ...over(0), hole: through(5, { clearBelow: 0 }) }), 'spiral-point plug').depth,
    ).toMatchObject({ fullThread: 0, tip: 5 });
  });
});

describe('the spindle', () => {
  const turned = (torque: number, drive: 'synchronous' | 'floating' | 'hand' = 'synchronous') =>
    ({ ...M8, spindle: { drive, torque } }) as const;
  const name = 'spiral-flute semi-bottoming';
  const { torque } = tapOf(plan(M8), name);
  const worn = 1.65 * torque.expected;

  it('must turn the tap worn, 1.65 times its sharp torque', () => {
    expect(said(turned(worn * 0.999), name)).toEqual(['spindle-over', 'fits-if-spindle']);
    expect(said(turned(worn * 1.001), name)).toEqual(said(M8, name));
    const short = turned(worn / 2);
    expect(numbers(short, name, 'spindle-over')).toEqual({
      worn: expect.closeTo(worn, 9),
      sharp: expect.closeTo(torque.expected, 9),
      spindle: worn / 2,
    });
    expect(numbers(short, name, 'fits-if-spindle')).toEqual({ torque: expect.closeTo(worn, 9) });
  });

  it('a hand is not a spindle, and a mill’s force is not reckoned', () => {
    expect(said(turned(0.1, 'hand'), 'straight-flute semi-bottoming')).not.toContain(
      'spindle-over',
    );
    expect(said(turned(0.1), MILL)).toEqual(['mill-limits']);
  });

  it('a mill wants a machine that moves along the thread', () => {
    for (const drive of ['floating', 'hand'] as const) {
      expect(said(turned(50, drive), MILL)).toEqual(['mill-needs-cnc']);
    }
    expect(said({ ...M8, spindle: { drive: 'reversing-head' } }, MILL)).toEqual(['mill-needs-cnc']);
  });

  it('its share is the sharp torque over its own, and none by hand', () => {
    expect(tapOf(plan(turned(20)), name).spindleShare).toBeCloseTo(torque.expected / 20, 9);
    expect(tapOf(plan(turned(20, 'hand')), name)).not.toHaveProperty('spindleShare');
    expect(tapOf(plan(M8), name)).not.toHaveProperty('spindleShare');
  });
});

describe('a hole that no drill leaves', () => {
  it('a coating wider than the class rules out every tap but the mill', () => {
    const coated = { ...M8, coating: { thickness: [0, 0.2] } } satisfies HoleRequest;
    expect(said(coated, 'spiral-flute plug')).toEqual(['no-drill-inside']);
    expect(said(coated, 'form plug')).toEqual(['no-drill-inside']);
    expect(said(coated, MILL)).toEqual(['mill-limits']);
  });
});

describe('taper pipe', () => {
  const tapered = { thread: '1/2 NPT', hole: through(60), material: 'steel-low' } as const;

  it('has straight flutes and one chamfer, even in a through hole', () => {
    const cut = plan(tapered).taps.filter(({ process }) => process !== 'mill');
    expect(cut.map(({ style }) => style)).toEqual(['straight-flute']);
    expect(said(tapered, 'straight-flute plug')).not.toContain('chips-wrong-way');
    expect(said({ ...tapered, material: 'iron-grey' }, 'straight-flute plug')).toContain(
      'suits-short-chips',
    );
  });
});

describe('order', () => {
  const first = (request: HoleRequest, count: number) =>
    plan(request)
      .taps.slice(0, count)
      .map(({ style, chamfer }) => `${style} ${chamfer.class}`);

  it('blind, long chips: back, then a form tap, then what lies in the flute; 2 to 3 threads first', () => {
    expect(first(M8, 4)).toEqual([
      'spiral-flute semi-bottoming',
      'spiral-flute plug',
      'spiral-flute bottoming',
      'spiral-flute taper',
    ]);
    expect(first(M8, 8).slice(4)).toEqual([
      'form semi-bottoming',
      'form plug',
      'form bottoming',
      'straight-flute semi-bottoming',
    ]);
  });

  it('blind, short chips: in the flute, then back', () => {
    const order = first({ ...M8, material: 'iron-grey' }, 8);
    expect(order.slice(0, 4).every((name) => name.startsWith('straight-flute'))).toBe(true);
    expect(order.slice(4).every((name) => name.startsWith('spiral-flute'))).toBe(true);
  });

  it('through, long chips: ahead, 3.5 to 5.5 threads first', () => {
    expect(first(open, 1)).toEqual(['spiral-point plug']);
    expect(
      first(open, 4)
        .slice(1)
        .every((name) => name.startsWith('form')),
    ).toBe(true);
    expect(
      first(open, 8)
        .slice(4)
        .every((name) => name.startsWith('spiral-flute')),
    ).toBe(true);
  });

  it('through, short chips: in the flute, then ahead, then back', () => {
    const styles = first({ ...open, material: 'iron-grey' }, 12).map((name) => name.split(' ')[0]);
    expect([...new Set(styles)]).toEqual(['straight-flute', 'spiral-point', 'spiral-flute']);
  });

  it('no chip may fall: a form tap where the metal forms, else drawn back', () => {
    const kept = { ...open, hole: through(20, { chipsMayFall: false }) };
    expect(first(kept, 1)).toEqual(['form plug']);
    expect(first({ ...kept, material: 'brass-free' }, 1)).toEqual(['spiral-flute plug']);
  });

  it('metal that hardly forms puts the form tap after every cutting one', () => {
    const hard = plan({ ...M8, material: 'steel-alloy-30hrc' }).taps.filter(
      ({ verdict, process }) => verdict !== 'no' && process !== 'mill',
    );
    const at = hard.findIndex(({ style }) => style === 'form');
    expect(at).toBeGreaterThan(0);
    expect(hard.slice(at).every(({ style }) => style === 'form')).toBe(true);
  });

  it('the mill comes last of what fits', () => {
    const fitting = plan(M8).taps.filter(({ verdict }) => verdict !== 'no');
    expect(fitting.at(-1)!.process).toBe('mill');
  });
});
