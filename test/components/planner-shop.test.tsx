/** The planner with the shop's own numbers: its material, and what it read on its machines. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { planHole } from '../../core';
import { Card } from '../../components/job/Card';
import { initialValues } from '../../components/state/address';
import { FIELDS, type Inputs } from '../../components/planner/inputs';
import { fieldProblemText } from '../../components/planner/problems';
import { ShopLine } from '../../components/planner/ShopLine';
import { attempt } from '../../components/planner/state';
import { DEVICE } from '../../components/state/device';
import { withReading } from '../../components/state/readings';
import { changeShelf } from '../../components/state/shelf';
import type { ShopReading } from '../../core/plan/learned';

beforeEach(() => localStorage.clear());
afterEach(cleanup);

const JOB: Inputs = {
  ...initialValues(FIELDS),
  thread: 'M8x1.25-6H',
  hole: 'blind',
  depth: '16',
  material: 'stainless-austenitic',
};

const torqueOf = (values: Inputs) => {
  const { plan } = attempt(values, 'mm');
  return plan?.taps.find(({ verdict }) => verdict === 'best')?.torque.expected ?? Number.NaN;
};

const complaint = (changes: Partial<Inputs>) => {
  const { problems, plan } = attempt({ ...JOB, ...changes }, 'mm');
  expect(plan).toBeNull();
  const [first] = problems;
  return `${first?.field}: ${first && fieldProblemText(first.field, first.problem, 'mm')}`;
};

describe('a material of the shop’s own', () => {
  test('its force takes the place of the handbook’s, in proportion', () => {
    const half = torqueOf({ ...JOB, own: 'Blue rack', kc: '1000', mc: '0.25' });
    const whole = torqueOf({ ...JOB, own: 'Blue rack', kc: '2000', mc: '0.25' });
    expect(whole / half).toBeCloseTo(2, 6);
    expect(whole).not.toBeCloseTo(torqueOf(JOB), 2);
  });

  test('what is wrong stands at its field, and says what to type', () => {
    expect(complaint({ kc: '2000' })).toBe(
      'own: Enter what you call the material, so that its card says which numbers were used.',
    );
    expect(complaint({ own: 'Blue rack', kc: '20' })).toMatch(/^kc: .*between 50 and 8000/);
    expect(complaint({ own: 'Blue rack', mc: '0.2' })).toMatch(/^mc: .*says nothing without/);
    expect(complaint({ own: 'Blue rack', hardness: 'very' })).toMatch(/^hardness: .*30 HRC/);
    expect(complaint({ own: 'x'.repeat(41), kc: '2000' })).toMatch(/^own: Keep the name to 40/);
  });

  test('stands by its name on the card', () => {
    const values = { ...JOB, own: 'Blue rack', kc: '2000' };
    const { plan, request } = attempt(values, 'mm');
    render(
      <Card
        {...{ plan: plan!, request: request!, values, unit: 'mm', example: false }}
        address=""
        made=""
      />,
    );
    expect(screen.getByText(/Blue rack: austenitic stainless/)).toBeTruthy();
  });
});

describe('what was read on the machine', () => {
  const read = (machine: string, torque: number) => ({
    thread: 'M8x1.25-6H',
    material: 'stainless-austenitic' as const,
    machine,
    taken: '2026-03-14',
    torque,
    style: 'spiral-flute' as const,
    chamfer: 'semi-bottoming' as const,
    worn: false,
    hole: { kind: 'blind' as const },
    fullThread: 16,
  });
  const keep = (reading: ShopReading) =>
    changeShelf(localStorage, DEVICE, (kept) => withReading(kept, reading));
  const shown = () => {
    const { plan, request } = attempt(JOB, 'mm');
    return render(<ShopLine plan={plan!} request={request!} unit="mm" />);
  };

  test('nothing is said where nothing was kept, or for another thread', () => {
    shown();
    expect(screen.queryByText('Your shop')).toBeNull();
    keep({ ...read('VMC-A', 6), thread: 'M10x1.5-6H' });
    cleanup();
    shown();
    expect(screen.queryByText('Your shop')).toBeNull();
  });

  test('scales this plan, with its machine and its day, and goes when it is removed', async () => {
    const outcome = planHole({
      thread: JOB.thread,
      fullThread: 16,
      hole: { kind: 'blind' },
      material: 'stainless-austenitic',
    });
    const planned = outcome.ok ? outcome.value.taps[0]!.torque.expected : 0;
    keep(read('VMC-A', planned * 1.5));
    shown();
    expect(await screen.findByText(/On VMC-A: 1\.5 times the handbook.*2026-03-14/)).toBeTruthy();
    expect(screen.getByText('Torque, sharp')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: /^Remove/ }));
    expect(screen.queryByText(/On VMC-A/)).toBeNull();
  });
});
