/** Ways of getting a broken tap out, in words. English. */

import type {
  NeverId,
  RemovalChoice,
  RemovalMethod,
  RemovalReason,
} from '../../../../../core/diagnose/removal';
import type { CautionId } from '../../../cautions';
import type { Part } from '../../../answer';
import { significant } from '../../../format';
import { materialShort, styleName } from '../../../names';
import { HOLD_LABELS, STUB_LABELS } from './messages';
import type { RemovalAnswer } from '../../../../calculators/tap-removal/state';

export const TEXT = {
  ways: 'Ways to get it out, in the order to try them',
  way: 'Way',
  how: 'How',
  time: 'Time and risk',
  not: 'Not here, and why',
  never: 'Never, whatever the part is worth',
  first: 'Before anything else',
  rework: 'What to do with the part afterwards',
  cause: 'Why did it break?',
  nut: 'A nut may be welded onto the stub and turned, by somebody who is qualified and allowed to weld there.',
} as const;

export const FIRST = [
  'Stop, isolate and lock out before your hands go near. Free the holder first; do not jog.',
  'Write down the hole, the depth it broke at, and which way it was going. Keep the pieces.',
  'Flush the chips out of the flutes. Most taps that will not turn are held by chips.',
] as const;

export const METHODS: Record<
  RemovalMethod,
  { name: string; how: string; cautions: readonly CautionId[] }
> = {
  'turn-out': {
    name: 'Turn the stub out',
    how: 'Grip what stands out, or set a pick in a flute. Oil, a little on, a little back. Stop when it springs.',
    cautions: ['flying-chips'],
  },
  extractor: {
    name: 'Fingers in the flutes',
    how: 'A holder with a finger for each straight flute, pushed down and sleeved close. Chips out first, then rock it back and forth.',
    cautions: ['flying-chips'],
  },
  'rock-loose': {
    name: 'Rock it loose with a pin punch',
    how: 'Light taps on a land, one way and the other, flushing between. A soft punch. Pick the pieces out with a magnet or a hook.',
    cautions: ['broken-tap-struck'],
  },
  'mill-out': {
    name: 'Mill the core away',
    how: 'Rigid machine, hole indicated to its axis, a carbide end mill smaller than the core, helical or in short pecks, high speed and the least feed. Then pick the lands out.',
    cautions: ['broken-tap-cut'],
  },
  'spark-out': {
    name: 'Spark the core away',
    how: 'A sinker with an electrode smaller than the core; then the lands fall inwards and are picked out. The thread is hardly touched.',
    cautions: ['broken-tap-spark'],
  },
  trepan: {
    name: 'Cut round it and insert',
    how: 'A hollow cutter takes tap and thread together. The hole is then larger: an insert, and somebody’s written word for it.',
    cautions: ['broken-tap-cut'],
  },
  dissolve: {
    name: 'Dissolve it in hot alum',
    how: 'A hot saturated bath eats the steel and leaves the part, slowly. It stains, and rounds edges. Ventilate: it gives off hydrogen.',
    cautions: ['broken-tap-dissolved'],
  },
  scrap: {
    name: 'Scrap the part',
    how: 'It is worth less than twice what sparking costs: unless a date presses, make another.',
    cautions: [],
  },
};

export const REASONS: Record<RemovalReason, string> = {
  'nothing-to-grip': 'nothing stands out to grip',
  'wedged-tight': 'it is wedged: force only breaks it shorter',
  'too-small-for-fingers': 'too small: the fingers snap',
  'flutes-not-straight': 'fingers cannot follow a spiral flute',
  'no-flutes': 'a form tap has no flutes to reach into',
  'no-rigid-machine': 'no rigid machine on its axis, and by hand the cutter wanders and shatters',
  'too-small-to-mill': 'too small: hardly a cutter goes down its core',
  'part-would-dissolve': 'the part would go the way of the tap',
  'steel-would-dissolve': 'the fitted steel would go the way of the tap',
  'not-known-to-work': 'not known to leave this metal alone',
  'no-room-round': 'no metal round the hole to spare',
  'part-too-hard': 'the part is too hard to cut round it',
  'worth-more-than-removal': 'the part is worth more than that',
  'value-not-said': 'nobody said what the part is worth',
};

const RISKS: Record<RemovalChoice['risk'], string> = {
  low: 'low risk to the thread',
  some: 'some risk to the mouth or the finish',
  high: 'the thread may suffer',
  none: 'no risk, no part',
};

export const NEVERS: Record<NeverId, string> = {
  'force-wedged': 'Force a wedged piece with a longer lever: it breaks again, deeper.',
  'hardened-hammer': 'Strike it with a hardened hammer or punch: it throws splinters.',
  'screw-extractor':
    'Drill it for a tapered screw extractor: a drill does not enter a tap, and an extractor snapped on top is harder still.',
  'hand-drill': 'Go at it with a hand drill or a bench drill: the cutter walks into the thread.',
  'fingers-on-spiral': 'Put extractor fingers on a spiral flute, or on anything under M6.',
  'acid-on-steel': 'Put acid or alum near a steel or iron part, or mix anything in a sink.',
  'spark-alone': 'Leave a spark machine running alone.',
  'hands-before-lockout': 'Reach in before the machine is locked out.',
  'second-tap-first': 'Put the next tap in before the cause is found.',
};

const hours = (minutes: number) =>
  minutes >= 60 * 24 ? `${minutes / 60 / 24} days` : `${minutes / 60} h`;

/** `5–20 minutes, low risk to the thread`. */
export function timeText({ minutes, risk }: RemovalChoice): string {
  if (!minutes) return RISKS[risk];
  const [least, most] = minutes;
  const time = most > 90 ? `${hours(least)} to ${hours(most)}` : `${least}–${most} minutes`;
  return `about ${time}; ${RISKS[risk]}`;
}

/** `; about 230 in all, time and risk to the part counted`, where both values were said. */
export function expectedText({ expected }: RemovalChoice): string {
  return expected === null
    ? ''
    : `; about ${significant(expected, 2)} in all, time and risk to the part counted`;
}

/** What the answer rests on; without values, what they would change. */
export function assumed({ tap }: RemovalAnswer): string[] {
  const weighed = tap.partValue !== undefined && tap.removalCost !== undefined;
  return [
    ...ASSUMED,
    weighed
      ? 'The money counts time at the rate of sparking, and the share of the part’s value that each way puts at risk.'
      : 'Nobody said what the part is worth. A dear part is sparked before it is struck or milled.',
  ];
}

export function answerParts({ choices }: RemovalAnswer): Part[] {
  const first = choices[0];
  if (!first) return [];
  const { name } = METHODS[first.method];
  const next = choices[1]?.verdict === 'try' ? METHODS[choices[1].method].name : null;
  return [
    { text: 'First: ' },
    { text: name.charAt(0).toLowerCase() + name.slice(1), strong: true },
    { text: next ? `. Then: ${next.charAt(0).toLowerCase()}${next.slice(1)}.` : '.' },
  ];
}

export function askedParts({ thread, tap }: RemovalAnswer): string[] {
  return [
    thread.designation,
    styleName(tap.style).toLowerCase(),
    materialShort(tap.material),
    STUB_LABELS[tap.stub].toLowerCase(),
    HOLD_LABELS[tap.hold].toLowerCase(),
  ];
}

const ASSUMED = [
  'A tap of high-speed steel. Carbide breaks to pieces: pick those out, or spark them.',
  'Times and risks are estimates from common practice; yours may differ twofold.',
  'Nothing here says that the part may be used afterwards.',
];
