/**
 * A hole answers the same wherever it is opened: `plan(read(address(request))) = plan(request)`, in both
 * units, and through a kept job. What the plan should be is for the core's tests to say.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planDrawing, planHole, type HoleRequest } from '../../core';
import { exactLength, exactNumber } from '../../components/address/exact';
import { plannerAddress, requestInputs } from '../../components/address/request';
import { readLength } from '../../components/fields/readLength';
import { readTyped } from '../../components/fields/readNumber';
import { holeToKeep, plannedHole } from '../../components/jobs/planned';
import { EMPTY, readContents, writeContents, type Job } from '../../components/jobs/shape';
import { FIELDS, INPUT_NAMES } from '../../components/planner/inputs';
import { readInputs } from '../../components/planner/request';
import { readAddress } from '../../components/state/address';
import { REQUESTS } from '../core/plan/many-requests';

const UNITS = ['mm', 'in'] as const;
type Unit = (typeof UNITS)[number];

/** The request that somebody who opens the address asks. */
function opened(request: HoleRequest, unit: Unit): HoleRequest | null {
  const address = plannerAddress(request, unit);
  const { values, notes } = readAddress(address.slice(address.indexOf('?')), FIELDS);
  expect(notes).toEqual([]);
  expect(values.units).toBe(unit === 'in' ? 'in' : '');
  return readInputs(values, unit).request;
}

/** Kept as part of a job, written as a file, opened again. */
function kept(request: HoleRequest, unit: Unit): HoleRequest | null {
  const hole = holeToKeep(requestInputs(request, unit, 6), '1');
  const head = { job: '', part: '', operation: '', machine: '' };
  const job: Job = { id: 'a', revision: 0, ...head, holes: [hole] };
  const read = readContents(writeContents({ ...EMPTY, jobs: [job] }));
  if (read.state !== 'read') throw new Error('not read');
  expect(read.contents.unread).toEqual([]);
  return plannedHole(read.contents.jobs[0]!.holes[0]!).request;
}

const same = (request: HoleRequest, back: HoleRequest | null) => {
  expect(back).not.toBeNull();
  expect(planHole(back!)).toEqual(planHole(request));
};

/** Tried at each thread and material of the many: what no plan of them happens to have. */
const EXTRA: Partial<HoleRequest>[] = [
  { entry: { angle: 12.5, flat: true } },
  { entry: { angle: 7 } },
  { crossing: { kind: 'bore', width: 6.35, from: 4.2, cut: 'after' } },
  { crossing: { kind: 'slot', width: 1 / 3, cut: 'before' } },
  { counterbore: { diameter: 14.3, depth: 25.4 / 7 } },
  { cored: true, later: ['plate', 'harden'], duty: 'lifting' },
  { tool: { substrate: 'carbide', coated: true } },
  { tool: { substrate: 'hss' } },
  { tapWeb: 3.1, externalCentre: 1 / 3, drillPoint: 130 },
  { coating: { thickness: [0.0051, 0.1 / 12] } },
  { learned: { factor: 1.1 / 3, band: 1.07 } },
  { spindle: { drive: 'floating', torque: 100 / 7, maxRpm: 2999.5, acceleration: 33.3 } },
  { ownMaterial: { name: 'Rotor & Söhne', group: 'P', kc11: 1234.5, mc: 0.21 } },
];

describe.each(UNITS)('an address in %s', (unit) => {
  it('asks each of the many holes again, to the last bit', () => {
    for (const request of REQUESTS) same(request, opened(request, unit));
  });

  it('carries every part of a request', () => {
    for (const extra of EXTRA) {
      const request = { ...REQUESTS[0]!, ...extra };
      expect(opened(request, unit)).toEqual(request);
      expect(kept(request, unit)).toEqual(request);
    }
  });

  it('asks the same of a machine of which nothing but its drive is known', () => {
    // The form's usual drive counts as assumed, and is said to be; nothing else may differ.
    const answer = (request: HoleRequest) => {
      const plan = planHole(request);
      if (!plan.ok) throw new Error('not planned');
      return { ...plan.value, assumptions: null };
    };
    for (const drive of ['synchronous', 'floating', 'reversing-head', 'hand'] as const) {
      const request: HoleRequest = { ...REQUESTS[0]!, spindle: { drive } };
      expect(answer(opened(request, unit)!)).toEqual(answer(request));
    }
  });

  it('and so does a kept job', () => {
    for (const request of REQUESTS.filter((each) => planHole(each).ok)) {
      same(request, kept(request, unit));
    }
  });

  it('carries any depths', () => {
    const size = fc.double({ min: 0.001, max: 900, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.boolean(), (a, b, blind) => {
        const [fullThread, deep] = [Math.min(a, b), Math.max(a, b)];
        const request: HoleRequest = {
          thread: 'M8',
          material: 'steel-low',
          fullThread,
          hole: blind
            ? { kind: 'blind', limit: { at: 'point', depth: deep } }
            : { kind: 'through', thickness: deep, clearBelow: a },
        };
        expect(opened(request, unit)).toEqual(request);
      }),
    );
  });

  it('of a hole drawn at its limit stays ready', () => {
    // As drawings carry it: the drill's own depth is just what the thread needs.
    const lines = Array.from({ length: 42 }, (_, at) => `M8x1.25-6H ↧10 / Ø6.8 ↧${13.5 + at / 8}`);
    const { holes } = planDrawing(lines, {
      material: 'steel-low',
      spindle: { drive: 'synchronous', torque: 30 },
    });
    expect(holes).toHaveLength(42);
    for (const { request } of holes) same(request!, opened(request!, unit));
  });
});

describe('numbers as they are written', () => {
  it.each([
    [16, 'mm', '16'],
    [12.7, 'in', '0.5'],
    [4.7625, 'in', '0.1875'],
    [3.175, 'in', '0.125'],
    [20, 'in', '20 mm'],
    [0.008, 'µm', '8'],
    [19.964, 'mm', '19.964'],
  ] as const)('%d mm in a field of %s is %s', (mm, unit, text) => {
    expect(exactLength(mm, unit)).toBe(text);
  });

  it('come back the same, whatever they are', () => {
    const any = fc.double({ min: 1e-12, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(any, fc.constantFrom('mm', 'in', 'µm'), (mm, unit) => {
        expect(readLength(exactLength(mm, unit), unit)?.mm).toBe(mm);
        expect(readTyped(exactNumber(mm))?.value).toBe(mm);
      }),
    );
  });
});

describe('the fields of a request', () => {
  it('are all written by some hole tried here', () => {
    // Not of the request: what only the card prints, and the material as it was typed.
    const card = ['job', 'part', 'operation', 'machine', 'designation'];
    const all = [...REQUESTS, ...EXTRA.map((extra) => ({ ...REQUESTS[0]!, ...extra }))];
    const written = new Set(all.flatMap((each) => Object.keys(requestInputs(each, 'in', 2))));
    expect(INPUT_NAMES.filter((name) => !written.has(name) && !card.includes(name))).toEqual([]);
  });
});
