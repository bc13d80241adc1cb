/**
 * What the studies behind the calculators say of many questions, kept as a file in lines that can be read, as
 * `many.test.ts` does for whole plans. What an answer should be is for the other tests to say.
 */
import { describe, expect, test } from 'vitest';
import {
  findMaterial,
  planHole,
  readThread,
  strengthStudy,
  threadReference,
  type HoleRequest,
  type MaterialId,
  type Thread,
} from '../../../core';
import { PURPOSES } from '../../../core/engagement/purposes';
import { SCREW_GRADES } from '../../../core/engagement/screws';
import { PLAIN_READINGS } from '../../../core/gauge/plain';
import { blindStudy } from '../../../core/plan/blind-study';
import { borrowedMinorMax } from '../../../core/plan/borrowed';
import { chamferStudy } from '../../../core/plan/chamfer-study';
import { chipStudy } from '../../../core/plan/chip-study';
import { cycleStudy, type CycleQuestion } from '../../../core/plan/cycle-study';
import { drillStudy } from '../../../core/plan/drill-study';
import { engagementStudy } from '../../../core/plan/engagement-study';
import { formStudy } from '../../../core/plan/form-study';
import { gaugeStudy } from '../../../core/plan/gauge-study';
import { learnedScale, readingFactor, type ShopReading } from '../../../core/plan/learned';
import { limitsStudy } from '../../../core/plan/limits-study';
import { ownedAnswer, ownedDrill } from '../../../core/plan/owned';
import { platingStudy } from '../../../core/plan/plating-study';
import { drawnCurve, spindleStudy } from '../../../core/plan/spindle-study';
import { familiarDangers } from '../../../core/plan/strength-study';
import { strokeBand } from '../../../core/plan/stroke-band';
import { classLoads } from '../../../core/plan/tap-classes';
import { LOADED_STYLES, tapLoads, usualChamfer } from '../../../core/plan/tap-load';
import { studyTap } from '../../../core/plan/tap-study';
import { threadLimits } from '../../../core/limits/thread-limits';
import { plain } from './plain';

function read(text: string): Thread {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  return thread.value;
}

function material(id: MaterialId) {
  const found = findMaterial(id);
  if (!found) throw new Error(id);
  return found;
}

/** One line each: the question, an arrow, the answer. */
async function kept<Question>(
  name: string,
  questions: readonly Question[],
  ask: (question: Question) => unknown,
): Promise<void> {
  const lines = questions.map((question) => `${plain(question)}\n  -> ${plain(ask(question))}`);
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`golden/studies/${name}.txt`);
}

const THREADS = [
  ...['M8', 'M8x1', 'M1', 'M1.6', 'M2x0.25', 'M12x1.5', 'M8x1.3', 'M40x3', 'M100x6', 'M8-LH'],
  ...['M8-6G', 'M10-4H', 'M10-7H', 'MJ6', 'MJ5', 'EG M8', 'EG M2', 'EG M39', '#10-32', '#0-80'],
  ...['1/4-20', '1/4-28 UNF-3B', '1/4-32 UNEF', '1-8', '15/16-12 UN', '6-12 UN', '1/4-19'],
  ...['1/4-28 UNJF', '15/16-12 UNJ', 'STI 1/4-20', 'STI #2-56', 'STI 15/16-12', '1/4-20-LH'],
  ...['G1/4', 'G1/4-LH', 'Rp1/2', 'Rc1/4', '1/4 NPT', '1/8-27 NPTF', '1/8 NPSM', '1/8 NPSF'],
  ...['M5x0.8', 'M6', 'M3', 'M24', '#8-32', '#4-40', '1/2-13', '1/2-13 UNC-1B'],
];
const BLIND = { kind: 'blind' } as const;
const HOLES: HoleRequest[] = [
  { thread: 'M8', material: 'steel-low', hole: BLIND },
  { thread: 'M8', material: 'steel-low', hole: BLIND, fullThread: 16, tapWeb: 3.1 },
  { thread: 'M8', material: 'steel-low', hole: { kind: 'through', thickness: 3 } },
  { thread: 'M8', material: 'steel-low', hole: { kind: 'through', thickness: 20 } },
  { thread: 'M6', material: 'stainless-austenitic', hole: BLIND, externalCentre: 1 },
  {
    thread: 'M6',
    material: 'iron-grey',
    hole: { kind: 'blind', limit: { at: 'shoulder', depth: 14 } },
  },
  { thread: 'M12-LH', material: 'titanium', hole: BLIND, learned: { factor: 1.2, band: 1.2 } },
  {
    thread: '1/4-20',
    material: 'al-wrought',
    hole: BLIND,
    spindle: { drive: 'synchronous', torque: 6 },
  },
  { thread: '1/4-20', material: 'plastic', hole: { kind: 'through', thickness: 6 } },
  { thread: 'M6', material: 'steel-hard', hole: BLIND },
  { thread: '1/4 NPT', material: 'steel-low', hole: { kind: 'through', thickness: 15 } },
  { thread: 'Rc1/4', material: 'brass-free', hole: BLIND },
  { thread: 'M3', material: 'nickel', hole: BLIND, spindle: { drive: 'hand' } },
  {
    thread: 'M8',
    material: 'copper',
    hole: BLIND,
    measured: { torque: 6, style: 'form', chamfer: 'plug' },
  },
  { thread: 'bolt', material: 'steel-low', hole: BLIND },
];
const CHAMFERS = ['taper', 'plug', 'semi-bottoming', 'bottoming'] as const;

describe('kept answers', () => {
  test('references', () => kept('reference', [...THREADS, 'foo'], threadReference));

  test('limits', () =>
    kept(
      'limits',
      THREADS.flatMap((thread) => [undefined, 5, 40].map((length) => ({ thread, length }))),
      ({ thread, length }) => {
        const { reference: _, ...study } = (() => {
          const found = limitsStudy(read(thread), length);
          return found.ok ? found.value : { reference: null, problems: found.problems };
        })();
        return study;
      },
    ));

  test('drills', () =>
    kept(
      'drill',
      THREADS.flatMap((thread) => [
        { thread },
        { thread, material: 'al-wrought' as const, oversize: 0.1 },
        { thread, material: 'titanium' as const, series: ['metric', 'fraction'] as const },
      ]),
      ({ thread, ...more }) => {
        const metal = more.material && material(more.material);
        const found = drillStudy({ ...more, thread: read(thread), material: metal });
        if (!found.ok) return found;
        const { window, classes, drill, largest, notes } = found.value;
        return { window, classes: classes.length, drill, largest, notes };
      },
    ));

  test('borrowed minor limit', () =>
    kept('borrowed', THREADS, (text) => {
      const thread = read(text);
      const limits = threadLimits(thread);
      return limits.ok
        ? { minor: limits.value.minor, borrowed: borrowedMinorMax(thread, limits.value) }
        : limits;
    }));

  test('form taps', () =>
    kept(
      'form',
      THREADS.flatMap((thread) => [
        { thread },
        { thread, metal: 'iron-grey' as const },
        {
          thread,
          metal: 'al-wrought' as const,
          series: ['metric'] as const,
          hole: read(thread).diameter * 0.93,
        },
        { thread, metal: 'stainless-austenitic' as const, hole: read(thread).diameter * 0.96 },
        { thread, hole: read(thread).diameter * 0.9 },
        { thread, hole: read(thread).diameter * 1.2 },
      ]),
      ({ metal, ...question }) =>
        formStudy({
          ...question,
          thread: read(question.thread),
          ...(metal ? { material: material(metal) } : {}),
        }),
    ));

  test('plating', () =>
    kept(
      'plating',
      THREADS.flatMap((thread) => [
        { thread, thickness: [0.005, 0.008] as const },
        { thread, thickness: [0.01, 0.012] as const, rule: 'after' as const },
        { thread, thickness: [0.005, 0.008] as const, rule: 'before' as const },
        { thread, thickness: [0.05, 0.2] as const },
      ]),
      ({ thread, thickness, rule }) => platingStudy(read(thread), thickness, rule),
    ));

  test('engagement', () =>
    kept(
      'engagement',
      [
        ...SCREW_GRADES.map((screw) => ({ thread: 'M8', screw, metal: 'al-wrought' as const })),
        ...PURPOSES.map((purpose) => ({
          thread: 'M8',
          screw: '8.8' as const,
          metal: 'steel-low' as const,
          purpose,
        })),
        ...[4, 6.5, 8, 12].map((have) => ({
          thread: '1/4-20',
          screw: 'SAE 5' as const,
          metal: 'steel-low' as const,
          have,
        })),
        ...THREADS.map((thread) => ({
          thread,
          screw: '8.8' as const,
          metal: 'iron-grey' as const,
          shear: 200,
        })),
      ],
      ({ thread, metal, ...more }) =>
        engagementStudy({ ...more, thread: read(thread), material: material(metal) }),
    ));

  test('gauges', () =>
    kept(
      'gauge',
      THREADS.flatMap((thread) =>
        (['all', 'part', 'none'] as const).flatMap((go, at) =>
          PLAIN_READINGS.map((reading) => ({
            thread,
            go,
            notGoTurns: at * 1.6,
            plain: reading,
            goTurns: at === 1 ? 6 : undefined,
            fullThread: at === 2 ? undefined : 12,
          })),
        ),
      ).filter((_, at) => at % 5 === 0),
      (question) => {
        const found = gaugeStudy({ ...question, thread: read(question.thread) });
        return found.ok ? { ...found.value, thread: found.value.thread.designation } : found;
      },
    ));

  test('blind holes', () =>
    kept(
      'blind',
      [
        ...['M8', '1/4-20', 'EG M6', 'M3x0.35', 'Rc1/4', 'G1/4'].flatMap((thread) => [
          { thread, fullThread: 12, chamfer: { min: 2, max: 3 } },
          { thread, fullThread: 12, shoulder: 15 },
          { thread, shoulder: 20, chamfer: { min: 3.5, max: 5.5 } },
          {
            thread,
            shoulder: 20,
            chamfer: { min: 1, max: 1.5 },
            drive: 'hand' as const,
            finishing: true,
          },
          { thread, fullThread: 12, shoulder: 40, centre: 2, pointAngle: 140 },
          {
            thread,
            fullThread: 12,
            chamfer: { min: 1.5, max: 2 },
            drive: 'floating' as const,
            pointAngle: 180,
          },
        ]),
        { thread: 'M8', fullThread: 12, shoulder: 12.5 },
        { thread: 'M8', shoulder: 3, chamfer: { min: 6, max: 8 } },
      ],
      (question) => blindStudy({ drive: 'synchronous', centre: 0, pointAngle: 118, ...question }),
    ));

  test('chamfers', () =>
    kept(
      'chamfer',
      HOLES.flatMap((hole) => [1.5, 2.4, 4, 7].map((threads) => ({ hole, threads }))),
      ({ hole, threads }) =>
        chamferStudy(hole, threads > 3 ? 'spiral-point' : 'spiral-flute', threads),
    ));

  test('chips', () =>
    kept(
      'chips',
      (['steel-low', 'iron-grey', 'al-wrought', 'plastic', 'titanium'] as const).flatMap((metal) =>
        CHAMFERS.flatMap((chamfer, at) =>
          ['M8', '#10-32'].map((thread) => ({
            ...{ thread, chamfer, material: metal, pointAngle: at === 0 ? 180 : 118 },
            ...{ fullThread: 8 + at, shoulder: 12 + 6 * at },
          })),
        ),
      ),
      chipStudy,
    ));

  test('cycles', () => {
    const usual: CycleQuestion = {
      ...{ thread: 'M8', material: 'steel-low', substrate: 'hss', coating: 'plain', fluid: 'oil' },
      ...{ drive: 'synchronous', unit: 'mm', mode: 'per-minute' },
    };
    return kept(
      'cycle',
      [
        {},
        ...(['hss-powder', 'carbide'] as const).map((substrate) => ({
          substrate,
          coating: 'coated' as const,
        })),
        ...(['emulsion', 'dry'] as const).map((fluid) => ({ fluid })),
        ...(['floating', 'reversing-head', 'hand'] as const).map((drive) => ({ drive })),
        { fullThread: 4 },
        { fullThread: 30 },
        { tip: 25, start: 3 },
        { tip: 2, fullThread: 12 },
        { rpm: 600, typed: 750 },
        { rpm: 3000 },
        { rpm: 100, maxRpm: 400 },
        { maxRpm: 200 },
        { rpm: 800, acceleration: 100, retract: 2 },
        { rpm: 800, acceleration: 5, fullThread: 3 },
        { rpm: 500, retract: 1.5, tip: 20 },
        { unit: 'in' as const, rpm: 500 },
        { unit: 'in' as const, mode: 'per-revolution' as const, rpm: 500 },
        { unit: 'in' as const, thread: '1/4-20' },
        { mode: 'per-revolution' as const, thread: '1/4-20' },
        { thread: 'M24', material: 'titanium' as const },
        { thread: 'M6', material: 'steel-hard' as const },
        { thread: '1/4 NPT' },
        { thread: 'foo' },
        { rpm: 0 },
        { acceleration: 0 },
      ],
      (question) => cycleStudy({ ...usual, ...question }),
    );
  });

  test('spindles', async () => {
    const points = [
      { rpm: 50, torque: 60 },
      { rpm: 400, torque: 60 },
      { rpm: 1200, torque: 20 },
      { rpm: 6000, torque: 4 },
    ];
    const [hole] = HOLES as [HoleRequest];
    const big: HoleRequest = { ...hole, thread: 'M20', material: 'steel-medium' };
    const huge: HoleRequest = { ...hole, thread: 'M30', material: 'steel-alloy-30hrc' };
    await kept(
      'spindle',
      [hole, big, huge, HOLES[2]!, HOLES[9]!, HOLES[10]!, HOLES[14]!].flatMap((request) => [
        { request, style: 'spiral-flute' as const, points },
        { request, style: 'straight-flute' as const, points, rpm: 350, chamfer: 'plug' as const },
        { request, style: 'spiral-point' as const, points, rpm: 1600 },
        { request, style: 'spiral-flute' as const, points, rpm: 9000 },
        { request, style: 'spiral-flute' as const, points, rpm: 20, torque: 15 },
        { request, style: 'spiral-flute' as const, points, torque: 55 },
        { request, style: 'form' as const, points: points.slice(0, 1), torque: 40 },
        { request, style: 'spiral-flute' as const, points: [], torque: 40 },
      ]),
      spindleStudy,
    );
    await kept('curve', [points, points.slice(0, 1), points.slice(1, 3)], (some) =>
      drawnCurve({ points: some }, 7),
    );
  });

  test('strength', async () => {
    await kept(
      'strength',
      ['M3', 'M8', 'M24', '#4-40', '1/2-13', 'EG M8', 'Rc1/4', 'G1/4', 'foo'].flatMap((thread) => [
        { thread, style: 'spiral-flute' as const },
        { thread, style: 'spiral-point' as const, torque: 1 },
        { thread, style: 'straight-flute' as const, flutes: 4, torque: 10 },
        { thread, style: 'form' as const, torque: 4 },
        { thread, style: 'spiral-flute' as const, web: 1.2, flutes: 3, torque: 0.4 },
        { thread, style: 'spiral-flute' as const, web: 40 },
        { thread, style: 'spiral-flute' as const, torque: 200 },
      ]),
      strengthStudy,
    );
    await kept('dangers', [0], familiarDangers);
  });

  test('tap loads', async () => {
    await kept(
      'loads',
      HOLES.flatMap((request) => CHAMFERS.map((chamfer) => ({ request, chamfer }))),
      ({ request, chamfer }) => [
        usualChamfer(request),
        tapLoads(request, chamfer),
        chamfer === 'plug' ? tapLoads(request, chamfer, 'dry') : null,
      ],
    );
    await kept(
      'classes',
      HOLES.flatMap((request) => LOADED_STYLES.map((style) => ({ request, style }))),
      ({ request, style }) =>
        classLoads(request, style).map(({ chamfer, torque, share }) => ({
          chamfer,
          torque,
          share,
        })),
    );
  });

  test('one tap', () =>
    kept(
      'tap',
      HOLES.flatMap((request) =>
        LOADED_STYLES.flatMap((style, at) => [
          { request, style, chamfer: CHAMFERS[at]! },
          { request, style, chamfer: 'plug' as const, fluid: 'dry' as const, nose: 1 },
          {
            request,
            style,
            chamfer: 'plug' as const,
            crossHoles: [{ depth: 6, diameter: 4, bothSides: at > 1 }],
          },
        ]),
      ),
      ({ request, ...options }) => {
        const found = studyTap(request, options);
        if (!found.ok) return found;
        const { job: _, tap, stroke, ...rest } = found.value;
        return {
          ...rest,
          drill: tap.drill?.name,
          band: strokeBand({ stroke, torque: rest.torque }, 5),
          none: strokeBand({ stroke, torque: rest.torque }, 1),
        };
      },
    ));

  test('what a shop has', () => {
    const own = [
      { thread: 'M8', style: 'spiral-flute', chamfer: 'bottoming' },
      { thread: 'M8x1.25-6G', style: 'straight-flute', chamfer: 'plug' },
      { thread: 'M8', style: 'spiral-point', chamfer: 'plug' },
      { thread: 'M8-LH', style: 'spiral-flute', chamfer: 'plug' },
      { thread: 'M6', style: 'form', chamfer: 'semi-bottoming' },
      { thread: '1/4-20', style: 'spiral-flute', chamfer: 'semi-bottoming' },
      { thread: 'nut', style: 'spiral-flute', chamfer: 'plug' },
    ] as const;
    return kept('owned', HOLES, (request) => {
      const plan = planHole(request);
      if (!plan.ok) return plan;
      const brief = (tap: { style: string; chamfer: { class: string } } | null) =>
        tap && `${tap.style} ${tap.chamfer.class}`;
      const sets = [own, own.slice(0, 1), own.slice(1, 3), own.slice(4), []].map((taps) => {
        const { tap, best, rejected, gain } = ownedAnswer(plan.value, taps);
        return { tap: brief(tap), best: brief(best), rejected: rejected.map(brief), gain };
      });
      const drills = [['6.8'], ['6.7', '6.9'], ['17/64', 'H'], ['5.0', '5.1', '#7'], []];
      return { sets, drills: drills.map((names) => ownedDrill(plan.value, names)) };
    });
  });

  test('readings', () => {
    const reading: ShopReading = {
      ...{ thread: 'M8', material: 'steel-low', machine: 'VMC-B', taken: '2026-03-02', torque: 4 },
      ...{
        style: 'spiral-flute',
        chamfer: 'semi-bottoming',
        worn: false,
        hole: BLIND,
        fullThread: 12,
      },
    };
    const sets: Partial<ShopReading>[][] = [
      [{}],
      [{ torque: 5 }, { torque: 3.6, taken: '2026-05-01' }],
      [{ torque: 5 }, { torque: 2 }, { torque: 9 }],
      [{ worn: true }, { machine: ' vmc-b ' }, { machine: 'VMC-A', torque: 8 }],
      [{ thread: 'M8-6G' }, { thread: 'M8x1' }, { thread: 'nut' }, { material: 'copper' }],
      [
        { style: 'form' },
        { style: 'spiral-point', chamfer: 'plug' },
        { chamfer: 'taper', style: 'form' },
      ],
      [{ torque: 0.1 }, { torque: 100 }, { torque: 0 }],
      [{ taken: 'today' }, { taken: '2026-13-01' }],
      [{ own: { name: 'Rotor steel', group: 'P', hardness: { value: 220, scale: 'HB' } } }],
      [],
    ];
    return kept('readings', sets, (set) => {
      const readings = set.map((more) => ({ ...reading, ...more }));
      const key = { thread: 'M8', material: 'steel-low', machine: 'VMC-B' } as const;
      return {
        factors: readings.map(readingFactor),
        scale: learnedScale(readings, key),
        own: learnedScale(readings, { ...key, ownName: 'Rotor steel' }),
        nut: learnedScale(readings, { ...key, thread: 'nut' }),
      };
    });
  });
});
