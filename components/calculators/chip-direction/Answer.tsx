/** Where the chips go, drawn and judged, in this hole and in every other. */

import { ChipPath } from '../../drawing/ChipPath';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { materialShort } from '../../words/names';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { Facing } from './Facing';
import { HANDS } from './inputs';
import {
  HAND_LABELS,
  HOLE_LABELS,
  SEEN_LABELS,
} from '../../words/en/calculators/chip-direction/messages';
import {
  ADVICE,
  answerParts,
  assumed,
  becauseText,
  COURSE,
  leanSide,
  leanText,
  reachFor,
  tapNamed,
  TEXT,
  VERDICTS,
  WANTED,
} from '../../words/en/calculators/chip-direction/sentences';
import { RULE, type ChipAnswer } from './state';

/** The steepest face that the drawing shows, degrees. */
const STEEPEST = 45;

function Picture({ answer }: { answer: ChipAnswer }) {
  const { lean, course, hand, seen, short, hole } = answer;
  if (lean === null || course === 'none') return null;
  const shown = Math.max(-STEEPEST, Math.min(STEEPEST, lean));
  return (
    <ChipPath
      model={{
        lean: shown,
        noseOnly: seen === 'gash',
        cut: hand,
        course,
        chips: short ? 'short' : 'long',
        hole: hole.startsWith('through') ? 'through' : 'blind',
      }}
    >
      {shown === lean ? null : TEXT.drawnAt}
    </ChipPath>
  );
}

function Numbers({ answer }: { answer: ChipAnswer }) {
  const { advice, course, lean } = answer;
  const wanted = advice.wanted
    ? [
        { name: TEXT.wants, value: WANTED[advice.wanted] },
        { name: TEXT.reach, value: reachFor(answer) },
      ]
    : [];
  return (
    <NumberList
      rows={[
        { name: TEXT.tap, value: tapNamed(answer) },
        { name: TEXT.face, value: leanText(lean) },
        { name: TEXT.chips, value: COURSE[course] },
        ...wanted,
      ]}
    />
  );
}

function EveryHole({ answer }: { answer: ChipAnswer }) {
  return (
    <section aria-labelledby="holes-heading">
      <h2 id="holes-heading">{TEXT.inHole}</h2>
      <table class="taps">
        <thead>
          <tr>
            <th scope="col">{TEXT.hole}</th>
            <th scope="col">{TEXT.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {answer.holes.map(({ hole, advice }) => (
            <tr key={hole} class={hole === answer.hole ? 'chosen' : undefined}>
              <th scope="row">{HOLE_LABELS[hole]}</th>
              <td>
                <span class="verdict">
                  <Sign level={VERDICTS[advice.verdict].sign} />
                  {VERDICTS[advice.verdict].word}
                </span>{' '}
                {ADVICE[advice.code]}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Rule({ answer }: { answer: ChipAnswer }) {
  const lean = answer.lean === null ? null : Math.sign(answer.lean);
  return (
    <section aria-labelledby="rule-heading">
      <h2 id="rule-heading">{TEXT.rule}</h2>
      <p>{TEXT.ruleText}</p>
      <table class="rule">
        <thead>
          <tr>
            <th scope="col">{TEXT.lean}</th>
            <th scope="col">{TEXT.right}</th>
            <th scope="col">{TEXT.left}</th>
          </tr>
        </thead>
        <tbody>
          {RULE.map((row) => (
            <tr key={row.lean}>
              <th scope="row">{leanSide(row.lean)}</th>
              {HANDS.map((hand) => {
                const here = hand === answer.hand && Math.sign(row.lean) === lean;
                return (
                  <td key={hand} class={here ? 'here' : undefined}>
                    {COURSE[row[hand]]}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function onward({ course, hole, material }: ChipAnswer) {
  const through = hole.startsWith('through');
  const plan = plannerHref({
    hole: through ? 'through' : 'blind',
    ...(hole === 'through-closed' ? { fall: 'no' } : {}),
    ...(material ? { material } : {}),
  });
  const room = calculatorHref('chip-room', material ? { material } : {});
  return [
    ...(course === 'ahead' && !through ? [{ href: room, label: TEXT.room }] : []),
    { href: plan, label: TEXT.plan },
  ];
}

export function Result({ answer, lessons }: ResultProps<ChipAnswer>) {
  const { material, seen, hand, hole, advice } = answer;
  return (
    <>
      <AnswerLine parts={answerParts(answer)} stop={advice.verdict === 'wrong'} />
      <p class="because">
        {becauseText(answer)} <Why lesson="naming-a-tap" lessons={lessons} />
      </p>
      <Asked
        parts={[
          SEEN_LABELS[seen],
          HAND_LABELS[hand],
          HOLE_LABELS[hole],
          material ? materialShort(material) : '',
        ]}
      />
      <div class="work">
        <Picture answer={answer} />
        <Numbers answer={answer} />
      </div>
      <EveryHole answer={answer} />
      <Facing course={answer.course} blind={answer.hole.startsWith('blind')} />
      <Rule answer={answer} />
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}
