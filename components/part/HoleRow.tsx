/** One hole: the lines as pasted, how they were read, how it stands and why, and what a person may say of it. */

import type { DrawingPlan, HoleVerdict } from '../../core/drawing/types';
import { plannerAddress } from '../address/request';
import { Fold } from '../fields/Fold';
import { Sign } from '../result/Sign';
import { noteText, type Unit } from '../words';
import { calloutText, shownLine, VERDICTS } from '../words/drawing';
import { TEXT } from '../words/en/part';
import { holeNumber, reasons, toolText } from '../words/en/partSentences';
import { say } from '../words/say';
import { ChangeFields, type ChangeProps } from './ChangeFields';
import { LineActions } from './LineActions';

const SIGNS: Record<HoleVerdict, 'good' | 'amber' | 'stop' | 'note'> = {
  ready: 'good',
  caution: 'amber',
  impossible: 'stop',
  unread: 'note',
};

/** Notes whose matter the reading, a question or the reasons say. */
const SAID_ELSEWHERE: readonly string[] = ['class-assumed', 'coarse-assumed', 'not-read'];

export interface HoleRowProps {
  drawing: DrawingPlan;
  /** 0-based among the drawing's holes. */
  index: number;
  unit: Unit;
  change?: ChangeProps;
}

function PlanLink({ drawing, index, unit }: HoleRowProps) {
  const { request, callout } = drawing.holes[index]!;
  if (!request || !callout.ok) return null;
  const { count, notRead } = callout.value;
  // Words that nobody understood go along: they are no better understood there.
  const thread = [request.thread, ...notRead].join(' ');
  const href = plannerAddress({ ...request, thread }, unit, count);
  const numbers = String(holeNumber(drawing, index));
  return (
    <p>
      <a href={href} aria-label={`${TEXT.plan}: ${say(TEXT.oneHole, { numbers })}`}>
        {TEXT.plan}
      </a>
    </p>
  );
}

function More(props: HoleRowProps) {
  const { drawing, index, change } = props;
  const hole = drawing.holes[index]!;
  const read = hole.callout.ok;
  if (!change && !read) return null;
  const key = hole.lines[0]!;
  const number = holeNumber(drawing, index);
  return (
    <div class="part-more no-print">
      {read && <PlanLink {...props} />}
      {change && <LineActions drawing={drawing} index={index} change={change} />}
      {change && read && (
        <Fold
          summary={`${TEXT.change} ${number}`}
          open={Object.keys(change.changes[key] ?? {}).length > 0}
          drawn="at-opening"
        >
          <ChangeFields {...change} number={key} />
        </Fold>
      )}
    </div>
  );
}

export function HoleRow(props: HoleRowProps) {
  const { drawing, index, unit, change } = props;
  const hole = drawing.holes[index]!;
  const { callout, line, lines, verdict } = hole;
  const notes = callout.ok
    ? callout.notes.filter(({ code }) => !SAID_ELSEWHERE.includes(code))
    : [];
  const number = holeNumber(drawing, index);
  return (
    <li class={`part-hole ${verdict}`} id={change ? `hole-${number}` : undefined}>
      <div class="part-line">
        <span class="part-number">{number}</span>{' '}
        <code>{line.split(/\r?\n/).map(shownLine).join('\n')}</code>
        {lines.length > 1 && (
          <span class="part-joined">{say(TEXT.joined, { lines: lines.join(', ') })}</span>
        )}
      </div>
      <p class="part-verdict">
        <Sign level={SIGNS[verdict]} /> <strong>{VERDICTS[verdict]}.</strong>{' '}
        {reasons(drawing, index, unit).join(' ')} {toolText(drawing, index, unit)}
      </p>
      {callout.ok && (
        <p class="quiet">{say(TEXT.readAs, { callout: calloutText(callout.value, unit) })}</p>
      )}
      {notes.length > 0 && (
        <p class="part-notes">{notes.map((note) => noteText(note, unit)).join(' ')}</p>
      )}
      <More {...props} />
    </li>
  );
}
