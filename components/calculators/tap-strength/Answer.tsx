/** What breaks the tap, what a torque is of that, and how its thread compares by shape. */

import { familiarDangers } from '../../../core/plan/strength-study';
import { BarsView } from '../../chart/BarsView';
import type { Bars } from '../../chart/bars';
import { AnswerLine } from '../../result/AnswerLine';
import { Notice } from '../../result/Notice';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { ShareBar } from '../../result/ShareBar';
import { warningText } from '../../words/codes';
import {
  decimals,
  percent,
  roughLength,
  significant,
  torque,
  torqueBand,
  type Unit,
} from '../../words/format';
import { fill } from '../../words/template';
import { exactNumber } from '../../address/exact';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  coreText,
  dangerText,
  subjectOf,
  TEXT,
} from '../../words/en/calculators/tap-strength/sentences';
import type { StrengthAnswer } from './state';
import { say } from '../../words/say';
import { BESIDE } from '../../words/en/calculators/shared';
import { MEASURED } from '../../words/en/units';

function rowsOf(answer: StrengthAnswer, unit: Unit): NumberRow[] {
  const { breaks, torque: load, clutch, arm, webMeasured } = answer.study;
  return [
    {
      name: TEXT.breaks,
      value: torque(breaks.expected, unit),
      beside: [torqueBand(breaks.low, breaks.high, unit)],
    },
    ...(load
      ? [
          {
            name: TEXT.share,
            value: percent(load.share.sharp),
            beside: [
              say(BESIDE.worn, {
                worn: percent(load.share.worn),
                worst: percent(load.share.worst),
              }),
            ],
            picture: <ShareBar sharp={load.share.sharp} worn={load.share.worn} />,
          },
        ]
      : []),
    ...(clutch ? [{ name: TEXT.clutch, value: torqueBand(clutch.low, clutch.high, unit) }] : []),
    {
      name: TEXT.arm,
      value: say(TEXT.atMost, { arm: roughLength(arm, unit) }),
      beside: [TEXT.easyHand],
    },
    {
      name: TEXT.core,
      value: coreText(answer, unit),
      beside: [webMeasured ? TEXT.measured : TEXT.usual],
    },
    { name: TEXT.danger, value: dangerText(answer), beside: [TEXT.dangerOf] },
  ];
}

function Notices({ answer, unit }: { answer: StrengthAnswer; unit: Unit }) {
  const { torque: load, clutch } = answer.study;
  return (
    <>
      {load?.warnings.map((warning) => {
        const { level, title, text } = warningText(warning, unit);
        return (
          <Notice key={warning.code} level={level} title={title}>
            <p>{text}</p>
          </Notice>
        );
      })}
      {clutch === null && (
        <Notice level="stop" title={TEXT.noClutchTitle}>
          <p>{TEXT.noClutch}</p>
        </Notice>
      )}
    </>
  );
}

function bandsOf(answer: StrengthAnswer, unit: Unit): Bars | null {
  const { breaks, torque: load } = answer.study;
  if (!load) return null;
  return {
    title: TEXT.bandsTitle[load.gap],
    subtitle: fill(TEXT.bandsSubtitle, { conditions: subjectOf(answer) }, unit),
    description: TEXT.bandsDescription,
    axis: { ...TEXT.bandsAxis, write: (value) => significant(value, 2) },
    rowsAre: TEXT.bandsRows,
    rows: [
      { label: TEXT.sharpRow, low: load.sharp, high: load.sharp },
      {
        label: TEXT.wornRow,
        low: load.worn.low,
        mid: load.worn.expected,
        high: load.worn.high,
        strong: true,
      },
      { label: TEXT.breaksRow, low: breaks.low, mid: breaks.expected, high: breaks.high },
    ],
    fromZero: true,
    bands: TEXT.bandsAre,
  };
}

/** The familiar threads, safest first, with this one in its place. */
function dangersOf({ study }: StrengthAnswer): Bars {
  const { danger, thread } = study;
  const own = { designation: thread.designation, index: danger.index, strong: true };
  const rows = [
    ...familiarDangers()
      .filter(({ index }) => Math.abs(index - danger.index) > 1e-6)
      .map((row) => ({ ...row, strong: false })),
    own,
  ].sort((a, b) => a.index - b.index);
  return {
    title: fill(
      Math.abs(danger.overM10 - 1) < 0.05 ? TEXT.dangerSame : TEXT.dangerTitle,
      {
        thread: thread.designation,
        times: say(MEASURED.times, { count: decimals(danger.overM10, 1, 1) }),
      },
      'mm',
    ),
    subtitle: TEXT.dangerSubtitle,
    description: TEXT.dangerDescription,
    axis: { ...TEXT.dangerAxis, write: (value) => decimals(value, 3, 3) },
    rowsAre: TEXT.dangerRows,
    rows: rows.map(({ designation, index, strong }) => ({
      label: designation,
      low: 0,
      high: index,
      strong,
    })),
    fromZero: true,
  };
}

function onward({ study, style }: StrengthAnswer) {
  const thread = study.thread.designation;
  const torqueTyped = study.torque ? exactNumber(study.torque.sharp) : '';
  return [
    { href: calculatorHref('torque', { thread, tap: style }), label: TEXT.torque },
    {
      href: calculatorHref('spindle', { thread, tap: style, torque: torqueTyped }),
      label: TEXT.spindle,
    },
    { href: plannerHref({ thread }), label: TEXT.plan },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<StrengthAnswer>) {
  const bands = bandsOf(answer, unit);
  const judgement = answer.study.torque?.share.judgement;
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={judgement === 'breaks'} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="torque" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <Notices answer={answer} unit={unit} />
      <div class="work">
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {bands && (
        <BarsView bars={bands} source={{ text: TEXT.source, href: '/sources/#from-memory' }} />
      )}
      <BarsView
        bars={dangersOf(answer)}
        source={{ text: TEXT.derived, href: '/sources/#derived' }}
      />
      <Ground assumed={assumed(answer, unit)} onward={onward(answer)} />
    </>
  );
}
