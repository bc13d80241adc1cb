/**
 * A material as drawings write it. The rows asked for here are what a setter expects of each name; the pairs of
 * number and name are those of EN 10027-2, EN 10088-1, EN 10083, EN 573-3, SAE J403/J404, the UNS and ISO 4957,
 * from memory.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  findMaterial,
  MATERIAL_NOTE_CODES,
  MATERIAL_PROBLEM_CODES,
  readMaterial,
} from '../../../core';
import { GRADES } from '../../../core/material/designations';
import { COLLISIONS, OPEN_NAMES, PLAIN_NAMES } from '../../../core/material/designations-words';
import { knownNames, lookUp } from '../../../core/material/read-lookup';
import { keyOf } from '../../../core/material/read-tokens';

/** `row`, `row ?condition` or the code of the refusal. */
function said(text: string): string {
  const outcome = readMaterial(text);
  if (!outcome.ok) return outcome.problems[0]!.code;
  return [outcome.value.id, ...outcome.value.asks.map((ask) => `?${ask}`)].join(' ');
}

const noteCodes = (text: string) => {
  const outcome = readMaterial(text);
  return outcome.ok ? outcome.notes.map(({ code }) => code) : [];
};

describe('the names of the standards', () => {
  test.each([
    ['1.4301', 'stainless-austenitic'],
    ['X5CrNi18-10', 'stainless-austenitic'],
    ['X5CrNi 18 10', 'stainless-austenitic'],
    ['X5CrNi1810', 'stainless-austenitic'],
    ['304L', 'stainless-austenitic'],
    ['SUS304', 'stainless-austenitic'],
    ['S355J2', 'steel-low'],
    ['S355J2+N', 'steel-low'],
    ['St37', 'steel-low'],
    ['St 52-3', 'steel-low'],
    ['C45', 'steel-medium'],
    ['Ck45', 'steel-medium'],
    ['EN8', 'steel-medium'],
    ['42CrMo4', 'steel-alloy ?condition'],
    ['SCM440', 'steel-alloy ?condition'],
    ['12L14', 'steel-free'],
    ['11SMn30', 'steel-free'],
    ['303', 'stainless-free'],
    ['1.4305', 'stainless-free'],
    ['1.4462', 'stainless-duplex'],
    ['430', 'stainless-ferritic'],
    ['416', 'stainless-ferritic ?condition'],
    ['17-4PH', 'stainless-ph ?condition'],
    ['1.4542', 'stainless-ph ?condition'],
    ['EN-GJL-250', 'iron-grey'],
    ['GG25', 'iron-grey'],
    ['GGG40', 'iron-ductile'],
    ['65-45-12', 'iron-ductile'],
    ['EN AW-6082 T6', 'al-wrought'],
    ['3.2315', 'al-wrought ?condition'],
    ['6061-T6', 'al-wrought'],
    ['7075-T651', 'al-high-strength'],
    ['2024', 'al-high-strength ?condition'],
    ['A356-T6', 'al-cast'],
    ['ADC12', 'al-cast-high-si'],
    ['AZ91D', 'magnesium'],
    ['ZP5', 'zinc'],
    ['CuZn39Pb3', 'brass-free'],
    ['C36000', 'brass-free'],
    ['Ms58', 'brass-free'],
    ['CuZn37', 'copper'],
    ['CuSn8', 'bronze'],
    ['C93200', 'bronze'],
    ['R56400', 'titanium'],
    ['Ti-6Al-4V', 'titanium'],
    ['N06625', 'nickel'],
    ['POM', 'plastic'],
    ['PA66-GF30', 'plastic-filled'],
    ['1.2379', 'steel-alloy ?condition'],
    ['P20', 'steel-alloy-30hrc ?hardness'],
  ])('%s is %s', (text, expected) => expect(said(text)).toBe(expected));

  test('more than four hundred of them, each in one row only', () => {
    const rows = new Map<string, Set<string>>();
    for (const { names, row } of GRADES) {
      for (const name of names)
        rows.set(keyOf(name), (rows.get(keyOf(name)) ?? new Set()).add(row));
    }
    expect(rows.size).toBeGreaterThan(1500);
    expect([...rows].filter(([, all]) => all.size > 1).map(([key]) => key)).toEqual([]);
  });

  test('no name of a grade is typed into two of them', () => {
    const all = GRADES.flatMap(({ names }) => names);
    const twice = all.filter((name, index) => all.indexOf(name) !== index);
    expect(twice).toEqual([]);
  });

  test('a grade and a plain word or a shared name never take each other’s place', () => {
    const grades = new Set(GRADES.flatMap(({ names }) => names.map(keyOf)));
    const others = [
      ...PLAIN_NAMES.flatMap(({ words }) => words.split('|')),
      ...OPEN_NAMES.flatMap(({ words }) => words.split('|')),
      ...COLLISIONS.flatMap(({ names }) => names.split('|')),
    ].map(keyOf);
    expect(others.filter((key) => grades.has(key))).toEqual([]);
    expect(others.filter((key, index) => others.indexOf(key) !== index)).toEqual([]);
  });

  test('every one of them reads as its own row, in any case and with what stands in front of it', () => {
    const wrong = GRADES.flatMap(({ names, row }) =>
      names
        .flatMap((name) => [
          name,
          name.toLowerCase(),
          `MATL: ${name}`,
          `Werkstoff ${name}`,
          ` ${name} bar `,
        ])
        .filter((text) => {
          const outcome = readMaterial(text);
          return !(outcome.ok && outcome.value.id === row && outcome.value.written === text.trim());
        }),
    );
    expect(wrong).toEqual([]);
  });
});

describe('what people type', () => {
  test.each([
    ['MATL: AISI 304 stainless', 'stainless-austenitic'],
    ['Werkstoff 1.4301', 'stainless-austenitic'],
    ['W.-Nr. 1.4404', 'stainless-austenitic'],
    ['1,4301', 'stainless-austenitic'],
    ['14301', 'stainless-austenitic'],
    ['1.4301 / X5CrNi18-10 / AISI 304', 'stainless-austenitic'],
    ['304/304L', 'stainless-austenitic'],
    ['SS304', 'stainless-austenitic'],
    ['al 6061', 'al-wrought ?condition'],
    ['ALU 3.2315', 'al-wrought ?condition'],
    ['AlMg4,5Mn', 'al-wrought'],
    ['mild steel', 'steel-low'],
    ['cast iron', 'iron-grey'],
    ['brass', 'brass-free'],
    ['latón', 'brass-free'],
    ['acetal/POM', 'plastic'],
    ['Titanium Grade 5', 'titanium'],
    ['Ti Gr. 2', 'titanium'],
    ['acero inoxidable 303', 'stainless-free'],
    ['ASTM A276 Type 316L', 'stainless-austenitic'],
    ['EN 10025-2 S355J2', 'steel-low'],
    ['ASTM B209 6061-T651', 'al-wrought'],
    ['BS 970 080M40', 'steel-medium'],
    ['ASTM A48 Class 30', 'iron-grey'],
    ['AMS 5643 17-4PH H1025', 'stainless-ph'],
    ['EN 19 T', 'steel-alloy-30hrc'],
    ['A572 Gr 50', 'steel-low'],
  ])('%s is %s', (text, expected) => expect(said(text)).toBe(expected));

  test('a plain word in its usual meaning says so', () => {
    expect(noteCodes('cast iron')).toContain('material-usual');
    expect(noteCodes('GG25')).not.toContain('material-usual');
  });
});

describe('condition and hardness move the row', () => {
  test.each([
    ['4140', 'steel-alloy ?condition'],
    ['4140 annealed', 'steel-alloy'],
    ['4140 HT', 'steel-alloy-30hrc'],
    ['4140 28-32 HRC', 'steel-alloy-30hrc'],
    ['4140 HT 28/32 HRC', 'steel-alloy-30hrc'],
    ['4140 HRC 38-42', 'steel-40hrc'],
    ['4140 300 HB', 'steel-alloy-30hrc'],
    ['4140 197 HB', 'steel-alloy'],
    ['4140 hardened', 'steel-hard ?hardness'],
    ['42CrMo4+QT', 'steel-alloy-30hrc'],
    ['42CrMo4+A', 'steel-alloy'],
    ['42CrMo4 vergütet', 'steel-alloy-30hrc'],
    ['42CrMo4 1000 N/mm²', 'steel-alloy-30hrc'],
    ['D2', 'steel-alloy ?condition'],
    ['D2 58-60 HRC', 'steel-hard'],
    ['D2 58 to 60 HRC', 'steel-hard'],
    ['H13 annealed', 'steel-alloy'],
    ['H13 44 HRC', 'steel-40hrc'],
    ['H13 45 HRC', 'steel-hard'],
    ['1.4057+QT800', 'steel-alloy-30hrc'],
    ['440C 58 HRC', 'steel-hard'],
    ['17-4 H900', 'stainless-ph'],
    ['17-4PH H1150', 'stainless-ph'],
    ['17-4PH Cond A', 'stainless-ph'],
    ['17-4PH 46 HRC', 'steel-hard'],
    ['6061-O', 'al-wrought'],
    ['7075-O', 'al-wrought'],
    ['7075', 'al-high-strength ?condition'],
    ['8620', 'steel-alloy'],
    ['8620 case hardened', 'steel-hard ?hardness'],
    ['303 HB 180', 'stainless-free'],
    ['4140 230 HBW 2.5/187.5', 'steel-alloy'],
    ['4140 310 HV10', 'steel-alloy-30hrc'],
    ['304 half hard', 'stainless-austenitic'],
    ['steel 45 HRC', 'steel-hard'],
    ['steel 30 HRC', 'steel-alloy-30hrc'],
    ['hardened steel', 'steel-hard ?hardness'],
    ['718', 'nickel ?condition'],
    ['718 solution treated', 'nickel'],
  ])('%s is %s', (text, expected) => expect(said(text)).toBe(expected));

  test('aged to its hard end, 17-4 says so', () => {
    expect(noteCodes('17-4PH H900')).toContain('material-hard-side');
    expect(noteCodes('17-4PH H1150')).not.toContain('material-hard-side');
  });

  test('harder is never softer in the plan: the row climbs with the Rockwell figure', () => {
    const kc = (text: string) => {
      const outcome = readMaterial(text);
      return outcome.ok ? findMaterial(outcome.value.id)!.kc11 : Number.NaN;
    };
    for (const name of ['4140', 'D2', '431', '1.2311', 'C45', 'S355J2']) {
      const forces = Array.from({ length: 41 }, (_, index) => kc(`${name} ${20 + index} HRC`));
      expect(forces, name).toEqual(forces.toSorted((a, b) => a - b));
    }
  });
});

describe('one name, two metals', () => {
  test.each(COLLISIONS.map(({ names, offers }) => [names.split('|')[0]!, offers] as const))(
    '%s asks, and each offer reads by itself',
    (name, offers) => {
      const outcome = readMaterial(name);
      const offered = outcome.ok ? undefined : outcome.problems[0]!.data?.['offers'];
      if (name !== 'ASTMA356') expect(offered).toBe(offers.join('|'));
      const rows = offers.map(said);
      expect(rows.filter((row) => row.startsWith('material-'))).toEqual([]);
    },
  );

  test.each([
    ['A2 tool steel', 'steel-alloy ?condition'],
    ['A2 stainless', 'stainless-austenitic'],
    ['C22 steel', 'steel-low'],
    ['copper C22', 'copper'],
    ['SAE 1050', 'steel-medium'],
    ['1050-H14', 'al-wrought'],
    ['EN AW-1050', 'al-wrought'],
    ['AISI 630', 'stainless-ph ?condition'],
    ['SAE 660', 'bronze'],
    ['M2 tool steel', 'steel-alloy ?condition'],
    ['grade 5 titanium', 'titanium'],
    ['360 brass', 'brass-free'],
  ])('a word beside it decides: %s is %s', (text, expected) => expect(said(text)).toBe(expected));

  test.each(OPEN_NAMES.map(({ words, offers }) => [words.split('|')[0]!, offers] as const))(
    '“%s” alone is no material',
    (word, offers) => {
      expect(said(word)).toBe('material-ambiguous');
      expect(offers.map(said).filter((row) => row.startsWith('material-'))).toEqual([]);
    },
  );
});

/** Texts that tempt a reader to guess. */
test.each([
  ['', 'material-empty'],
  ['   ', 'material-empty'],
  ['1.4', 'material-unreadable'],
  ['1.43', 'material-unreadable'],
  ['1.430', 'material-unreadable'],
  ['1.43011', 'material-unreadable'],
  ['11.4301', 'material-unreadable'],
  ['10.45', 'material-unreadable'],
  ['10 45', 'material-unreadable'],
  ['X5', 'material-unreadable'],
  ['K100', 'material-unreadable'],
  ['8.8', 'material-unreadable'],
  ['12.9', 'material-unreadable'],
  ['M6', 'material-unreadable'],
  ['M10x1.5-6H', 'material-unreadable'],
  ['6H', 'material-unreadable'],
  ['T6', 'material-unreadable'],
  ['H900', 'material-unreadable'],
  ['+QT', 'material-unreadable'],
  ['45 HRC', 'material-unreadable'],
  ['304 45', 'material-unreadable'],
  ['3040', 'material-unreadable'],
  ['304X', 'material-unreadable'],
  ['304 T6', 'material-unreadable'],
  ['304 H900', 'material-contradictory'],
  ['brass HT', 'material-contradictory'],
  ['304 hardened', 'material-contradictory'],
  ['NOT 303', 'material-unreadable'],
  ['no 303 allowed', 'material-unreadable'],
  ['303 or 304', 'material-ambiguous'],
  ['6061 or 7075', 'material-ambiguous'],
  ['BODY 6061-T6, INSERT 303', 'material-ambiguous'],
  ['6061-T6 / 303', 'material-ambiguous'],
  ['6061 brass', 'material-contradictory'],
  ['stainless 4140', 'material-contradictory'],
  ['cast iron C45', 'material-contradictory'],
  ['steel GG25', 'material-contradictory'],
  ['brass 45 HRC', 'material-contradictory'],
  ['6061 45 HRC', 'material-contradictory'],
  ['nylon 60 HRC', 'material-contradictory'],
  ['4140 999 HRC', 'material-unreadable'],
  ['4140 HRC', 'material-unreadable'],
  ['A2', 'material-ambiguous'],
  ['A4', 'material-ambiguous'],
  ['C22', 'material-ambiguous'],
  ['1050', 'material-ambiguous'],
  ['360', 'material-ambiguous'],
  ['630', 'material-ambiguous'],
  ['M2', 'material-ambiguous'],
  ['HSS', 'material-ambiguous'],
  ['MS', 'material-ambiguous'],
  ['EN1', 'material-ambiguous'],
  ['EN 1A', 'steel-free'],
  ['Grade 5', 'material-ambiguous'],
  ['Class 30', 'material-ambiguous'],
  ['steel', 'material-ambiguous'],
  ['stainless', 'material-ambiguous'],
  ['aluminium', 'material-ambiguous'],
  ['see drawing', 'material-unreadable'],
  ['as per spec', 'material-unreadable'],
  ['unobtainium', 'material-unreadable'],
  ['EN', 'material-unreadable'],
  ['AISI', 'material-unreadable'],
  ['EN AW', 'material-unreadable'],
  ['ASTM A276', 'material-unreadable'],
  ['constructor', 'material-unreadable'],
  ['__proto__', 'material-unreadable'],
  ['💥', 'material-unreadable'],
  ['303'.repeat(80), 'material-unreadable'],
])('“%s”: %s', (text, expected) => expect(said(text)).toBe(expected));

describe('never throws and never guesses', () => {
  const pieces = fc.constantFrom(
    ...knownNames().slice(0, 400),
    'HT',
    '+QT',
    'T6',
    '-',
    '/',
    'HRC',
    '30',
    '58-60',
    'stainless',
    'steel',
    '(',
    'or',
    '±',
    'Ø',
    '²',
  );

  test('any text at all', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string({ unit: 'grapheme' }),
          fc.array(pieces).map((all) => all.join(' ')),
        ),
        (text) => {
          const outcome = readMaterial(text);
          if (!outcome.ok) {
            expect(MATERIAL_PROBLEM_CODES).toContain(outcome.problems[0]!.code);
            return;
          }
          expect(findMaterial(outcome.value.id)).toBeDefined();
          expect(['condition', 'hardness']).toEqual(expect.arrayContaining(outcome.value.asks));
          for (const { code } of outcome.notes) expect(MATERIAL_NOTE_CODES).toContain(code);
          // Said once more, as it was written, it is the same.
          expect(readMaterial(outcome.value.written)).toEqual(outcome);
        },
      ),
    );
  });

  test('a word nobody knows beside a good name is not passed over', () => {
    const names = fc.constantFrom(...GRADES.flatMap((grade) => grade.names));
    const words = fc.stringMatching(/^[qxzj]{3,8}$/);
    fc.assert(
      fc.property(names, words, (name, word) => {
        fc.pre(lookUp(word.toUpperCase()) === undefined);
        expect(said(`${name} ${word}`)).toBe('material-unreadable');
      }),
    );
  });

  test.each([undefined, null, 5, {}, []])('%s is refused', (odd) => {
    expect(readMaterial(odd as unknown as string).ok).toBe(false);
  });
});
