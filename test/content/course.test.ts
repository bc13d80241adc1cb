/** The course as a whole: every lesson has every part, can be read, and the usual errors are met. */
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RULE_GROUPS } from '../../components/rules/rules';
import { NEVER } from '../../components/words/en/rules/groups';
import { lessonsReadability, proseOf, readabilityOf } from '../tools/prose';
import { MISCONCEPTIONS } from './misconceptions';

const lessons = globSync('site/content/lessons/*.mdx')
  .toSorted()
  .map((path) => {
    const slug = /\d+-([a-z0-9-]+)\.mdx$/.exec(path.replaceAll('\\', '/'))?.[1] ?? path;
    return { slug, text: readFileSync(path, 'utf8') };
  });

/** What every lesson is made of, and how it shows in its source. */
const PARTS: Record<string, RegExp> = {
  'the shop question it answers': /^question: \S/m,
  'what you will be able to do': /^outcomes:\n(?: {2}- \S.*\n){2,}/m,
  'a prediction before the control': /<Predict\b|\bguess=\{|question=\{`/,
  'a worked example': /<Worked\b/,
  'a pitfall': /<Pitfall\b/,
  'a question to choose': /<ChooseOne\b/,
  'a question to work out, its tolerance stated': /<WorkOut\b[\s\S]*?tolerance=/,
  'steps to put in order': /<PutInOrder\b/,
  'questions from earlier lessons or for later': /<Recall\b/,
  'its sources': /^sources:/m,
  cautions: /<Cautions\b|<StandingCautions\b/,
  'a way into a calculator or the planner': /<ToCalculator\b|<ToPlanner\b/,
  'notes for the instructor': /<Instructor>/,
};

describe.each(lessons)('$slug', ({ slug, text }) => {
  test.each(Object.entries(PARTS))('has %s', (_, shape) => {
    expect(text).toMatch(shape);
  });

  test('every option has its own answer', () => {
    const options = text.match(/\{\s*text:/g)?.length ?? 0;
    const answers = text.match(/\bwhy:/g)?.length ?? 0;
    expect(options).toBeGreaterThan(5);
    // Slips of a worked number have a `why` too, so there are at least as many.
    expect(answers).toBeGreaterThanOrEqual(options);
  });

  test('speaks in both unit systems', () => {
    // A chain, a table or a planner link first in inches, or lengths that are written in both.
    expect(text).toMatch(/["'{]in["'}]|[iI]nch|unit="in"/);
  });

  test('can be read in the first year of a trade', () => {
    const read = readabilityOf(slug, proseOf(text));
    expect(read.words).toBeGreaterThan(250);
    // Sixth grade is plain English for anybody who may train at a machine.
    expect(read.grade).toBeLessThanOrEqual(6);
    expect(read.index).toBeLessThanOrEqual(6);
    expect(read.wordsInSentence).toBeLessThanOrEqual(14);
  });
});

/** Figures that are a name and measure nothing, and the few that the text may say itself. */
const NAMES: readonly RegExp[] = [
  /\b(?:M|G|Rp ?|Rc ?)\d+(?:\/\d+)?(?:\.\d+)?(?:x\d+(?:\.\d+)?)?(?:-\dH)?/g,
  /\b\d+\/\d+-\d+(?: UNC-\dB| UNF-\dB| NPT)?/g,
  /\b(?:[1-3][AB]|[3-8][GH]|[HD]\d|ISO [1-3]|ISO class \d|grade \d)\b/g,
  // Standards, steels, and feeds that somebody wrote in a program.
  /\b(?:ASME B1\.2|ISO 1502|304|1045|F25)\b/g,
  // What a rule of thumb claims, the angle a thread is made to, and the plate on a machine of the story.
  /\b75 %|\b60°|\b11 kW/g,
];

/** Figures in running text that come from nowhere: neither from the core nor as part of a name. */
function strayFigures(prose: string): string[] {
  const left = NAMES.reduce((text, name) => text.replace(name, '…'), prose);
  return left.match(/\S*\d\S*(?: \S+)?/g) ?? [];
}

describe('a figure in the running text', () => {
  test.each(lessons)('$slug: comes from the core, or is part of a name', ({ text }) => {
    expect(strayFigures(proseOf(text))).toEqual([]);
  });

  test.each(lessons)('$slug: says where its figures come from', ({ text }) => {
    expect(/^sources:\s*\[\s*[a-z][^\]]*\]/m.test(text)).toBe(true);
  });

  test('typed in by hand it is found, a name is not', () => {
    expect(strayFigures('Drill 6.8 mm for M8x1.25-6H, then 22 deep in 304.')).toEqual([
      '6.8 mm',
      '22 deep',
    ]);
    expect(strayFigures('H3 in 3/8-16 UNC-2B, G1/4, 1/4-18 NPT, ISO 2 and ASME B1.2.')).toEqual([]);
  });
});

describe('the measure of reading', () => {
  test('fifteen lessons are measured, and the measure tells plain words from heavy ones', () => {
    expect(lessonsReadability()).toHaveLength(15);
    const plain = readabilityOf('plain', 'The tap cuts. The chip falls out. Look at the hole.');
    const heavy = readabilityOf(
      'heavy',
      'Notwithstanding considerable uncertainty, torsional characteristics predominantly determine operational availability.',
    );
    expect(heavy.grade).toBeGreaterThan(plain.grade + 10);
    expect(heavy.index).toBeGreaterThan(plain.index + 5);
  });

  test('only running text is measured', () => {
    const text = proseOf(
      '---\ntitle: x\n---\n\nimport { a } from "b";\n\n## A *head*\n\nOne {a.b} two.\n\n<Predict\n  name="x"\n/>\n\n<Instructor>\n\nNever.\n\n</Instructor>\n',
    );
    expect(text).toBe('A head.\nOne ten two.');
  });
});

describe('what is often believed', () => {
  const rules = new Set(RULE_GROUPS.flatMap((group) => group.rules.map(({ id }) => id)));

  test('at least thirty are listed, each once', () => {
    expect(MISCONCEPTIONS.length).toBeGreaterThanOrEqual(30);
    expect(new Set(MISCONCEPTIONS.map(({ met }) => met)).size).toBe(MISCONCEPTIONS.length);
  });

  test.each(MISCONCEPTIONS)('“$believed” is met by $met', ({ met }) => {
    const [place, name] = met.split('#');
    if (place === 'rules') {
      expect(rules.has(name!) || NEVER.some(({ id }) => id === name)).toBe(true);
      return;
    }
    const lesson = lessons.find(({ slug }) => slug === place);
    expect(lesson, place).toBeDefined();
    expect(lesson!.text).toContain(`name="${name}"`);
  });
});
