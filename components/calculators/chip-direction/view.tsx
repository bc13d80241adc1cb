/** Where do this tap's chips go, and is that right for this hole? */

import { CHIP_HOLES } from '../../../core/chips/advice';
import { TextField } from '../../fields/TextField';
import { AnswerLine, spoken } from '../../result/AnswerLine';
import { NumberList } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { materialShort } from '../../words';
import { calculatorHref, plannerHref } from '../addresses';
import { bind, MaterialField, Tiles } from '../fields';
import { Frame, type ResultProps } from '../Frame';
import { Asked, Ground, Why } from '../Ground';
import { useCalculator, type FormOf } from '../useCalculator';
import { EXAMPLE } from './examples';
import {
  ADVICE,
  answerParts,
  assumed,
  becauseText,
  COURSE,
  HOLE_LABELS,
  leanSide,
  leanText,
  reachFor,
  SEEN_LABELS,
  tapNamed,
  TEXT,
  VERDICTS,
  WANTED,
  WORDS,
} from './messages';
import { CALCULATOR, HANDS, RULE, SEEN, type ChipAnswer, type Name } from './state';

function Fields({ form }: { form: FormOf<Name> }) {
  return (
    <>
      <Tiles
        form={form}
        name="see"
        hint={TEXT.seeHint}
        choices={SEEN.map((value) => ({ value, label: SEEN_LABELS[value] }))}
      />
      {form.values.see === 'angle' && (
        <TextField {...bind(form, 'angle')} unit="°" hint={TEXT.angleHint} />
      )}
      <Tiles
        form={form}
        name="hand"
        choices={HANDS.map((value) => ({ value, label: TEXT[`${value}Thread`] }))}
      />
      <Tiles
        form={form}
        name="hole"
        choices={CHIP_HOLES.map((value) => ({ value, label: HOLE_LABELS[value] }))}
      />
      <MaterialField form={form} name="material" optional />
    </>
  );
}

function Numbers({ answer }: { answer: ChipAnswer }) {
  const { advice, course, lean } = answer;
  return (
    <NumberList
      rows={[
        { name: TEXT.tap, value: tapNamed(answer) },
        { name: TEXT.face, value: leanText(lean) },
        { name: TEXT.chips, value: COURSE[course] },
        ...(advice.wanted
          ? [
              { name: TEXT.wants, value: WANTED[advice.wanted] },
              { name: TEXT.reach, value: reachFor(answer) },
            ]
          : []),
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

function onward({ advice, hole, material }: ChipAnswer) {
  const through = hole.startsWith('through');
  const plan = plannerHref({
    hole: through ? 'through' : 'blind',
    ...(hole === 'through-closed' ? { fall: 'no' } : {}),
    ...(material ? { material } : {}),
  });
  const room = calculatorHref('chip-room', material ? { material } : {});
  return [
    ...(advice.code === 'needs-room-below' || advice.code === 'packs-on-floor'
      ? [{ href: room, label: TEXT.room }]
      : []),
    { href: plan, label: TEXT.plan },
  ];
}

function Result({ answer, lessons }: ResultProps<ChipAnswer>) {
  const { material, seen, hand, hole } = answer;
  return (
    <>
      <AnswerLine parts={answerParts(answer)} />
      <p class="because">
        {becauseText(answer)} <Why lesson="naming-a-tap" lessons={lessons} />
      </p>
      <Asked
        parts={[
          SEEN_LABELS[seen],
          TEXT[`${hand}Thread`],
          HOLE_LABELS[hole],
          material ? materialShort(material) : '',
        ]}
      />
      <div class="work">
        <Numbers answer={answer} />
      </div>
      <EveryHole answer={answer} />
      <Rule answer={answer} />
      <Ground assumed={assumed(answer)} onward={onward(answer)} />
    </>
  );
}

export function ChipDirection({ lessons }: { lessons: readonly string[] }) {
  const state = useCalculator(CALCULATOR, WORDS);
  return (
    <Frame
      calculator={CALCULATOR}
      words={WORDS}
      state={state}
      example={EXAMPLE}
      Result={Result}
      lessons={lessons}
      spoken={(answer) => spoken(answerParts(answer))}
      subject={tapNamed}
    >
      <Fields form={state.form} />
    </Frame>
  );
}
