/** The review: lessons to choose, what is due, the sitting. */

import { useState } from 'preact/hooks';
import { isRelearning } from '../../core/review/schedule';
import { sessionOf } from '../../core/review/session';
import { Keeping } from '../state/Keeping';
import { REVIEW } from '../words/en/review';
import { fill } from '../words/template';
import { Files, saveProgress } from './Files';
import { answered, daysOf, withLesson } from './progress';
import type { Progress } from './shape';
import { Sitting, type Prompt } from './Sitting';
import { useProgress } from './useProgress';

export interface ReviewProps {
  /** In the order of the course. */
  lessons: readonly { slug: string; title: string }[];
  prompts: readonly Prompt[];
}

const LIMITS = { all: 20, fresh: 8 };

const now = (): number => daysOf(Date.now());

/** Today, tomorrow, in so many days. */
export function whenText(days: number): string {
  const whole = Math.round(days);
  if (whole < 1) return REVIEW.today;
  return whole === 1 ? REVIEW.tomorrow : fill(REVIEW.inDays, { days: String(whole) }, 'mm');
}

/** What is due and what is new, in words. */
function dueText(asked: readonly Prompt[], known: readonly Prompt[], progress: Progress): string {
  if (asked.length > 0) {
    const fresh = asked.filter(({ id }) => !progress.standings[id]).length;
    return fill(REVIEW.due, { count: String(asked.length), fresh: String(fresh) }, 'mm');
  }
  const dues = known.flatMap(({ id }) => progress.standings[id]?.due ?? []);
  const next = fill(REVIEW.next, { when: whenText(Math.min(...dues) - now()) }, 'mm');
  return dues.length === 0 ? REVIEW.noneChosen : `${REVIEW.nothingDue} ${next}`;
}

interface ChooserProps extends Pick<ReviewProps, 'lessons'> {
  chosen: readonly string[];
  onChange: (slug: string, on: boolean) => void;
}

function Chooser({ lessons, chosen, onChange }: ChooserProps) {
  return (
    <fieldset class="field review-lessons">
      <legend>{REVIEW.choose}</legend>
      <p class="hint">{REVIEW.chooseHint}</p>
      {lessons.map(({ slug, title }) => (
        <label class="option" key={slug}>
          <input
            type="checkbox"
            name="lesson"
            value={slug}
            autocomplete="off"
            checked={chosen.includes(slug)}
            onChange={(event) => onChange(slug, event.currentTarget.checked)}
          />
          <span>{title}</span>
        </label>
      ))}
    </fieldset>
  );
}

export function Review({ lessons, prompts }: ReviewProps) {
  const progress = useProgress();
  const [sitting, setSitting] = useState<readonly Prompt[] | null>(null);
  const [said, setSaid] = useState('');
  const { contents, ready } = progress;
  const known = prompts.filter(({ lesson }) => contents.lessons.includes(lesson));
  const asked = ready ? sessionOf(known, contents.standings, now(), LIMITS) : [];

  const answer = (id: string, outcome: 'remembered' | 'forgotten'): string => {
    const when = now();
    const standing = answered(contents, id, when, outcome).standings[id]!;
    progress.change((kept) => answered(kept, id, when, outcome));
    if (isRelearning(standing)) return REVIEW.again;
    return fill(REVIEW.rests, { when: whenText(standing.due - when) }, 'mm');
  };

  return (
    <div class="review">
      <Keeping kept={progress} name="tapped-hole-review" onSave={saveProgress} />
      {sitting ? (
        <Sitting
          prompts={sitting}
          titleOf={(slug) => lessons.find((each) => each.slug === slug)?.title ?? slug}
          onAnswer={answer}
          onEnd={(text) => {
            setSitting(null);
            setSaid(text);
          }}
        />
      ) : (
        <>
          <p class="review-due">{ready && dueText(asked, known, contents)}</p>
          {asked.length > 0 && (
            <p>
              <button
                type="button"
                class="button"
                onClick={() => {
                  setSaid('');
                  setSitting(asked);
                }}
              >
                {said === '' ? REVIEW.start : REVIEW.goOn}
              </button>
            </p>
          )}
          <p role="status">{said}</p>
          <Chooser
            lessons={lessons}
            chosen={contents.lessons}
            onChange={(slug, on) => progress.change((kept) => withLesson(kept, slug, on))}
          />
          <Files progress={progress} onSaid={setSaid} />
        </>
      )}
    </div>
  );
}
