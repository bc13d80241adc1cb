/** The whole answer: the sentence first, then the drawing and the numbers, then why not otherwise. */

import type { Note } from '../../core/outcome';
import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { useMemo } from 'preact/hooks';
import { HoleSection } from '../drawing/HoleSection';
import { TEXT as JOBS } from '../words/en/jobs';
import { OwnedLine } from '../jobs/OwnedLine';
import { AnswerLine } from '../result/AnswerLine';
import { useFollowing } from '../state/useFollowing';
import {
  answerSentence,
  becauseSentence,
  bestTap,
  materialSaid,
  noteText,
  type Unit,
} from '../words';
import { IN_ENGLISH } from '../words/elsewhere';
import { fill } from '../words/template';
import { TEXT } from '../words/en/planner';
import { DesignerNote } from './DesignerNote';
import { PlanDetails } from './PlanDetails';
import { WatchLine } from './PlanNotices';
import { PlanNumbers } from './PlanNumbers';
import { PlanRemedies } from './PlanRemedies';
import { ShopLine } from './ShopLine';

export interface PlanResultProps {
  plan: HolePlan;
  request: HoleRequest;
  notes: readonly Note[];
  unit: Unit;
  lessons: readonly string[];
  /** Words of the hole's callout that were not understood. */
  notRead?: readonly string[] | undefined;
  /** Address of the job card for this plan. */
  card: string;
}

/** Another page's address with this hole in it. */
function beside(card: string, page: string): string {
  return page + card.slice(card.indexOf('?'));
}

const WHY_BLIND = 'blind-holes';

function Because({ plan, request, unit, lessons }: PlanResultProps) {
  const because = becauseSentence(plan, request, unit);
  const linked = request.hole.kind === 'blind' && lessons.includes(WHY_BLIND);
  if (!because && !linked) return null;
  return (
    <p class="because">
      {because}{' '}
      {linked && (
        <a href={`/lessons/${WHY_BLIND}/`} hreflang={IN_ENGLISH}>
          {TEXT.why}
        </a>
      )}
    </p>
  );
}

/** Time from the sentence to the drawing, ms: too short to see, long enough to paint the one first. */
const DRAWING_FOLLOWS = 40;

function Drawing(current: { plan: HolePlan; request: HoleRequest; unit: Unit }) {
  const { value } = useFollowing(current, current.plan, DRAWING_FOLLOWS);
  // The same element again costs nothing to draw.
  return useMemo(
    () => (value ? <HoleSection {...value} /> : <div class="drawing-to-come" />),
    [value],
  );
}

/** What the limits' reading adds; how the thread was read stands at its field already. */
function Notes({ notes, unit }: { notes: readonly Note[]; unit: Unit }) {
  return (
    <>
      {notes.map((note) => (
        <p class="because" key={note.code}>
          {noteText(note, unit)}
        </p>
      ))}
    </>
  );
}

/** Where nothing fits there are no numbers to carry to a machine: the remedies stand in their place. */
export function PlanResult(props: PlanResultProps) {
  const { plan, request, notes, unit, lessons, card, notRead } = props;
  const best = bestTap(plan);
  return (
    <>
      <p class="print-only">
        {plan.thread.designation}, {materialSaid(request)}
      </p>
      <AnswerLine parts={answerSentence(plan, request, unit)} stop={!best} />
      <Because {...props} />
      <Notes notes={notes} unit={unit} />
      {request.ownMaterial && (
        <p class="because">{fill(TEXT.ownUsed, { name: request.ownMaterial.name }, unit)}</p>
      )}
      <OwnedLine plan={plan} unit={unit} />
      <WatchLine plan={plan} unit={unit} notRead={notRead} />
      <div class="work">
        <Drawing plan={plan} request={request} unit={unit} />
        {best ? (
          <PlanNumbers plan={plan} request={request} tap={best} unit={unit} />
        ) : (
          <div>
            <PlanRemedies plan={plan} unit={unit} />
            <DesignerNote plan={plan} request={request} unit={unit} />
          </div>
        )}
      </div>
      <ShopLine plan={plan} request={request} unit={unit} />
      {best && (
        <p class="actions">
          <a class="button" href={card}>
            {TEXT.card}
          </a>
          <a class="button plain needs-script" href={beside(card, '/jobs/')} hreflang={IN_ENGLISH}>
            {JOBS.keepWithJobs}
          </a>
        </p>
      )}
      <p class="no-print needs-script">
        <a href={beside(card, '/broken-taps/')} hreflang={IN_ENGLISH}>
          {TEXT.trouble}
        </a>
      </p>
      <PlanDetails plan={plan} request={request} unit={unit} lessons={lessons} notRead={notRead} />
    </>
  );
}
