/** The lesson on speed, feed and the cycle: its charts and sums are the core's, and agree with sums by hand. */

import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import {
  checked,
  drifted,
  size,
  type DriftCase,
} from '../../components/lesson/speed-feed-and-cycle/drift';
import { DriftExplorer } from '../../components/lesson/speed-feed-and-cycle/DriftExplorer';
import { cycleFacts, studied } from '../../components/lesson/speed-feed-and-cycle/facts';
import { COVER, HUB, LEVER, MANIFOLD } from '../../components/lesson/speed-feed-and-cycle/jobs';
import { reached } from '../../components/lesson/speed-feed-and-cycle/reach';
import { ReachExplorer } from '../../components/lesson/speed-feed-and-cycle/ReachExplorer';

afterEach(cleanup);

const M8: DriftCase = { thread: 'M8x1.25-6H', pitch: 1.25, depth: 20 };

describe('drift of a rounded feed', () => {
  // By hand: 500 · 1.25 / 25.4 = 24.6063 in/min; F25 over 16 turns: 16 · (25 · 25.4 / 500 − 1.25) = 0.32 mm.
  test('F25 at 500 rev/min is a third of a millimetre out, F24.61 is not', () => {
    const whole = checked(M8, 500, 0);
    expect(whole.programmed).toBe(25);
    const two = checked(M8, 500, 2);
    expect(two.exact).toBeCloseTo(24.6063, 4);
    expect(two.programmed).toBe(24.61);
    expect(size(two)).toBeCloseTo(16 * Math.abs((24.61 * 25.4) / 500 - 1.25), 9);
    expect(two.verdict).toBe('good');
    const typed = studied({ ...MANIFOLD, feed: 25 }).typed!;
    expect(typed.drift).toBeCloseTo(0.32, 9);
    expect(typed.verdict).toBe('refuse');
  });

  test('508 rev/min needs no decimals: 508 · 1.25 = 635 mm = 25 in', () => {
    expect(size(checked(M8, 508, 0))).toBeCloseTo(0, 9);
    expect(drifted(M8, { rpm: 508, places: 0 }, 'mm').sentence).toContain('F25 in place of F25');
  });

  test('the chart ends at the drift it speaks of, in either unit', () => {
    for (const unit of ['mm', 'in'] as const) {
      const { chart, sentence } = drifted(M8, { rpm: 500, places: 0 }, unit);
      const drift = size(checked(M8, 500, 0));
      const last = chart.panels[0]!.series[0]!.data.at(-1)!;
      expect(last.mid! * (unit === 'mm' ? 1 : 25.4)).toBeCloseTo(drift, 9);
      expect(sentence).toContain(unit === 'mm' ? `${drift.toFixed(3)} mm` : ' in ');
      expect(chart.title.split(' ').length).toBeLessThanOrEqual(15);
    }
  });

  test('the guess stays in words, then the decimals can be chosen', () => {
    render(
      <DriftExplorer
        name="d"
        one={M8}
        start={{ rpm: 500, places: 0 }}
        controls={['places']}
        guess="How far?"
      />,
    );
    fireEvent.input(screen.getByLabelText(/your guess/), { target: { value: '0.1' } });
    fireEvent.click(screen.getByRole('button', { name: 'That is my guess' }));
    expect(screen.getByRole('status').textContent).toContain('You guessed 0.1 mm');
    fireEvent.click(screen.getByLabelText('two'));
    expect(screen.getByRole('status').textContent).toContain('F24.61');
  });
});

describe('speed that is reached', () => {
  const one = { thread: 'M5x0.8-6H', pitch: 0.8, travel: 12.8 };

  // By hand: 16 turns, half of them to speed up: n² = 2 · 8 · 20 · … = 20 · 16, so n = √320 rev/s.
  test('16 turns at 20 rev/s² end at 60 √320 rev/min, and time stands still above', () => {
    const most = 60 * Math.sqrt(320);
    const { sentence } = reached(one, { rpm: 2000, acceleration: 20 }, 'mm');
    expect(sentence).toContain(`turns back at ${Math.round(most)} rev/min`);
    const at = (rpm: number) =>
      reached(one, { rpm, acceleration: 20 }, 'mm').chart.panels[0]!.here!;
    expect(at(2000).y).toBeCloseTo(4 * Math.sqrt(16 / 20), 9);
    expect(at(4000).y).toBeCloseTo(at(2000).y, 9);
    expect(at(600).y).toBeGreaterThan(at(1000).y);
  });

  test('the chart of the page stands until a change; a number outside the limits clears it', async () => {
    const charts = () => document.querySelectorAll('svg.fig-svg').length;
    render(
      <ReachExplorer name="r" one={one} start={{ rpm: 1000, acceleration: 20 }}>
        <p>As built</p>
      </ReachExplorer>,
    );
    expect(screen.getByText('As built')).toBeTruthy();
    expect(charts()).toBe(0);
    const box = screen.getByRole('textbox', { name: /Programmed speed/ });
    fireEvent.input(box, { target: { value: '9000' } });
    expect(screen.queryByText('As built')).toBeNull();
    fireEvent.input(box, { target: { value: '2000' } });
    await waitFor(() => expect(charts()).toBe(2));
    expect(screen.queryByText('As built')).toBeNull();
    fireEvent.input(box, { target: { value: '9000' } });
    expect(charts()).toBe(0);
    expect(document.body.textContent).toContain('between 200 rev/min and 4000 rev/min');
  });
});

describe('what the text says', () => {
  test('twice the speed of the short hole brings next to nothing', () => {
    const slow = studied(COVER);
    const fast = studied({ ...COVER, rpm: 2 * slow.rpm });
    expect(fast.time.total / slow.time.total).toBeGreaterThan(0.9);
    expect(slow.reachable).toBeLessThan(2 * slow.rpm);
  });

  test('the chosen speeds lie in their ranges', () => {
    for (const job of [MANIFOLD, HUB, LEVER]) expect(studied(job).sensible).toBe(true);
  });

  test('a worn tap stalls the small spindle on little power', () => {
    expect(parseFloat(cycleFacts.bearing.sharp)).toBeGreaterThan(
      parseFloat(cycleFacts.bearing.spindle),
    );
    expect(parseFloat(cycleFacts.bearing.power)).toBeLessThan(2);
  });

  test('400 turns of 1.5 mm are 600 mm a minute', () => {
    expect(cycleFacts.lever.feed).toBeCloseTo(400 * 1.5, 9);
    expect(cycleFacts.shortDrift).toBe('1');
  });
});
