/** The chamfer named, drawn beside its classes, and what its length does. */

import { middleThreads } from '../../../core/chamfer/classes';
import { TorqueChart } from '../../chart/TorqueChart';
import { TapTip } from '../../drawing/TapTip';
import { AnswerLine } from '../../result/AnswerLine';
import { Notice } from '../../result/Notice';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { CHAMFERS } from '../../words/en/names';
import {
  decimals,
  force,
  length,
  lengthNumber,
  threadRange,
  torque,
  torqueBand,
  type Unit,
} from '../../words/format';
import { sentLength } from '../../address/exact';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { Scroll } from '../Scroll';
import { unbroken } from '../numbers';
import { chartOf } from './chart';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  chipText,
  nameRows,
  TEXT,
} from '../../words/en/calculators/chamfer/sentences';
import type { ChamferAnswer } from './state';
import { say } from '../../words/say';
import { BESIDE } from '../../words/en/calculators/shared';

function rowsOf(answer: ChamferAnswer, unit: Unit): NumberRow[] {
  const { names, study } = answer;
  const rows: NumberRow[] = [
    { name: TEXT.us, ...nameRows(names.us, (name) => CHAMFERS[name]) },
    { name: TEXT.iso, ...nameRows(names.iso, (name) => name) },
    { name: TEXT.uk, value: names.uk.join(' or '), beside: [TEXT.ukBeware] },
    { name: TEXT.length, value: length(answer.length, unit) },
    { name: TEXT.room, value: length(answer.room, unit), beside: [TEXT.roomBeside] },
  ];
  if (!study) return rows;
  const { toothLoad, chip, torque: needed } = study.here;
  return [
    ...rows,
    {
      name: TEXT.load,
      value: force(toothLoad, unit),
      beside: [say(BESIDE.chip, { chip: chipText(chip, unit) })],
    },
    {
      name: TEXT.torque,
      value: torque(needed.expected, unit),
      beside: [say(TEXT.published, { band: torqueBand(needed.low, needed.high, unit) })],
    },
  ];
}

function Tips({ answer }: { answer: ChamferAnswer }) {
  const { thread, style, flutes, count, classes } = answer;
  return (
    <TapTip
      model={{
        diameter: thread.diameter,
        pitch: thread.pitch,
        style,
        hand: thread.hand,
        flutes,
        chosen: 0,
        chamfers: [
          { threads: count, words: [TEXT.yours, decimals(count, 2)] },
          ...classes.map(({ chamfer }) => ({
            threads: middleThreads(chamfer),
            words: [chamfer.form, threadRange(chamfer.threads)],
          })),
        ],
      }}
    >
      {TEXT.picture}
    </TapTip>
  );
}

function Classes({ answer, unit }: { answer: ChamferAnswer; unit: Unit }) {
  const held = answer.names.us.filter(({ holds }) => holds).map(({ name }) => name);
  return (
    <section>
      <h2>{TEXT.classes}</h2>
      <Scroll label={TEXT.classes}>
        <table class="rule">
          <thead>
            <tr>
              <th scope="col">{TEXT.class}</th>
              <th scope="col">{TEXT.threads}</th>
              <th scope="col">{TEXT.form}</th>
              <th scope="col">{TEXT.ukWord}</th>
              <th scope="col" class="number">
                {TEXT.long}, {unit}
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.classes.map(({ chamfer, uk, from, to }) => (
              <tr key={chamfer.class} class={held.includes(chamfer.class) ? 'chosen' : undefined}>
                <th scope="row">{CHAMFERS[chamfer.class]}</th>
                <td>{unbroken(threadRange(chamfer.threads))}</td>
                <td>{chamfer.form}</td>
                <td>{uk}</td>
                <td class="number">
                  {unbroken(`${lengthNumber(from, unit)}–${lengthNumber(to, unit)}`)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

function onward({ thread, style, material, names, thickness }: ChamferAnswer, unit: Unit) {
  const chamfer = names.us[0]?.name ?? 'plug';
  const about = { thread: thread.designation, material: material ?? '' };
  const thick = thickness === undefined ? '' : sentLength(thickness, unit);
  const hole = thickness === undefined ? '' : 'through';
  return [
    {
      href: calculatorHref('torque', { ...about, tap: style, chamfer, hole, depth: thick }),
      label: TEXT.torqueOf,
    },
    {
      href: calculatorHref('blind-hole-depth', { thread: thread.designation, chamfer }),
      label: TEXT.depth,
    },
    { href: plannerHref({ ...about, hole, thickness: thick }), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<ChamferAnswer>) {
  const model = chartOf(answer, unit);
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="chamfer-classes" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      {answer.study?.rubs && (
        <Notice level="amber" title={TEXT.rubsTitle}>
          {TEXT.rubs}
        </Notice>
      )}
      <div class="work">
        <Tips answer={answer} />
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {model && (
        <>
          <TorqueChart
            model={model}
            source={{ text: TEXT.chartSource, href: '/sources/#tap-chip-model' }}
          />
          <p class="because">{TEXT.disputed}</p>
        </>
      )}
      <Classes answer={answer} unit={unit} />
      <Ground assumed={assumed(answer, unit)} onward={onward(answer, unit)} />
    </>
  );
}
