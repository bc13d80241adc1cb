/** Hole by hole, and under them the lines that hold no threaded hole. */

import { useMemo } from 'preact/hooks';
import { HoleRow, type HoleRowProps } from './HoleRow';

export type HoleRowsProps = Omit<HoleRowProps, 'index'>;

/** Drawn anew only for another drawing: what is typed for the sheet's head costs nothing here. */
export function HoleRows({ drawing, unit, change }: HoleRowsProps) {
  return useMemo(
    () => (
      <ol class="part-holes">
        {drawing.holes.map((hole, index) =>
          hole.apart ? null : (
            <HoleRow
              key={`${index} ${hole.line}`}
              drawing={drawing}
              index={index}
              unit={unit}
              {...(change ? { change } : {})}
            />
          ),
        )}
      </ol>
    ),
    [drawing, unit, change],
  );
}
