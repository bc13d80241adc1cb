/** The lesson on through holes: what it draws and says is the plan's own. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { CHAMFER_CLASSES } from '../../core';
import { throughReach } from '../../core/hole/through';
import { throughFacts } from '../../components/lesson/through-holes/facts';
import { THROUGH_JOBS } from '../../components/lesson/through-holes/jobs';
import { factsOf, told, type PastCase } from '../../components/lesson/through-holes/past';
import { PastExplorer } from '../../components/lesson/through-holes/PastExplorer';
import { planned, tapOf } from '../../components/lesson/planned';

afterEach(cleanup);

const M8: PastCase = {
  designation: 'M8x1.25-6H',
  major: 8,
  pitch: 1.25,
  hole: 6.8,
  drill: '6.8 mm',
};

describe('travel past the far side', () => {
  test.each(CHAMFER_CLASSES)('is the plan’s, clear or not: %s', (chamfer) => {
    for (const job of [THROUGH_JOBS.bracket, THROUGH_JOBS.fixture]) {
      const plan = planned(job);
      const tap = tapOf(plan, 'spiral-point', chamfer);
      if (job.hole.kind !== 'through') throw new Error('through');
      const { thickness, clearBelow = Infinity } = job.hole;
      const chain = { pitch: 1.25, chamferThreads: tap.chamfer.threads.max, centre: 0 };
      const reach = throughReach({ thickness, clearBelow }, chain);
      expect(reach.tip - reach.short).toBeCloseTo(tap.depth.tip, 9);
      expect(reach.fullThread).toBeCloseTo(tap.depth.fullThread, 9);
      expect(reach.short > 0).toBe(tap.reasons.some(({ code }) => code === 'below-clearance'));
    }
  });

  // Worked by hand: (5.5 + 1) × 1.25 = 8.125; 8.125 − 5 = 3.125. Derived.
  test('depends on the chamfer and not on the thickness', () => {
    for (const thickness of [4, 14, 40]) {
      const chain = { pitch: 1.25, chamferThreads: 5.5, centre: 0 };
      expect(throughReach({ thickness, clearBelow: Infinity }, chain).past).toBeCloseTo(8.125, 9);
    }
    expect(throughFacts.fixture.needed).toMatch(/^8\.13\smm/);
    expect(throughFacts.fixture.by).toMatch(/^3\.13\smm/);
  });

  test('a tap that meets something is told so, and drawn there', () => {
    const trial = { threads: 5.5, thickness: 14, below: 5 };
    expect(told(M8, trial, 'mm')).toMatch(
      /would strike 3\.13 mm.*leaves 10\.88 mm of whole thread/,
    );
    expect(factsOf(M8, trial).tap?.tip).toBeCloseTo(19, 9);
    expect(told(M8, { ...trial, threads: 3 }, 'mm')).toMatch(/0\.0 mm are left/);
    expect(told(M8, { threads: 10, thickness: 2, below: 0 }, 'mm')).toMatch(/not one whole thread/);
  });
});

test('a guess opens the controls, and they answer in either unit', () => {
  render(
    <PastExplorer
      name="p"
      at={M8}
      start={{ threads: 5.5, thickness: 14, below: 16 }}
      controls={['threads', 'below']}
      question="How far?"
    >
      <p>still</p>
    </PastExplorer>,
  );
  expect(screen.queryByLabelText(/^Chamfer/)).toBeNull();
  const field = screen.getByLabelText(/your guess/);
  fireEvent.input(field, { target: { value: '1,25' } });
  fireEvent.submit(field.closest('form')!);
  expect(screen.getByRole('status').textContent).toMatch(/You guessed 1\.25 mm\. It is 8\.13 mm/);
  expect(screen.getByText('still')).toBeTruthy();
  const below = screen.getByLabelText(/^Clear space below/, { selector: 'input' });
  fireEvent.input(below, { target: { value: '0.2 in' } });
  expect(screen.getByRole('status').textContent).toMatch(/would strike/);
  fireEvent.input(below, { target: { value: '99' } });
  expect(screen.getByText(/Enter a number between/)).toBeTruthy();
});

describe('what the lesson says', () => {
  test('what lies beyond decides the tap', () => {
    expect(throughFacts.bracket.tap).toMatch(/^spiral point/);
    expect(throughFacts.gallery.tap).toMatch(/^form/);
    expect(throughFacts.fixture.tap).toMatch(/^spiral flute, 2–3/);
  });

  // (5.5 + 1) × 1.75 = 11.375, and no slip so near that it would count as right. Derived.
  test('the reader’s link', () => {
    const { past, chamfer, middle, tip, pitch } = throughFacts.link;
    expect(past).toBeCloseTo(11.375, 9);
    for (const slip of [chamfer, middle, tip, pitch])
      expect(Math.abs(slip - past)).toBeGreaterThan(0.2);
  });
});
