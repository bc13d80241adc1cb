/** Lines that hold no threaded hole: kept, with what they were recognised as, and planned if a person says so. */

import { readCallout } from '../../core';
import type { DrawingPlan, PlannedHole } from '../../core/drawing/types';
import { shownLine } from '../words/drawing';
import { APART, TEXT } from '../words/en/part';
import { say } from '../words/say';
import type { ChangeProps } from './ChangeFields';

/** What was recognised, with the words that said so. */
function recognised({ apart, callout }: PlannedHole): string {
  if (!apart) return '';
  const words = callout.ok ? undefined : callout.problems[0]?.data?.['words'];
  return words ? say(APART.because, { what: APART[apart], words }) : APART[apart];
}

/** Only a line that names a thread can be planned as one. */
function mayBeTapped({ apart, line }: PlannedHole): boolean {
  return apart === 'clearance' || readCallout(line).ok;
}

export interface SetApartProps {
  drawing: DrawingPlan;
  /** Before the ids of this part of the page. */
  id: string;
  change?: ChangeProps;
}

export function SetApart({ drawing, id, change }: SetApartProps) {
  const apart = drawing.holes.filter((hole) => hole.apart);
  if (apart.length === 0) return null;
  return (
    <section aria-labelledby={`${id}apart-heading`}>
      <h2 id={`${id}apart-heading`}>{TEXT.apart}</h2>
      <p class="quiet">{TEXT.apartText}</p>
      <ul class="part-apart">
        {apart.map((hole) => (
          <li key={hole.lines.join()}>
            <p class="part-line">
              <code>{shownLine(hole.line)}</code>
            </p>
            <p>{recognised(hole)}</p>
            {change && mayBeTapped(hole) && (
              <button
                type="button"
                class="link-button no-print"
                aria-label={`${TEXT.tap}: ${shownLine(hole.line)}`}
                onClick={() => change.onSay(hole.lines[0]!, 'tapped', true)}
              >
                {TEXT.tap}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
