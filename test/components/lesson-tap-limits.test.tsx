/** The lesson on class limits and tap limits: bars and sentences against printed limits. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import {
  limitFacts,
  limitsOf,
  matched,
  tapOf,
  threadOf,
} from '../../components/lesson/class-and-tap-limits/facts';
import { MATCHES } from '../../components/lesson/class-and-tap-limits/jobs';
import { layerPicture } from '../../components/lesson/class-and-tap-limits/layer';
import { held, type LimitCase } from '../../components/lesson/class-and-tap-limits/limits';
import { LimitExplorer } from '../../components/lesson/class-and-tap-limits/LimitExplorer';

afterEach(cleanup);

const CASE: LimitCase = {
  thread: '1/4-20 UNC',
  classes: ['2B', '3B'].map((each) => ({
    class: each,
    limits: limitsOf(threadOf(`1/4-20 UNC-${each}`)),
  })),
  taps: [1, 2, 3, 4, 5, 6, 7, 8].map((number) => tapOf('1/4-20 UNC-2B', 'H', number)),
};
const verdict = (tap: number, of: string, layer = 0) =>
  held(CASE, { class: of, number: tap, layer })?.tap.verdict;

describe('a tap against a class', () => {
  // ASME B1.1: 1/4-20 pitch diameter 2B .2175 to .2224, 3B .2175 to .2211; ASME B94.9: H5 .2195 to .2200.
  test('the printed limits of 1/4-20', () => {
    expect(limitFacts.second).toBe('0.2175 to 0.2224 in');
    expect(limitFacts.third).toBe('0.2175 to 0.2211 in');
    expect(limitFacts.h5).toBe('0.2195 to 0.2200 in');
    expect(limitFacts.h3).toBe('0.2185 to 0.2190 in');
    expect(limitFacts.h5Up).toBeCloseTo(2.5, 9);
  });

  test('H3 and H5 suit both classes, H8 only the wider one, and then as a gamble', () => {
    expect(verdict(3, '3B')).toBe('inside');
    expect(verdict(5, '2B')).toBe('inside');
    expect(verdict(5, '3B')).toBe('inside');
    expect(verdict(8, '3B')).toBe('outside');
    expect(verdict(8, '2B')).toBe('inside');
  });

  test('the lists name a tap for every thread of the table, and none is outside', () => {
    for (const text of MATCHES) {
      const tap = matched(text).taps.find(({ listed, system }) => listed && system !== 'ISO');
      expect(tap, text).toBeDefined();
      expect(tap!.verdict, text).not.toBe('outside');
    }
  });

  test('the sentence counts what is left in thousandths', () => {
    const { sentence } = held(CASE, { class: '2B', number: 5, layer: 0 })!;
    expect(sentence).toContain('may wear by 2.0 thousandths');
    expect(sentence).toContain('may cut 2.4 large');
  });
});

describe('a coating', () => {
  // By hand: 10 µm is .000394 in; four of them take 1.6 thousandths off, so H3 (.2185) no longer lets the GO in.
  test('10 µm push H3 out at the small end', () => {
    expect(verdict(3, '2B')).toBe('inside');
    expect(verdict(3, '2B', 10)).toBe('outside');
    const { sentence, zone } = held(CASE, { class: '2B', number: 3, layer: 10 })!;
    expect(zone.min - 0.2175).toBeCloseTo((4 * 0.01) / 25.4, 9);
    expect(sentence).toContain('takes 1.6 thousandths off');
    expect(sentence).toContain('too small');
  });

  // Zinc of .0002 to .0003 in on 1/4-20 UNC-2B: the hole before plating lies in .2187 to .2232, by hand.
  test('the worked example of the inch cover', () => {
    expect(limitFacts.inch.bare).toBe('0.2187 to 0.2232 in');
    expect(limitFacts.inch.shrink).toBe('0.0008 to 0.0012 in');
    expect(limitFacts.inch.listed).toContain('H5 inside');
    expect(limitFacts.shrink).toBeCloseTo(1.2, 9);
  });

  test('the drawing lifts the flank by twice the layer, the crest by once', () => {
    const outlines = layerPicture().marks.flatMap((mark) =>
      mark.kind === 'path' && /^lb-(edge|other)$/.test(mark.role) ? [mark.d] : [],
    );
    const points = (d: string) =>
      [...d.matchAll(/([\d.]+) ([\d.]+)/g)].map((m) => [+m[1]!, +m[2]!]);
    const [bare, coated] = [points(outlines[0]!), points(outlines[1]!)];
    const crest = bare[1]![1]! - coated[1]![1]!;
    const wider = bare[0]![0]! - coated[0]![0]!;
    expect(crest).toBeCloseTo(24, 6);
    // Along the radius: how far up the flank moved, from how far it moved sideways at one height.
    expect(wider / Math.tan(Math.PI / 6)).toBeCloseTo(2 * crest, 1);
  });
});

describe('the live bar', () => {
  const start = { class: '2B', number: 5, layer: 0 };

  test('a guess opens it; another tap changes the sentence', () => {
    render(
      <LimitExplorer
        name="l"
        one={CASE}
        start={start}
        controls={['number']}
        guess={{ question: 'How far?', answer: 2.5 }}
      />,
    );
    fireEvent.input(screen.getByLabelText(/your guess/), { target: { value: '5' } });
    fireEvent.click(screen.getByRole('button', { name: 'That is my guess' }));
    expect(screen.getByRole('status').textContent).toContain('You guessed 5. It is 2.5 thou');
    fireEvent.click(screen.getByLabelText('H2'));
    expect(screen.getByRole('status').textContent).toContain('H2 suits class 2B');
  });

  test('a layer outside the limits clears the bar and says so', () => {
    render(<LimitExplorer name="l" one={CASE} start={start} controls={['layer']} />);
    expect(document.querySelectorAll('svg.fig-svg').length).toBe(1);
    const box = screen.getByRole('textbox', { name: /Coating/ });
    fireEvent.input(box, { target: { value: '99' } });
    expect(document.querySelectorAll('svg.fig-svg').length).toBe(0);
    expect(document.body.textContent).toContain('between 0 µm and 15 µm');
  });
});
