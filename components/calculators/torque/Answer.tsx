/** The torque of one tap against its own strength and the spindle's, and of every other tap beside it. */

import { torqueLimit } from '../../../core/job/torque-limit';
import { StrokeChart } from '../../chart/StrokeChart';
import { AnswerLine } from '../../result/AnswerLine';
import { NumberList, type NumberRow } from '../../result/NumberList';
import { ShareBar } from '../../result/ShareBar';
import { decimals, force, percent, torque, torqueBand, type Unit } from '../../words/format';
import { exactNumber, sentLength } from '../../address/exact';
import { calculatorHref, plannerHref } from '../../address/hrefs';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import { chipText } from '../../words/en/calculators/chamfer/sentences';
import { Notices } from './Notices';
import { Shop } from './Shop';
import { Study } from './Study';
import { Styles } from './Styles';
import {
  answerParts,
  askedParts,
  assumed,
  becauseText,
  TEXT,
} from '../../words/en/calculators/torque/sentences';
import type { TorqueAnswer } from './state';
import { say } from '../../words/say';
import { BESIDE } from '../../words/en/calculators/shared';

function shareRows({ load }: TorqueAnswer, unit: Unit): NumberRow[] {
  const { share, breaks, spindle } = load;
  return [
    {
      name: TEXT.tap,
      value: percent(share.sharp),
      beside: [
        say(BESIDE.worn, { worn: percent(share.worn), worst: percent(share.worst) }),
        say(BESIDE.breaks, {
          about: torque(breaks.expected, unit),
          least: torque(breaks.low, unit),
        }),
      ],
      picture: <ShareBar sharp={share.sharp} worn={share.worn} />,
    },
    ...(spindle
      ? [
          {
            name: TEXT.spindle,
            value: percent(spindle.sharp),
            beside: [
              say(BESIDE.worn, { worn: percent(spindle.worn), worst: percent(spindle.worst) }),
            ],
            picture: <ShareBar sharp={spindle.sharp} worn={spindle.worn} />,
          },
        ]
      : []),
  ];
}

/** A worn tap would break, or stall the spindle. */
function overloaded({ load: { share, spindle } }: TorqueAnswer): boolean {
  return share.worn > 1 || (spindle !== undefined && spindle.worn > 1);
}

function rowsOf(answer: TorqueAnswer, unit: Unit): NumberRow[] {
  const { torque: sharp, worn, toothLoad, chip, share } = answer.load;
  const { duty } = answer.study;
  const back = Math.max(...answer.stroke.points.map((point) => point.back));
  const clutch = torqueLimit({ torque: sharp, tapShare: share });
  const between = (low: number, high: number) => [
    `${TEXT.expected} ${torqueBand(low, high, unit)}`,
  ];
  return [
    {
      name: TEXT.sharp,
      value: torque(sharp.expected, unit),
      beside: between(sharp.low, sharp.high),
    },
    { name: TEXT.worn, value: torque(worn.expected, unit), beside: between(worn.low, worn.high) },
    ...shareRows(answer, unit),
    ...(clutch ? [{ name: TEXT.clutch, value: torqueBand(clutch.low, clutch.high, unit) }] : []),
    ...(toothLoad > 0
      ? [
          {
            name: TEXT.tooth,
            value: force(toothLoad, unit),
            beside: [say(BESIDE.chip, { chip: chipText(chip, unit) })],
          },
        ]
      : []),
    ...(duty?.duty
      ? [
          {
            name: TEXT.flutes,
            value: `${decimals(duty.duty, 1, 1)} ×`,
            beside: [TEXT.flutesBeside],
          },
        ]
      : []),
    { name: TEXT.back, value: torque(back, unit), beside: [TEXT.backBeside] },
  ];
}

const SEEN = {
  'spiral-point': 'gash',
  'spiral-flute': 'climbs-right',
  'straight-flute': 'straight',
  form: 'none',
} as const;

function onward({ thread, load, hole, depth, material }: TorqueAnswer, unit: Unit) {
  const sharp = exactNumber(load.torque.expected);
  const about = { thread: thread.designation, material };
  const deep = sentLength(depth, unit);
  const through = hole === 'through';
  const tap = load.style === 'form' ? 'straight-flute' : load.style;
  const seen =
    load.style === 'spiral-flute' && thread.hand === 'left' ? 'climbs-left' : SEEN[load.style];
  const hand = thread.hand === 'left' ? 'left' : '';
  return [
    {
      href: plannerHref({
        ...about,
        hole,
        ...(through ? { thickness: deep } : { depth: deep }),
      }),
      label: TEXT.plan,
    },
    {
      href: calculatorHref('chamfer', { ...about, tap, thickness: through ? deep : '' }),
      label: TEXT.chamfer,
    },
    {
      href: calculatorHref('chip-direction', { see: seen, hand, hole, material }),
      label: TEXT.direction,
    },
    {
      href: calculatorHref('tap-strength', {
        thread: thread.designation,
        tap: load.style,
        torque: sharp,
      }),
      label: TEXT.strength,
    },
    {
      href: calculatorHref('spindle', { ...about, tap: load.style, depth: deep }),
      label: TEXT.atSpindle,
    },
  ];
}

export function Result({ answer, unit, lessons }: ResultProps<TorqueAnswer>) {
  return (
    <>
      <AnswerLine parts={answerParts(answer, unit)} stop={overloaded(answer)} />
      <p class="because">
        {becauseText(answer, unit)} <Why lesson="torque" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer, unit)} />
      <Notices answer={answer} unit={unit} />
      <div class="work">
        <NumberList rows={rowsOf(answer, unit)} />
      </div>
      <p class="because">{TEXT.limit}</p>
      <StrokeChart
        model={{
          band: answer.stroke,
          conditions: askedParts(answer, unit).slice(0, 5).join(', '),
          process: answer.load.style === 'form' ? 'form' : 'cut',
          blind: answer.hole === 'blind',
          unit,
        }}
        source={{ text: TEXT.chartSource, href: '/sources/#tap-chip-model' }}
      />
      <Styles answer={answer} unit={unit} />
      <Study answer={answer} unit={unit} />
      <Shop answer={answer} unit={unit} />
      <Ground assumed={assumed(answer, unit)} onward={onward(answer, unit)} />
    </>
  );
}
