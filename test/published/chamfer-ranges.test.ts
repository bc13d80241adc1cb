/** Chamfer lengths in threads, as the standards and US Army TM 9-254 print them. */
import { describe, expect, it } from 'vitest';
import { chamferOf, FORM_F } from '../../core/chamfer/classes';

describe('US classes: ASME B94.9 as printed in TM 9-254', () => {
  it.each([
    ['taper', 7, 10],
    ['plug', 3, 5],
    ['bottoming', 1, 2],
  ] as const)('%s %i to %i', (name, min, max) => {
    expect(chamferOf(name, 'inch').threads).toEqual({ min, max });
  });
  it('semi-bottoming 2 to 3 (from memory)', () => {
    expect(chamferOf('semi-bottoming', 'inch').threads).toEqual({ min: 2, max: 3 });
  });
});

describe('forms of DIN 2197 / ISO 8830, as catalogues print them', () => {
  it.each([
    ['taper', false, 'A', 6, 8],
    ['plug', true, 'B', 3.5, 5.5],
    ['plug', false, 'D', 3.5, 5.5],
    ['semi-bottoming', false, 'C', 2, 3],
    ['bottoming', false, 'E', 1.5, 2],
  ] as const)('%s, spiral point %s: %s %d to %d', (name, spiralPoint, form, min, max) => {
    expect(chamferOf(name, 'metric', spiralPoint)).toEqual({
      class: name,
      form,
      threads: { min, max },
    });
  });
  it('form F 1 to 1.5, for finishing by hand', () => {
    expect(FORM_F.threads).toEqual({ min: 1, max: 1.5 });
  });
});
