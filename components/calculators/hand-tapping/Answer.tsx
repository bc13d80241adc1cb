/** The taps in order, the wrench, and the work step by step: a card for the bench. */

import { AnswerLine } from '../../result/AnswerLine';
import { NumberList } from '../../result/NumberList';
import { decimals, length, roughLength, threadRange, torque } from '../../words/format';
import { sentLength } from '../../address/exact';
import { calculatorHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  backText,
  leavesText,
  steps,
  tapText,
  TEXT,
  useText,
} from '../../words/en/calculators/hand-tapping/sentences';
import type { HandAnswer } from './state';
import { say } from '../../words/say';

type Props = ResultProps<HandAnswer>;

function Order({ answer, unit }: Pick<Props, 'answer' | 'unit'>) {
  return (
    <section aria-labelledby="order-heading">
      <h2 id="order-heading">{TEXT.order}</h2>
      <table class="taps">
        <thead>
          <tr>
            <th scope="col">{TEXT.tap}</th>
            <th scope="col">{TEXT.leaves}</th>
            <th scope="col">{TEXT.use}</th>
          </tr>
        </thead>
        <tbody>
          {answer.plan.taps.map((tap) => (
            <tr key={tap.order}>
              <th scope="row">
                {tap.order}. {tapText(tap)}
              </th>
              <td>{leavesText(tap, unit)}</td>
              <td>{useText(tap)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function Result({ answer, unit, lessons }: Props) {
  const { plan, thread, fullThread, shoulder } = answer;
  const clear = plan.clearEvery
    ? [{ name: TEXT.clear, value: say(TEXT.clearEvery, { turns: threadRange(plan.clearEvery) }) }]
    : [];
  const stop = plan.stop === null ? [] : [{ name: TEXT.stop, value: length(plan.stop, unit) }];
  const depth = {
    thread: thread.designation,
    full: sentLength(fullThread, unit),
    drive: 'hand',
    ...(shoulder === undefined ? {} : { hole: sentLength(shoulder, unit), find: 'full' }),
  };
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={!plan.reaches} />
      <p class="because">
        <Why lesson="hand-tapping" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <NumberList
        rows={[
          { name: TEXT.arm, value: roughLength(plan.arm.expected, unit) },
          { name: TEXT.breaks, value: torque(plan.breaks.expected, unit) },
          { name: TEXT.back, value: backText(answer) },
          {
            name: TEXT.square,
            value: say(TEXT.after, {
              turns: plan.square.check.map((turns) => decimals(turns, 0)).join(TEXT.and),
            }),
          },
          ...stop,
          ...clear,
        ]}
      />
      <Order answer={answer} unit={unit} />
      <section aria-labelledby="steps-heading">
        <h2 id="steps-heading">{TEXT.steps}</h2>
        <ol>
          {steps(answer, unit).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ol>
      </section>
      <Ground
        assumed={assumed(answer, unit)}
        onward={[
          ...(shoulder === undefined
            ? []
            : [{ href: calculatorHref('blind-hole-depth', depth), label: TEXT.depth }]),
          {
            href: calculatorHref('gauging', { thread: thread.designation }),
            label: TEXT.gauges,
          },
          { href: '/broken-taps/', label: TEXT.trouble },
        ]}
      />
    </>
  );
}
