/** What this shop's own drawer makes of a hole, and what one better tap would gain. */

import { useEffect, useState } from 'preact/hooks';
import { ownedAnswer, ownedDrill } from '../../core';
import type { HolePlan, TapChoice } from '../../core/plan/types';
import { drillName, length, percent, tapName, type Unit } from '../words';
import { fill } from '../words/template';
import { OWNED } from '../words/en/jobs';
import type { Drawer, OwnedTap } from './shape';
import { openJobs } from './store';
import { browserStore } from '../state/shelf';

/** Below this nobody would drill another hole for it, mm. */
const WORTH = 0.05;

function gainText(
  best: string,
  gain: { shareBefore: number; shareAfter: number; shoulder: number },
  unit: Unit,
): string {
  const shares = { best, before: percent(gain.shareBefore), after: percent(gain.shareAfter) };
  const shoulder = length(Math.abs(gain.shoulder), unit);
  const depth =
    Math.abs(gain.shoulder) < WORTH ? '' : gain.shoulder > 0 ? OWNED.gainDepth : OWNED.gainDeeper;
  return `${fill(OWNED.gain, shares, unit)}${fill(depth, { shoulder }, unit)}.`;
}

/** The drawer's answer in sentences. Pure. */
export function ownedText(plan: HolePlan, taps: readonly OwnedTap[], unit: Unit): string {
  const { tap, best, rejected, gain } = ownedAnswer(plan, taps);
  const name = (choice: TapChoice) => {
    const text = tapName(choice, plan.thread.system);
    return text.charAt(0).toLowerCase() + text.slice(1);
  };
  if (!tap) {
    if (rejected.length === 0) return OWNED.none;
    return fill(OWNED.rejected, { taps: rejected.map(name).join('; ') }, unit);
  }
  if (!gain || !best)
    return tap.verdict === 'best' ? OWNED.has : fill(OWNED.works, { tap: name(tap) }, unit);
  const works = fill(OWNED.works, { tap: name(tap) }, unit);
  return `${works} ${gainText(name(best), gain, unit)}`;
}

/** What its drills make of the hole; empty where it matters not. Pure. */
export function ownedDrillText(plan: HolePlan, names: readonly string[]): string {
  const found = names.length > 0 ? ownedDrill(plan, names) : null;
  if (!found || !plan.drill) return '';
  const drill = drillName(plan.drill);
  if (found.has) return fill(OWNED.drill, { drill }, 'mm');
  return found.instead
    ? fill(OWNED.drillInstead, { drill, instead: drillName(found.instead) }, 'mm')
    : fill(OWNED.drillNone, { drill }, 'mm');
}

const NOTHING: Drawer = { taps: [], drills: [], machines: [] };

/** Nothing is shown where the shop has entered neither taps nor drills. */
export function OwnedLine({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  const [drawer, setDrawer] = useState(NOTHING);
  useEffect(() => setDrawer(openJobs(browserStore()).contents.drawer), []);
  const names = drawer.drills.map(({ name }) => name);
  const said = [
    drawer.taps.length > 0 ? ownedText(plan, drawer.taps, unit) : '',
    ownedDrillText(plan, names),
  ].filter((text) => text !== '');
  if (said.length === 0) return null;
  return (
    <p class="because owned">
      <strong>{OWNED.heading}:</strong> {said.join(' ')}
    </p>
  );
}
