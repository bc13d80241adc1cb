/** The whole answer for a part: how it stands, hole by hole, the tools, the note, the sheet. */

import { useEffect, useState } from 'preact/hooks';
import type { DrawingPlan } from '../../core/drawing/types';
import { AnswerLine } from '../result/AnswerLine';
import type { Unit } from '../words';
import { drawingNote } from '../words/drawing';
import type { ChangeProps } from './ChangeFields';
import { CopyNote } from './CopyNote';
import { HoleRows } from './HoleRows';
import type { PartInputs } from './inputs';
import { TEXT } from '../words/en/part';
import { answerParts, countOf } from '../words/en/partSentences';
import { SetApart } from './SetApart';
import { Sheet } from './Sheet';
import { Tools } from './Tools';

export interface PartResultProps {
  drawing: DrawingPlan;
  values: PartInputs;
  unit: Unit;
  example: boolean;
  made: string;
  change?: ChangeProps;
}

/** Beyond so many holes the sheet is drawn once the rows stand, so that the answer does not wait for it. */
const MANY = 30;

function useSheet(drawing: DrawingPlan): boolean {
  const many = drawing.holes.length > MANY;
  const [drawn, setDrawn] = useState<DrawingPlan | null>(null);
  useEffect(() => {
    if (!many) return undefined;
    const timer = window.setTimeout(() => setDrawn(drawing), 300);
    return () => window.clearTimeout(timer);
  }, [drawing, many]);
  return !many || drawn === drawing;
}

export function PartResult({ drawing, values, unit, example, made, change }: PartResultProps) {
  const sheet = useSheet(drawing);
  // The worked example stands hidden on the same page: no two headings share an id.
  const id = example ? 'example-' : '';
  const nothing = countOf(drawing, 'ready') + countOf(drawing, 'caution') === 0;
  return (
    <>
      <div class="no-print">
        <AnswerLine parts={answerParts(drawing)} stop={nothing} />
        <section aria-labelledby={`${id}holes-heading`}>
          <h2 id={`${id}holes-heading`}>{TEXT.holes}</h2>
          <HoleRows drawing={drawing} unit={unit} {...(change ? { change } : {})} />
        </section>
        <SetApart drawing={drawing} id={id} {...(change ? { change } : {})} />
        <Tools drawing={drawing} id={id} />
        <CopyNote heading={TEXT.designer} lines={drawingNote(drawing, values.part, unit)} id={id} />
      </div>
      {sheet && drawing.taps.length > 0 && (
        <>
          <p class="actions needs-script">
            <button type="button" class="button" onClick={() => window.print()}>
              {TEXT.print}
            </button>
          </p>
          <Sheet drawing={drawing} values={values} unit={unit} example={example} made={made} />
        </>
      )}
    </>
  );
}
