/**
 * Rubbing behind the chamfer. Where the tap stops inside the metal all of the full thread is in metal when
 * the nose stops. Expected factors worked out by hand from the model's own rule: 1 + f · L/D.
 */
import { describe, expect, it } from 'vitest';
import { strokePeak } from '../../../../core/load/stroke-curve';
import { peakTorque, wholeTorque } from '../../../../core/load/torque';
import { findMaterial, type MaterialId } from '../../../../core';
import { studyTap } from '../../../../core/plan/tap-study';
import { bestOf, plan } from './ordinary';

const groove = (material: MaterialId) => ({
  major: 6,
  pitch: 1,
  hole: 5,
  material: findMaterial(material)!,
  flutes: 4,
});

describe('friction of the full thread', () => {
  it('blind: all of it, M6 with 9 mm in oiled steel 1 + 0.05 · 9/6 = 1.075', () => {
    const input = { ...groove('steel-medium'), threads: 2.5, fullThread: 9, thickness: Infinity };
    expect(peakTorque(input) / wholeTorque(input)).toBeCloseTo(1.075, 9);
  });

  it('a thread that ends inside a through hole rubs like a blind one', () => {
    const input = { ...groove('steel-medium'), threads: 4.5, fullThread: 9, thickness: 20 };
    expect(peakTorque(input) / wholeTorque(input)).toBeCloseTo(1.075, 9);
  });

  it('right through: thickness less the chamfer, 1 + 0.05 · (9 − 4.5)/6 = 1.0375, never below 1', () => {
    const input = { ...groove('steel-medium'), threads: 4.5, fullThread: 9, thickness: 9 };
    expect(peakTorque(input) / wholeTorque(input)).toBeCloseTo(1.0375, 9);
    const thin = { ...input, fullThread: 4.5, thickness: 4.5 };
    expect(peakTorque(thin) / wholeTorque(thin)).toBeCloseTo(1, 9);
  });

  it('so in a blind hole the chamfer does not move the torque, in any metal', () => {
    for (const material of ['steel-low', 'titanium', 'al-wrought'] as const) {
      const { taps } = plan({
        thread: '1/4-20',
        material,
        fullThread: 12,
        hole: { kind: 'blind' },
      });
      const straight = taps.filter(({ style }) => style === 'straight-flute');
      const [first] = straight;
      for (const tap of straight) {
        expect(tap.torque.expected).toBeCloseTo(first!.torque.expected, 9);
      }
    }
  });

  it('the stroke ends on the plan’s torque', () => {
    for (const hole of [{ kind: 'blind' }, { kind: 'through', thickness: 30 }] as const) {
      const request = { thread: 'M8', material: 'titanium', fullThread: 12, hole } as const;
      const tap = bestOf(plan(request))!;
      const study = studyTap(request, {
        style: tap.style as 'spiral-flute',
        chamfer: tap.chamfer.class,
      });
      if (!study.ok) throw new Error('refused');
      expect(strokePeak(study.value.stroke).torque).toBeCloseTo(tap.torque.expected, 6);
    }
  });
});
