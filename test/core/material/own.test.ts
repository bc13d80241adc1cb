/** A shop's own material: read, refused, and planned with. */
import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { brinell } from '../../../core/material/hardness';
import {
  checkOwnMaterial,
  nearestMaterial,
  ownMaterial,
  type OwnMaterialInput,
} from '../../../core/material/own';

const bar: OwnMaterialInput = { name: 'Bar from the blue rack', group: 'P' };

function codes(input: Partial<OwnMaterialInput>): string[] {
  return checkOwnMaterial({ ...bar, ...input }).map(({ code }) => code);
}

describe('what is refused', () => {
  it.each([
    [{ name: '  ' }, 'own-name-missing'],
    [{ name: 'x'.repeat(41) }, 'own-name-too-long'],
    [{ group: 'Q' as never }, 'own-group-unknown'],
    [{ hardness: { value: 12, scale: 'HRC' } }, 'own-hardness-out-of-range'],
    [{ hardness: { value: 70, scale: 'HRC' } }, 'own-hardness-out-of-range'],
    [{ hardness: { value: Number.NaN, scale: 'HB' } }, 'own-hardness-out-of-range'],
    [{ kc11: 20 }, 'own-kc-out-of-range'],
    [{ kc11: Number.NaN }, 'own-kc-out-of-range'],
    [{ kc11: 1800, mc: 0.6 }, 'own-mc-out-of-range'],
    [{ mc: 0.2 }, 'own-mc-alone'],
    [{ like: 'al-cast' }, 'own-like-other-group'],
    [{ like: 'moon-dust' as never }, 'own-like-other-group'],
  ] as [Partial<OwnMaterialInput>, string][])('%j: %s', (input, code) => {
    expect(codes(input)).toEqual([code]);
  });

  it('nothing in a name and a group alone', () => {
    expect(codes({})).toEqual([]);
  });
});

describe('hardness', () => {
  // ASTM E140 for steel, from memory.
  it.each([
    [20, 226],
    [30, 286],
    [40, 371],
    [45, 421],
  ])('%s HRC is %s HB', (hrc, hb) => {
    expect(brinell({ value: hrc, scale: 'HRC' })).toBe(hb);
  });

  it('rises with hardness on every scale, and between the rows', () => {
    let last = 0;
    for (let value = 20; value <= 60; value += 0.5) {
      const hb = brinell({ value, scale: 'HRC' }) ?? 0;
      expect(hb).toBeGreaterThan(last);
      last = hb;
    }
    expect(brinell({ value: 210, scale: 'HV' })).toBeCloseTo(200, 9);
  });

  it.each([
    [120, 'steel-low'],
    [190, 'steel-medium'],
    [240, 'steel-alloy'],
    [290, 'steel-alloy-30hrc'],
    [380, 'steel-40hrc'],
    [500, 'steel-hard'],
  ])('steel of %s HB is nearest to %s', (hb, id) => {
    expect(nearestMaterial('P', hb)).toBe(id);
  });
});

describe('what is planned with', () => {
  const request: HoleRequest = {
    thread: 'M8x1.25-6H',
    fullThread: 16,
    hole: { kind: 'blind' },
    material: 'steel-medium',
  };

  function torque(asked: HoleRequest): number {
    const plan = planHole(asked);
    if (!plan.ok) throw new Error(plan.problems[0]?.code);
    return plan.value.taps[0]!.torque.expected;
  }

  it('its own force rules: twice kc1.1 is twice the torque, all else the handbook’s', () => {
    const tough = { name: 'Tough bar', group: 'P' as const, kc11: 3200, mc: 0.25 };
    expect(torque({ ...request, ownMaterial: tough }) / torque(request)).toBeCloseTo(2, 9);
  });

  it('a name and a hardness alone change nothing but the name', () => {
    const made = ownMaterial({ ...bar, hardness: { value: 30, scale: 'HRC' } });
    expect(made.ok && made.value.id).toBe('steel-alloy-30hrc');
    expect(made.ok && made.value.own).toEqual({ name: 'Bar from the blue rack', hardness: 286 });
    const named = { name: 'Bar', group: 'P' as const };
    expect(torque({ ...request, ownMaterial: named })).toBeCloseTo(torque(request), 12);
  });

  it('one that makes no sense is refused with its own codes', () => {
    const senseless = { name: '', group: 'K' as const, kc11: 5 };
    const plan = planHole({ ...request, ownMaterial: senseless });
    expect(plan.ok).toBe(false);
    const found = plan.ok ? [] : plan.problems.map(({ code }) => code);
    expect(found).toEqual(['own-name-missing', 'own-kc-out-of-range', 'own-like-other-group']);
  });
});
