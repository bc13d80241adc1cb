/** The answer: speed and feed, what rounding does, what the spindle can, the skeleton word by word. */

import type { FeedCheck } from '../../../core/cycle/feed';
import type { SkeletonBlock } from '../../../core/cycle/skeleton';
import { AnswerLine } from '../../result/AnswerLine';
import { Notice } from '../../result/Notice';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { length, rpm, seconds, type Unit } from '../../words/format';
import type { ResultProps } from '../calculator';
import { plannerHref } from '../../address/hrefs';
import { Asked, Ground } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  driftText,
  feedText,
  TEXT,
  timeText,
  VERDICTS,
  WORDS_OF,
} from '../../words/en/calculators/speed-and-cycle/sentences';
import type { CycleAnswer } from './state';

function checkRow(name: string, check: FeedCheck, answer: CycleAnswer, unit: Unit): NumberRow {
  const { unit: program, mode } = answer.question;
  const { level, word, text } = VERDICTS[check.verdict];
  return {
    name,
    value: feedText(check.programmed, program, mode),
    beside: [driftText(check, unit)],
    picture: (
      <span class="beside-verdict">
        <Sign level={level} /> {word}: {text}
      </span>
    ),
  };
}

function rowsOf(answer: CycleAnswer, unit: Unit): NumberRow[] {
  const { question, study } = answer;
  const { unit: program, mode } = question;
  return [
    { name: TEXT.speed, value: rpm(study.rpm) },
    { name: TEXT.exact, value: feedText(study.exact, program, mode) },
    ...(study.typed
      ? [checkRow(TEXT.typed, study.typed, answer, unit)]
      : [checkRow(TEXT.rounded, study.rounded, answer, unit)]),
    ...(study.reachable === null
      ? []
      : [
          {
            name: TEXT.reachable,
            value: rpm(study.reachable),
            beside: [TEXT.startToTip],
          },
        ]),
    { name: TEXT.time, value: seconds(study.time.total), beside: timeText(answer) },
    ...(study.overrun === null
      ? []
      : [
          {
            name: TEXT.overrun,
            value: length(study.overrun, unit),
            beside: [TEXT.setShort],
          },
        ]),
  ];
}

function Clean({ answer }: { answer: CycleAnswer }) {
  const { question, study } = answer;
  if (question.mode !== 'per-minute') return null;
  return (
    <section aria-labelledby="clean-heading">
      <h2 id="clean-heading">{TEXT.clean}</h2>
      {study.clean.length === 0 ? (
        <p>{TEXT.cleanNone}</p>
      ) : (
        <table class="rule">
          <thead>
            <tr>
              <th scope="col">{TEXT.cleanSpeed}</th>
              <th scope="col" class="number">
                {TEXT.cleanFeed}
              </th>
            </tr>
          </thead>
          <tbody>
            {study.clean.map(({ rpm: speed, feed }) => (
              <tr key={speed}>
                <th scope="row">{rpm(speed)}</th>
                <td class="number">{feedText(feed, question.unit, 'per-minute')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

const blockText = (block: SkeletonBlock) =>
  block.map(({ text, inNist }) => (inNist ? text : `${text}×`)).join(' ');

function Skeleton({ skeleton }: { skeleton: readonly SkeletonBlock[] }) {
  const words = skeleton.flat();
  const once = words.filter(
    (word, at) =>
      words.findIndex(({ code, text }) => code === word.code && text === word.text) === at,
  );
  return (
    <section aria-labelledby="skeleton-heading">
      <h2 id="skeleton-heading">{TEXT.skeleton}</h2>
      <p>{TEXT.skeletonText}</p>
      <ol class="skeleton">
        {skeleton.map((block) => (
          <li key={blockText(block)}>
            <code>{blockText(block)}</code>
          </li>
        ))}
      </ol>
      <p class="quiet">{TEXT.nist}</p>
      <h3>{TEXT.explained}</h3>
      <dl class="skeleton-words">
        {once.map(({ text, code, inNist }) => (
          <div key={code + text}>
            <dt>
              <code>
                {text}
                {inNist ? '' : '×'}
              </code>
            </dt>
            <dd>{WORDS_OF[code]}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

export function Result({ answer, unit }: ResultProps<CycleAnswer>) {
  const { study, question } = answer;
  const worst = study.typed ?? study.rounded;
  return (
    <>
      <AnswerLine parts={answerParts(answer)} stop={worst.verdict === 'refuse'} />
      <p class="because">{becauseText(answer)}</p>
      <Asked parts={askedParts(answer, unit)} />
      <NumberList rows={rowsOf(answer, unit)} />
      <Clean answer={answer} />
      <Notice level="amber" title={TEXT.safety}>
        <p>{TEXT.safetyText}</p>
      </Notice>
      <Skeleton skeleton={study.skeleton} />
      <Ground
        assumed={assumed(answer, unit)}
        onward={[
          {
            href: plannerHref({ thread: study.thread.designation, material: question.material }),
            label: TEXT.plan,
          },
        ]}
      />
    </>
  );
}
