/** Holes an ordinary shop taps all day, and how many of their plans carry a warning above a note. */
import { planHole, type HolePlan, type HoleRequest } from '../../../../core';
import { MATERIAL_IDS, type MaterialId } from '../../../../core/material/material';

const SIZES = [
  ['M3', 3],
  ['M4', 4],
  ['M5', 5],
  ['M6', 6],
  ['M8', 8],
  ['M10', 10],
  ['M12', 12],
] as const;
const DIAMETERS = [1, 1.5, 2, 2.5];

/** Stainless, titanium, nickel and hardened steel: care is the rule there. */
const CAREFUL = ['stainless', 'titanium', 'nickel', 'steel-hard'];

export const isOrdinary = (material: MaterialId) =>
  !CAREFUL.some((name) => material.startsWith(name));

export function plan(request: HoleRequest): HolePlan {
  const outcome = planHole(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

export const codes = (list: readonly { code: string }[]) => list.map((each) => each.code);

export const bestOf = ({ taps }: HolePlan) => taps.find(({ verdict }) => verdict === 'best');

export function ordinaryRequests(wanted: (material: MaterialId) => boolean): HoleRequest[] {
  return MATERIAL_IDS.filter(wanted).flatMap((material) =>
    SIZES.flatMap(([thread, diameter]) =>
      DIAMETERS.flatMap((times): HoleRequest[] => {
        const depth = times * diameter;
        return [
          { thread, material, fullThread: depth, hole: { kind: 'blind' } },
          { thread, material, hole: { kind: 'through', thickness: depth } },
        ];
      }),
    ),
  );
}

/** Share of plans with a caution or a stop, and how often each code gave one. */
export function loudShare(requests: readonly HoleRequest[]): {
  share: number;
  by: Record<string, number>;
} {
  const by: Record<string, number> = {};
  const loud = requests.filter((request) => {
    const said = plan(request).warnings.filter(({ level }) => level !== 'note');
    for (const { code } of said) by[code] = (by[code] ?? 0) + 1;
    return said.length > 0;
  });
  return { share: loud.length / requests.length, by };
}
