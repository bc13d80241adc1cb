/** The blind hole drawn, its numbers, and the same question for every chamfer. */

import { DepthChart } from '../../chart/DepthChart';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { decimals, drillName, length, type Unit } from '../../words/format';
import { sentLength } from '../../address/exact';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { Section } from '../Section';
import { chartOf } from './chart';
import { factsOf } from './section';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  className,
  FIT_WORDS,
  rowOf,
  TEXT,
} from '../../words/en/calculators/blind-hole-depth/sentences';
import type { DepthAnswer } from './state';
import { say } from '../../words/say';
import { fill } from '../../words/template';

function rowsOf({ find, study, pointAngle }: DepthAnswer, unit: Unit): NumberRow[] {
  const { promised, middle, result, drill } = study;
  const between = (mm: number) => `${TEXT.middle}${length(mm, unit)}`;
  const best =
    result.asked === 'chamfer' ? [] : [`${TEXT.shortest}${length(result.depth.best, unit)}`];
  const cone = fill(
    TEXT.cone,
    {
      point: length(promised.point, unit),
      angle: `${pointAngle}°`,
      ...(drill ? { drill: drillName(drill) } : {}),
    },
    unit,
  );
  return [
    ...(result.asked === 'chamfer'
      ? [{ name: TEXT.chamfer, value: say(TEXT.threads, { count: decimals(result.threads, 2) }) }]
      : []),
    {
      name: TEXT.shoulder,
      value: length(promised.shoulder, unit),
      beside: [...(find === 'hole' ? [between(middle.shoulder), ...best] : []), cone],
    },
    {
      name: TEXT.full,
      value: length(promised.fullThread, unit),
      ...(find === 'full' ? { beside: [between(middle.fullThread), ...best] } : {}),
    },
    {
      name: TEXT.tap,
      value: length(promised.tip, unit),
      ...(find === 'hole' ? { beside: [between(middle.tip)] } : {}),
    },
    { name: TEXT.room, value: say(TEXT.pitches, { count: decimals(promised.roomInPitches, 2) }) },
  ];
}

function Classes({ answer, unit }: { answer: DepthAnswer; unit: Unit }) {
  const { study, find, chamfer } = answer;
  return (
    <section aria-labelledby="classes-heading">
      <h2 id="classes-heading">{TEXT.classes}</h2>
      <table class="rule">
        <thead>
          <tr>
            <th scope="col">{TEXT.class}</th>
            <th scope="col" class="number">
              {find === 'full' ? TEXT.gives : TEXT.needs}
            </th>
            <th scope="col" class="number">
              {TEXT.middleOf}
            </th>
          </tr>
        </thead>
        <tbody>
          {study.classes.map(({ chamfer: each, promised, middle }) => (
            <tr key={each.class} class={each.class === chamfer?.choice ? 'chosen' : undefined}>
              <th scope="row">{className(each.class, each.threads)}</th>
              <td class="number">{length(rowOf(promised, find), unit)}</td>
              <td class="number">{length(rowOf(middle, find), unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Fits({ answer }: { answer: DepthAnswer }) {
  return (
    <section aria-labelledby="fits-heading">
      <h2 id="fits-heading">{TEXT.fits}</h2>
      <table class="taps">
        <thead>
          <tr>
            <th scope="col">{TEXT.class}</th>
            <th scope="col">{TEXT.verdict}</th>
          </tr>
        </thead>
        <tbody>
          {answer.study.fits.map(({ chamfer, fits }) => (
            <tr key={chamfer.class}>
              <th scope="row">{className(chamfer.class, chamfer.threads)}</th>
              <td>
                <span class="verdict">
                  <Sign level={FIT_WORDS[fits].sign} />
                  {FIT_WORDS[fits].word}
                </span>{' '}
                {FIT_WORDS[fits].text}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function onward({ study }: DepthAnswer, unit: Unit) {
  const { thread, promised } = study;
  const typed = (mm: number) => sentLength(mm, unit);
  return [
    {
      href: plannerHref({
        thread: thread.designation,
        hole: 'blind',
        depth: typed(promised.fullThread),
        limit: typed(promised.shoulder),
      }),
      label: TEXT.plan,
    },
    {
      href: calculatorHref('chip-room', {
        thread: thread.designation,
        full: typed(promised.fullThread),
        hole: typed(promised.shoulder),
      }),
      label: TEXT.chips,
    },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<DepthAnswer>) {
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="blind-holes" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        <Section
          facts={factsOf(answer, unit)}
          unit={unit}
          drilled={answer.study.drill !== null}
          caption={answer.find === 'chamfer' ? TEXT.justFits : undefined}
        />
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {answer.find === 'chamfer' ? (
        <Fits answer={answer} />
      ) : (
        <Classes answer={answer} unit={unit} />
      )}
      <DepthChart
        model={chartOf(answer, unit)}
        source={{ text: TEXT.chartSource, href: '/sources/#derived' }}
      />
      <Ground assumed={assumed(answer, unit)} onward={onward(answer, unit)} />
    </>
  );
}
