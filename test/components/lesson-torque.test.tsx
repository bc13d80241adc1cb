/** The lesson on torque: its numbers are the core's, and what its prose claims is so. */
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { StrokeExplorer } from '../../components/lesson/torque/StrokeExplorer';
import { torqueFacts } from '../../components/lesson/torque/facts';
import {
  FLANGE,
  FRAME,
  GLAND,
  SMALL_SPINDLE,
  THIN_PLATE,
} from '../../components/lesson/torque/jobs';
import {
  stroked,
  thinShare,
  type StrokeCase,
  type StrokeTap,
} from '../../components/lesson/torque/stroke';
import { percent, torque } from '../../components/words/format';
import { planHole, type HoleRequest } from '../../core';
import { strokePeak } from '../../core/load/stroke-curve';
import { LOADED_STYLES, tapLoads } from '../../core/plan/tap-load';
import { studyTap } from '../../core/plan/tap-study';
import { WEAR } from '../../core/tap/styles';
import { twistOff } from '../../core/tap/twist';

afterEach(cleanup);

const chamferOf = ({ hole }: HoleRequest) => (hole.kind === 'blind' ? 'semi-bottoming' : 'plug');

function loads(request: HoleRequest) {
  const found = tapLoads(request, chamferOf(request));
  if (!found.ok) throw new Error('no loads');
  return new Map(found.value.map((load) => [load.style, load]));
}

/** As the page builds it for the browser. */
function caseOf(request: HoleRequest): StrokeCase {
  const taps = LOADED_STYLES.flatMap((style): StrokeTap[] => {
    const study = studyTap(request, { style, chamfer: chamferOf(request) });
    if (!study.ok) return [];
    const { thickness: _, travel: __, ...stroke } = study.value.stroke;
    return [{ style, name: style, stroke, torque: study.value.torque }];
  });
  const { hole, thread, material } = request;
  const thickness = hole.kind === 'through' ? hole.thickness : 0;
  return { thread, material, blind: hole.kind === 'blind', thickness, taps };
}

describe('numbers in the text', () => {
  test('the gland’s torque and shares are the plan’s', () => {
    const plan = planHole(GLAND);
    const tap =
      plan.ok &&
      plan.value.taps.find(
        ({ style, chamfer }) => style === 'spiral-flute' && chamfer.class === 'semi-bottoming',
      );
    if (!tap) throw new Error('no plan');
    expect(torqueFacts.sharp).toBe(torque(tap.torque.expected));
    expect(torqueFacts.shareSharp).toBe(percent(tap.tapShare.sharp));
    expect(torqueFacts.shareWorn).toBe(percent(tap.tapShare.worn));
  });

  test('force, section and arm multiply to the torque that is printed', () => {
    const [force, area, radius] = [torqueFacts.force, torqueFacts.area, torqueFacts.radius].map(
      Number,
    );
    const product = (force! * area! * radius!) / 1000;
    expect(torqueFacts.straight).toBe(torque(product));
  });

  test('every fact is used, and every fact used exists', () => {
    const text = readFileSync('site/content/lessons/08-torque.mdx', 'utf8');
    const used = new Set([...text.matchAll(/torqueFacts\.(\w+)/g)].map((match) => match[1]));
    expect([...used].sort()).toEqual(Object.keys(torqueFacts).sort());
  });
});

describe('what the prose claims', () => {
  const gland = loads(GLAND);
  const share = (style: 'spiral-point' | 'spiral-flute' | 'straight-flute' | 'form') =>
    gland.get(style)!.share.worn;

  test('the form tap takes the most torque, and less of its strength than a spiral flute', () => {
    const most = [...gland.values()].reduce((a, b) =>
      b.torque.expected > a.torque.expected ? b : a,
    );
    expect(most.style).toBe('form');
    expect(share('form')).toBeLessThan(share('spiral-flute'));
  });

  test('the spiral point needs the least torque and keeps more of its web than the spiral flute', () => {
    const least = [...gland.values()].reduce((a, b) =>
      b.torque.expected < a.torque.expected ? b : a,
    );
    expect(least.style).toBe('spiral-point');
    expect(gland.get('spiral-point')!.web).toBeGreaterThan(gland.get('spiral-flute')!.web);
  });

  test('a fifth off the web takes half of the strength', () => {
    expect(twistOff(0.8, 1.5, 1) / twistOff(1, 1.5, 1)).toBeCloseTo(0.5, 1);
  });

  test('wear raises the torque by a third to double; twice the thread adds less', () => {
    expect([WEAR.low, WEAR.high]).toEqual([1.3, 2]);
    const deep = loads({ ...GLAND, fullThread: 2 * GLAND.fullThread! }).get('spiral-flute')!;
    const once = gland.get('spiral-flute')!;
    expect(deep.torque.expected / once.torque.expected).toBeLessThan(WEAR.low);
  });

  test('sharp the gland’s tap stays under a third, worn under a half: high enough to watch', () => {
    const { sharp, worn } = gland.get('spiral-flute')!.share;
    expect(sharp).toBeGreaterThan(1 / 4);
    expect(sharp).toBeLessThan(1 / 3);
    expect(worn).toBeLessThan(1 / 2);
  });

  test('the M30 is more than twice what the spindle gives, at about a kilowatt', () => {
    const point = loads(FRAME).get('spiral-point')!;
    expect(point.torque.expected / SMALL_SPINDLE).toBeGreaterThan(2);
    expect(torqueFacts.framePower).toMatch(/^(0\.9\d?|1\.\d) kW$/);
  });
});

describe('the live stroke', () => {
  test('in its own work it peaks at the plan’s torque', () => {
    for (const request of [GLAND, FLANGE]) {
      const job = caseOf(request);
      for (const { style, torque: planned } of job.taps) {
        const { model } = stroked(job, { style, thickness: job.thickness }, 'mm');
        expect(model.band.peak.torque / planned.expected).toBeCloseTo(1, 6);
      }
    }
  });

  test('thin plate gives what the core studies for that plate', () => {
    const { thin, full, share } = thinShare(caseOf(FLANGE), 'spiral-point', THIN_PLATE);
    const plate = studyTap(
      { ...FLANGE, hole: { kind: 'through', thickness: THIN_PLATE } },
      { style: 'spiral-point', chamfer: 'plug' },
    );
    expect(plate.ok && strokePeak(plate.value.stroke).torque).toBeCloseTo(thin, 6);
    expect(share).toBeCloseTo(thin / full, 9);
    expect(share).toBeLessThan(0.75);
  });

  test('asks for a guess, keeps it, then lets the thickness be moved', async () => {
    render(
      <StrokeExplorer
        name="try"
        job={caseOf(FLANGE)}
        start={{ style: 'spiral-point', thickness: 20 }}
        controls={['style', 'thickness']}
        guess={{ question: 'How much?', plate: THIN_PLATE }}
      />,
    );
    expect(document.querySelector('.fig-svg')).toBeNull();
    fireEvent.input(screen.getByLabelText(/your guess/), { target: { value: 'lots' } });
    fireEvent.submit(document.querySelector('form')!);
    expect(screen.getByText(/between 1 and 200 %/)).toBeTruthy();
    fireEvent.input(screen.getByLabelText(/your guess/), { target: { value: '80' } });
    fireEvent.submit(document.querySelector('form')!);
    expect(screen.getByText(/You guessed 80 %/)).toBeTruthy();
    await waitFor(() => expect(document.querySelector('.fig-svg')).not.toBeNull());
    fireEvent.input(screen.getByLabelText(/Thickness of the work/, { selector: 'input' }), {
      target: { value: '999' },
    });
    expect(document.querySelector('.fig-svg')).toBeNull();
    expect(screen.getByText(/Enter a number within the limits/)).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Back to the start' }));
    expect(screen.queryByText(/You guessed/)).toBeNull();
    await waitFor(() => expect(document.querySelector('.fig-svg')).not.toBeNull());
  });
});
