/**
 * One question, one answer, in what is said and handed on: factors of torque, the order of gauging, threads of a
 * chamfer, lengths in links, and the ground of a tap drill. Held to the core and to each other, not to a source.
 */
import { globSync, readFileSync } from 'node:fs';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { threadReference } from '../../core';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { drillSource } from '../../core/drill/usual-source';
import { gaugeSet } from '../../core/gauge/members';
import { threadLimits } from '../../core/limits/thread-limits';
import { planHole } from '../../core/plan/plan';
import { clutchSetting } from '../../core/tap/clutch';
import { STYLES, WEAR } from '../../core/tap/styles';
import { readThread } from '../../core/thread/read';
import { exactLength, sentLength } from '../../components/address/exact';
import type { Engine, ValuesOf } from '../../components/calculators/calculator';
import { facts as gauging } from '../../components/lesson/gauging/facts';
import { formFacts } from '../../components/lesson/form-taps/facts';
import { readLength } from '../../components/fields/readLength';
import { readTorque } from '../../components/fields/readTorque';
import { allSeries } from '../../components/reference/series';
import { sourcesOf } from '../../components/reference/sources';
import { sourceMark } from '../../components/words';
import { RECORD } from '../../components/words/en/card';
import { STROKE_CHART } from '../../components/words/en/charts/stroke';
import { assumed as formAssumed } from '../../components/words/en/calculators/form-tap-hole/sentences';
import { TEXT as STRENGTH } from '../../components/words/en/calculators/tap-strength/sentences';
import { READING } from '../../components/words/en/drawerLines';
import { ORDERS } from '../../components/words/en/exercises';
import * as blind from './calculators/blind-hole-depth';
import * as chamfer from './calculators/chamfer';
import * as engagement from './calculators/engagement';
import { INPUTS as GAUGING } from './calculators/gauging';
import * as spindle from './calculators/spindle';
import * as strength from './calculators/tap-strength';
import * as torque from './calculators/torque';

function read(designation: string) {
  const thread = readThread(designation);
  if (!thread.ok) throw new Error(designation);
  return thread.value;
}

const WORDS: Record<string, number> = { one: 1, two: 2, three: 3, four: 4, five: 5 };
const NUMBER = `(?:[\\d.]+|(?:${Object.keys(WORDS).join('|')})(?: and a half)?)`;

/** `one and a half` → 1.5. */
function valueOf(text: string): number {
  const [whole = '', half] = text.toLowerCase().split(' and ');
  return (WORDS[whole] ?? Number(whole)) + (half === undefined ? 0 : 0.5);
}

/** Every “X to Y times” of what is said, a lesson's broken lines joined. */
function rangesIn(text: string): string[] {
  const pattern = new RegExp(`\\b(${NUMBER}) to (${NUMBER}) times(?: the| that| as|’)?`, 'gi');
  return [...text.replace(/\s+/g, ' ').matchAll(pattern)].map(
    ([, from = '', to = '']) => `${valueOf(from)} to ${valueOf(to)}`,
  );
}

const FILES = globSync(['components/words/en/**/*.ts', 'site/content/**/*.{md,mdx,yaml}']).map(
  (path) => ({ path: path.replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }),
);

describe('factors of torque', () => {
  const clutch = clutchSetting(1, 100)!;
  const form = `${STYLES.form.torque.low} to ${STYLES.form.torque.high}`;
  const KNOWN = [form, `${WEAR.low} to ${WEAR.high}`, `${clutch.low} to ${clutch.high}`];

  test('a range of times in any sentence is one of the core’s: form tap, wear or clutch', () => {
    const found = FILES.flatMap(({ path, text }) =>
      rangesIn(text).map((range) => ({ path, range })),
    );
    expect(found.length).toBeGreaterThan(6);
    expect(found.filter(({ range }) => !KNOWN.includes(range))).toEqual([]);
  });

  test.each([
    'site/content/lessons/01-naming-a-tap.mdx',
    'site/content/lessons/08-torque.mdx',
    'site/content/lessons/13-form-taps.mdx',
    'site/content/glossary/form-tap.md',
  ])('%s says what a form tap takes', (path) => {
    expect(rangesIn(readFileSync(path, 'utf8'))).toContain(form);
  });

  test('charts and calculators say the same', () => {
    expect(rangesIn(STROKE_CHART.bands.form)).toEqual([form]);
    expect(rangesIn(STRENGTH.bandsAre)).toEqual([`${WEAR.low} to ${WEAR.high}`]);
    const said = formAssumed({} as Parameters<typeof formAssumed>[0]).join(' ');
    expect(rangesIn(said)).toEqual([form]);
  });

  test('nothing says twice, or half as much again, of a form tap’s torque', () => {
    const loose = FILES.filter(({ text }) =>
      /(?<! to )\b(?:twice|double|half as much again|three times) the (?:cutting )?torque(?! from)/i.test(
        text.replace(/\s+/g, ' '),
      ),
    );
    expect(loose.map(({ path }) => path)).toEqual([]);
  });

  test('the lesson’s worked form tap lies in the range for its rival, a spiral flute', () => {
    const { low, high } = STYLES.form.torque;
    const flute = STYLES['spiral-flute'].torque;
    const times = Number(formFacts.cover.times);
    expect(times).toBeGreaterThanOrEqual(low / flute.high);
    expect(times).toBeLessThanOrEqual(high / flute.low);
  });
});

describe('the order of gauging', () => {
  const place = (steps: readonly string[], pattern: RegExp) =>
    steps.findIndex((step) => pattern.test(step));
  const ORDER = [/^GO\b|^go$/, /^NOT GO\b|^not-go$/, /plain|^minor-go$/i];

  test('is the lesson’s and the exercise’s by one list: clean, mark, GO, NOT GO, plain, depth', () => {
    const steps = ORDERS['gauge-it'].steps.map(([text]) => text);
    const places = [/clean|flush/, /class and date/, ...ORDER, /depth/].map((each) =>
      place(steps, each),
    );
    expect(places).toEqual([0, 1, 2, 3, 4, 5]);
    expect(gauging.order.map(({ text }) => text)).toEqual(steps);
    const lesson = readFileSync('site/content/lessons/10-gauging.mdx', 'utf8');
    expect(lesson.match(/<PutInOrder[\s\S]*?\/>/)?.[0]).toContain('steps={facts.order}');
  });

  test('is that of the gauge set, the card and the calculator', () => {
    const thread = read('M8');
    const limits = threadLimits(thread);
    if (!limits.ok) throw new Error('no limits');
    const { gauges } = gaugeSet(thread, limits.value);
    expect(gauges.map(({ member }) => member)).toEqual([
      'go',
      'not-go',
      'minor-go',
      'minor-not-go',
    ]);
    const boxes = [...ORDER, /^Depth$/].map((each) => place(RECORD, each));
    expect(boxes).toEqual([...boxes].sort((a, b) => a - b));
    expect(boxes).not.toContain(-1);
    const fields = GAUGING.fields.map(({ name }) => name);
    expect(fields.slice(1, 5)).toEqual(['go', 'turns', 'plain', 'made']);
  });

  test('is kept wherever a sentence names all of them', () => {
    const named = FILES.flatMap(({ text }) =>
      [...text.matchAll(/(?<!NOT )\bGO, [^.'"`]*\bdepth\b/g)].map(([found]) => found),
    );
    expect(named.length).toBeGreaterThan(1);
    for (const each of named)
      expect(each).toMatch(/GO, NOT GO, (?:plain plugs?|minor)(?:,| and) depth/);
  });
});

describe('threads of a chamfer', () => {
  const THREADS = ['M8', 'M10x1.5-6H', '1/4-20', '3/8-16 UNC-2B', 'G1/4', 'Rp1/2'];

  test.each(THREADS)('%s: thread page, planner and calculators give one range a class', (text) => {
    const page = threadReference(text);
    const plan = planHole({
      thread: text,
      material: 'steel-low',
      hole: { kind: 'through', thickness: 20 },
    });
    if (!page.ok || !plan.ok) throw new Error(text);
    const asked = {
      ...chamfer.EXAMPLE,
      thread: text,
      tap: 'straight-flute',
      material: '',
      thickness: '',
    };
    const { answer } = chamfer.engine.attempt(asked, 'mm');
    for (const name of CHAMFER_CLASSES) {
      const { threads } = page.value.room.rows.find((row) => row.chamfer.class === name)!.chamfer;
      const shown = answer!.classes.find((each) => each.chamfer.class === name)!.chamfer.threads;
      expect(shown, `${name}, chamfer calculator`).toEqual(threads);
      const deep = blind.engine.attempt(
        { ...blind.EXAMPLE, thread: text, full: '12', chamfer: name },
        'mm',
      );
      expect(deep.answer!.chamfer!.threads, `${name}, depth calculator`).toEqual(threads);
      expect(
        deep.answer!.study.classes.find((each) => each.chamfer.class === name)!.chamfer.threads,
      ).toEqual(threads);
      const tap = plan.value.taps.find(
        (each) => each.process === 'cut' && each.chamfer.class === name,
      );
      if (tap) expect(tap.chamfer.threads, `${name}, planner`).toEqual(threads);
    }
  });

  const CLASS_OF = {
    'taper-chamfer': 'taper',
    plug: 'plug',
    'semi-bottoming-chamfer': 'semi-bottoming',
    'bottoming-chamfer': 'bottoming',
  } as const;

  test.each(Object.entries(CLASS_OF))(
    'glossary, %s: inch and metric as the core has them',
    (file, name) => {
      const text = readFileSync(`site/content/glossary/${file}.md`, 'utf8');
      const ranges = [...text.matchAll(/([\d.]+)–([\d.]+)/g)].map(([, min, max]) => ({
        min: Number(min),
        max: Number(max),
      }));
      const [inch, metric] = (['inch', 'metric'] as const).map(
        (each) => chamferOf(name, each).threads,
      );
      expect(ranges).toEqual(name === 'semi-bottoming' ? [inch] : [inch, metric]);
      expect(name !== 'semi-bottoming' || JSON.stringify(inch) === JSON.stringify(metric)).toBe(
        true,
      );
    },
  );

  test('a drawer of both systems spans both', () => {
    expect(READING.chamfers).toEqual({
      taper: 'taper, 6–10 threads',
      plug: '3–5.5 threads',
      'semi-bottoming': '2–3 threads',
      bottoming: '1–2 threads',
    });
  });
});

describe('what a calculator hands on', () => {
  /** Inputs of the links of an answer, by name. */
  function handed<Name extends string, Answer>(
    { engine, EXAMPLE }: { engine: Engine<Name, Answer>; EXAMPLE: ValuesOf<Name> },
    values: Partial<ValuesOf<Name>>,
    unit: 'mm' | 'in',
  ) {
    const { answer, problems } = engine.attempt({ ...EXAMPLE, ...values } as ValuesOf<Name>, unit);
    if (answer === null) throw new Error(JSON.stringify(problems));
    const html = render(<engine.Result answer={answer} unit={unit} lessons={[]} />);
    const links = [...html.matchAll(/href="(\/(?:plan|calculators)\/[^"]*)"/g)].map(
      ([, href = '']) => new URL(href.replaceAll('&amp;', '&'), 'http://site').searchParams,
    );
    const all = (name: string) => [...new Set(links.flatMap((each) => each.getAll(name)))];
    return { answer, all };
  }
  const lengths = (texts: string[]) =>
    // Read in either unit: a length on its way names its own.
    texts.flatMap((text) => [readLength(text, 'mm')!.mm, readLength(text, 'in')!.mm]);
  const only = (texts: string[], mm: number) => {
    expect(texts.length).toBeGreaterThan(0);
    expect(new Set(lengths(texts))).toEqual(new Set([mm]));
  };

  test.each(['mm', 'in'] as const)('is exact and names its unit, %s', (unit) => {
    const depth = { thread: '1/4-20 UNC-2B', full: '0.3137 in', chamfer: 'semi-bottoming' };
    const { answer, all } = handed(blind, depth, unit);
    only(all('depth'), answer.study.promised.fullThread);
    only(all('limit'), answer.study.promised.shoulder);
    only(
      all('hole').filter((each) => each !== 'blind'),
      answer.study.promised.shoulder,
    );

    const needed = handed(engagement, {}, unit);
    only(needed.all('depth'), needed.answer.study.needed.specify.min);

    const load = handed(torque, {}, unit);
    expect(load.all('torque').map(readTorque)).toEqual([load.answer.load.torque.expected]);
    only(load.all('depth'), load.answer.depth);

    const turned = handed(spindle, {}, unit);
    const { needed: needs, worn } = turned.answer.study;
    expect(turned.all('torque').map(readTorque)).toEqual(
      [needs.sharp, worn.given].filter((each) => each !== null),
    );

    const twisted = handed(strength, {}, unit);
    const sharp = twisted.answer.study.torque?.sharp;
    expect(twisted.all('torque').map(readTorque)).toEqual(sharp === undefined ? [] : [sharp]);
  });

  test('a sent length is the same in whatever unit the next page reads', () => {
    for (const mm of [12, 6.35, 25.4 / 3, 0.1, 1e-7, 100 / 7]) {
      for (const unit of ['mm', 'in'] as const) {
        const text = sentLength(mm, unit);
        expect(lengths([text]), text).toEqual([mm, mm]);
        expect(text.startsWith(exactLength(mm, unit).replace(/ mm$/, ''))).toBe(true);
      }
    }
  });
});

describe('the ground of a tap drill', () => {
  test.each([
    ['M8', 'iso-2306'],
    ['M8x1', 'common-practice'],
    ['1/4-20', 'handbook-drills'],
    ['1-1/4-7', 'from-memory'],
    ['1/4-32 UNEF', 'common-practice'],
    ['EG M8', 'common-practice'],
    ['G1/4', null],
  ] as const)('%s: %s', (text, source) => {
    expect(drillSource(read(text))).toBe(source);
  });

  test('no thread’s page calls a drill the handbook’s; the hole sizes by engagement are', () => {
    const series = allSeries();
    const marks = (slug: string, text: string) => {
      const page = threadReference(text);
      if (!page.ok) throw new Error(text);
      return sourcesOf(
        page.value,
        series.find((each) => each.slug === slug)!,
      ).map(sourceMark);
    };
    const handbook = sourceMark('handbook-holes');
    expect(sourceMark('handbook-drills')).not.toBe(handbook);
    expect(marks('metric-coarse', 'M8')).toContain('ISO 2306');
    expect(marks('metric-fine', 'M8x1')).not.toContain('ISO 2306');
    expect(marks('metric-coarse', 'M8')).not.toContain(handbook);
    expect(marks('g', 'G1/4')).not.toContain(handbook);
    expect(marks('unc', '1/4-20')).toContain(handbook);
    expect(marks('unc', '1/4-20')).toContain(sourceMark('handbook-drills'));
    expect(marks('unc', '1-1/4-7')).not.toContain(sourceMark('handbook-drills'));
  });

  test('room for packed chips is called our estimate on the page of trust', () => {
    expect(readFileSync('site/pages/about/index.astro', 'utf8')).toContain("room: 'packed-chips'");
    expect(sourceMark('packed-chips')).toBe('our estimate');
  });
});
