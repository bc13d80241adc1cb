/**
 * What is often believed of tapped holes and is not so, and where the handbook meets it: an exercise or figure of a
 * lesson by its name, or a rule of thumb that is put to the test. Gathered from shop talk: common practice.
 */

export interface Misconception {
  believed: string;
  /** `lesson slug#name` of an exercise or figure, or `rules#id`. */
  met: string;
}

export const MISCONCEPTIONS: readonly Misconception[] = [
  { believed: 'Spiral point and spiral flute do the same', met: 'naming-a-tap#name-it' },
  { believed: 'Chips go the way the tap goes', met: 'naming-a-tap#first-guess' },
  {
    believed: 'A left-hand tap is a right-hand one run backwards',
    met: 'special-threads#first-guess',
  },
  { believed: 'Every blind hole wants a spiral flute', met: 'naming-a-tap#iron' },
  { believed: 'Every through hole wants a spiral point', met: 'through-holes#gallery' },
  { believed: 'A blind hole wants a spiral point', met: 'naming-a-tap#blind-steel' },
  { believed: 'Plug means one chamfer everywhere', met: 'chamfer-classes#uk-plug' },
  { believed: 'A longer chamfer takes less torque', met: 'rules#longer-chamfer-less-torque' },
  { believed: 'A taper tap is the gentlest in stainless', met: 'chamfer-classes#stainless' },
  { believed: 'A blind hole wants a bottoming tap', met: 'rules#bottoming-for-blind' },
  { believed: 'The hole is as deep as the thread', met: 'blind-holes#first-guess' },
  { believed: 'One thread of clearance is enough', met: 'blind-holes#one-pitch' },
  { believed: 'The hole is one and a quarter times the thread', met: 'rules#quarter-deeper' },
  { believed: 'Seventy-five per cent, always', met: 'rules#always-75' },
  { believed: 'A percentage needs no base', met: 'tap-drill-and-percent#base' },
  { believed: 'Diameter less pitch gives seventy-five per cent', met: 'rules#diameter-less-pitch' },
  { believed: 'Sixty per cent is plenty', met: 'tap-drill-and-percent#tough' },
  { believed: 'The drill from the chart suits every class', met: 'tap-drill-and-percent#trap' },
  { believed: 'H3 is the standard tap', met: 'class-and-tap-limits#h-four' },
  { believed: 'A coating counts once', met: 'class-and-tap-limits#times' },
  { believed: 'GO goes, so the thread is good', met: 'rules#go-goes-so-good' },
  { believed: 'NOT GO enters, so it is a reject', met: 'gauging#turns-guess' },
  { believed: 'More power makes the thread', met: 'speed-feed-and-cycle#kilowatts' },
  { believed: 'Slower is safer', met: 'torque#slower' },
  {
    believed: 'Ninety-five per cent of the feed in a rigid holder',
    met: 'speed-feed-and-cycle#creep',
  },
  { believed: 'Peck every deep hole', met: 'rules#peck-deep-holes' },
  { believed: 'Back every tap off each half turn', met: 'rules#back-off-half-turn' },
  { believed: 'Any wrench fits any tap', met: 'hand-tapping#arm' },
  { believed: 'The first tap of a serial set is enough', met: 'hand-tapping#serial-first' },
  { believed: 'Two diameters deep, always', met: 'how-deep-is-enough#first-guess' },
  { believed: 'Three threads carry everything', met: 'rules#three-threads-enough' },
  { believed: 'A form tap takes the usual drill', met: 'form-taps#tight' },
  { believed: 'Formed threads are stronger', met: 'rules#formed-is-stronger' },
  { believed: 'Any oil will do', met: 'rules#any-oil' },
  { believed: 'Break a stuck tap out with acid', met: 'rules#dissolve-it' },
  { believed: 'Blow a blind hole out', met: 'rules#blow-it-out' },
];
