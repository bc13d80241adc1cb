/** Words of the lesson on the tap drill and percent of thread: its tables and its live figures. English. */

export const PERCENT = {
  title: 'One hole, two percentages: only the base differs',
  subtitle: '{thread}, cut thread left by the hole',
  description:
    'Two straight lines fall from left to right: the larger the hole, the less thread. The line of the ISO base lies a fifth above that of the US shop base everywhere. The class allows the holes of the marked stretch. {sentence}',
  x: 'Hole',
  y: 'Thread left',
  shop: 'shop base',
  shopLong: 'US shop base',
  iso: 'ISO base',
  isoLong: 'ISO base',
  zone: '{class}',
  zoneLong: 'hole of class {class}',
  here: '{shop:threadPercent} shop',
  guessHere: 'your guess {guess:threadPercent}',
  hole: 'Hole',
  holeHint: 'As a plug gauge would measure it.',
  thread: 'Thread',
  sentence:
    'A hole of {hole:limit} leaves {shop:threadPercent} of thread on the US shop base. On the ISO base the same hole reads {iso:threadPercent}.',
  inside: 'Class {class} allows {min:limit} to {max:limit}: the hole passes.',
  large:
    'Class {class} ends at {max:limit}: the hole is too large by {by:limit}, and every part fails.',
  small:
    'Class {class} begins at {min:limit}: the hole is too small by {by:limit}, and a gauge for the minor diameter will not go in.',
  guessField: 'Percent of thread, your guess',
  guessComplaint: 'Enter a percentage between 1 and 200, like 65.',
  answer: '{shop:threadPercent} on the US shop base, {iso:threadPercent} on the ISO base.',
  guessed:
    'You guessed {guess:threadPercent}. It is {shop:threadPercent} on the US shop base and {iso:threadPercent} on the ISO base.',
  outside: 'Enter a size within the limits, and the chart comes back.',
  reset: 'Back to the start',
  source: 'percent of thread from the profile of ISO 68-1; limits of the class',
} as const;

export const DRAWER = {
  oversize: 'The drill cuts larger than itself by',
  oversizeHint: 'From a reamer-like drill to a badly ground one.',
  class: 'Class on the drawing',
  likely: 'With drills that cut {over:limit} large, class {class} is met by {inside}.',
  none: 'With drills that cut {over:limit} large, no drill here surely meets class {class}.',
  risk: 'At risk: {drills}. The drill is in the class, the hole it cuts is not.',
  listed: 'The drill that lists print, {drill}, leaves {hole:limit}: {fate}.',
  fates: {
    inside: 'inside',
    risk: 'over the limit once it cuts large',
    outside: 'outside, even if it cuts its own size',
  },
  reset: 'Back to the start',
  outside: 'Enter a size within the limits, and the figure comes back.',
} as const;

/** Diameter less pitch, tried. */
export const BASES = {
  caption: 'Diameter less pitch, tried on coarse and fine, metric and inch',
  thread: 'Thread',
  hole: 'D − P',
  shop: 'Shop base',
  iso: 'ISO base',
} as const;

/** Four ways to get to a hole. */
export const WAYS = {
  caption: 'Four ways to “75 %” for {thread}, and what each leaves',
  way: 'Somebody says',
  hole: 'Hole',
  shop: 'Thread left, shop base',
  verdict: 'Class {class}',
  ways: {
    percent: '“75 % on the shop base.”',
    pitch: '“Diameter less pitch.”',
    share: '“Diameter less three quarters of the pitch.”',
    ratio: '“The drill is 75 % of the diameter.”',
  },
  verdicts: { inside: 'inside', small: 'too small', large: 'too large' },
} as const;

/** Worked example: the steps from the class to the drill. */
export const STEPS = {
  caption: '{thread}: from the class to the drill',
  step: 'Step',
  least: 'Smallest hole of the class',
  most: 'Largest hole of the class',
  drill: 'Drill {drill}',
  likely: 'Hole it likely cuts',
  spare: 'Left to the largest hole',
  percent: 'Thread left by the drill: {shop} on the shop base, {iso} on the ISO base.',
} as const;

/** Windows of the class in percent. */
export const WINDOWS = {
  caption: 'What the class allows, in percent of thread on the US shop base',
  thread: 'Thread and class',
  hole: 'Hole',
  least: 'Least',
  most: 'Most',
  sixty: 'Is 60 % allowed?',
  yes: 'yes',
  no: 'no',
} as const;
