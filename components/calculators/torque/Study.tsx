/** Further in: what moves the torque most, the load on every tooth, the chamfer classes side by side. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { BarsView } from '../../chart/BarsView';
import { ChartView } from '../../chart/ChartView';
import { classBars } from '../../chart/classBars';
import { doubtBars } from '../../chart/doubtBars';
import type { Chart } from '../../chart/types';
import { Fold } from '../../fields/Fold';
import { decimals, force, significant, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { chipText } from '../../words/en/calculators/chamfer/sentences';
import { askedParts, TEXT } from '../../words/en/calculators/torque/sentences';
import type { TorqueAnswer } from './state';

interface Props {
  answer: TorqueAnswer;
  unit: Unit;
}

const SOURCE = { text: TEXT.chartSource, href: '/sources/#tap-chip-model' };

const conditionsOf = (answer: TorqueAnswer, unit: Unit) =>
  askedParts(answer, unit).slice(0, 5).join(', ');

function Doubt({ answer, unit }: Props) {
  const { study } = answer;
  const { torque, wornShare } = study.doubt;
  const values = {
    low: torque.low,
    high: torque.high,
    shareLow: wornShare.low,
    shareHigh: wornShare.high,
  };
  const conditions = conditionsOf(answer, unit);
  return (
    <>
      <p>{fill(TEXT.deeperText, values, unit)}</p>
      <BarsView bars={doubtBars(study, 'torque', conditions, unit)} source={SOURCE} />
      <BarsView bars={doubtBars(study, 'share', conditions, unit)} source={SOURCE} />
    </>
  );
}

function toothChart(answer: TorqueAnswer, unit: Unit): Chart | null {
  const { teeth } = answer.study;
  const [first, last] = [teeth?.teeth[0], teeth?.teeth.at(-1)];
  if (!teeth || !first || !last) return null;
  const values = {
    first: force(first.force, unit),
    last: force(last.force, unit),
    conditions: conditionsOf(answer, unit),
  };
  return {
    title: fill(TEXT.toothTitle, values, unit),
    subtitle: fill(TEXT.toothSubtitle, values, unit),
    description: TEXT.toothDescription,
    x: { ...TEXT.toothX, domain: [0, teeth.teeth.length], write: (value) => decimals(value, 0) },
    panels: [
      {
        y: { ...TEXT.toothY, write: (value) => (value === 0 ? '0' : significant(value, 2)) },
        series: [
          {
            label: { short: '', long: '' },
            look: 0,
            strong: true,
            data: teeth.teeth.map((tooth) => ({ x: tooth.number, mid: tooth.force })),
          },
        ],
      },
    ],
  };
}

function Teeth({ answer, unit }: Props) {
  const { teeth } = answer.study;
  const chart = toothChart(answer, unit);
  if (!teeth || !chart) return null;
  const chip = chipText(teeth.heaviest.chip, unit);
  return (
    <>
      <p>{fill(TEXT.tooThin[teeth.rubbing], { chip }, unit)}</p>
      <ChartView chart={chart} source={SOURCE} />
    </>
  );
}

function Classes({ answer, unit }: Props) {
  const { classes, load } = answer;
  const order = classes
    .slice()
    .sort(
      (a, b) => CHAMFER_CLASSES.indexOf(a.chamfer.class) - CHAMFER_CLASSES.indexOf(b.chamfer.class),
    );
  const chosen = order.findIndex(({ chamfer }) => chamfer.class === load.chamfer.class);
  const conditions = conditionsOf(answer, unit);
  return (
    <>
      <BarsView bars={classBars(order, 'torque', conditions, unit, chosen)} source={SOURCE} />
      {load.toothLoad > 0 && (
        <BarsView bars={classBars(order, 'tooth', conditions, unit, chosen)} source={SOURCE} />
      )}
    </>
  );
}

/** Plain HTML from the server holds the first of these; a page must not weigh more than it says. */
const ON_SERVER = typeof document === 'undefined';

export function Study({ answer, unit }: Props) {
  return (
    <>
      <Fold summary={TEXT.deeper} drawn="at-opening-live">
        <Doubt answer={answer} unit={unit} />
      </Fold>
      {answer.study.teeth && !ON_SERVER && (
        <Fold summary={TEXT.teeth} drawn="at-opening">
          <Teeth answer={answer} unit={unit} />
        </Fold>
      )}
      {!ON_SERVER && (
        <Fold summary={TEXT.classes} drawn="at-opening">
          <Classes answer={answer} unit={unit} />
        </Fold>
      )}
    </>
  );
}
