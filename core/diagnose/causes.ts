/**
 * Everything that a tap, a thread or a gauge can be complaining of. Each cause is one thing to change;
 * what to change and how to know that it worked are said in `components/words/`.
 * Ranks and checks are common practice, unless a cause names another source.
 */

import type { SourceId } from '../sources';

export const CAUSE_IDS = [
  // The hole and the room in it.
  'touches-bottom',
  'too-little-room',
  'overrun',
  'centre-not-counted',
  'hole-small',
  'hole-shallow',
  'drill-off',
  'wrong-drill',
  'drill-wandered',
  'bent-hole',
  'rough-entry',
  'angled-entry',
  'hard-spot',
  'hardened-wall',
  'form-hole-off',
  'form-hole-large',
  'form-hole-small',
  // The set-up and the program.
  'misaligned',
  'start-feed',
  'r-plane',
  'lead-error',
  'retract-fast',
  'axial-miscut',
  'float-setting',
  'float-pressure',
  'entry-compression',
  'units-error',
  'pitch-error',
  'z-short',
  'reentered',
  'length-reset',
  'started-twice',
  'part-moved',
  'torque-over',
  'rpm-over',
  'acceleration',
  'weak-hold',
  'no-square-drive',
  'oily-shank',
  'clutch-low',
  // The tap.
  'dull-tap',
  'tooth-load',
  'limit-high',
  'limit-low',
  'uneven-regrind',
  'rake-wrong',
  'bare-tool',
  'high-helix',
  'serial-omitted',
  'overload',
  'bending',
  // The hand.
  'hand-rock',
  'hand-reversing',
  // Chips and fluid.
  'chips-packed',
  'chip-root-jammed',
  'chips-in-bottom',
  'recut-chips',
  'weak-flush',
  'chip-form',
  'fluid-missed',
  'dry',
  'poor-lubrication',
  'speed-high',
  'rubbing',
  'heat',
  'built-up-edge',
  // The metal.
  'hard-material',
  'abrasive',
  'springy',
  'closes-in',
  'brittle-forming',
  // Gauges, burrs, coatings, screws.
  'wrong-gauge',
  'gauge-chamfer',
  'burr-or-chips',
  'burr-crest',
  'no-allowance',
  'thick-plate',
  'engagement-short',
  'minor-large-unseen',
  'under-formed',
  'wrong-screw',
] as const;

export type CauseId = (typeof CAUSE_IDS)[number];

/** Causes whose ground is more than practice. */
const SOURCED: Partial<Record<CauseId, SourceId>> = {
  'too-little-room': 'derived',
  'z-short': 'derived',
  'axial-miscut': 'derived',
  'units-error': 'derived',
  'tooth-load': 'tap-chip-model',
  'torque-over': 'tap-chip-model',
  'limit-high': 'tap-limit-lists',
  'limit-low': 'tap-limit-lists',
  'speed-high': 'speed-charts',
  'wrong-gauge': 'iso-1502',
  'no-allowance': 'derived',
  'engagement-short': 'shear-strength',
};

/** What a cause and its remedy rest on. No unit; every cause has a source, `common-practice` where nothing firmer is held. */
export function causeSource(cause: CauseId): SourceId {
  return SOURCED[cause] ?? 'common-practice';
}
