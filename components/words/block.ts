/** When no tap is first choice: what stands in the way, read from the reasons of those that came nearest. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';

/** What the part around the hole refuses every tap for. */
export type PartKind = 'flat' | 'synchronous' | 'gone' | 'reach';

export interface Block {
  kind: 'depth' | 'spindle' | 'below' | 'hard' | 'breaks' | 'heavy' | 'other' | PartKind;
  /** Numbers of the reason that decides. */
  numbers: Record<string, number>;
  /** The tap that comes nearest. */
  tap?: TapChoice;
  /** Full thread asked for, mm. */
  asked?: number;
}

/** Codes that reject a tap by themselves. */
const REJECTING = [
  'too-hard',
  'spindle-over',
  'does-not-reach',
  'below-clearance',
  'chips-ahead-no-room',
  'chips-must-not-fall',
  'not-formable',
  'hand-mismatch',
  'no-drill-inside',
  'breaks-sharp',
  'form-too-large',
  'not-by-hand',
  'too-heavy-by-hand',
] as const;

/** In the order they matter when taps fail for one of them alone. */
const KINDS = [
  ['spindle-over', 'spindle', 'worn'],
  ['does-not-reach', 'depth', 'short'],
  ['below-clearance', 'below', 'needed'],
  ['breaks-sharp', 'breaks', 'sharp'],
  ['too-heavy-by-hand', 'heavy', 'sharp'],
] as const;

const PART_KINDS = [
  ['needs-flat', 'flat'],
  ['no-thread-left', 'gone'],
  ['needs-synchronous', 'synchronous'],
  ['no-stock-tap', 'reach'],
] as const;

/** The part's own reason, where every tap has it. */
function partBlock(cut: readonly TapChoice[]): Pick<Block, 'kind' | 'numbers'> | undefined {
  for (const [code, kind] of PART_KINDS) {
    const said = cut.map(({ reasons }) => reasons.find((each) => each.code === code));
    if (said.length > 0 && said.every(Boolean)) return { kind, numbers: said[0]!.numbers };
  }
  return undefined;
}

const rejections = (tap: TapChoice) =>
  tap.reasons.filter(({ code }) => (REJECTING as readonly string[]).includes(code));

function askedThread(plan: HolePlan, request: HoleRequest): number | undefined {
  return (
    request.fullThread ??
    plan.assumptions.find(({ code }) => code === 'full-thread-default')?.numbers['depth']
  );
}

const rare = ({ chamfer }: TapChoice): number => (chamfer.class === 'plug' ? 0 : 1);

/** The one thing that, were it otherwise, would let a tap in. */
export function blockOf(plan: HolePlan, request: HoleRequest): Block {
  const cut = plan.taps.filter(({ process, verdict }) => process !== 'mill' && verdict === 'no');
  const asked = askedThread(plan, request);
  if (cut.some(({ reasons }) => reasons.some(({ code }) => code === 'too-hard'))) {
    return { kind: 'hard', numbers: {}, asked };
  }
  const part = partBlock(cut);
  if (part) return { ...part, asked };
  for (const [code, kind, measure] of KINDS) {
    const nearest = cut
      .flatMap((tap) => {
        const [only, ...others] = rejections(tap);
        return only?.code === code && others.length === 0 ? [{ tap, numbers: only.numbers }] : [];
      })
      .sort((a, b) => (a.numbers[measure] ?? 0) - (b.numbers[measure] ?? 0))
      // What the warning and the remedy speak of: the room for the usual chamfer.
      .sort((a, b) => Number(kind === 'below') * (rare(a.tap) - rare(b.tap)))[0];
    if (nearest) return { kind, numbers: nearest.numbers, tap: nearest.tap, asked };
  }
  return { kind: 'other', numbers: {}, asked };
}
