/** The whole answer: the sentence first, then the drawing and the numbers, then why not otherwise. */

import type { Note } from '../../core/outcome';
import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { HoleSection } from '../drawing/HoleSection';
import { AnswerLine } from '../result/AnswerLine';
import {
  answerSentence,
  assumptionText,
  becauseSentence,
  bestTap,
  cautionText,
  materialName,
  NOT_A_RATING,
  noteText,
  remedyText,
  type Unit,
} from '../words';
import { cautionsFor } from './cautions';
import { TEXT } from './messages';
import { DesignerNote } from './DesignerNote';
import { PlanDrills } from './PlanDrills';
import { PlanNotices, WatchLine } from './PlanNotices';
import { PlanNumbers } from './PlanNumbers';
import { PlanTaps } from './PlanTaps';

export interface PlanResultProps {
  plan: HolePlan;
  request: HoleRequest;
  notes: readonly Note[];
  unit: Unit;
  lessons: readonly string[];
  /** Address of the job card for this plan. */
  card: string;
}

const WHY_BLIND = 'blind-holes';

function Because({ plan, request, unit, lessons }: PlanResultProps) {
  const because = becauseSentence(plan, request, unit);
  const linked = request.hole.kind === 'blind' && lessons.includes(WHY_BLIND);
  if (!because && !linked) return null;
  return (
    <p class="because">
      {because} {linked && <a href={`/lessons/${WHY_BLIND}/`}>{TEXT.why}</a>}
    </p>
  );
}

function Remedies({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  if (plan.remedies.length === 0) return null;
  return (
    <section class="remedies" aria-labelledby="remedies-heading">
      <h2 id="remedies-heading">{bestTap(plan) ? TEXT.helps : TEXT.remedies}</h2>
      <ol>
        {plan.remedies.map((remedy) => {
          const { title, text } = remedyText(remedy, unit);
          return (
            <li key={remedy.code}>
              <strong>{title}.</strong> {text}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Assumed({ plan, unit }: { plan: HolePlan; unit: Unit }) {
  return (
    <section class="assumed" aria-labelledby="assumed-heading">
      <h2 id="assumed-heading">{TEXT.assumed}</h2>
      <ul>
        {plan.assumptions.map((assumption) => (
          <li key={assumption.code}>{assumptionText(assumption, unit)}</li>
        ))}
      </ul>
      <p>
        <strong>{NOT_A_RATING.short}</strong>
      </p>
    </section>
  );
}

function AtTheMachine({ request }: { request: HoleRequest }) {
  return (
    <section class="at-machine" aria-labelledby="machine-heading">
      <h2 id="machine-heading">{TEXT.machine}</h2>
      <ul>
        {cautionsFor(request).map((id) => (
          <li key={id}>{cautionText(id).title}.</li>
        ))}
      </ul>
      <p>
        {NOT_A_RATING.defer} <a href="/safety/">{TEXT.safety}</a>
      </p>
    </section>
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
  const { plan, request, notes, unit, lessons, card } = props;
  const best = bestTap(plan);
  return (
    <>
      <p class="print-only">
        {plan.thread.designation}, {materialName(request.material)}
      </p>
      <AnswerLine parts={answerSentence(plan, request, unit)} stop={!best} />
      <Because {...props} />
      <Notes notes={notes} unit={unit} />
      <WatchLine plan={plan} unit={unit} />
      <div class="work">
        <HoleSection plan={plan} request={request} unit={unit} />
        {best ? (
          <PlanNumbers plan={plan} request={request} tap={best} unit={unit} />
        ) : (
          <div>
            <Remedies plan={plan} unit={unit} />
            <DesignerNote plan={plan} request={request} unit={unit} />
          </div>
        )}
      </div>
      {best && (
        <p class="actions">
          <a class="button" href={card}>
            {TEXT.card}
          </a>
        </p>
      )}
      <PlanNotices plan={plan} unit={unit} lessons={lessons} />
      {best && <Remedies plan={plan} unit={unit} />}
      <PlanTaps taps={plan.taps} system={plan.thread.system} unit={unit} />
      <PlanDrills plan={plan} unit={unit} />
      <div class="ground">
        <Assumed plan={plan} unit={unit} />
        <AtTheMachine request={request} />
      </div>
    </>
  );
}
