/**
 * One question, one answer: a thread's page, the drill study behind the calculator, the planner and the drawing
 * give one drill for one thread and class in mild steel, and no page spells the gauge in its own way. Held to
 * each other, not to a source.
 */
import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { planDrawing, planHole, readThread, standardThreads, threadReference } from '../../core';
import { findMaterial } from '../../core/material/table';
import { drillStudy } from '../../core/plan/drill-study';

const STEEL = findMaterial('steel-low')!;
const CLASSES = { metric: ['5H', '6H', '6G'], unified: ['2B', '3B'] } as const;

/** Every fourth standard thread, in the classes a shop is asked for. */
const ASKED = standardThreads()
  .filter((_, index) => index % 4 === 0)
  .flatMap(({ designation, system }) => {
    const bare = designation.replace(/-\d\w+$/, '');
    const classes = system === 'unified' ? CLASSES.unified : CLASSES.metric;
    return classes.map((each) => `${bare}-${each}`);
  });

/** The drill of a thread from each part of the core that gives one, mm. */
function drills(text: string) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const study = drillStudy({ thread: thread.value, material: STEEL });
  const page = threadReference(text);
  const thickness = 1.5 * thread.value.diameter;
  const plan = planHole({
    thread: text,
    material: 'steel-low',
    hole: { kind: 'through', thickness },
  });
  const drawing = planDrawing([`${text} THRU`], { material: 'steel-low', thickness });
  const drawn = drawing.holes[0]?.plan;
  return {
    study: study.ok ? (study.value.drill?.diameter ?? null) : study.problems[0]!.code,
    page: page.ok ? (page.value.drill?.diameter ?? null) : page.problems[0]!.code,
    plan: plan.ok ? (plan.value.drill?.diameter ?? null) : plan.problems[0]!.code,
    drawing: drawn?.ok ? (drawn.value.drill?.diameter ?? null) : 'unread',
  };
}

test('page, study, planner and drawing take one drill for a thread in mild steel', () => {
  expect(ASKED.length).toBeGreaterThan(100);
  expect(ASKED.filter((text) => typeof drills(text).study === 'number').length).toBeGreaterThan(
    100,
  );
  const apart = ASKED.map((text) => ({ text, ...drills(text) })).filter(
    ({ study, page, plan, drawing }) => new Set([study, page, plan, drawing]).size > 1,
  );
  expect(apart).toEqual([]);
});

test('a pipe thread’s page and the planner give one range of threads for one chamfer class', () => {
  const ranges = (text: string) => {
    const page = threadReference(text);
    const hole = { kind: 'through', thickness: 20 } as const;
    const plan = planHole({ thread: text, material: 'steel-low', hole });
    if (!page.ok || !plan.ok) throw new Error(text);
    const candidates = plan.value.taps;
    return page.value.room.rows.map(({ chamfer }) => ({
      page: chamfer.threads,
      plan: candidates.find((each) => each.chamfer.class === chamfer.class)?.chamfer.threads,
    }));
  };
  for (const text of ['1/4-18 NPT', '1/2-14 NPTF', 'Rc1/4', 'G1/4', 'Rp1/2', 'M8', '1/4-20']) {
    const held = ranges(text).filter(({ plan }) => plan !== undefined);
    // Taper pipe taps are made with one chamfer.
    expect(held.length, text).toBeGreaterThan(/^(?:Rc|.*NPT)/.test(text) ? 0 : 1);
    expect(
      held.map(({ page }) => page),
      text,
    ).toEqual(held.map(({ plan }) => plan));
  }
  // Common practice for taper pipe taps; ASME B94.9 in inches and ISO 8830 for the others.
  expect(ranges('1/4-18 NPT').map(({ page }) => page)).toEqual([{ min: 2.5, max: 3.5 }]);
  expect(ranges('Rc1/4').map(({ page }) => page)).toEqual([{ min: 2.5, max: 3.5 }]);
  expect(ranges('1/4-20')[1]!.page).toEqual({ min: 3, max: 5 });
  expect(ranges('G1/4')[1]!.page).toEqual({ min: 3.5, max: 5.5 });
});

test('a NOT GO gauge is spelled so in every word and lesson; other spellings stand in the glossary only', () => {
  const files = globSync(['components/words/en/**/*.ts', 'site/content/**/*.{md,mdx,yaml}']);
  expect(files.length).toBeGreaterThan(100);
  const others = files
    .filter((file) => !file.endsWith('not-go-gauge.md'))
    .flatMap((file) =>
      [
        ...readFileSync(file, 'utf8').matchAll(/\b(?:NO[- ]?GO|No-?[Gg]o|no-go|NOT-GO|Not Go)\b/g),
      ].map(([found]) => `${file}: ${found}`),
    );
  expect(others).toEqual([]);
});
