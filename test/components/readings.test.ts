/** Torques kept on the device: found again, taken away alone, and nothing lost that cannot be read. */
import { describe, expect, test } from 'vitest';
import { DEVICE, type Kept } from '../../components/state/device';
import { readingsOf, withoutReading, withReading } from '../../components/state/readings';
import type { ShopReading } from '../../core/plan/learned';

const READING: ShopReading = {
  thread: 'M8x1.25-6H',
  material: 'stainless-austenitic',
  machine: 'VMC-A',
  taken: '2026-03-14',
  torque: 5.4,
  style: 'spiral-flute',
  chamfer: 'semi-bottoming',
  worn: false,
  hole: { kind: 'blind' },
  fullThread: 16,
};

/** As it comes back from the device. */
function stored(kept: Kept): Kept {
  const read = DEVICE.read(DEVICE.write(kept));
  if (read.state !== 'read') throw new Error(read.state);
  return read.contents;
}

describe('readings on the device', () => {
  test('come back as they were kept, beside what else is kept', () => {
    const own = { name: 'Blue rack', group: 'M' as const, kc11: 2100 };
    const once = withReading({ version: 1, unit: 'in' }, READING);
    const kept = stored(withReading(once, { ...READING, own, worn: true }));
    expect(readingsOf(kept).map(({ reading }) => reading)).toEqual([
      READING,
      { ...READING, own, worn: true },
    ]);
    expect(kept.unit).toBe('in');
  });

  test('a through hole keeps its thickness', () => {
    const through: ShopReading = { ...READING, hole: { kind: 'through', thickness: 20 } };
    expect(readingsOf(stored(withReading(DEVICE.empty, through)))[0]?.reading).toEqual(through);
  });

  test.each([
    ['another shape', { torque: 5 }],
    ['a torque that is none', { ...READING, torque: 'much' }],
    ['a material of a later version', { ...READING, material: 'moon-dust' }],
    ['a day that is none', { ...READING, taken: 'yesterday' }],
    ['nothing', null],
  ])('%s is not used and not lost', (_, strange) => {
    const kept = stored({ version: 1, readings: [strange, READING] });
    expect(readingsOf(kept)).toEqual([{ place: 1, reading: READING }]);
    const more = withReading(kept, { ...READING, torque: 6 });
    const less = withoutReading(more, { place: 1, reading: READING });
    expect(less.readings).toEqual([strange, { ...READING, torque: 6 }]);
  });

  test('only the one that was meant is removed, even when another tab has moved it', () => {
    const [first] = readingsOf({ version: 1, readings: [READING, { ...READING, torque: 6 }] });
    const meanwhile = { version: 1, readings: [{ ...READING, torque: 6 }] };
    expect(withoutReading(meanwhile, first!)).toBe(meanwhile);
  });
});
