/** The limits as numbers, in every class, with what the engagement changes and where to go from them. */

import { LimitsTable } from '../../reference/LimitsTable';
import { limitIn, limitsText } from '../../reference/limits';
import { PipeList } from '../../reference/PipeList';
import { RelativesList } from '../../reference/RelativesList';
import { hasPage } from '../../reference/series';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { threadHref } from '../../words/thread-address';
import type { Unit } from '../../words/format';
import { fill } from '../../words/template';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  engagementText,
  TEXT,
} from '../../words/en/calculators/thread-limits/sentences';
import type { LimitsAnswer } from './state';

const other = (unit: Unit): Unit => (unit === 'mm' ? 'in' : 'mm');

function rowsOf({ study }: LimitsAnswer, unit: Unit): NumberRow[] {
  const { limits } = study.reference;
  if (!limits) return [];
  const both = (which: 'minor' | 'pitch', name: string): NumberRow => ({
    name,
    value: limitsText(limits, which, unit),
    beside: [limitsText(limits, which, other(unit))],
  });
  const major = `${limitIn(limits.majorMin, limits.unit, unit)} ${unit}`;
  return [
    both('minor', TEXT.hole),
    both('pitch', TEXT.pitch),
    { name: TEXT.major, value: fill(TEXT.atLeast, { limit: major }, unit) },
  ];
}

function onward({ thread, study }: LimitsAnswer) {
  const named = { thread: thread.designation };
  const page = hasPage(thread) ? [{ href: threadHref(thread), label: TEXT.page }] : [];
  const plan = { href: plannerHref(named), label: TEXT.plan };
  if (!study.reference.limits) return [...page, plan];
  return [
    ...page,
    { href: calculatorHref('tap-drill', named), label: TEXT.drill },
    { href: calculatorHref('gauging', named), label: TEXT.gauges },
    { href: calculatorHref('plating', named), label: TEXT.plating },
    plan,
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<LimitsAnswer>) {
  const { study, thread } = answer;
  const { reference } = study;
  const { relatives, pipe } = reference;
  const engaged = engagementText(answer, unit);
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} />
      <p class="because">
        {becauseText(answer, unit)} {engaged}{' '}
        <Why lesson="class-and-tap-limits" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {reference.classes.length > 0 && (
        <section>
          <h2>{TEXT.classes}</h2>
          <LimitsTable {...reference} unit={unit} />
        </section>
      )}
      {pipe && (
        <section>
          <h2>{TEXT.gauge}</h2>
          <PipeList notes={pipe} thread={thread} unit={unit} />
        </section>
      )}
      {(relatives.insert || relatives.j) && (
        <section>
          <h2>{TEXT.relatives}</h2>
          <RelativesList relatives={relatives} unit={unit} />
        </section>
      )}
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}
