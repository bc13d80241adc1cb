/** Getting a broken tap out, and the ladder of rework. Expected choices: shop practice, common practice. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MATERIAL_IDS, SOURCES } from '../../../core';
import {
  NEVER,
  nutMayBeWelded,
  REMOVAL_METHODS,
  removalChoices,
  type RemovalChoice,
  type StuckTap,
} from '../../../core/diagnose/removal';
import {
  acceptRework,
  DEFECTS,
  insertHole,
  REWORK_RUNGS,
  reworkLadder,
} from '../../../core/diagnose/rework';
import { symptomOf } from '../../../core/diagnose/from-gauge';

const STUCK: StuckTap = {
  diameter: 10,
  style: 'straight-flute',
  material: 'steel-medium',
  stub: 'deep',
  hold: 'loose',
  machine: true,
  wideBoss: true,
};

function choices(changes: Partial<StuckTap>): RemovalChoice[] {
  const outcome = removalChoices({ ...STUCK, ...changes });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const worthTrying = (changes: Partial<StuckTap>) =>
  choices(changes)
    .filter(({ verdict }) => verdict === 'try')
    .map(({ method }) => method);

const against = (changes: Partial<StuckTap>, method: string) =>
  choices(changes).find((each) => each.method === method)?.reasons;

describe('ways to get a tap out', () => {
  test('loose M10 in steel: turn it, then fingers, then jar, then cut; never the bath', () => {
    expect(worthTrying({ stub: 'proud' })).toEqual([
      'turn-out',
      'extractor',
      'rock-loose',
      'mill-out',
      'spark-out',
      'trepan',
    ]);
    expect(against({}, 'dissolve')).toEqual(['part-would-dissolve']);
  });

  test('wedged: nothing that turns it', () => {
    expect(worthTrying({ hold: 'wedged' })).toEqual(['mill-out', 'spark-out', 'trepan']);
  });

  test('fingers: from M6, straight flutes only', () => {
    expect(worthTrying({ diameter: 6 })).toContain('extractor');
    expect(against({ diameter: 4 }, 'extractor')).toEqual(['too-small-for-fingers']);
    expect(against({ style: 'spiral-flute' }, 'extractor')).toEqual(['flutes-not-straight']);
    expect(against({ style: 'form' }, 'extractor')).toEqual(['no-flutes']);
  });

  test('a cutter down the core: from M4, in a rigid machine; M3 is left to the spark', () => {
    expect(worthTrying({ diameter: 4, hold: 'wedged' })).toContain('mill-out');
    expect(worthTrying({ diameter: 3, hold: 'wedged', wideBoss: false })).toEqual(['spark-out']);
    expect(against({ machine: false }, 'mill-out')).toEqual(['no-rigid-machine']);
  });

  test('the bath: aluminium, brass, copper, and no steel fitted', () => {
    for (const material of ['al-wrought', 'al-cast', 'brass-free', 'copper'] as const) {
      expect(worthTrying({ material })).toContain('dissolve');
      expect(against({ material, steelFitted: true }, 'dissolve')).toEqual([
        'steel-would-dissolve',
      ]);
    }
    for (const material of ['iron-grey', 'stainless-austenitic', 'steel-hard'] as const) {
      expect(against({ material }, 'dissolve')).toEqual(['part-would-dissolve']);
    }
    expect(against({ material: 'titanium' }, 'dissolve')).toEqual(['not-known-to-work']);
  });

  test('scrap leads below twice the cost of getting it out, and only when both are said', () => {
    expect(worthTrying({ partValue: 150, removalCost: 100 })[0]).toBe('scrap');
    expect(worthTrying({ partValue: 200, removalCost: 100 })).not.toContain('scrap');
    expect(against({}, 'scrap')).toEqual(['value-not-said']);
  });

  // By hand: time is the middle of its range over sparking's 120 min; of the value 0.2 is at risk milling, 0.03 sparking.
  // 200 to spark, part 500: mill 200·55/120 + 0.2·500 = 192, spark 200 + 0.03·500 = 215.
  // Part 5000: mill 92 + 1000 = 1092, spark 200 + 150 = 350.
  test('what the part is worth decides: a dear part sparks before it mills, a plain one mills', () => {
    const order = (partValue: number) =>
      worthTrying({ hold: 'wedged', wideBoss: false, partValue, removalCost: 200 });
    expect(order(500)).toEqual(['mill-out', 'spark-out']);
    expect(order(5000)).toEqual(['spark-out', 'mill-out']);
    const cost = (partValue: number, method: string) =>
      choices({ hold: 'wedged', partValue, removalCost: 200 }).find(
        (each) => each.method === method,
      )?.expected;
    expect(cost(500, 'mill-out')).toBeCloseTo(191.67, 2);
    expect(cost(500, 'spark-out')).toBeCloseTo(215, 6);
    expect(cost(5000, 'mill-out')).toBeCloseTo(1091.67, 2);
    expect(cost(5000, 'spark-out')).toBeCloseTo(350, 6);
    expect(choices({})[0]?.expected).toBeNull();
  });

  test('a dear part is not struck before it is sparked; a loose stub is still turned out first', () => {
    const dear = worthTrying({ stub: 'proud', partValue: 20000, removalCost: 300 });
    expect(dear[0]).toBe('turn-out');
    expect(dear.indexOf('spark-out')).toBeLessThan(dear.indexOf('rock-loose'));
  });

  test('once sparking leads, a dearer part never gives the lead back to a cut', () => {
    const leads = (partValue: number) =>
      worthTrying({ hold: 'wedged', partValue, removalCost: 100 })[0];
    fc.assert(
      fc.property(fc.double({ min: 200, max: 1e6, noNaN: true }), (value) => {
        if (leads(value) === 'spark-out') expect(leads(2 * value)).toBe('spark-out');
      }),
    );
  });

  test('a nut is welded only to M8 and larger', () => {
    expect([6, 8, 10].map(nutMayBeWelded)).toEqual([false, true, true]);
  });

  test('every way once, a reason for every no, and always something to try', () => {
    const stuck = fc.record({
      diameter: fc.double({ min: 1, max: 64, noNaN: true }),
      style: fc.constantFrom('straight-flute', 'spiral-flute', 'spiral-point', 'form'),
      material: fc.constantFrom(...MATERIAL_IDS),
      stub: fc.constantFrom('proud', 'flush', 'deep'),
      hold: fc.constantFrom('loose', 'wedged'),
      machine: fc.boolean(),
      wideBoss: fc.boolean(),
    });
    fc.assert(
      fc.property(stuck, (tap) => {
        const all = choices(tap as StuckTap);
        expect(all.map(({ method }) => method).sort()).toEqual([...REMOVAL_METHODS].sort());
        for (const { verdict, reasons } of all) expect(reasons.length > 0).toBe(verdict === 'no');
        expect(all[0]?.verdict).toBe('try');
        const bath = all.find(({ method }) => method === 'dissolve');
        const kind = tap.material.split('-')[0]!;
        if (['steel', 'iron', 'stainless'].includes(kind)) expect(bath?.verdict).toBe('no');
      }),
    );
  });

  test('refuses a tap without a size and money below nothing', () => {
    const code = (changes: Partial<StuckTap>) => {
      const outcome = removalChoices({ ...STUCK, ...changes });
      return outcome.ok ? null : outcome.problems[0]?.code;
    };
    expect(code({ diameter: 0 })).toBe('diameter-not-positive');
    expect(code({ partValue: -1 })).toBe('money-negative');
    expect(NEVER.length).toBeGreaterThanOrEqual(8);
  });
});

describe('the ladder of rework', () => {
  test.each(DEFECTS)('%s: every rung has an authority and a source; something helps', (defect) => {
    const ladder = reworkLadder(defect, 'ordinary');
    expect(ladder.map(({ rung }) => rung)).toEqual(REWORK_RUNGS);
    expect(ladder.filter(({ helps }) => helps).length).toBeGreaterThan(1);
    for (const { source } of ladder) expect(SOURCES[source]).toBeDefined();
  });

  test('whose word: shop, designer, concession, engineer', () => {
    const authority = Object.fromEntries(
      reworkLadder('pitch-large', 'ordinary').map((step) => [step.rung, step.authority]),
    );
    expect(authority).toEqual({
      chase: 'shop',
      'open-minor': 'shop',
      're-tap': 'shop',
      'shorter-screw': 'designer',
      'longer-screw': 'designer',
      'larger-thread': 'designer',
      'wire-insert': 'concession',
      'solid-insert': 'concession',
      'plug-or-weld': 'engineer',
      scrap: 'shop',
    });
  });

  const rungs = (defect: (typeof DEFECTS)[number]) =>
    reworkLadder(defect, 'ordinary').flatMap(({ rung, helps }) => (helps ? [rung] : []));

  test('a small minor diameter is opened, then chased; a tap is not forced into it', () => {
    expect(rungs('minor-small')).toEqual(['open-minor', 'scrap']);
  });

  test('a short thread is tapped deeper or takes a shorter screw; a longer one would not clamp', () => {
    expect(rungs('thread-short')).toEqual(['re-tap', 'shorter-screw', 'scrap']);
  });

  test('a governed thread: nothing that adds or takes metal without the engineer', () => {
    const own = reworkLadder('stripped', 'governed').filter(
      ({ authority }) => authority !== 'engineer',
    );
    expect(own.map(({ rung }) => rung)).toEqual(['chase', 'scrap']);
  });

  test('never accepts', () => {
    for (const defect of DEFECTS) {
      for (const rung of REWORK_RUNGS) {
        for (const duty of ['ordinary', 'governed'] as const) {
          const outcome = acceptRework(defect, rung, duty);
          expect(outcome.ok).toBe(false);
        }
      }
    }
  });

  // Tapped minor and major of wire inserts, mm: shop tables, common practice, 2 decimals.
  test.each([
    [6, 1, 6.22, 7.3],
    [8, 1.25, 8.27, 9.62],
    [10, 1.5, 10.32, 11.95],
  ])('a wire insert for M%d: minor from %s %s', (diameter, pitch, minor, major) => {
    const hole = insertHole(diameter, pitch);
    expect(hole.ok && hole.value.minorMin).toBeCloseTo(minor, 1);
    expect(hole.ok && Math.abs(hole.value.minorMin - minor)).toBeLessThanOrEqual(0.005);
    expect(hole.ok && Math.abs(hole.value.majorMin - major)).toBeLessThanOrEqual(0.005);
    expect(hole.ok && hole.value.wall).toBeCloseTo(0.3 * diameter, 9);
  });

  test('refuses a thread without a pitch', () => {
    expect(insertHole(6, 0).ok).toBe(false);
  });
});

test('what the gauges find leads into the matrix', () => {
  expect(symptomOf('pitch-large')).toBe('not-go-goes');
  expect(symptomOf('depth-short')).toBe('go-stops');
  expect(symptomOf('pitch-in-class')).toBeNull();
});
