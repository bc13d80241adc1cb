/** Jobs kept on a device: nothing is lost, everything is said. */

import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readTable, writeTable } from '../../components/jobs/csv';
import { drawerCsv, drawerText, readDrawer } from '../../components/jobs/drawerText';
import { ownedText } from '../../components/jobs/OwnedLine';
import { holeToKeep, plannedHole, plannedJob } from '../../components/jobs/planned';
import { EXAMPLE_JOB } from '../../components/jobs/examples';
import { jobRows } from '../../components/jobs/table';
import {
  FORMAT,
  OWNED_STYLES,
  readContents,
  VERSION,
  writeContents,
  type Contents,
  type Job,
} from '../../components/jobs/shape';
import { changed, freshId, keepChange, openJobs } from '../../components/jobs/store';
import { INPUT_NAMES } from '../../components/planner/inputs';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { planHole } from '../../core';
import { memory } from '../tools/memory';

const text = fc.string({ unit: 'binary', maxLength: 40 });
const hole = fc.record({
  inputs: fc.dictionary(fc.constantFrom(...INPUT_NAMES), text, { noNullPrototype: true }),
});
const job: fc.Arbitrary<Job> = fc.record({
  id: fc.string({ minLength: 1, maxLength: 20 }),
  revision: fc.nat(100),
  job: text,
  part: text,
  operation: text,
  machine: text,
  holes: fc.array(hole, { maxLength: 4 }),
});
const contents: fc.Arbitrary<Contents> = fc.record({
  jobs: fc.uniqueArray(job, { maxLength: 4, selector: ({ id }) => id }),
  drawer: fc.record({
    taps: fc.array(
      fc.record({
        thread: text,
        style: fc.constantFrom(...OWNED_STYLES),
        chamfer: fc.constantFrom(...CHAMFER_CLASSES),
      }),
      { maxLength: 3 },
    ),
    drills: fc.array(fc.record({ name: text }), { maxLength: 3 }),
    machines: fc.array(
      fc.record({ name: text, drive: fc.constantFrom('synchronous' as const, 'hand' as const) }),
      { maxLength: 3 },
    ),
  }),
  unread: fc.array(fc.jsonValue({ maxDepth: 2 }), { maxLength: 2 }),
});

/** As JSON sees it: −0 and the like are one. */
const plain = (data: unknown): unknown => JSON.parse(JSON.stringify(data));

describe('a file of jobs', () => {
  test('comes back as it went out', () => {
    fc.assert(
      fc.property(contents, fc.constantFrom(0, 2), (kept, spaces) => {
        const read = readContents(writeContents(kept, spaces));
        expect(read.state).toBe('read');
        if (read.state === 'read') expect(plain(read.contents)).toEqual(plain(kept));
      }),
      { numRuns: 200, seed: 81 },
    );
  });

  test('any text at all is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (typed) => {
        expect(['read', 'damaged', 'newer']).toContain(readContents(typed).state);
      }),
      { seed: 82 },
    );
  });

  const good = writeContents({ ...changedOnce(), unread: [] });
  function changedOnce(): Contents {
    return { jobs: [EXAMPLE_JOB], drawer: { taps: [], drills: [], machines: [] }, unread: [] };
  }

  test.each([
    ['empty', ''],
    ['cut off', good.slice(0, good.length / 2)],
    ['a word', 'jobs'],
    ['null', 'null'],
    ['a list', '[]'],
    ['another format', good.replace(FORMAT, 'other')],
    ['no version', good.replace(`"version":${VERSION},`, '')],
    ['a version that is text', good.replace(`"version":${VERSION}`, '"version":"4"')],
    ['version 0', good.replace(`"version":${VERSION}`, '"version":0')],
    ['two files run together', good + good],
  ])('%s is damaged', (_, typed) => {
    expect(readContents(typed).state).toBe('damaged');
  });

  test('a later version is left alone', () => {
    expect(readContents(good.replace(`"version":${VERSION}`, '"version":5')).state).toBe('newer');
  });

  test('one bad entry spoils itself and nothing else, and is written back', () => {
    const data = JSON.parse(good) as { jobs: unknown[] };
    const bad = { id: 7, holes: 'many' };
    data.jobs.push(bad);
    const read = readContents(JSON.stringify(data));
    if (read.state !== 'read') throw new Error(read.state);
    expect(read.contents.jobs).toEqual([EXAMPLE_JOB]);
    expect(read.contents.unread).toEqual([bad]);
    expect(writeContents(read.contents)).toContain('"holes":"many"');
  });

  test('a BOM and a named schema do no harm', () => {
    const named = JSON.stringify({ $schema: 'jobs.schema.json', ...(JSON.parse(good) as object) });
    expect(readContents(`\ufeff${named}`).state).toBe('read');
  });
});

describe('older versions', () => {
  const query = 'thread=M8&hole=blind&depth=16&material=al-wrought&colour=red';
  const inputs = { thread: 'M8', hole: 'blind', depth: '16', material: 'al-wrought' };
  const older: [number, object][] = [
    [1, { version: 1, cards: [`/plan/card/?${query}`] }],
    [2, { version: 2, jobs: [{ name: '4471', holes: [query] }] }],
    [
      3,
      {
        version: 3,
        jobs: [{ id: 'a', job: '4471', part: '', operation: '', machine: '', holes: [{ inputs }] }],
      },
    ],
  ];

  test.each(older)('version %i is brought up to date', (from, data) => {
    const read = readContents(JSON.stringify({ format: FORMAT, ...data }));
    if (read.state !== 'read') throw new Error(read.state);
    expect(read.from).toBe(from);
    expect(read.contents.jobs).toHaveLength(1);
    expect(read.contents.jobs[0]?.holes).toEqual([{ inputs }]);
    expect(read.contents.jobs[0]?.job).toBe(from === 1 ? '' : '4471');
    expect(read.contents.unread).toEqual([]);
  });
});

describe('the store', () => {
  const fresh = (id: string, part: string): Job => ({ ...EXAMPLE_JOB, id, part, revision: 0 });

  test('keeps a job and gives it back', () => {
    const store = memory();
    expect(keepChange(store, { kind: 'job', job: fresh('a', 'Lid') })).toEqual({
      ok: true,
      twice: false,
    });
    expect(openJobs(store).contents.jobs.map(({ part, revision }) => [part, revision])).toEqual([
      ['Lid', 1],
    ]);
  });

  test('one job changed in two tabs is kept twice, and said', () => {
    const store = memory();
    keepChange(store, { kind: 'job', job: fresh('a', 'Lid') });
    const seen = 1;
    keepChange(store, { kind: 'job', job: fresh('a', 'Lid, first tab'), seen });
    const second = keepChange(store, { kind: 'job', job: fresh('a', 'Lid, second tab'), seen });
    expect(second).toEqual({ ok: true, twice: true });
    const parts = openJobs(store).contents.jobs.map(({ part }) => part);
    expect(parts).toEqual(['Lid, first tab', 'Lid, second tab']);
  });

  test('opening the same file twice adds nothing, a changed job stands beside the old one', () => {
    fc.assert(
      fc.property(contents, (kept) => {
        const once = changed(
          { jobs: [], drawer: { taps: [], drills: [], machines: [] }, unread: [] },
          { kind: 'add', contents: kept },
        ).contents;
        const twice = changed(once, { kind: 'add', contents: kept }).contents;
        expect(twice.jobs).toHaveLength(once.jobs.length);
        expect(new Set(twice.jobs.map(({ id }) => id)).size).toBe(twice.jobs.length);
      }),
      { numRuns: 100, seed: 83 },
    );
  });

  test('a fresh id is new', () => {
    const numbers = [0, 0, 0.5];
    const id = freshId(['job-0'], () => numbers.shift() ?? 0.9);
    expect(id).not.toBe('job-0');
  });
});

describe('kept holes', () => {
  test('are planned anew, and an answer that changed is told', () => {
    const kept = holeToKeep(
      { thread: 'M6', hole: 'blind', depth: '12', material: 'al-wrought' },
      '0.1.0',
    );
    expect(plannedHole(kept).changed).toBe(false);
    expect(plannedHole(kept).text).toContain('Drill 5.0 mm');
    const old = { ...kept, answer: { version: '0.0.1', text: 'Drill 5.2 mm.' } };
    expect(plannedHole(old).changed).toBe(true);
  });

  test('inches stay inches', () => {
    const kept = holeToKeep(
      { thread: '1/4-20', hole: 'blind', depth: '.5', material: 'steel-low', units: 'in' },
      '0',
    );
    expect(plannedHole(kept).request?.fullThread).toBeCloseTo(12.7, 9);
  });

  test('a job shares its tools on one sheet', () => {
    const drawing = plannedJob(EXAMPLE_JOB);
    expect(drawing.holes.map(({ verdict }) => verdict)).not.toContain('unread');
    expect(drawing.taps.flatMap(({ holes }) => holes).sort()).toEqual([0, 1]);
  });
});

describe('tables', () => {
  test('are read back as they were written, but for formulas', () => {
    const cell = fc
      .string({ maxLength: 12 })
      .map((value) => value.trim())
      .filter((value) => !/^['=+\-@\s]|\r/.test(value));
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(rows, (table) => {
        // A first line decides what separates the cells.
        const head = ['kind', 'name'];
        const back = readTable(writeTable([head, ...table]));
        expect(back).toEqual([head, ...table.filter((row) => row.some((each) => each !== ''))]);
      }),
      { numRuns: 300, seed: 84 },
    );
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '=HYPERLINK("http://x")'])(
    'a cell %j is made harmless',
    (value) => {
      const cell = writeTable([[value]]).replace(/^\ufeff/, '');
      expect(cell.replace(/^"/, '')).toMatch(/^'/);
    },
  );

  test('every job has a row a hole, and what was typed cannot run in it', () => {
    const rows = jobRows([{ ...EXAMPLE_JOB, part: '=cmd()' }]);
    expect(rows).toHaveLength(3);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(writeTable(rows)).toContain(`,"'=cmd()",`);
  });

  test('semicolons, tabs, quotes, a BOM and decimal commas', () => {
    expect(readTable('\ufeffdrill;"6,8";"a ""b"""\r\ntap;M8\n\n')).toEqual([
      ['drill', '6,8', 'a "b"'],
      ['tap', 'M8'],
    ]);
    expect(readTable('drill\t6,8\nx')).toEqual([['drill', '6,8'], ['x']]);
  });
});

describe('the drawer', () => {
  const TYPED = [
    'kind;name;style;chamfer',
    'tap;M8;spiral flute;2-3',
    'tap; 1/4-20 UNC; spiral point; plug',
    'drill; 6,8 mm',
    'drill; 27/64',
    'drill; #7',
    'machine; VMC-B; synchronous; 30; 4000',
    'machine; Bench; hand',
    'tap;M8;wobbly;2-3',
    'tap;M99x77;spiral flute;2-3',
    'tap;M8;form;lots',
    'drill;6.81',
    'machine;;synchronous',
    'reamer;8 H7',
  ].join('\n');

  test('every row is read or says why not', () => {
    const { drawer, rows } = readDrawer(TYPED);
    expect(rows).toHaveLength(13);
    expect(rows.filter(({ ok }) => ok)).toHaveLength(7);
    for (const { ok, said } of rows) if (!ok) expect(said).toMatch(/[.?]$/);
    expect(drawer.taps[0]).toEqual({
      thread: 'M8x1.25-6H',
      style: 'spiral-flute',
      chamfer: 'semi-bottoming',
    });
    expect(drawer.drills.map(({ name }) => name)).toEqual(['6.8', '27/64', '#7']);
    expect(drawer.machines[0]).toEqual({
      name: 'VMC-B',
      drive: 'synchronous',
      torque: 30,
      rpm: 4000,
    });
  });

  test('comes back from its own text and from its own table', () => {
    const { drawer } = readDrawer(TYPED);
    expect(readDrawer(drawerText(drawer)).drawer).toEqual(drawer);
    expect(readDrawer(drawerCsv(drawer)).drawer).toEqual(drawer);
  });

  test('the planner takes the best of it, and says what a better tap would gain', () => {
    const outcome = planHole({
      thread: 'M8',
      fullThread: 16,
      hole: { kind: 'blind' },
      material: 'al-wrought',
    });
    if (!outcome.ok) throw new Error('no plan');
    const tap = (
      style: 'spiral-flute' | 'spiral-point' | 'form',
      chamfer: 'semi-bottoming' | 'plug',
    ) => ({
      thread: 'M8x1.25',
      style,
      chamfer,
    });
    const said = (...taps: ReturnType<typeof tap>[]) => ownedText(outcome.value, taps, 'mm');
    expect(said(tap('spiral-flute', 'semi-bottoming'))).toMatch(/^The tap that suits best/);
    expect(said(tap('spiral-point', 'plug'))).toMatch(/will not do here/);
    expect(said({ ...tap('spiral-flute', 'plug'), thread: 'M10' })).toMatch(
      /^No tap of this thread/,
    );
    expect(said(tap('form', 'semi-bottoming'))).toMatch(
      /which also works\. With the spiral flute.* instead of \d/,
    );
  });
});

test('the published schema names what is kept', () => {
  const schema = JSON.parse(readFileSync('site/public/jobs.schema.json', 'utf8')) as {
    required: string[];
    properties: { version: { const: number }; format: { const: string } };
    $defs: Record<string, { required: string[]; properties: Record<string, never> }> & {
      hole: { properties: { inputs: { propertyNames: { enum: string[] } } } };
    };
  };
  const written = JSON.parse(
    writeContents({
      jobs: [EXAMPLE_JOB],
      drawer: { taps: [], drills: [], machines: [] },
      unread: [],
    }),
  ) as Record<string, unknown>;
  expect(schema.properties.version.const).toBe(VERSION);
  expect(schema.properties.format.const).toBe(FORMAT);
  expect(schema.required.sort()).toEqual(Object.keys(written).sort());
  expect(schema.$defs['job']?.required.sort()).toEqual(Object.keys(EXAMPLE_JOB).sort());
  expect(schema.$defs.hole.properties.inputs.propertyNames.enum).toEqual([...INPUT_NAMES]);
});

test('a drawer filled in two tabs loses nothing of either', () => {
  const tap = (thread: string) => ({
    thread,
    style: 'spiral-flute' as const,
    chamfer: 'plug' as const,
  });
  const drawer = (...threads: string[]) => ({ taps: threads.map(tap), drills: [], machines: [] });
  const before: Contents = { jobs: [], unread: [], drawer: drawer('M6') };
  const seen = drawer('M6');
  const other = changed(before, { kind: 'drawer', drawer: drawer('M6', 'M8'), seen });
  expect(other.twice).toBe(false);
  const mine = changed(other.contents, { kind: 'drawer', drawer: drawer('M6', 'M10'), seen });
  expect(mine.twice).toBe(true);
  expect(mine.contents.drawer.taps.map(({ thread }) => thread)).toEqual(['M6', 'M10', 'M8']);
  // What I took out and the other tab left alone stays out.
  const less = changed(before, { kind: 'drawer', drawer: drawer(), seen });
  expect(less.contents.drawer.taps).toEqual([]);
});
