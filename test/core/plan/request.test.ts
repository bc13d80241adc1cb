/** What of a request makes no sense, at the very ends of each range; units mm, N·m, rev/min, degrees. Derived. */
import { describe, expect, it } from 'vitest';
import { checkRequest } from '../../../core/plan/request';
import type { HoleRequest, Spindle } from '../../../core/plan/types';

const base: HoleRequest = { thread: 'M8', hole: { kind: 'blind' }, material: 'steel-low' };
const found = (change: Partial<HoleRequest>) => checkRequest({ ...base, ...change });
const through = (thickness: number, more: object = {}): Partial<HoleRequest> => ({
  hole: { kind: 'through', thickness, ...more },
});
const limited = (depth: number, at = 'shoulder'): Partial<HoleRequest> => ({
  hole: { kind: 'blind', limit: { at: at as 'shoulder', depth } },
});
const spindle = (change: Partial<Spindle>): Partial<HoleRequest> => ({
  spindle: { drive: 'synchronous', ...change },
});
const measured = (torque: number, style = 'form', chamfer = 'plug') =>
  ({ measured: { torque, style, chamfer } }) as Partial<HoleRequest>;
const coated = (min: number, max: number): Partial<HoleRequest> => ({
  coating: { thickness: [min, max] },
});

describe('passes', () => {
  it.each<[string, Partial<HoleRequest>]>([
    ['a hole with nothing else said', {}],
    ['a thread of a hair', { fullThread: 0.001 }],
    ['a metre of thread', { fullThread: 1000 }],
    ['a hole right through a metre', through(1000)],
    ['no room below', through(10, { clearBelow: 0 })],
    ['a thread as long as the work is thick', { fullThread: 10, ...through(10) }],
    ['a drawn floor', limited(1000)],
    ['the same to the point', limited(20, 'point')],
    ['a thread to the floor', { fullThread: 20, ...limited(20) }],
    ['every drive', spindle({ drive: 'floating' })],
    ['a reversing head', spindle({ drive: 'reversing-head' })],
    ['by hand', spindle({ drive: 'hand' })],
    ['the largest spindle', spindle({ torque: 100_000, maxRpm: 100_000, acceleration: 100_000 })],
    ['the smallest', spindle({ torque: 0.01, maxRpm: 0.01, acceleration: 0.01 })],
    ['a torque read', measured(10_000)],
    ['what was learned, least', { learned: { factor: 0.1, band: 1 } }],
    ['what was learned, most', { learned: { factor: 10, band: 5 } }],
    ['no coating', coated(0, 0)],
    ['a coating that does not vary', coated(0.01, 0.01)],
    ['the thickest', coated(1, 1)],
    ['a flat drill', { drillPoint: 180 }],
    ['the sharpest drill', { drillPoint: 60 }],
    ['a web', { tapWeb: 500 }],
    ['no centre', { externalCentre: 0 }],
    ['a long centre', { externalCentre: 50 }],
    ['two series', { stockedDrills: ['letter', 'number'] }],
  ])('%s', (_, change) => expect(found(change)).toEqual([]));
});

describe('complains, once and of the right field', () => {
  it.each<[code: string, field: string, typed: unknown, Partial<HoleRequest>]>([
    ['full-thread-not-positive', 'fullThread', 0, { fullThread: 0 }],
    ['full-thread-not-positive', 'fullThread', 1e-6, { fullThread: 1e-6 }],
    ['depth-absurd', 'fullThread', 1000.1, { fullThread: 1000.1 }],
    ['number-not-finite', 'fullThread', Infinity, { fullThread: Infinity }],
    ['number-not-finite', 'fullThread', 'x', { fullThread: 'x' as unknown as number }],
    ['thickness-not-positive', 'thickness', 0, through(0)],
    ['depth-absurd', 'thickness', 1001, through(1001)],
    ['number-not-finite', 'thickness', NaN, through(undefined as unknown as number)],
    ['clear-below-negative', 'clearBelow', -0.1, through(10, { clearBelow: -0.1 })],
    ['number-not-finite', 'clearBelow', Infinity, through(10, { clearBelow: Infinity })],
    ['full-thread-over-thickness', 'fullThread', 10.01, { fullThread: 10.01, ...through(10) }],
    ['limit-not-positive', 'limit', 0, limited(0)],
    ['depth-absurd', 'limit', 1001, limited(1001)],
    ['number-not-finite', 'limit', NaN, limited(undefined as unknown as number)],
    ['hole-unknown', 'limit', 'floor', limited(20, 'floor')],
    ['thread-deeper-than-hole', 'fullThread', 20.01, { fullThread: 20.01, ...limited(20) }],
    ['drive-unknown', 'drive', 'belt', spindle({ drive: 'belt' as 'hand' })],
    ['spindle-out-of-range', 'torque', 0, spindle({ torque: 0 })],
    ['spindle-out-of-range', 'torque', 100_001, spindle({ torque: 100_001 })],
    ['spindle-out-of-range', 'maxRpm', 0, spindle({ maxRpm: 0 })],
    ['spindle-out-of-range', 'maxRpm', 100_001, spindle({ maxRpm: 100_001 })],
    ['spindle-out-of-range', 'acceleration', 0, spindle({ acceleration: 0 })],
    ['spindle-out-of-range', 'acceleration', 1e6, spindle({ acceleration: 1e6 })],
    ['measured-out-of-range', 'measured', 0, measured(0)],
    ['measured-out-of-range', 'measured', 10_001, measured(10_001)],
    ['measured-out-of-range', 'measured', 'reamer', measured(5, 'reamer')],
    ['measured-out-of-range', 'measured', 'form', measured(5, 'form', 'blunt')],
    ['learned-out-of-range', 'learned', 0.09, { learned: { factor: 0.09, band: 1.2 } }],
    ['learned-out-of-range', 'learned', 10.1, { learned: { factor: 10.1, band: 1.2 } }],
    ['learned-out-of-range', 'learned', 0.99, { learned: { factor: 1, band: 0.99 } }],
    ['learned-out-of-range', 'learned', 5.1, { learned: { factor: 1, band: 5.1 } }],
    ['coating-out-of-range', 'coating', -0.01, coated(-0.01, 0.01)],
    ['coating-out-of-range', 'coating', 1.1, coated(0.01, 1.1)],
    ['coating-out-of-range', 'coating', '0.02–0.01', coated(0.02, 0.01)],
    ['material-unknown', 'material', 'cheese', { material: 'cheese' as 'nickel' }],
    ['drill-point-out-of-range', 'drillPoint', 59, { drillPoint: 59 }],
    ['drill-point-out-of-range', 'drillPoint', 181, { drillPoint: 181 }],
    ['web-out-of-range', 'tapWeb', 0, { tapWeb: 0 }],
    ['web-out-of-range', 'tapWeb', 501, { tapWeb: 501 }],
    ['external-centre-out-of-range', 'externalCentre', -1, { externalCentre: -1 }],
    ['external-centre-out-of-range', 'externalCentre', 51, { externalCentre: 51 }],
    ['drill-series-unknown', 'stockedDrills', 'roman', { stockedDrills: ['roman' as 'letter'] }],
  ])('%s: %s of %s', (code, field, typed, change) => {
    expect(found(change)).toEqual([{ code, field, data: { typed: String(typed) } }]);
  });

  it('a hole of no kind, and no hole at all', () => {
    for (const hole of [undefined, null, {}, { kind: 'slot' }]) {
      expect(found({ hole: hole as HoleRequest['hole'] })).toEqual([
        { code: 'hole-unknown', field: 'hole' },
      ]);
    }
  });

  it('each end of a coating that is none', () => {
    const problems = found({ coating: {} as { thickness: [number, number] } });
    expect(problems.map(({ code }) => code)).toEqual(['number-not-finite', 'number-not-finite']);
  });

  it('of everything that is wrong, in the order of the form', () => {
    const problems = found({
      fullThread: -1,
      ...spindle({ torque: -1 }),
      drillPoint: 20,
      externalCentre: 99,
      ownMaterial: { name: '', group: 'P' },
    });
    expect(problems.map(({ field }) => field)).toEqual([
      'fullThread',
      'torque',
      'name',
      'drillPoint',
      'externalCentre',
    ]);
  });
});
