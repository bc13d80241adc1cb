/** The hole with its tap, the room under it, and what chips of every kind would want. */

import { ChartView } from '../../chart/ChartView';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { Sign } from '../../result/Sign';
import { decimals, length, type Unit } from '../../words/format';
import { sentLength } from '../../address/exact';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { Scroll } from '../Scroll';
import { roughLength, volume } from '../numbers';
import { Section } from '../Section';
import { Ways } from './Ways';
import { chartOf } from './chart';
import { factsOf } from './section';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  BULKS,
  TEXT,
} from '../../words/en/calculators/chip-room/sentences';
import type { RoomAnswer } from './state';
import { say } from '../../words/say';

function rowsOf({ study }: RoomAnswer, unit: Unit): NumberRow[] {
  const { fit, own, shoulderNeeded, bulk, short } = study;
  if (short > 0) return [{ name: TEXT.solid, value: volume(fit.solid, unit) }];
  return [
    { name: TEXT.solid, value: volume(fit.solid, unit) },
    { name: TEXT.packed, value: volume(own.volume, unit), beside: [BULKS[bulk]] },
    { name: TEXT.room, value: volume(fit.room, unit) },
    { name: TEXT.free, value: length(fit.free, unit) },
    { name: TEXT.want, value: roughLength(own.needed, unit) },
    ...(own.fits ? [] : [{ name: TEXT.drill, value: roughLength(shoulderNeeded, unit) }]),
  ];
}

function Kinds({ answer, unit }: { answer: RoomAnswer; unit: Unit }) {
  const { fit, bulk } = answer.study;
  return (
    <section>
      <h2>{TEXT.range}</h2>
      <p>{TEXT.rangeText}</p>
      <Scroll label={TEXT.range}>
        <table class="rule">
          <thead>
            <tr>
              <th scope="col">{TEXT.kind}</th>
              <th scope="col">{TEXT.verdict}</th>
              <th scope="col" class="number">
                {TEXT.wants}
              </th>
              <th scope="col" class="number">
                {TEXT.takes}
              </th>
              <th scope="col" class="number">
                {TEXT.factor}
              </th>
            </tr>
          </thead>
          <tbody>
            {fit.packed.map((each) => (
              <tr key={each.bulk} class={each.bulk === bulk ? 'chosen' : undefined}>
                <th scope="row">{BULKS[each.bulk]}</th>
                <td>
                  <span class="verdict">
                    <Sign level={each.fits ? 'good' : 'stop'} />
                    {each.fits ? TEXT.fits : TEXT.no}
                  </span>{' '}
                  {!each.fits && say(TEXT.deeper, { by: roughLength(each.deeper, unit) })}
                </td>
                <td class="number">{roughLength(each.needed, unit)}</td>
                <td class="number">{volume(each.volume, unit)}</td>
                <td class="number">{decimals(each.factor, 0)} ×</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

function onward({ study, fullThread, shoulder, material }: RoomAnswer, unit: Unit) {
  const thread = study.thread.designation;
  const [full, deep] = [sentLength(fullThread, unit), sentLength(shoulder, unit)];
  return [
    {
      href: calculatorHref('chip-direction', { see: 'gash', hole: 'blind-deep', material }),
      label: TEXT.direction,
    },
    {
      href: calculatorHref('blind-hole-depth', { thread, full, chamfer: study.chamfer.class }),
      label: TEXT.depth,
    },
    {
      href: plannerHref({ thread, hole: 'blind', depth: full, limit: deep, material }),
      label: TEXT.plan,
    },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<RoomAnswer>) {
  const { study } = answer;
  const reaches = study.short === 0;
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={!study.own.fits || !reaches} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="naming-a-tap" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <div class="work">
        {reaches && (
          <Section
            facts={factsOf(answer, unit)}
            unit={unit}
            drilled={study.drill !== null}
            caption={TEXT.section}
          />
        )}
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {reaches && (
        <>
          <Ways ways={study.ways} unit={unit} />
          <Kinds answer={answer} unit={unit} />
          <ChartView
            chart={chartOf(answer, unit)}
            source={{ text: TEXT.chartSource, href: '/sources/#packed-chips' }}
          />
        </>
      )}
      <Ground assumed={assumed(answer, unit)} onward={onward(answer, unit)} />
    </>
  );
}
