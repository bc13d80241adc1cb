/** A blind hole in section, drawn from a calculator's own numbers. */

import type { HoleFacts } from '../drawing/holeFacts';
import { holeSection } from '../drawing/sectionMarks';
import { PictureView } from '../drawing/PictureView';
import { SECTION_CAPTION } from '../words/en/pictures';
import { say } from '../words/say';
import { length, type Unit } from '../words';

export interface SectionProps {
  facts: HoleFacts;
  unit: Unit;
  /** False where no stocked drill suits: the hole is bored. */
  drilled: boolean;
  /** In place of the words about the tap's class. */
  caption?: string;
}

export function Section({ facts, unit, drilled, caption }: SectionProps) {
  return (
    <figure class="fig fig-section">
      <PictureView picture={holeSection(facts, unit, drilled)} />
      <figcaption>
        {SECTION_CAPTION.scale}{' '}
        {caption ??
          (facts.tap &&
            say(SECTION_CAPTION.tap, {
              tip: length(facts.tap.tip, unit),
              middle: length(facts.tap.middleTip, unit),
            }))}
      </figcaption>
    </figure>
  );
}
