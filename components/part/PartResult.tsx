/** The whole answer for a part: how it stands, hole by hole, the tools, the note, the sheet. */

import type { DrawingPlan } from '../../core/drawing/types';
import { AnswerLine } from '../result/AnswerLine';
import type { Unit } from '../words';
import { drawingNote } from '../words/drawing';
import type { ChangeProps } from './ChangeFields';
import { CopyNote } from './CopyNote';
import { HoleRows } from './HoleRows';
import type { PartInputs } from './inputs';
import { TEXT } from './messages';
import { answerParts, countOf } from './sentences';
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

export function PartResult({ drawing, values, unit, example, made, change }: PartResultProps) {
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
        <Tools drawing={drawing} id={id} />
        <CopyNote heading={TEXT.designer} lines={drawingNote(drawing, values.part, unit)} id={id} />
      </div>
      {drawing.taps.length > 0 && (
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
