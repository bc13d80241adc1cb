/** Whether the spindle has the torque, its curve drawn against the need, and what power has to do with it. */

import { drawnCurve } from '../../../core/plan/spindle-study';
import { ChartView } from '../../chart/ChartView';
import type { Chart } from '../../chart/types';
import { AnswerLine } from '../../result/AnswerLine';
import { Notice } from '../../result/Notice';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { ShareBar } from '../../result/ShareBar';
import { decimals, percent, rpm, significant, torque, type Unit } from '../../words/format';
import { materialShort } from '../../words/names';
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
  rangesText,
  subjectOf,
  TEXT,
} from '../../words/en/calculators/spindle/sentences';
import type { SpindleAnswer } from './state';
import { say } from '../../words/say';
import { BESIDE } from '../../words/en/calculators/shared';

const kilowatts = (value: number) => `${significant(value, 2)} kW`;

function rowsOf({ study }: SpindleAnswer, unit: Unit): NumberRow[] {
  const { needed, sharp, worn, rpm: speed, rpmGiven, speeds, range } = study;
  const share = worn.share;
  return [
    {
      name: TEXT.sharp,
      value: torque(needed.sharp, unit),
      ...(needed.measured ? { beside: [TEXT.measured] } : {}),
    },
    { name: TEXT.worn, value: torque(needed.worn, unit) },
    {
      name: TEXT.gives,
      value: worn.given === null ? TEXT.notSaid : torque(worn.given, unit),
      beside: [`${say(BESIDE.at, { rpm: rpm(speed) })}, ${rpmGiven ? TEXT.given : TEXT.chosen}`],
    },
    ...(share === null
      ? []
      : [
          {
            name: TEXT.share,
            value: percent(share),
            beside: [say(TEXT.sharpShare, { share: percent(sharp.share ?? 0) })],
            picture: <ShareBar sharp={sharp.share ?? 0} worn={share} />,
          },
        ]),
    { name: TEXT.speeds, value: rangesText(speeds), beside: [TEXT.tenth] },
    { name: TEXT.range, value: rangesText([range]) },
    {
      name: TEXT.power,
      value: kilowatts(worn.power),
      beside: [say(TEXT.wornAt, { rpm: rpm(speed) })],
    },
    { name: TEXT.hasPower, value: kilowatts(worn.mostPower) },
  ];
}

function chartOf(answer: SpindleAnswer, unit: Unit): Chart {
  const { study, material } = answer;
  const { curve, needed, worn, rpm: speed, range, verdict } = study;
  const conditions = `${subjectOf(answer)} in ${materialShort(material)}`;
  const values = { rpm: decimals(speed, 0), conditions };
  const points = drawnCurve(curve);
  return {
    title: fill(TEXT.chartTitle[verdict], values, unit),
    subtitle: fill(TEXT.chartSubtitle, values, unit),
    description: TEXT.chartDescription,
    x: { ...TEXT.chartX, write: (value) => decimals(value, 0) },
    panels: [
      {
        y: { ...TEXT.chartY, write: (value) => significant(value, 2) },
        series: [
          {
            label: TEXT.line,
            look: 0,
            strong: true,
            data: points.map((point) => ({ x: point.rpm, mid: point.torque })),
          },
        ],
        references: [
          {
            at: needed.worn,
            label: fill(TEXT.needsWorn, { torque: torque(needed.worn, unit) }, unit),
            tone: 'amber',
          },
          {
            at: needed.sharp,
            label: fill(TEXT.needsSharp, { torque: torque(needed.sharp, unit) }, unit),
          },
        ],
        ...(worn.given === null
          ? {}
          : {
              here: {
                x: speed,
                y: worn.given,
                label: [torque(worn.given, unit), say(BESIDE.at, { rpm: rpm(speed) })],
              },
            }),
      },
    ],
    zones: [{ from: range.min, to: range.max, label: TEXT.wanted }],
  };
}

function onward({ thread, style, material, study }: SpindleAnswer) {
  const about = { thread: thread.designation, tap: style };
  const given = study.worn.given;
  return [
    { href: calculatorHref('torque', { ...about, material }), label: TEXT.torque },
    {
      href: calculatorHref('tap-strength', {
        ...about,
        torque: exactNumber(study.needed.sharp),
      }),
      label: TEXT.strength,
    },
    {
      href: plannerHref({
        thread: thread.designation,
        material,
        ...(given === null ? {} : { torque: exactNumber(given) }),
      }),
      label: TEXT.plan,
    },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<SpindleAnswer>) {
  const { study } = answer;
  const { verdict, worn, curve } = study;
  const need = significant(worn.power, 2);
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={verdict === 'over'} />
      <p class="because">
        {becauseText(answer)} <Why lesson="torque" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <Notice level={verdict === 'over' ? 'amber' : 'note'} title={TEXT.notPower}>
        <p>{fill(TEXT.notPowerText, { need, have: significant(worn.mostPower, 2) }, unit)}</p>
      </Notice>
      <div class="work">
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      {curve.points.length > 1 && (
        <ChartView
          chart={chartOf(answer, unit)}
          source={{ text: TEXT.source, href: '/sources/#tap-chip-model' }}
        />
      )}
      <Ground assumed={assumed(answer, unit)} onward={onward(answer)} />
    </>
  );
}
