/**
 * The rows for what the ISO 513 groups lump together. Each is held against the neighbour it was parted from:
 * the order of forces and speeds is common practice, the shear strengths are handbook strengths (from memory).
 */
import { expect, test } from 'vitest';
import { findMaterial, MATERIALS, planHole, type MaterialId } from '../../../core';
import { cautionsFor } from '../../../components/planner/cautions';

const of = (id: MaterialId) => findMaterial(id)!;

const BLIND = {
  thread: 'M6',
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 20 } },
} as const;

function planned(material: MaterialId) {
  const outcome = planHole({ ...BLIND, fullThread: 10, material });
  if (!outcome.ok) throw new Error(`${material} is not planned`);
  return outcome.value;
}

test.each<[easier: MaterialId, harder: MaterialId]>([
  ['steel-free', 'steel-low'],
  ['stainless-free', 'stainless-austenitic'],
  ['stainless-austenitic', 'stainless-ph'],
  ['al-wrought', 'al-high-strength'],
  ['magnesium', 'al-wrought'],
  ['brass-free', 'bronze'],
  ['plastic', 'plastic-filled'],
])('%s cuts easier than %s, and no slower', (easier, harder) => {
  expect(of(easier).kc11).toBeLessThan(of(harder).kc11);
  expect(of(easier).speed!.max).toBeGreaterThanOrEqual(of(harder).speed!.max);
  const torque = (id: MaterialId) =>
    planned(id).taps.find((tap) => tap.style === 'straight-flute')!.torque;
  expect(torque(easier).expected).toBeLessThan(torque(harder).expected);
});

test('7075 and 2024 are as strong as handbooks give 2024-T4: 283 N/mm² in shear, a third above 6061-T6', () => {
  expect(of('al-high-strength').shear).toBe(283);
  expect(of('al-high-strength').shear! / of('al-wrought').shear!).toBeCloseTo(1.37, 2);
});

test('what is not in the charts says that it was recalled', () => {
  const recalled = MATERIALS.filter(({ source }) => source === 'from-memory').map(({ id }) => id);
  expect(recalled).toEqual([
    'steel-free',
    'stainless-free',
    'stainless-ph',
    'al-high-strength',
    'magnesium',
    'zinc',
    'bronze',
    'plastic-filled',
  ]);
});

test('magnesium: fire, no water near its fines, and the class D caution at the machine', () => {
  const codes = planned('magnesium').warnings.map(({ code, level }) => `${code} ${level}`);
  expect(codes).toEqual(expect.arrayContaining(['swarf-fire caution', 'water-fire caution']));
  expect(cautionsFor({ ...BLIND, material: 'magnesium' })).toContain('swarf-fire');
  const others = MATERIALS.filter(({ waterFire, id }) => waterFire && id !== 'magnesium');
  expect(others).toEqual([]);
});

test('filled plastics leave dust that must be drawn off', () => {
  expect(planned('plastic-filled').warnings.map(({ code }) => code)).toContain('dust');
  expect(cautionsFor({ ...BLIND, material: 'plastic-filled' })).toContain('dust');
  expect(cautionsFor({ ...BLIND, material: 'plastic' })).not.toContain('dust');
});

test.each(['steel-free', 'magnesium', 'stainless-ph', 'plastic-filled'] as const)(
  'no form tap is best in %s',
  (id) => {
    const best = planned(id).taps.find(({ verdict }) => verdict === 'best');
    expect(best?.process).toBe('cut');
  },
);
