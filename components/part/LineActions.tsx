/** What a person says of a hole's lines: these belong together, these do not, this is no threaded hole after all. */

import type { DrawingPlan } from '../../core/drawing/types';
import { TEXT } from '../words/en/part';
import { say } from '../words/say';
import type { ChangeProps } from './ChangeFields';
import type { Said } from './lines';

export interface LineActionsProps {
  drawing: DrawingPlan;
  /** 0-based among the drawing's holes. */
  index: number;
  change: ChangeProps;
}

interface Action {
  text: string;
  line: number;
  word: Said;
  holds: boolean;
}

/** The last of a hole's lines is the one that was joined last, and the first to be parted. */
function actionsOf({ drawing, index, change }: LineActionsProps): Action[] {
  const { lines, callout } = drawing.holes[index]!;
  const before = drawing.holes[index - 1];
  const [first, last] = [lines[0]!, lines.at(-1)!];
  const actions: Action[] = [];
  // A row of a table whose cell spans lines was never two lines to anybody.
  if (lines.length > 1 && !change.table) {
    const text = say(TEXT.part, { first: String(first), last: String(last) });
    actions.push({ text, line: last, word: 'parted', holds: true });
  }
  const alone = !callout.ok || (change.said[first] ?? []).includes('parted');
  if (before && !change.table && alone) {
    const text = say(TEXT.join, { line: String(before.lines.at(-1)), own: String(first) });
    actions.push({ text, line: first, word: 'joined', holds: true });
  }
  const tapped = lines.find((line) => change.said[line]?.includes('tapped'));
  if (tapped !== undefined) {
    const text = say(TEXT.untap, { line: String(tapped) });
    actions.push({ text, line: tapped, word: 'tapped', holds: false });
  }
  return actions;
}

export function LineActions(props: LineActionsProps) {
  return (
    <>
      {actionsOf(props).map(({ text, line, word, holds }) => (
        <p key={word}>
          <button
            type="button"
            class="link-button"
            onClick={() => props.change.onSay(line, word, holds)}
          >
            {text}
          </button>
        </p>
      ))}
    </>
  );
}
