/** Metric limits beyond the 6H check rows: other grades, position G, two-part classes, MJ, insert holes. */

import { describe, expect, test } from 'vitest';
import { threadLimits } from '../../../core/limits/thread-limits';
import { engagementGroup, normalEngagement } from '../../../core/limits/engagement-group';
import { limitsOf, printed, read } from '../thread/read-or-throw';

const microns = (text: string) => {
  const { pitch, minor } = limitsOf(text);
  return {
    pitch: Math.round((pitch.max - pitch.min) * 1000),
    minor: Math.round((minor.max! - minor.min) * 1000),
  };
};

describe('grades (ISO 965-1, 6 from threadlib, the others from memory)', () => {
  test.each([
    ['M8-4H', 100, 170],
    ['M8-5H', 125, 212],
    ['M8-6H', 160, 265],
    ['M8-7H', 200, 335],
    ['M8-8H', 250, 425],
    ['M3-4H', 63, 90],
    ['M3-7H', 125, 180],
    ['M20-5H', 180, 355],
    ['M1.4-5H', 60, 67],
    ['M1-4H', 45, 45],
  ])('%s: %d and %d micrometres', (name, pitch, minor) => {
    expect(microns(name)).toEqual({ pitch, minor });
    expect(limitsOf(name).basis).toBe('tabulated');
  });
});

describe('a diameter on the edge of two steps belongs to the smaller', () => {
  test.each([
    ['M1.4x0.3-6H', 75],
    ['M45x4.5-6H', 315],
    ['M90x6-6H', 375],
    ['M90x2-6H', 236],
    ['M22x2-6H', 212],
    ['M24x2-6H', 224],
  ])('%s: %d', (name, pitch) => {
    expect(microns(name).pitch).toBe(pitch);
  });
});

describe('position G lies above basic by its deviation (FreeCAD)', () => {
  test('M8x1-6G: 26 micrometres up, tolerances unchanged', () => {
    expect(printed('M8x1-6G', 3)).toEqual(['6.943', '7.179', '7.376', '7.526']);
    expect(limitsOf('M8x1-6G').majorMin).toBe(8.026);
    expect(microns('M8x1-6G')).toEqual(microns('M8x1-6H'));
  });

  test.each([
    ['M3', 20],
    ['M3.5', 21],
    ['M5', 24],
    ['M8', 28],
    ['M10', 32],
    ['M12', 34],
    ['M16', 38],
    ['M24', 48],
    ['M64', 80],
  ])('%s-6G: %d micrometres', (size, up) => {
    const raised = limitsOf(`${size}-6G`);
    const basic = limitsOf(`${size}-6H`);
    expect(Math.round((raised.pitch.min - basic.pitch.min) * 1000)).toBe(up);
    expect(Math.round((raised.minor.max! - basic.minor.max!) * 1000)).toBe(up);
    expect(raised.basis).toBe('tabulated');
  });
});

describe('two-part classes: the pitch diameter first, then the minor', () => {
  test('M6x1-5H6H and the other way round', () => {
    expect(printed('M6x1-5H6H', 3)).toEqual(['4.917', '5.153', '5.350', '5.468']);
    expect(printed('M6x1-6H5H', 3)).toEqual(['4.917', '5.107', '5.350', '5.500']);
    expect(printed('M6x1-6G6H', 3)).toEqual(['4.917', '5.153', '5.376', '5.526']);
  });

  test('the engagement group changes nothing', () => {
    expect(limitsOf('M8x1.25-6H-L')).toEqual(limitsOf('M8x1.25-6H'));
    expect(limitsOf('M8x1.25-6H-20')).toEqual(limitsOf('M8x1.25-6H'));
    expect(limitsOf('M8x1.25-6H-LH')).toEqual(limitsOf('M8x1.25-6H'));
  });
});

describe('MJ (from memory, the profile derived)', () => {
  test('MJ6x1-4H5H', () => {
    expect(printed('MJ6x1-4H5H', 3)).toEqual(['5.026', '5.216', '5.350', '5.445']);
  });

  test('only the minor diameter differs from M', () => {
    const raised = limitsOf('MJ12-6H');
    const plain = limitsOf('M12-6H');
    expect(raised.pitch).toEqual(plain.pitch);
    expect(raised.majorMin).toBe(plain.majorMin);
    expect(raised.minor).toEqual({ min: 10.295, max: 10.63 });
  });
});

describe('holes for wire inserts', () => {
  test('EG M8: the thread shifted out by its height, tolerances of the nominal thread', () => {
    expect(limitsOf('EG M8')).toEqual({
      unit: 'mm',
      pitch: { min: 8.812, max: 8.972 },
      minor: { min: 8.271, max: 8.536 },
      majorMin: 9.624,
      basis: 'tabulated',
    });
  });

  test('the closer minor diameter that is also in use is told beside it, from memory', () => {
    const outcome = threadLimits(read('EG M8'));
    const note = outcome.ok ? outcome.notes[0] : undefined;
    expect(note).toEqual({
      code: 'insert-minor-closer',
      numbers: { minorMax: 8.483 },
      source: 'from-memory',
    });
    const closer = threadLimits(read('EG M8-5H'));
    expect(closer.ok && closer.notes).toEqual([]);
  });

  test('an MJ insert takes the same hole as an M one', () => {
    expect(limitsOf('EG MJ6-5H')).toEqual(limitsOf('EG M6-5H'));
  });
});

describe('outside the tables', () => {
  test.each([
    ['M8x1.3-6H', ['6.593', '6.873', '7.156', '7.316']],
    ['M12x0.75-6H', ['11.188', '11.378', '11.513', '11.653']],
  ])('%s by formula and preferred number: %j', (name, expected) => {
    expect(printed(name, 3)).toEqual(expected);
    expect(limitsOf(name).basis).toBe('computed');
    const outcome = threadLimits(read(name));
    expect(outcome.ok && outcome.notes.map(({ code }) => code)).toEqual(['not-tabulated']);
  });

  test.each([
    ['4H', 90],
    ['5H', 112],
    ['6H', 140],
    ['7H', 180],
    ['8H', 224],
  ])('M12x0.75-%s: %d micrometres on the pitch diameter', (grade, tolerance) => {
    // Td2(6) is 90 x 0.75^0.4 x (11.2 x 22.4)^0.05 = 105.7; times 0.85, 1.06, 1.32, 1.7, 2.12
    expect(microns(`M12x0.75-${grade}`).pitch).toBe(tolerance);
  });

  test('a pair no list has, whose tolerances the tables do have, is tabulated', () => {
    expect(limitsOf('M8x1.5-6H').basis).toBe('tabulated');
  });

  test.each(['M0.9x0.2', 'M0.99x0.25', 'M400x6', 'M355.1x6', 'M8x0.15'])(
    '%s has no limits',
    (name) => {
      const outcome = threadLimits(read(name));
      expect(outcome).toMatchObject({
        ok: false,
        problems: [{ code: 'outside-tolerances', field: 'thread' }],
      });
    },
  );

  test('a class that cannot come from reading is refused, not guessed', () => {
    for (const grade of ['6g', '16H', '6H7', '6HX', '3H', '9G', '']) {
      expect(threadLimits({ ...read('M8'), class: grade })).toMatchObject({
        ok: false,
        problems: [{ code: 'class-unknown', data: { designation: 'M8x1.25-6H', class: grade } }],
      });
    }
  });

  test('a pitch past the tables is refused: 8 mm is the last, 0.2 the first', () => {
    const refused = (pitch: number) => !threadLimits({ ...read('M100x6'), pitch }).ok;
    expect([8, 8.01, 9].map(refused)).toEqual([false, true, true]);
    expect([0.2, 0.19].map(refused)).toEqual([false, true]);
  });
});

describe('length of engagement (from memory)', () => {
  test('M8x1.25 is normal from 4 to 12 mm', () => {
    const normal = normalEngagement(read('M8'))!;
    expect(Math.round(normal.min)).toBe(4);
    expect(Math.round(normal.max)).toBe(12);
    expect(normal.max).toBeCloseTo(6.7 * 1.25 * 5.6 ** 0.2, 9);
    expect(engagementGroup(read('M8'), 3)).toEqual({ group: 'S', usualClass: '5H' });
    expect(engagementGroup(read('M8'), 8)).toEqual({ group: 'N', usualClass: '6H' });
    expect(engagementGroup(read('M8'), 16)).toEqual({ group: 'L', usualClass: '7H' });
    for (const end of [normal.min, normal.max]) {
      expect(engagementGroup(read('M8'), end)).toEqual({ group: 'N', usualClass: '6H' });
    }
  });

  test('means nothing for inch threads', () => {
    expect(normalEngagement(read('1/4-20'))).toBeNull();
    expect(engagementGroup(read('1/4-20'), 8)).toBeNull();
    expect(normalEngagement(read('M400x6'))).toBeNull();
  });
});
