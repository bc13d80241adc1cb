import { OWN_PROBLEM_CODES } from '../../core/material/own';
import { describe, expect, test } from 'vitest';
import {
  CALLOUT_NOTE_CODES,
  CALLOUT_PROBLEM_CODES,
  QUESTION_CODES,
} from '../../core/drawing/types';
import { MATERIAL_IDS } from '../../core/material/material';
import {
  ASSUMPTION_CODES,
  REASON_CODES,
  REMEDY_CODES,
  REQUEST_PROBLEM_CODES,
  WARNING_CODES,
} from '../../core/plan/codes';
import { THREAD_NOTE_CODES, THREAD_PROBLEM_CODES } from '../../core/thread/codes';
import { LIMITS_NOTE_CODES, LIMITS_PROBLEM_CODES } from '../../core/limits/codes';
import { SOURCES, type SourceId } from '../../core/sources';
import * as words from '../../components/words';
import { ASSUMPTIONS } from '../../components/words/en/assumptions';
import { QUESTIONS } from '../../components/words/en/drawing';
import { NOTES } from '../../components/words/en/notes';
import { PROBLEMS } from '../../components/words/en/problems';
import { REASONS } from '../../components/words/en/reasons';
import { REMEDIES } from '../../components/words/en/remedies';
import { WARNINGS } from '../../components/words/en/warnings';
import { KIND_NAMES } from '../../components/words/kinds';
import { fill, required, slots } from '../../components/words/template';

const sorted = (codes: Iterable<string>) => [...new Set(codes)].sort();

describe('every code of the core has words, and no words are left over', () => {
  test.each([
    ['reasons', REASONS, REASON_CODES],
    ['warnings', WARNINGS, WARNING_CODES],
    ['remedies', REMEDIES, REMEDY_CODES],
    ['assumptions', ASSUMPTIONS, ASSUMPTION_CODES],
    [
      'problems',
      PROBLEMS,
      [
        ...THREAD_PROBLEM_CODES,
        ...LIMITS_PROBLEM_CODES,
        ...REQUEST_PROBLEM_CODES,
        ...OWN_PROBLEM_CODES,
        ...CALLOUT_PROBLEM_CODES,
      ],
    ],
    ['notes', NOTES, [...THREAD_NOTE_CODES, ...LIMITS_NOTE_CODES, ...CALLOUT_NOTE_CODES]],
    ['questions', QUESTIONS, QUESTION_CODES],
  ])('%s', (_, table, codes) => {
    expect(sorted(Object.keys(table))).toEqual(sorted(codes));
  });

  test('materials are all named, all in one group, all with a fluid', () => {
    const grouped = words.materialGroups.flatMap(({ ids }) => [...ids]);
    expect(sorted(grouped)).toEqual(sorted(MATERIAL_IDS));
    expect(grouped).toHaveLength(MATERIAL_IDS.length);
    for (const id of MATERIAL_IDS) {
      expect(words.materialName(id)).toMatch(/^[A-Z]/);
      expect(words.fluidText(id)).toMatch(/^[A-Z]/);
    }
  });

  test('every source has a mark that can stand beside a number', () => {
    for (const id of Object.keys(SOURCES) as SourceId[]) {
      expect(words.sourceMark(id)).toMatch(/^\S.{2,40}$/);
    }
  });
});

const everyTemplate: [string, string][] = [
  ...[REASONS, ASSUMPTIONS, PROBLEMS, NOTES].flatMap((table) => Object.entries(table)),
  ...Object.entries(QUESTIONS).flatMap(([code, { short, text }]): [string, string][] => [
    [code, short],
    [code, text],
  ]),
  ...[WARNINGS, REMEDIES].flatMap((table) =>
    Object.entries(table).map(([code, { text }]): [string, string] => [code, text]),
  ),
];

describe('templates', () => {
  test.each(everyTemplate)(
    '%s asks only for kinds that exist, and closes its brackets',
    (_, text) => {
      const kinds = [...text.matchAll(/\{\w+:(\w+)\}/g)].map((match) => match[1]);
      for (const kind of kinds) expect(KIND_NAMES).toContain(kind);
      const bare = text.replace(/\{\w+(:\w+)?\}/g, '').replace(/\[[^[\]]*\]/g, '');
      expect(bare).not.toMatch(/[[\]{}]/);
    },
  );

  test('a part in brackets goes when its number is not known', () => {
    const text = 'Needs {needed:length}[; there is {have:length}].';
    expect(fill(text, { needed: 12.5, have: 4 }, 'mm')).toBe('Needs 12.5 mm; there is 4.0 mm.');
    expect(fill(text, { needed: 12.5 }, 'mm')).toBe('Needs 12.5 mm.');
    expect(required(text)).toEqual(['needed']);
    expect(slots(text)).toEqual(['needed', 'have']);
  });

  test('a missing number is said to be missing, never printed as undefined or NaN', () => {
    expect(fill('Needs {needed:length}.', {}, 'mm')).toBe('Needs (not known).');
  });

  test('a code without words is shown readable', () => {
    const unknown = { code: 'never-heard-of', numbers: {}, source: 'derived' } as never;
    expect(words.reasonText(unknown, 'mm')).toBe('Never heard of.');
    expect(words.warningText(unknown, 'mm')).toMatchObject({
      title: 'Never heard of.',
      level: 'amber',
    });
  });
});

describe('no message scolds, apologises or says only that something is invalid', () => {
  test.each(Object.entries(PROBLEMS))('%s', (_, text) => {
    expect(text).not.toMatch(/\b(please|sorry|invalid|oops|error)\b/i);
    expect(text).toMatch(/^[^a-z].*[.?]\]?$/);
  });
});

describe('numbers as the shop writes them', () => {
  test.each([
    [21, '21.0 mm', '0.827 in'],
    [19.75, '19.75 mm', '0.778 in'],
    [19.999, '20.0 mm', '0.787 in'],
    [0, '0.0 mm', '0.000 in'],
    [-0.001, '0.0 mm', '0.000 in'],
    [-1.5, '−1.5 mm', '−0.059 in'],
  ])('length %d', (mm, metric, inch) => {
    expect(words.length(mm, 'mm')).toBe(metric);
    expect(words.length(mm, 'in')).toBe(inch);
  });

  test('limits keep the digits of their standard', () => {
    expect(words.limitLength(6.912, 'mm')).toBe('6.912 mm');
    expect(words.limitLength(0.4284 * 25.4, 'in')).toBe('0.4284 in');
    expect(words.limitRange(6.647, 6.912, 'mm')).toBe('6.647–6.912 mm');
  });

  test.each([
    [0.11, '0.11 N·m'],
    [0.996, '1.0 N·m'],
    [3.96, '4.0 N·m'],
    [7.69, '7.7 N·m'],
    [99.6, '100 N·m'],
    [144.2, '140 N·m'],
    [0, '0 N·m'],
  ])('torque %d to two figures', (value, text) => {
    expect(words.torque(value)).toBe(text);
  });

  test('torque and force carry both systems where lengths are inches', () => {
    expect(words.torque(16, 'in')).toBe('16 N·m (12 lbf·ft)');
    expect(words.torqueBand(11.4, 22.4, 'in')).toBe('11–22 N·m (8.4–17 lbf·ft)');
    expect(words.force(144, 'in')).toBe('140 N (32 lbf)');
  });

  test('feeds keep the digits a control needs', () => {
    expect(words.feed(250, 'mm')).toBe('250.0 mm/min');
    expect(words.feed(508 * 1.25, 'in')).toBe('25.000 in/min');
    expect(words.feedPerRev(1.25, 'mm')).toBe('1.25 mm/rev');
    expect(words.feedPerRev(25.4 / 13, 'in')).toBe('0.07692 in/rev');
    expect(words.feedPerRev(25.4 / 20, 'in')).toBe('0.0500 in/rev');
  });

  test('shares, speeds, times, drills', () => {
    expect(words.percent(0.254)).toBe('25 %');
    expect(words.threadPercent(76.98)).toBe('77 %');
    expect(words.rpm(508)).toBe('508 rev/min');
    expect(words.seconds(5.82)).toBe('5.8 s');
    expect(words.drillName({ name: '6.8', series: 'metric' })).toBe('6.8 mm');
    expect(words.drillName({ name: '27/64', series: 'fraction' })).toBe('27/64 in');
    expect(words.drillName({ name: '#7', series: 'number' })).toBe('#7');
    expect(words.drillName({ name: 'F', series: 'letter' })).toBe('letter F');
  });
});
