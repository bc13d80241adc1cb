/** Words of the figures in the lessons on gauging, on broken taps and on tapping by hand. English. */

export const BREAKS = {
  choose: 'Thread, spiral flute, blind, in austenitic stainless',
  told: 'A sharp tap uses {sharp:percent} of what breaks it; at the end of its life, {worn:percent}.',
  caption: 'The same metal, the same kind of tap: what is left in hand',
  thread: 'Thread',
  index: '(P/D)² over that of M10×1.5',
  sharp: 'Share of its strength, sharp',
  worn: 'worn',
  fractures: 'Four ends of a tap',
} as const;

export const BENCH = {
  choose: 'Tap in the wrench',
  told: 'It breaks at about {breaks:torque}. Hold the wrench no further than {arm:roughly} from the axis on each side.',
  caption: 'Two sets that look alike',
  tap: 'Tap',
  chamfer: 'Threads of chamfer',
  after: 'After it the thread is',
  full: 'full size, {length}',
  under: 'still too small',
  same: 'Same diameter',
  serial: 'Serial',
} as const;

export const TURNS = {
  label: 'Turns the NOT GO made by hand',
  unit: 'turns',
  hint: 'Until it stopped by itself, without force.',
  rule: '{rule}: up to {turns} turns may be. This hole {verdict}.',
  passes: 'passes',
  fails: 'does not pass',
  differ: 'The two rules disagree: drawing or contract must say which one holds.',
  rules: { 'asme-b1-2': 'ASME B1.2', 'iso-1502': 'ISO 1502' },
  caption: 'What each gauge can see',
  gauge: 'Gauge',
  size: 'Stands for, {thread}',
  proves: 'Proves',
} as const;
