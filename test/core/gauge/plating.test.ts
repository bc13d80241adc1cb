import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beforePlating, judgeTapLimits, readThread, threadLimits } from '../../../core';
import type { PlatedWindow, PlatingRule } from '../../../core';
import { PLATING_FACTOR } from '../../../core/gauge/plating';

function plate(text: string, thickness: [number, number], rule?: PlatingRule): PlatedWindow {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  const window = beforePlating(limits.value, thickness, rule);
  if (!window.ok) throw new Error(JSON.stringify(window.problems));
  return window.value;
}

const tenths = (from: number, to: number): [number, number] => [from * 0.0254, to * 0.0254];

describe('1/4-20 UNC-2B, zinc .0002 to .0003 in', () => {
  const window = plate('1/4-20-2B', tenths(0.2, 0.3));

  it('must lie in .2187 to .2232 before plating', () => {
    expect(window.pitch.min).toBeCloseTo(0.2187, 6);
    expect(window.pitch.max).toBeCloseTo(0.2232, 6);
  });

  it('minor diameter moves twice the thickness', () => {
    expect(window.minor.min).toBeCloseTo(0.1966, 6);
    expect(window.minor.max).toBeCloseTo(0.2074, 6);
  });

  it('costs three steps of tap limit; H4 to H8 nominally do, H5 also when it cuts .0005 large', () => {
    expect(window.extraSteps).toBe(3);
    const thread = readThread('1/4-20-2B');
    if (!thread.ok) throw new Error();
    const limits = threadLimits(thread.value);
    if (!limits.ok) throw new Error();
    const judged = judgeTapLimits(thread.value, limits.value, window.pitch);
    const verdict = (name: string) => judged.find((each) => each.name === name)?.verdict;
    for (const name of ['H4', 'H5', 'H6', 'H7', 'H8']) expect(verdict(name)).toBe('inside');
    expect(verdict('H3')).toBe('outside');
  });
});

describe('metric classes hold before coating', () => {
  it('M8-6H with 0.008 mm: GO of the basic size must still enter, so only the lower end moves', () => {
    const window = plate('M8-6H', [0.005, 0.008]);
    expect(window.rule).toBe('before');
    expect(window.pitch.min).toBeCloseTo(7.188 + 0.032, 6);
    expect(window.pitch.max).toBeCloseTo(7.348, 6);
  });

  it('6G already leaves 0.028 mm, room for 0.007 mm of coating', () => {
    const thread = readThread('M8-6G');
    const basic = readThread('M8-6H');
    if (!thread.ok || !basic.ok) throw new Error();
    const [own, h] = [threadLimits(thread.value), threadLimits(basic.value)];
    if (!own.ok || !h.ok) throw new Error();
    const sizes = { major: h.value.majorMin, pitch: h.value.pitch.min, minor: h.value.minor.min };
    const thin = beforePlating(own.value, [0, 0.007], 'before', sizes);
    const thick = beforePlating(own.value, [0, 0.008], 'before', sizes);
    expect(thin.ok && thin.value.pitch.min).toBeCloseTo(own.value.pitch.min, 9);
    expect(thick.ok && thick.value.pitch.min).toBeCloseTo(h.value.pitch.min + 0.032, 9);
  });
});

describe('the factor of four, from the profile itself', () => {
  /** Width of a 60° groove in metal at a radius, by walking along the axis from its middle; coated by `t`. */
  function grooveWidth(radius: number, pitchRadius: number, pitch: number, t: number): number {
    const step = pitch / 200_000;
    let half = 0;
    // A point is open while its distance to the flank line, measured square to it, is more than the layer.
    const open = (axial: number) => {
      const flankAxial = pitch / 4 - (radius - pitchRadius) * Math.tan(Math.PI / 6);
      return (flankAxial - axial) * Math.cos(Math.PI / 6) > t;
    };
    while (open(half)) half += step;
    return 2 * half;
  }

  it('the diameter where groove and ridge are equal moves by 4 t', () => {
    const [pitch, pitchRadius, t] = [1.25, 3.594, 0.01];
    let low = pitchRadius - 0.2;
    let high = pitchRadius + 0.2;
    for (let turn = 0; turn < 40; turn += 1) {
      const middle = (low + high) / 2;
      if (grooveWidth(middle, pitchRadius, pitch, t) > pitch / 2) low = middle;
      else high = middle;
    }
    expect((2 * (pitchRadius - low)) / t).toBeCloseTo(PLATING_FACTOR.pitch, 2);
  });
});

describe('refusals and properties', () => {
  const thread = readThread('M3');
  if (!thread.ok) throw new Error();
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error();
  const code = (thickness: [number, number]) => {
    const outcome = beforePlating(limits.value, thickness, 'after');
    return outcome.ok ? 'ok' : outcome.problems[0]?.code;
  };

  it('a thickness below nothing, upside down, or endless', () => {
    expect(code([-0.001, 0.002])).toBe('plating-thickness');
    expect(code([0.003, 0.002])).toBe('plating-thickness');
    expect(code([0, Infinity])).toBe('plating-thickness');
  });

  it('a coating that spreads more than the class', () => {
    expect(code([0, 0.026])).toBe('plating-no-room');
    expect(code([0, 0.024])).toBe('ok');
  });

  it('whatever lies in the window before lies in the class after, at the thinnest and the thickest', () => {
    const layer = fc.tuple(
      fc.double({ min: 0, max: 0.012, noNaN: true }),
      fc.double({ min: 0, max: 0.012, noNaN: true }),
    );
    fc.assert(
      fc.property(layer, fc.double({ min: 0, max: 1, noNaN: true }), ([a, b], where) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
        const window = beforePlating(limits.value, [thin, thick], 'after');
        if (!window.ok) return;
        const { min, max } = window.value.pitch;
        const bare = min + where * (max - min);
        for (const t of [thin, thick]) {
          expect(bare - 4 * t).toBeGreaterThanOrEqual(limits.value.pitch.min - 1e-9);
          expect(bare - 4 * t).toBeLessThanOrEqual(limits.value.pitch.max + 1e-9);
        }
      }),
    );
  });
});
