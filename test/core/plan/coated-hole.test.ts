/**
 * The hole before a coating. Inch limits hold on the coated thread (ASME B1.1, from memory): both ends move.
 * Metric limits hold on the bare one, which must still clear the basic size once coated (ISO 965-1, from
 * memory): only the least moves. Minor diameters shrink by twice the thickness (derived).
 */
import { describe, expect, test } from 'vitest';
import { minorLimitsMm, planHole, readThread, threadLimits } from '../../../core';
import { holeWindow } from '../../../core/plan/cut-hole';

function limitsOf(text: string) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  return limits.value;
}

const COATING = { thickness: [0.005, 0.01] as [number, number] };

describe('the hole before a coating', () => {
  test('metric: the least moves by twice the thickest layer, the largest stays', () => {
    const { min, max } = minorLimitsMm(limitsOf('M8x1.25-6H'));
    const window = holeWindow(limitsOf('M8x1.25-6H'), COATING, undefined, min);
    expect(window.min).toBeCloseTo(min + 0.02, 9);
    expect(window.max).toBe(max);
  });

  test('metric 6G: the room of the class takes the layer, and nothing moves', () => {
    // 6G lies 0.028 mm above basic (ISO 965-1), more than twice 0.01.
    const { min, max } = minorLimitsMm(limitsOf('M8x1.25-6G'));
    const basic = minorLimitsMm(limitsOf('M8x1.25-6H')).min;
    expect(holeWindow(limitsOf('M8x1.25-6G'), COATING, undefined, basic)).toEqual({ min, max });
  });

  test('inch: both move, the least by the thickest and the largest by the thinnest', () => {
    const limits = limitsOf('1/4-20 UNC-2B');
    const window = holeWindow(limits, COATING);
    expect(window.min).toBeCloseTo(limits.minor.min * 25.4 + 0.02, 9);
    expect(window.max).toBeCloseTo(limits.minor.max! * 25.4 + 0.01, 9);
  });

  test('the plan never takes a drill past the bare metric limit', () => {
    const outcome = planHole({
      thread: 'M8x1.25-6H',
      hole: { kind: 'blind' },
      material: 'stainless-austenitic',
      coating: { thickness: [0.02, 0.025] },
    });
    if (!outcome.ok) throw new Error('M8');
    const inside = outcome.value.drills.filter(({ verdict }) => verdict === 'inside');
    expect(inside.length).toBeGreaterThan(0);
    for (const { likely } of inside) expect(likely).toBeLessThanOrEqual(6.912 + 1e-9);
  });
});
