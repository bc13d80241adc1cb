/** Every number that a lesson draws or says is the core's. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { CHAMFER_CLASSES, findMaterial, planHole, readThread, type HoleRequest } from '../../core';
import { chamferOf } from '../../core/chamfer/classes';
import { chamferStudy } from '../../core/plan/chamfer-study';
import { facts } from '../../components/lesson/blind-holes/facts';
import { DepthExplorer } from '../../components/lesson/blind-holes/DepthExplorer';
import {
  chartSpan,
  depthSteps,
  explore,
  limitSpan,
  neededShoulder,
  threadLimitsFor,
  type ThreadOption,
} from '../../components/lesson/blind-holes/explore';
import { guessVerdict } from '../../components/lesson/blind-holes/guessVerdict';
import { JOBS, TRY_THREADS } from '../../components/lesson/blind-holes/jobs';
import { chamferFacts } from '../../components/lesson/chamfer-classes/facts';
import { PLATE } from '../../components/lesson/chamfer-classes/jobs';
import { loadChart, loadShare, type LoadCase } from '../../components/lesson/chamfer-classes/load';
import { namingFacts } from '../../components/lesson/naming-a-tap/facts';
import { pictured, told } from '../../components/lesson/naming-a-tap/turn';
import { planned, tapOf } from '../../components/lesson/planned';
import { plannerAddress } from '../../components/address/request';
import { FIELDS } from '../../components/planner/inputs';
import { attempt } from '../../components/planner/state';
import { readAddress } from '../../components/state/address';

afterEach(cleanup);

function option(text: string): ThreadOption {
  const read = readThread(text);
  if (!read.ok) throw new Error(text);
  const { designation, diameter, pitch, system } = read.value;
  return { designation, diameter, pitch, system: system === 'metric' ? 'metric' : 'inch' };
}

const THREADS = TRY_THREADS.map(option);
const close = (value: number, expected: number) => expect(value).toBeCloseTo(expected, 9);

describe('thread depth against hole depth', () => {
  test.each(THREADS)('the needed depth is the plan’s: $designation', (thread) => {
    for (const chamfer of CHAMFER_CLASSES) {
      const fullThread = thread.diameter;
      const plan = planned({
        thread: thread.designation,
        fullThread,
        hole: { kind: 'blind' },
        material: 'steel-medium',
      });
      const { depth } = tapOf(plan, 'spiral-flute', chamfer);
      const needed = neededShoulder(thread, chamferOf(chamfer, thread.system), fullThread);
      close(needed.promised, depth.shoulder);
      close(needed.middle, depth.nominal.shoulder);
    }
  });

  test.each(THREADS)(
    'every point of every band is what the plan would give: $designation',
    (thread) => {
      const trial = { thread, chamfer: 'plug', fullThread: thread.diameter } as const;
      const { model } = explore(trial, 'mm');
      for (const [index, band] of model.bands.entries()) {
        for (const { x, low } of band.data) {
          const asked: HoleRequest = {
            thread: thread.designation,
            fullThread: x,
            hole: { kind: 'blind', limit: { at: 'shoulder', depth: x } },
            material: 'steel-medium',
          };
          const tap = tapOf(planned(asked), 'spiral-flute', CHAMFER_CLASSES[index]!);
          close(low, tap.depth.fullThread);
        }
      }
    },
  );

  test('a longer chamfer never gives more thread, and a deeper hole never less', () => {
    for (const thread of THREADS) {
      const { model } = explore({ thread, chamfer: 'plug', fullThread: null }, 'mm');
      for (const [longer, shorter] of model.bands
        .slice(1)
        .map((band, i) => [model.bands[i]!, band] as const)) {
        longer.data.forEach(({ low }, i) => expect(low).toBeLessThan(shorter.data[i]!.low));
      }
      for (const { data } of model.bands) {
        data.slice(1).forEach(({ low }, i) => expect(low).toBeGreaterThan(data[i]!.low));
      }
    }
  });

  test('limits of the controls lie within the chart', () => {
    for (const thread of THREADS)
      for (const unit of ['mm', 'in'] as const) {
        const span = chartSpan(thread, unit);
        const steps = depthSteps(thread, unit);
        expect(steps.length).toBeGreaterThan(3);
        expect(steps.length).toBeLessThanOrEqual(9);
        expect(span.x[0]).toBeLessThan(span.x[1]);
        expect(limitSpan(thread).min).toBeLessThan(limitSpan(thread).max);
        const deepest = neededShoulder(
          thread,
          chamferOf('plug', thread.system),
          threadLimitsFor(thread).max,
        );
        expect(deepest.promised).toBeLessThanOrEqual(limitSpan(thread).max + 1e-9);
      }
  });

  test('says whether it fits, and what one gets where it does not', () => {
    const thread = option('M8x1.25-6H');
    const fits = explore({ thread, chamfer: 'semi-bottoming', fullThread: 16, limit: 22 }, 'mm');
    expect(fits).toMatchObject({ fits: true });
    expect(fits.sentence).toContain('shoulder at 21.0 mm');
    expect(fits.sentence).toContain('1.0 mm to spare');
    const short = explore({ thread, chamfer: 'plug', fullThread: 16, limit: 22 }, 'mm');
    expect(short).toMatchObject({ fits: false });
    expect(short.sentence).toContain('13.88 mm of full thread');
  });

  test.each([
    [30, /that is it/],
    [25, /only to 15\.0 mm/],
    [41, /11\.0 mm deeper than it must be/],
  ])('answers a guess of %d', (guess, expected) => {
    const trial = {
      thread: option('M20x2.5-6H'),
      chamfer: 'semi-bottoming',
      fullThread: 20,
    } as const;
    expect(guessVerdict(guess, trial, 'mm')).toMatch(expected);
  });

  test('the controls come with the guess, and the guess stays on the figure', async () => {
    const thread = option('M8x1.25-6H');
    const big = {
      thread: option('M20x2.5-6H'),
      chamfer: 'semi-bottoming',
      fullThread: 20,
    } as const;
    render(
      <DepthExplorer
        name="d"
        threads={[thread]}
        controls={['fullThread']}
        start={{ thread, chamfer: 'semi-bottoming', fullThread: 16 }}
        guess={{ question: 'How deep?', trial: big }}
      />,
    );
    expect(screen.queryByLabelText(/^Full thread/)).toBeNull();
    const field = screen.getByLabelText(/your guess/);
    fireEvent.input(field, { target: { value: '28' } });
    fireEvent.submit(field.closest('form')!);
    expect(screen.getByLabelText(/^Full thread/)).toBeTruthy();
    // What draws the chart is fetched now.
    expect((await screen.findAllByText('your guess 28.0 mm')).length).toBeGreaterThan(0);
  });
});

describe('what the lesson on blind holes says', () => {
  // Worked by hand: 16 + 3 × 1.25 + 1.25, and its like. Derived; the same sums stand in mechanics of the trade.
  test('the pump housing', () => {
    expect(facts.housing).toMatchObject({
      shoulderMm: '21.0\u00a0mm',
      middle: '20.38\u00a0mm',
      room: '4',
      longer: '3.5–5.5',
    });
    expect(facts.housing.longerNeeds).toContain('24.13');
  });

  test('the quarter rule leaves M20x2.5, 20 deep, two pitches, and 15 mm of thread', () => {
    expect(facts.foot).toMatchObject({
      room: '2',
      obtainable: '15.0\u00a0mm',
      needs: '30.0\u00a0mm',
    });
  });

  test('the valve cover is never called possible', () => {
    const plan = planned(JOBS.cover);
    expect(plan.taps.every(({ verdict, process }) => verdict === 'no' || process === 'mill')).toBe(
      true,
    );
    expect(facts.cover).toMatchObject({
      room: '1',
      shortestGives: '12.0\u00a0mm',
      usualGives: '10.5\u00a0mm',
    });
  });

  test.each(Object.entries(JOBS))(
    'the link to the planner plans the same hole: %s',
    (_, request) => {
      for (const unit of ['mm', 'in'] as const) {
        const address = plannerAddress(request, unit);
        const { values, notes } = readAddress(address.slice(address.indexOf('?')), FIELDS);
        expect(notes).toEqual([]);
        const direct = planHole(request);
        const { plan } = attempt(values, unit);
        if (!direct.ok || !plan) throw new Error(address);
        expect(plan.taps.map(({ verdict }) => verdict)).toEqual(
          direct.value.taps.map(({ verdict }) => verdict),
        );
        expect(plan.taps[0]!.depth.shoulder).toBeCloseTo(direct.value.taps[0]!.depth.shoulder, 2);
      }
    },
  );
});

describe('chamfer against torque and tooth load', () => {
  const study = chamferStudy(PLATE, 'straight-flute', 5);
  if (!study.ok || PLATE.hole.kind !== 'through') throw new Error('PLATE');
  const { thickness } = PLATE.hole;
  const { kc11, mc, friction } = findMaterial('steel-medium')!;
  const load: LoadCase = {
    thread: PLATE.thread,
    major: 10,
    pitch: 1.5,
    hole: study.value.hole,
    drill: '8.5 mm',
    flutes: study.value.flutes,
    system: 'metric',
    materials: [{ id: 'steel-medium', kc11, mc, friction }],
  };

  test('every point is the study’s', () => {
    const { model } = loadChart(load, { threads: 5, thickness, material: 'steel-medium' }, 'mm');
    for (const { x, low, mid, high } of model.torque[0]!.data) {
      const point = study.value.curve.find(({ threads }) => Math.abs(threads - x) < 1e-9)!;
      expect([low, mid, high]).toEqual([
        point.torque.low,
        point.torque.expected,
        point.torque.high,
      ]);
    }
    for (const { x, mid } of model.load[0]!.data) {
      const point = study.value.curve.find(({ threads }) => Math.abs(threads - x) < 1e-9)!;
      expect(mid).toBe(point.toothLoad);
    }
    expect(model.here).toEqual({
      threads: 5,
      torque: study.value.here.torque.expected,
      load: study.value.here.toothLoad,
    });
  });

  // First-tooth loads of M10x1.5 in an 8.5 hole, kc 1600/0.25: 359 N at 1.5 threads, 144 N at 5. Derived.
  test('the load that is left from 1.5 to 5 threads', () => {
    const trial = { threads: 5, thickness, material: 'steel-medium' } as const;
    const { from, to, share } = loadShare(load, trial, 1.5, 5);
    expect(Math.round(from)).toBe(359);
    expect(Math.round(to)).toBe(144);
    expect(share).toBeCloseTo(144 / 359, 2);
    expect(chamferFacts).toMatchObject({
      shortLoad: '360 N',
      longLoad: '140 N',
      shareOfShort: '40 %',
    });
  });

  test('thin plate bends the line, and says so', () => {
    const thin = loadChart(load, { threads: 5, thickness: 2.5, material: 'steel-medium' }, 'mm');
    expect(thin.model.torque).toHaveLength(2);
    expect(thin.model.thinFrom).toBeCloseTo(2.5 / 1.5, 9);
    expect(thin.sentence).toMatch(/holds 47 % of that chamfer/);
  });
});

describe('the turned face', () => {
  // Common practice: a face that leans with the thread's own hand draws chips back, against it drives them ahead.
  test('all 24 combinations of face, hand, hole and chip, and the mirror', () => {
    for (const hole of ['blind', 'through'] as const)
      for (const chips of ['long', 'short'] as const)
        for (const [lean, right] of [
          [20, 'back'],
          [0, 'stays'],
          [-20, 'ahead'],
        ] as const) {
          const turned = { lean, chips, hole, cut: 'right' } as const;
          expect(pictured(turned).course).toBe(right);
          expect(pictured({ ...turned, lean: -lean, cut: 'left' }).course).toBe(right);
          expect(told(turned)).toBe(told({ ...turned, lean: -lean, cut: 'left' }));
        }
  });

  test('a chip pushed onto a floor is never called well', () => {
    expect(told({ lean: -10, cut: 'right', chips: 'long', hole: 'blind' })).toMatch(/no way out/);
    expect(told({ lean: -10, cut: 'right', chips: 'long', hole: 'through' })).not.toMatch(/no way/);
  });

  test('the names in the text are the plan’s first choices', () => {
    expect(namingFacts.housingTap).toBe('spiral flute, 2–3 threads, semi-bottoming (form C)');
    expect(namingFacts.bracketTap).toMatch(/^spiral point, /);
    expect(namingFacts.galleryTap).not.toMatch(/^spiral point/);
  });
});
