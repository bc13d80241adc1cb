/** What to watch: in a line under the answer, and in full further down. */

import type { HolePlan } from '../../core/plan/types';
import { Notice } from '../result/Notice';
import { Sign } from '../result/Sign';
import { warningText, type Level, type Unit } from '../words';
import { IN_ENGLISH } from '../words/elsewhere';
import { TEXT } from '../words/en/planner';
import { say } from '../words/say';

const ORDER: Record<Level, number> = { stop: 0, amber: 1, note: 2 };

interface Worded extends ReturnType<typeof warningText> {
  code: string;
}

/** What a callout said and nobody understood is a caution like any other. */
function notUnderstood(notRead: readonly string[]): Worded[] {
  if (notRead.length === 0) return [];
  const title = say(TEXT.notReadTitle, { words: notRead.join(' ') });
  return [{ code: 'callout-not-read', level: 'amber', title, text: TEXT.notReadText }];
}

/** Warnings in words, the loudest first. `notRead`: words of the hole's callout that were not understood. */
export function worded(plan: HolePlan, unit: Unit, notRead: readonly string[] = []): Worded[] {
  const warnings = plan.warnings.map((warning): Worded => ({
    code: warning.code,
    ...warningText(warning, unit),
  }));
  return [...notUnderstood(notRead), ...warnings].sort((a, b) => ORDER[a.level] - ORDER[b.level]);
}

export interface WatchProps {
  plan: HolePlan;
  unit: Unit;
  /** Words of the hole's callout that were not understood. */
  notRead?: readonly string[] | undefined;
}

const noticeId = (code: string): string => `watch-${code}`;

export function WatchLine({ plan, unit, notRead }: WatchProps) {
  const watched = worded(plan, unit, notRead).filter(({ level }) => level !== 'note');
  if (watched.length === 0) return null;
  return (
    <div class="watch">
      <p id="watch-label">{TEXT.watch}</p>
      <ul aria-labelledby="watch-label">
        {watched.map(({ code, level, title }) => (
          <li key={code}>
            <a class={level} href={`#${noticeId(code)}`}>
              <Sign level={level} />
              {title}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}

export interface PlanNoticesProps extends WatchProps {
  /** Slugs of the lessons that exist: a link to one that does not helps nobody. */
  lessons: readonly string[];
}

export function PlanNotices({ plan, unit, notRead, lessons }: PlanNoticesProps) {
  return (
    <>
      {worded(plan, unit, notRead).map(({ code, level, title, text, lesson }) => (
        <Notice key={code} id={noticeId(code)} level={level} title={title}>
          <p>
            {text}{' '}
            {lesson && lessons.includes(lesson) && (
              <a href={`/lessons/${lesson}/`} hreflang={IN_ENGLISH}>
                {TEXT.why}
              </a>
            )}
          </p>
        </Notice>
      ))}
    </>
  );
}
