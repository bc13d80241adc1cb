/** What the gauges mean, under both rules of turns, and what to do next. */

import { GaugeTable } from '../../reference/GaugeTable';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { TURN_RULES } from '../../words/en/reference';
import { symptomOf } from '../../../core/diagnose/from-gauge';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  ACTIONS,
  answerParts,
  askedParts,
  assumed,
  becauseText,
  provedText,
  TEXT,
  turnsOf,
} from '../../words/en/calculators/gauging/sentences';
import type { GaugeAnswer } from './state';

function Rules({ answer }: { answer: GaugeAnswer }) {
  return (
    <section>
      <h2>{TEXT.rules}</h2>
      <table class="rule">
        <thead>
          <tr>
            <th scope="col">{TEXT.rule}</th>
            <th scope="col">{TEXT.allows}</th>
            <th scope="col">{TEXT.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {answer.study.advice.rules.map(({ rule, turns, accepts }) => (
            <tr key={rule}>
              <th scope="row">{TURN_RULES[rule]}</th>
              <td>{turnsOf(turns)}</td>
              <td>
                <span class="verdict">
                  <Sign level={accepts ? 'good' : 'stop'} />
                  {accepts ? TEXT.accepts : TEXT.refuses}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Where the finder takes up what the gauges found; null where nothing is wrong. */
function finderHref({ study, thread }: GaugeAnswer): string | null {
  const { findings, depth } = study.advice;
  const [symptom] = [...findings, depth].flatMap((each) => symptomOf(each) ?? []);
  return symptom
    ? `/broken-taps/?symptom=${symptom}&thread=${encodeURIComponent(thread.designation)}`
    : null;
}

function onward(answer: GaugeAnswer) {
  const named = { thread: answer.thread.designation };
  const finder = finderHref(answer);
  return [
    ...(finder ? [{ href: finder, label: TEXT.finder }] : []),
    { href: calculatorHref('thread-limits', named), label: TEXT.limits },
    { href: calculatorHref('tap-drill', named), label: TEXT.drill },
    { href: plannerHref(named), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<GaugeAnswer>) {
  const { study, thread } = answer;
  const proved = provedText(answer, unit);
  return (
    <>
      <AnswerLine parts={answerParts(answer)} stop={study.advice.passes === false} />
      <p class="because">
        {becauseText(answer)} <Why lesson="gauging" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <Rules answer={answer} />
      {proved && <NumberList rows={[{ name: TEXT.proved, value: proved }]} />}
      <section>
        <h2>{TEXT.steps}</h2>
        <ol>
          {study.advice.actions.map((action) => (
            <li key={action}>{ACTIONS[action]}</li>
          ))}
        </ol>
      </section>
      <section>
        <h2>{TEXT.gauges}</h2>
        <GaugeTable set={study.set} pitch={thread.pitch} unit={unit} />
      </section>
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}
