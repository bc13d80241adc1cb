/** Words of the lesson on chips and materials: its tables and its live figures. English. */

export const CHIPS = {
  material: 'Material',
  hole: 'The hole',
  blind: 'Blind',
  through: 'Through, open below',
  closed: 'Through, must stay clean',
  reset: 'Back to the start',
  told: '{Material} {chips}. Packed, they fill about {factor:whole} times the room of the solid metal.',
  tap: 'The planner begins with: {tap}.',
  none: 'No high-speed tap is offered for it: mill the thread, and ask first.',
  hardens: 'It hardens where it is rubbed.',
  springs: 'It springs back after the cut.',
  dusty: 'Its dust must be drawn off.',
  burns: 'Its swarf can burn.',
} as const;

export const ROOM = {
  title: 'Packed chips want far more room than the flute beside them has',
  subtitle: '{thread} in a hole of {hole}, straight flutes, for every mm of depth',
  description:
    'Level bars from zero. The shortest is the solid metal that is cut away. The flute has room for about twice that. Short chips packed want more than the flute has, tough ones more again, and long ones the most.',
  axis: 'Room for each mm of depth',
  unit: 'mm²',
  rows: 'What',
  solid: 'the solid metal',
  flute: 'room in the flutes beside it',
  short: 'short chips, needles or dust, packed',
  medium: 'tough chips of middling length, packed',
  long: 'long, stringy chips, packed',
  source: 'bulking of chips, packed: an estimate; flutes of a usual tap',
} as const;

export const TRAITS = {
  caption: 'What each material does to chip, tap and hole',
  material: 'Material',
  chip: 'Its chip',
  hardens: 'hardens when rubbed',
  springs: 'springs back',
  dust: 'dust',
  fire: 'swarf burns',
  abrasive: 'wears edges',
  speed: 'Speed, m/min',
  none: 'not with high-speed steel',
  traits: 'Watch for',
} as const;
