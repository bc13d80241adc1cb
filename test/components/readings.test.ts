/** Torques kept on the device: found again, taken away alone, and nothing lost that cannot be read. */
import { describe, expect, test } from 'vitest';
import { keepReading, keptReadings, removeReading } from '../../components/state/readings';
import { keep, readKept } from '../../components/state/device';
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

function memory(full = false) {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (full) throw new Error('full');
      held.set(key, text);
    },
    held,
  };
}

describe('readings on the device', () => {
  test('come back as they were kept, beside what else is kept', () => {
    const store = memory();
    keep(store, { unit: 'in' });
    expect(keepReading(store, READING)).toBe(true);
    const own = { name: 'Blue rack', group: 'M' as const, kc11: 2100 };
    expect(keepReading(store, { ...READING, own, worn: true })).toBe(true);
    expect(keptReadings(store).map(({ reading }) => reading)).toEqual([
      READING,
      { ...READING, own, worn: true },
    ]);
    expect(readKept(store).unit).toBe('in');
  });

  test('a through hole keeps its thickness', () => {
    const store = memory();
    const through: ShopReading = { ...READING, hole: { kind: 'through', thickness: 20 } };
    keepReading(store, through);
    expect(keptReadings(store)[0]?.reading).toEqual(through);
  });

  test.each([
    ['another shape', { torque: 5 }],
    ['a torque that is none', { ...READING, torque: 'much' }],
    ['a material of a later version', { ...READING, material: 'moon-dust' }],
    ['a day that is none', { ...READING, taken: 'yesterday' }],
    ['nothing', null],
  ])('%s is not used and not lost', (_, strange) => {
    const store = memory();
    keep(store, { readings: [strange, READING] });
    expect(keptReadings(store)).toEqual([{ place: 1, reading: READING }]);
    keepReading(store, { ...READING, torque: 6 });
    removeReading(store, { place: 1, reading: READING });
    expect(readKept(store).readings).toEqual([strange, { ...READING, torque: 6 }]);
  });

  test('only the one that was meant is removed, even when another tab has moved it', () => {
    const store = memory();
    keepReading(store, READING);
    keepReading(store, { ...READING, torque: 6 });
    const [first] = keptReadings(store);
    keep(store, { readings: [{ ...READING, torque: 6 }] });
    expect(removeReading(store, first!)).toBe(false);
    expect(keptReadings(store)).toHaveLength(1);
  });

  test('a full device says so', () => {
    expect(keepReading(memory(true), READING)).toBe(false);
  });

  test('a list that is no list is set aside like any other unreadable text', () => {
    const store = memory();
    store.held.set('tapped-hole-handbook', '{"version":1,"readings":"five"}');
    expect(keptReadings(store)).toEqual([]);
    expect(store.held.get('tapped-hole-handbook-set-aside')).toContain('five');
  });
});
