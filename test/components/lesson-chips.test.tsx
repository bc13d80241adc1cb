/** The lesson on chips and materials: what it says of a metal is what the planner does with it. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { PACKED_BULKING } from '../../core/chips/room';
import { findMaterial } from '../../core/material/table';
import { chipFacts } from '../../components/lesson/chips-and-materials/facts';
import { CHIP_JOBS, RING, TRY_MATERIALS } from '../../components/lesson/chips-and-materials/jobs';
import { MaterialPicker } from '../../components/lesson/chips-and-materials/MaterialPicker';
import { materialCase } from '../../components/lesson/chips-and-materials/read';
import { roomBars, roomOfChips } from '../../components/lesson/chips-and-materials/room';
import { pictured, told } from '../../components/lesson/chips-and-materials/told';
import { planned } from '../../components/lesson/planned';

afterEach(cleanup);

describe('each metal', () => {
  test.each(TRY_MATERIALS)('%s begins with the planner’s own first tap', (id) => {
    const metal = materialCase(id);
    const plan = planned({
      thread: RING.thread,
      fullThread: RING.fullThread,
      hole: { kind: 'blind' },
      material: id,
    });
    const best = plan.taps.find(({ verdict }) => verdict === 'best');
    expect(told(metal, 'blind').toLowerCase()).toContain(
      (best?.style ?? '').replace('-', ' ').replace('form', 'form tap'),
    );
  });

  // Common practice: iron and brass chip short, and straight flutes are the first choice for a blind hole.
  test('short chips lie in straight flutes, long ones come back up', () => {
    for (const id of ['iron-grey', 'brass-free'] as const) {
      expect(told(materialCase(id), 'blind')).toMatch(/straight flute/);
    }
    for (const id of ['steel-low', 'stainless-austenitic', 'titanium'] as const) {
      expect(told(materialCase(id), 'blind')).toMatch(/spiral flute/);
    }
  });

  test('a tap that makes no chips is never offered for iron or brass, and has no face to draw', () => {
    for (const id of ['iron-grey', 'brass-free'] as const) {
      expect(told(materialCase(id), 'closed')).not.toMatch(/form tap/);
    }
    const steel = materialCase('steel-low');
    expect(told(steel, 'closed')).toMatch(/form tap/);
    expect(pictured(steel, 'closed')).toBeNull();
    expect(pictured(steel, 'blind')?.course).toBe('back');
  });

  test('what it must be handled with is said', () => {
    expect(told(materialCase('titanium'), 'blind')).toMatch(/hardens.*springs back.*burn/);
    expect(told(materialCase('iron-grey'), 'blind')).toMatch(/dust/);
  });
});

describe('room for chips', () => {
  test('the bars are the core’s: solid metal, flute, and each bulk of it packed', () => {
    const { solid, section, packed } = roomOfChips();
    const highs = roomBars().rows.map(({ high }) => high);
    expect(highs).toEqual([solid, section, ...packed.map(({ room }) => room)]);
    for (const { bulk, room } of packed) expect(room).toBeCloseTo(solid * PACKED_BULKING[bulk], 6);
    // What the text says: even short chips want more than the flute, long ones most.
    expect([...highs].sort((a, b) => a - b)).toEqual(highs);
    expect(Number(chipFacts.fluteTimes)).toBeCloseTo(section / solid, 0);
  });

  test('the worked sum is the solid metal times the bulking', () => {
    expect(chipFacts.packed).toBe(chipFacts.metal * PACKED_BULKING.long);
  });
});

test('the slowest speed is the material’s own', () => {
  expect(chipFacts.slowest).toBe(String(findMaterial('stainless-austenitic')?.speed?.min));
  expect(chipFacts.voluteTap).toMatch(/^straight flute/);
  expect(chipFacts.coverTap).toMatch(/^spiral flute/);
  expect(CHIP_JOBS.cover).toEqual({ ...CHIP_JOBS.volute, material: 'steel-low' });
});

test('choosing a metal and a hole changes what is said, and the way back is there', () => {
  render(<MaterialPicker name="try" materials={TRY_MATERIALS.map(materialCase)} holes />);
  const said = () => screen.getByRole('status').textContent;
  const first = said();
  fireEvent.click(screen.getByRole('radio', { name: 'grey iron' }));
  expect(said()).toMatch(/Grey iron crumbles to dust.*straight flute/);
  fireEvent.click(screen.getByRole('radio', { name: 'Through, must stay clean' }));
  expect(said()).toMatch(/spiral flute/);
  fireEvent.click(screen.getByRole('button', { name: 'Back to the start' }));
  expect(said()).toBe(first);
});
