/** What must hold of the part's fields for every hole: saying more never makes an answer surer than it is. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MATERIAL_IDS, planHole, type HolePlan, type HoleRequest } from '../../../core';

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const thread = fc.constantFrom(
  'M3',
  'M8',
  'M8x1',
  'M12',
  'M20',
  '#6-32',
  '1/4-20',
  '1/2-13',
  'G1/4',
);
const base = fc.record(
  {
    thread,
    material: fc.constantFrom(...MATERIAL_IDS),
    fullThread: length(2, 40),
    hole: fc.oneof(
      fc.record(
        {
          kind: fc.constant('blind' as const),
          limit: fc.record({
            at: fc.constantFrom('shoulder' as const, 'point' as const),
            depth: length(40, 90),
          }),
        },
        { requiredKeys: ['kind'] },
      ),
      fc.record({ kind: fc.constant('through' as const), thickness: length(40, 60) }),
    ),
    coating: fc.record({ thickness: fc.constant([0.004, 0.008] as [number, number]) }),
  },
  { requiredKeys: ['thread', 'material', 'hole'] },
) as fc.Arbitrary<HoleRequest>;
const later = fc.uniqueArray(fc.constantFrom('harden', 'plate', 'anodise', 'weld'), {
  minLength: 1,
});
const duty = fc.constantFrom('lifting', 'pressure', 'structure', 'vehicle', 'medical');
const said = fc.oneof(
  fc.record({ later }),
  fc.record({ duty }),
  fc.record({ cored: fc.constant(true) }),
  fc.record({ entry: fc.record({ angle: length(3.01, 30), flat: fc.boolean() }) }),
  fc.record({ counterbore: fc.record({ diameter: length(22, 60), depth: length(0.1, 60) }) }),
  fc.record({
    crossing: fc.record(
      {
        kind: fc.constantFrom('bore', 'slot'),
        width: length(0.1, 30),
        from: length(0, 40),
        cut: fc.constantFrom('before', 'after'),
      },
      { requiredKeys: ['kind', 'width', 'cut'] },
    ),
  }),
) as fc.Arbitrary<Partial<HoleRequest>>;

const planned = (request: HoleRequest): HolePlan | null => {
  const outcome = planHole(request);
  return outcome.ok ? outcome.value : null;
};
/** 0 none leads, 1 stop, 2 with care, 3 ready. */
function sureness({ taps, warnings }: HolePlan): number {
  if (!taps.some(({ verdict }) => verdict === 'best')) return 0;
  if (warnings.some(({ level }) => level === 'stop')) return 1;
  return warnings.some(({ level }) => level === 'caution') ? 2 : 3;
}

test('whatever is said of the part, the hole is at most to be run with care', () => {
  fc.assert(
    fc.property(base, said, (request, more) => {
      const [plain, fuller] = [planned(request), planned({ ...request, ...more })];
      if (!plain || !fuller) return;
      const most = 'counterbore' in more ? 3 : 'duty' in more ? 1 : 2;
      expect(sureness(fuller)).toBeLessThanOrEqual(Math.min(most, sureness(plain)));
    }),
    { numRuns: 1500 },
  );
}, 60_000);

test('a deeper counterbore never brings a tap nearer, and moves no depth of the thread', () => {
  fc.assert(
    fc.property(base, length(0.1, 60), length(0.1, 60), (request, a, b) => {
      const at = (depth: number) => planned({ ...request, counterbore: { diameter: 30, depth } });
      const [low, high] = [at(Math.min(a, b)), at(Math.max(a, b))];
      if (!low || !high) return;
      expect(sureness(high)).toBeLessThanOrEqual(sureness(low));
      const depths = ({ taps }: HolePlan) =>
        Object.fromEntries(
          taps.map(({ style, chamfer, depth }) => [
            `${style} ${chamfer.class}`,
            { ...depth, fromFace: null },
          ]),
        );
      expect(depths(high)).toEqual(depths(low));
    }),
    { numRuns: 400 },
  );
}, 60_000);

test('a crossing never takes more thread than there is, and a remedy never says what the plan forbids', () => {
  fc.assert(
    fc.property(base, said, (request, more) => {
      const plan = planned({ ...request, ...more });
      if (!plan) return;
      const lost = plan.lostThread;
      expect(lost === undefined).toBe(!('crossing' in more));
      const asked = Math.max(
        ...plan.taps.map(({ depth }) => depth.fullThread),
        request.fullThread ?? 0,
      );
      if (lost !== undefined) expect(lost).toBeLessThanOrEqual(Math.max(asked, 100));
      if (lost !== undefined) expect(lost).toBeGreaterThanOrEqual(0);
      const bare = more.entry && !more.entry.flat;
      expect(plan.remedies.some(({ code }) => code === 'flat-first')).toBe(Boolean(bare));
      expect(plan.remedies.some(({ code }) => code === 'tap-before-crossing')).toBe(
        more.crossing?.cut === 'before',
      );
    }),
    { numRuns: 800 },
  );
}, 60_000);
