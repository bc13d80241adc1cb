/** Hole by hole: the line as pasted, how it was read, how it stands and why. */

import { useMemo } from 'preact/hooks';
import type { DrawingPlan, HoleVerdict } from '../../core/drawing/types';
import { plannerAddress } from '../address/request';
import { Fold } from '../fields/Fold';
import { Sign } from '../result/Sign';
import { noteText, type Unit } from '../words';
import { calloutText, VERDICTS } from '../words/drawing';
import { ChangeFields, type ChangeProps } from './ChangeFields';
import { TEXT } from '../words/en/part';
import { reasons, toolText } from '../words/en/partSentences';
import { say } from '../words/say';

const SIGNS: Record<HoleVerdict, 'good' | 'amber' | 'stop' | 'note'> = {
  ready: 'good',
  caution: 'amber',
  impossible: 'stop',
  unread: 'note',
};

/** Notes whose matter the reading itself says, or that a question says louder. */
const SAID_ELSEWHERE: readonly string[] = ['class-assumed', 'coarse-assumed'];

interface RowProps {
  drawing: DrawingPlan;
  index: number;
  unit: Unit;
  change?: ChangeProps;
}

function Row({ drawing, index, unit, change }: RowProps) {
  const hole = drawing.holes[index]!;
  const { callout, line, verdict } = hole;
  const notes = callout.ok
    ? callout.notes.filter(({ code }) => !SAID_ELSEWHERE.includes(code))
    : [];
  const { request } = hole;
  const href = request && callout.ok ? plannerAddress(request, unit, callout.value.count) : null;
  const number = index + 1;
  return (
    <li class={`part-hole ${verdict}`} id={change ? `hole-${number}` : undefined}>
      <p class="part-line">
        <span class="part-number">{number}</span> <code>{line.trim()}</code>
      </p>
      <p class="part-verdict">
        <Sign level={SIGNS[verdict]} /> <strong>{VERDICTS[verdict]}.</strong>{' '}
        {reasons(drawing, index, unit).join(' ')} {toolText(drawing, index, unit)}
      </p>
      {callout.ok && <p class="quiet">{say(TEXT.readAs, { callout: calloutText(hole, unit) })}</p>}
      {notes.length > 0 && (
        <p class="part-notes">{notes.map((note) => noteText(note, unit)).join(' ')}</p>
      )}
      {callout.ok && (
        <div class="part-more no-print">
          {href && (
            <p>
              <a
                href={href}
                aria-label={`${TEXT.plan}: ${say(TEXT.oneHole, { numbers: String(number) })}`}
              >
                {TEXT.plan}
              </a>
            </p>
          )}
          {change && (
            <Fold
              summary={`${TEXT.change} ${number}`}
              open={Object.keys(change.changes[number] ?? {}).length > 0}
              drawn="at-opening"
            >
              <ChangeFields {...change} number={number} />
            </Fold>
          )}
        </div>
      )}
    </li>
  );
}

export interface HoleRowsProps {
  drawing: DrawingPlan;
  unit: Unit;
  change?: ChangeProps;
}

/** Drawn anew only for another drawing: what is typed for the sheet's head costs nothing here. */
export function HoleRows({ drawing, unit, change }: HoleRowsProps) {
  return useMemo(
    () => (
      <ol class="part-holes">
        {drawing.holes.map((hole, index) => (
          <Row
            key={`${index} ${hole.line}`}
            drawing={drawing}
            index={index}
            unit={unit}
            {...(change ? { change } : {})}
          />
        ))}
      </ol>
    ),
    [drawing, unit, change],
  );
}
