/** What lists and rules of thumb say before the class is asked. Drills: ISO 2306, handbook lists, pipe drills from memory. */
import { describe, expect, it } from 'vitest';
import {
  diameterLessPitch,
  diameterLessShareOfPitch,
  holeAtShare,
  shareOfDiameter,
} from '../../../core/drill/rules';
import { listedDrill, targetHole } from '../../../core/drill/usual';
import { read } from '../thread/read-or-throw';

describe('the drill that lists name', () => {
  it.each([
    ['M8', '6.8'],
    ['M5', '4.2'],
    ['M16', '14.0'],
    ['1/4-20', '#7'],
    ['#10-32', '#21'],
    ['G1/4', '11.8'],
    ['G3/8', '15.25'],
    ['Rp1/2', '18.5'],
  ])('%s: %s', (thread, name) => expect(listedDrill(read(thread))).toBe(name));

  it.each([
    ['a fine thread', 'M8x1'],
    ['a hole for a wire insert: larger than the thread it is named by', 'EG M8'],
    ['the same in inches', 'STI 1/4-20'],
    ['a pair that no list has', '1/2-28 UNEF'],
    ['a taper, whose drill depends on the reamer', 'Rc1/4'],
    ['the other taper', '1/4 NPT'],
    ['a parallel size that no list has', 'G1-3/4'],
  ])('none for %s', (_, thread) => expect(listedDrill(read(thread))).toBeUndefined());
});

describe('the hole to aim at', () => {
  it('metric: diameter less pitch', () => expect(targetHole(read('M8'), 8)).toBeCloseTo(6.75, 9));
  it('of the tap’s own diameter', () => expect(targetHole(read('M8'), 8.1)).toBeCloseTo(6.85, 9));

  // 0.5 - 0.75 x 1.299038 / 13 in, by hand.
  it('inch: three quarters of the thread, shop base', () => {
    expect(targetHole(read('1/2-13'), 12.7) / 25.4).toBeCloseTo(0.42506, 5);
  });
});

describe('rules of thumb and the mistakes beside them: M10×1.5, by hand', () => {
  it('diameter less pitch', () => expect(diameterLessPitch(10, 1.5)).toBe(8.5));
  it('75 % mistaken for a share of the pitch', () => {
    expect(diameterLessShareOfPitch(10, 1.5, 75)).toBeCloseTo(8.875, 9);
  });
  it('85 % mistaken for a share of the diameter, and back', () => {
    expect(holeAtShare(10, 85)).toBeCloseTo(8.5, 9);
    expect(shareOfDiameter(10, 8.5)).toBeCloseTo(0.85, 9);
  });
});
