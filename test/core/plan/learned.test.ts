/** What readings on a machine teach, and what they must not touch. */
import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import {
  learnedScale,
  readingFactor,
  readingsFor,
  type ShopReading,
} from '../../../core/plan/learned';

const request: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind' },
  material: 'stainless-austenitic',
};

function planned(asked: HoleRequest, style: string): number {
  const plan = planHole(asked);
  if (!plan.ok) throw new Error(plan.problems[0]?.code);
  const tap = plan.value.taps.find(
    (each) => each.style === style && each.chamfer.class === 'semi-bottoming',
  );
  return tap!.torque.expected;
}

const sharp = planned(request, 'spiral-flute');

const reading: ShopReading = {
  thread: 'M8x1.25-6H',
  material: 'stainless-austenitic',
  machine: 'VMC-A',
  taken: '2026-03-14',
  torque: 1.2 * sharp,
  style: 'spiral-flute',
  chamfer: 'semi-bottoming',
  worn: false,
  hole: { kind: 'blind' },
  fullThread: 16,
};
const key = { thread: 'M8', material: 'stainless-austenitic', machine: 'VMC-A' } as const;

describe('one reading', () => {
  it('is what it measured over what was planned; worn is set against a worn tap', () => {
    expect(readingFactor(reading)).toMatchObject({ ok: true, value: expect.closeTo(1.2, 9) });
    const worn = readingFactor({ ...reading, worn: true });
    expect(worn.ok && worn.value).toBeCloseTo(1.2 / 1.65, 9);
  });

  it('scales the next hole of that thread: 1.2 times, the band narrower than the handbook’s', () => {
    const scale = learnedScale([reading], key);
    expect(scale).toMatchObject({ count: 1, newest: '2026-03-14', disagree: false });
    const { factor, band } = scale!;
    const learned = planned({ ...request, learned: { factor, band } }, 'spiral-flute');
    expect(learned / sharp).toBeCloseTo(1.2, 9);
    expect(band).toBe(1.25);
  });

  it.each([
    ['a day that is none', { taken: '14.3.2026' }, 'reading-day-unreadable'],
    ['ten times too much', { torque: 12 * sharp }, 'reading-not-believable'],
    ['nothing', { torque: 0 }, 'reading-not-believable'],
    ['not a number', { torque: Number.NaN }, 'reading-not-believable'],
    ['a thread that does not read', { thread: 'M8x9' }, null],
  ] as [string, Partial<ShopReading>, string | null][])('%s is refused', (_, changed, code) => {
    const found = readingFactor({ ...reading, ...changed });
    expect(found.ok).toBe(false);
    if (code) expect(found.ok ? '' : found.problems[0]?.code).toBe(code);
    expect(learnedScale([{ ...reading, ...changed }], key)).toBeNull();
  });
});

describe('which readings count', () => {
  const others: ShopReading[] = [
    { ...reading, machine: 'VMC-B' },
    { ...reading, material: 'al-wrought' },
    { ...reading, thread: 'M8x1' },
    { ...reading, own: { name: 'Other bar', group: 'M' } },
  ];

  it('same thread whatever its class or spelling, same material, same machine', () => {
    const same = { ...reading, thread: 'M8-5H', machine: ' vmc-a ' };
    expect(readingsFor([...others, reading, same], key)).toEqual([reading, same]);
    expect(learnedScale(others, key)).toBeNull();
  });

  it('an own material is another material', () => {
    expect(readingsFor(others, { ...key, ownName: 'Other bar' })).toEqual([others[3]]);
  });
});

describe('several readings', () => {
  it('the geometric middle; the band holds each of them; the newest day is shown', () => {
    const scale = learnedScale(
      [
        { ...reading, torque: 0.9 * sharp, taken: '2026-05-02' },
        { ...reading, torque: 1.6 * sharp },
      ],
      key,
    );
    expect(scale?.factor).toBeCloseTo(1.2, 9);
    expect(scale?.newest).toBe('2026-05-02');
    expect(scale!.factor * scale!.band).toBeGreaterThanOrEqual(1.6 - 1e-9);
    expect(scale!.factor / scale!.band).toBeLessThanOrEqual(0.9 + 1e-9);
    expect(scale?.disagree).toBe(false);
  });

  it('that lie more than a factor of two apart are said to disagree', () => {
    const scale = learnedScale(
      [
        { ...reading, torque: 0.5 * sharp },
        { ...reading, torque: 1.5 * sharp },
      ],
      key,
    );
    expect(scale?.disagree).toBe(true);
  });
});

describe('a scale in a request', () => {
  it.each([
    { factor: 0, band: 1.2 },
    { factor: 1, band: 0.5 },
    { factor: Number.NaN, band: 1.2 },
  ])('%j is refused', (learned) => {
    expect(planHole({ ...request, learned }).ok).toBe(false);
  });
});
