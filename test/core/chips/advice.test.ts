/** Where chips go and whether that suits the hole: common practice of the trade, no printed source. */
import { describe, expect, it } from 'vitest';
import { planHole, type HoleRequest, type MaterialId } from '../../../core';
import {
  CHIP_ADVICE_CODES,
  CHIP_HOLES,
  chipAdvice,
  type ChipAdvice,
  type ChipHole,
} from '../../../core/chips/advice';
import { chipCourse, type ChipCourse } from '../../../core/chips/direction';
import { FACES, faceLean } from '../../../core/chips/face';
import { findMaterial, MATERIALS } from '../../../core/material/table';
import { STYLES } from '../../../core/tap/styles';
import type { Hand } from '../../../core/thread/thread';

const LEANS = { right: 30, none: 0, left: -30 } as const;
type Lean = keyof typeof LEANS;

/** Long-chipping steel: face leaning, hand of the thread, hole; where the chip goes, and is that right. */
const RULE: [Lean, Hand, ChipHole, ChipCourse, string][] = [
  ['right', 'right', 'blind', 'back', 'right'],
  ['right', 'right', 'blind-deep', 'back', 'right'],
  ['right', 'right', 'through', 'back', 'works'],
  ['right', 'right', 'through-closed', 'back', 'right'],
  ['none', 'right', 'blind', 'stays', 'check'],
  ['none', 'right', 'blind-deep', 'stays', 'check'],
  ['none', 'right', 'through', 'stays', 'check'],
  ['none', 'right', 'through-closed', 'stays', 'check'],
  ['left', 'right', 'blind', 'ahead', 'wrong'],
  ['left', 'right', 'blind-deep', 'ahead', 'check'],
  ['left', 'right', 'through', 'ahead', 'right'],
  ['left', 'right', 'through-closed', 'ahead', 'wrong'],
  ['left', 'left', 'blind', 'back', 'right'],
  ['left', 'left', 'blind-deep', 'back', 'right'],
  ['left', 'left', 'through', 'back', 'works'],
  ['left', 'left', 'through-closed', 'back', 'right'],
  ['none', 'left', 'blind', 'stays', 'check'],
  ['none', 'left', 'blind-deep', 'stays', 'check'],
  ['none', 'left', 'through', 'stays', 'check'],
  ['none', 'left', 'through-closed', 'stays', 'check'],
  ['right', 'left', 'blind', 'ahead', 'wrong'],
  ['right', 'left', 'blind-deep', 'ahead', 'check'],
  ['right', 'left', 'through', 'ahead', 'right'],
  ['right', 'left', 'through-closed', 'ahead', 'wrong'],
];

const steel = findMaterial('steel-medium')!;
const iron = findMaterial('iron-grey')!;

describe('face, hand and hole', () => {
  it('every combination stands in the rule once', () => {
    const seen = new Set(RULE.map(([lean, hand, hole]) => `${lean} ${hand} ${hole}`));
    expect(seen.size).toBe(Object.keys(LEANS).length * 2 * CHIP_HOLES.length);
    expect(RULE).toHaveLength(24);
  });

  it.each(RULE)('%s-leaning face, %s hand, %s: %s, %s', (lean, hand, hole, course, verdict) => {
    const found = chipCourse(LEANS[lean], hand);
    expect(found).toBe(course);
    expect(chipAdvice(found, hole, steel).verdict).toBe(verdict);
  });

  it('a mirror turns the lean and the hand, and changes nothing else', () => {
    for (let lean = -60; lean <= 60; lean += 5) {
      for (const hole of CHIP_HOLES) {
        const here = chipAdvice(chipCourse(lean, 'right'), hole, steel);
        const mirrored = chipAdvice(chipCourse(-lean, 'left'), hole, steel);
        expect(mirrored).toEqual(here);
      }
    }
  });

  it('how far a face leans does not matter, only which way', () => {
    expect(chipCourse(1, 'right')).toBe(chipCourse(45, 'right'));
    expect(chipCourse(-1, 'right')).toBe(chipCourse(-45, 'right'));
  });
});

describe('what is seen at the bench', () => {
  it('a gash at the point drives ahead on a tap of either hand', () => {
    for (const hand of ['right', 'left'] as const) {
      expect(chipCourse(faceLean('gash', hand)!, hand)).toBe('ahead');
    }
  });

  it('a flute that climbs to the right lifts on a right-hand tap and drives ahead on a left-hand one', () => {
    expect(chipCourse(faceLean('climbs-right', 'right')!, 'right')).toBe('back');
    expect(chipCourse(faceLean('climbs-right', 'left')!, 'left')).toBe('ahead');
    expect(chipCourse(faceLean('climbs-left', 'right')!, 'right')).toBe('ahead');
  });

  it('a flute leans by the way it winds, whatever the thread; a gash against the thread (common practice)', () => {
    const leans = (hand: Hand) => FACES.map((face) => faceLean(face, hand));
    expect(leans('right')).toEqual([0, 35, -35, -10, null]);
    expect(leans('left')).toEqual([0, 35, -35, 10, null]);
  });

  it('leans as the plan takes its own styles to lean', () => {
    expect(faceLean('gash', 'right')).toBe(STYLES['spiral-point'].lean);
    expect(faceLean('climbs-right', 'right')).toBe(STYLES['spiral-flute'].lean);
    expect(faceLean('straight', 'right')).toBe(STYLES['straight-flute'].lean);
    expect(faceLean('none', 'right')).toBeNull();
  });

  it.each(FACES)('%s has an answer for both hands', (face) => {
    for (const hand of ['right', 'left'] as const) {
      const lean = faceLean(face, hand);
      expect(lean === null || Math.abs(lean) <= 60).toBe(true);
    }
  });
});

describe('every course in every hole, for a long chip, a short one and one not known', () => {
  const CHIPS = { long: steel, short: iron, unknown: undefined };

  type Row = [ChipCourse, ChipHole, keyof typeof CHIPS, string, string];
  it.each<Row>([
    ['ahead', 'blind', 'long', 'wrong', 'packs-on-floor'],
    ['ahead', 'blind-deep', 'long', 'check', 'needs-room-below'],
    ['ahead', 'through', 'long', 'right', 'falls-clear'],
    ['ahead', 'through-closed', 'long', 'wrong', 'must-not-fall'],
    ['back', 'blind', 'long', 'right', 'clears-the-hole'],
    ['back', 'blind-deep', 'long', 'right', 'clears-the-hole'],
    ['back', 'through', 'long', 'works', 'lifted-for-nothing'],
    ['back', 'through-closed', 'long', 'right', 'kept-out-below'],
    ['back', 'blind', 'short', 'works', 'short-need-no-lift'],
    ['back', 'blind-deep', 'short', 'works', 'short-need-no-lift'],
    ['back', 'through', 'short', 'works', 'lifted-for-nothing'],
    ['back', 'through-closed', 'short', 'right', 'kept-out-below'],
    ['back', 'blind', 'unknown', 'right', 'clears-the-hole'],
    ['stays', 'blind', 'long', 'check', 'long-chips-pack'],
    ['stays', 'through', 'long', 'check', 'long-chips-pack'],
    ['stays', 'through-closed', 'long', 'check', 'long-chips-pack'],
    ['stays', 'through', 'short', 'right', 'short-chips-lie'],
    ['stays', 'through-closed', 'short', 'check', 'some-fall'],
    ['stays', 'through', 'unknown', 'check', 'depends-on-chip'],
    ['stays', 'through-closed', 'unknown', 'check', 'some-fall'],
  ])('%s, %s, %s chip: %s, %s', (course, hole, chip, verdict, code) => {
    expect(chipAdvice(course, hole, CHIPS[chip])).toMatchObject({ verdict, code });
  });

  it.each<[ChipHole, keyof typeof CHIPS, ChipAdvice['wanted']]>([
    ['blind', 'long', 'back'],
    ['blind-deep', 'long', 'back'],
    ['through', 'long', 'ahead'],
    ['through-closed', 'long', 'back'],
    ['blind', 'short', 'stays'],
    ['blind-deep', 'short', 'stays'],
    ['through', 'short', 'stays'],
    ['through-closed', 'short', 'back'],
    ['blind', 'unknown', null],
    ['blind-deep', 'unknown', null],
    ['through', 'unknown', 'ahead'],
    ['through-closed', 'unknown', 'back'],
  ])('a %s hole wants its %s chips %s', (hole, chip, wanted) => {
    for (const course of ['ahead', 'back', 'stays', 'none'] as const) {
      expect(chipAdvice(course, hole, CHIPS[chip]).wanted).toBe(wanted);
    }
  });
});

describe('short chips and no chips', () => {
  it('short chips may lie in straight flutes, blind or through', () => {
    for (const hole of ['blind', 'blind-deep', 'through'] as const) {
      expect(chipAdvice('stays', hole, iron)).toEqual({
        verdict: 'right',
        code: 'short-chips-lie',
        wanted: 'stays',
      });
    }
  });

  it('some short chips fall all the same, where none may', () => {
    expect(chipAdvice('stays', 'through-closed', iron).code).toBe('some-fall');
  });

  it('a spiral point in a blind hole is wrong whatever the chip, without a pocket', () => {
    for (const material of MATERIALS) {
      expect(chipAdvice('ahead', 'blind', material).verdict).toBe('wrong');
    }
  });

  it('a form tap makes none: right in copper, wrong in iron, to be asked where nothing is known', () => {
    expect(chipAdvice('none', 'blind', findMaterial('copper')!).verdict).toBe('right');
    expect(chipAdvice('none', 'blind', iron).code).toBe('not-formable');
    expect(chipAdvice('none', 'blind').code).toBe('form-if-ductile');
  });

  it('without a material, what depends on the chip is left open', () => {
    expect(chipAdvice('stays', 'blind')).toEqual({
      verdict: 'check',
      code: 'depends-on-chip',
      wanted: null,
    });
    expect(chipAdvice('ahead', 'through').verdict).toBe('right');
  });

  it('every code is used and none is missing from the list', () => {
    const used = new Set(
      CHIP_HOLES.flatMap((hole) =>
        (['ahead', 'back', 'stays', 'none'] as const).flatMap((course) =>
          [undefined, ...MATERIALS].map((work) => chipAdvice(course, hole, work).code),
        ),
      ),
    );
    expect([...used].sort()).toEqual([...CHIP_ADVICE_CODES].sort());
  });
});

/** A hole of each kind with room for every chamfer, so that only the chips can decide. */
const HOLES: Record<Exclude<ChipHole, 'blind-deep'>, HoleRequest['hole']> = {
  blind: { kind: 'blind' },
  through: { kind: 'through', thickness: 20 },
  'through-closed': { kind: 'through', thickness: 20, chipsMayFall: false },
};

describe('agrees with the plan', () => {
  it.each<MaterialId>(['steel-low', 'al-wrought', 'iron-grey', 'stainless-austenitic', 'copper'])(
    '%s: wrong here is refused there for its chips, and nothing else is',
    (id) => {
      for (const hole of ['blind', 'through', 'through-closed'] as const) {
        const outcome = planHole({ thread: 'M10x1.5', hole: HOLES[hole], material: id });
        if (!outcome.ok) throw new Error('not planned');
        for (const tap of outcome.value.taps) {
          if (tap.process === 'mill') continue;
          const refused = tap.reasons.some(({ code }) =>
            ['chips-ahead-no-room', 'chips-must-not-fall', 'not-formable'].includes(code),
          );
          const { verdict } = chipAdvice(tap.chips.goes, hole, findMaterial(id)!);
          expect([tap.style, hole, verdict === 'wrong']).toEqual([tap.style, hole, refused]);
        }
      }
    },
  );
});
