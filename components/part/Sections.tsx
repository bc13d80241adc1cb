/** A section of every hole that can be made, small enough for six to stand beside one another on a sheet. */

import type { DrawingPlan } from '../../core/drawing/types';
import { holeFacts } from '../drawing/holeFacts';
import { PictureView } from '../drawing/PictureView';
import { smallSection } from '../drawing/smallSection';
import type { Unit } from '../words';
import { TEXT } from '../words/en/part';
import { holeNumber, madeHole } from '../words/en/partSentences';

export interface SectionsProps {
  drawing: DrawingPlan;
  unit: Unit;
  /** Before the ids of this sheet. */
  id: string;
}

export function Sections({ drawing, unit, id }: SectionsProps) {
  const made = drawing.holes.flatMap((_, index) => {
    const hole = madeHole(drawing, index);
    return hole ? [{ index, hole }] : [];
  });
  if (made.length === 0) return null;
  return (
    <ul class="sheet-sections" aria-label={TEXT.sections}>
      {made.map(({ index, hole: { plan, request, tap } }) => {
        const number = String(holeNumber(drawing, index));
        return (
          <li key={index}>
            <p>
              <strong>{number}</strong> {plan.thread.designation}
            </p>
            <PictureView
              picture={smallSection(holeFacts(plan, request, unit, tap), unit)}
              id={`${id}section-${number}`}
            />
          </li>
        );
      })}
    </ul>
  );
}
