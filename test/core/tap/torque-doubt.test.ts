/** Doubt in, doubt out: seeded, whole, and on the right side of the answer. */
import { describe, expect, it } from 'vitest';
import { findMaterial } from '../../../core/material/table';
import { doubtfulInputs, torqueDoubt, type DoubtInput } from '../../../core/tap/torque-doubt';
import { STYLES } from '../../../core/tap/styles';
import { webSpread, type TwistedStyle } from '../../../core/tap/web';
import { peakTorque } from '../../../core/load/torque';

const material = findMaterial('steel-medium')!;
const cut = {
  major: 10,
  pitch: 1.5,
  hole: 8.5,
  material,
  flutes: 4,
  threads: 2.5,
  fullThread: 20,
  thickness: Infinity,
};
const hole = { low: 8.5, likely: 8.5, high: 8.65 };

function input(style: TwistedStyle): DoubtInput {
  return { cut, style, factor: 1, hole, web: webSpread(style, 10, 8.376, 4) };
}

describe.each(['spiral-flute', 'spiral-point', 'straight-flute'] as const)('%s', (style) => {
  const doubt = torqueDoubt(input(style));
  const expected = peakTorque(cut) * STYLES[style].torque.middle;

  it('the expected torque lies where nine in ten lie', () => {
    expect(doubt.torque.low).toBeLessThan(expected);
    expect(doubt.torque.high).toBeGreaterThan(expected);
  });

  it('every input that is moved moves the answer to both sides of it, or to one that ends on it', () => {
    for (const { low, high } of doubt.torqueSwings) {
      expect(low).toBeLessThanOrEqual(expected + 1e-9);
      expect(high).toBeGreaterThanOrEqual(expected - 1e-9);
    }
  });

  it('the widest swing comes first', () => {
    const widths = doubt.torqueSwings.map(({ low, high }) => high - low);
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
  });

  it('worn is more than sharp, and shares follow', () => {
    expect(doubt.worn.middle).toBeGreaterThan(1.3 * doubt.torque.middle);
    expect(doubt.wornShare.middle).toBeGreaterThan(1.3 * doubt.share.middle);
  });
});

describe('what matters', () => {
  it('for the torque: material, not friction; for the share of the tap: its web', () => {
    const doubt = torqueDoubt(input('spiral-point'));
    expect(doubt.torqueSwings[0]?.input).toBe('material');
    expect(doubt.shareSwings[0]?.input).toBe('web');
  });

  it('a measured web takes its own bar away', () => {
    const measured = { ...input('spiral-point'), web: { low: 5.2, likely: 5.2, high: 5.2 } };
    const names = torqueDoubt(measured).shareSwings.map((swing) => swing.input);
    expect(names).not.toContain('web');
  });

  it('a straight-flute tap has no doubt about its style: it is what others are measured by', () => {
    const names = torqueDoubt(input('straight-flute')).torqueSwings.map((swing) => swing.input);
    expect(names).not.toContain('style');
  });

  it('a form tap’s torque hangs on its ratio to a cutting tap, and on its own hole', () => {
    const form: DoubtInput = { ...input('form'), hole: { low: 9.3, likely: 9.35, high: 9.4 } };
    const doubt = torqueDoubt(form);
    expect(doubt.torqueSwings[0]?.input).toBe('style');
    expect(doubt.torqueSwings.map((swing) => swing.input)).toContain('hole');
    expect(doubt.torqueSwings.map((swing) => swing.input)).not.toContain('chamfer');
  });

  it('stands still: the same job twice gives the same digits', () => {
    expect(torqueDoubt(input('spiral-flute'))).toEqual(torqueDoubt(input('spiral-flute')));
  });

  it('every stated spread holds its likely value', () => {
    for (const style of ['spiral-flute', 'form'] as const) {
      for (const { low, likely, high } of Object.values(doubtfulInputs(input(style)))) {
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
      }
    }
  });
});
