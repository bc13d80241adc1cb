/** The answer in one sentence and the reason under it. English. */

export const ANSWER = {
  tapTail: ' tap, ',
  chamfer: '{threads} thread',
  chamferTail: ' chamfer. ',
  drill: 'Drill ',
  bore: 'Bore or ream to ',
  noDrill: 'Bore or ream the hole into its class, for no stocked drill suits',
  shoulder: ', shoulder ',
  deep: ' deep',
  fromFace: ' ({depth} from the face)',
  open: 'Open the cast hole to ',
  through: ' right through; run the tap to ',
  leftHand: 'Left-hand ',
  taper: {
    right: 'Taper pipe tap',
    left: 'Left-hand taper pipe tap',
    tail: ', the gauge decides the depth. ',
  },
  none: {
    breaks: 'The tap would break here',
    breaksTail: ': even sharp it meets ',
    breaksEnd: ' of the torque that breaks it.',
    heavy: 'Too heavy by hand',
    heavyTail: ': even a sharp tap needs ',
    depth: 'No machine tap gives ',
    depthTail: ' of full thread here.',
    depthMost: ' The most is ',
    depthWith: ', with a ',
    depthWithTail: ' thread chamfer.',
    spindle: 'Too much for this spindle',
    spindleTail: ': a worn tap would need ',
    spindleHave: ', and it gives ',
    hard: 'Too hard to tap',
    hardTail: ': thread it before hardening, or mill the thread.',
    below: 'Not enough room below',
    belowTail: ': the tap must run ',
    belowEnd: ' past the far face.',
    flat: 'Cut a flat first',
    flatTail: ': on a face that slants so much a drill walks off. Make it ',
    flatEnd: ' across, square to the hole.',
    synchronous: 'Only on a synchronous spindle',
    synchronousTail: ': the tap crosses a gap and must keep to its pitch. Or tap before it is cut.',
    gone: 'No thread would be left',
    goneTail: ': what crosses the hole takes all of it.',
    reach: 'No stock tap gets that deep',
    reachTail: ': it must go in ',
    reachMost: ', and the most is ',
    other: 'No tap suits this hole as drawn',
    otherTail: '.',
  },
} as const;

/** Why, by the hole and by the way the chips of the first choice go. */
export const BECAUSE = {
  blind: {
    back: 'Blind, and {material} {chips}: the chips must come back up.',
    stays: 'Blind, and {material} {chips}: what falls can lie in straight flutes.',
    ahead: 'Blind, and there is room below the thread for the chips that it drives ahead.',
    none: 'Blind, and {material} can be pressed into a thread: no chips to get rid of.',
  },
  through: {
    ahead: 'Through, so the chips may go out ahead of the tap.',
    stays: 'Through, and {material} {chips}: straight flutes are enough.',
    back: 'Through, but the chips are to come back up.',
    none: 'Through, and a formed thread drops no chips.',
  },
  crossing:
    'What already crosses the hole decides: the tap must keep teeth in metal all the way over it.',
  taper:
    'A taper tap goes on cutting with every thread: stop when the gauge says so, not at a depth.',
  hand: 'By hand, a set of straight flutes: turn on, turn back, and the chip breaks.',
  longerWouldNeed:
    'A chamfer of {threads} threads would last longer but needs {needed:length}[, {short:length} more than the drawing allows].',
  noneFits: {
    depth:
      'Even that chamfer would need {needed:length} to the shoulder for what you ask, {short:length} more than the drawing allows.',
    spindle: 'Torque is the limit, not power: a slower or faster speed does not lower it.',
  },
} as const;

export const READING = {
  metric: '{name} {series}, pitch {pitch} mm',
  unified: '{name} inch {series}, {tpi} threads per inch',
  number: '{name} {series}, {tpi} threads per inch',
  pipe: '{name} pipe thread',
  class: 'class {class}',
  classAssumed: 'class {class} (the usual one)',
  insert: 'hole for a wire thread insert',
  special: 'special',
  /** Metric series by their name in the core; others go by their letters. */
  series: { coarse: 'coarse', fine: 'fine' },
} as const;

export const GAUGE = {
  plug: 'Thread plug gauge {designation}, GO and NOT GO[, {hand}]; plain plug for the minor diameter',
  left: 'left hand',
  taper: 'Taper plug gauge {designation}: how far it goes in decides',
} as const;
