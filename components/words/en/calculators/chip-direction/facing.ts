/** The same chips in a hole that does not point down, in words. English. */

import type { Orientation, OrientationCode } from '../../../../../core/chips/orientation';

export const FACING = {
  heading: 'Which way the tap goes in',
  facing: 'Tap goes in',
  happens: 'What that does',
} as const;

export const WAYS: Record<Orientation, string> = {
  down: 'Downward',
  sideways: 'Sideways',
  up: 'Upward, overhead',
};

export const NOTES: Record<OrientationCode, string> = {
  'fluid-stays': 'Fluid stays in the hole.',
  'fluid-runs-out': 'Fluid runs out: feed it all the time, or through the tap.',
  'fluid-falls-away': 'Fluid falls away: use paste, or feed it through the tap.',
  'chips-lie-on-low-side': 'Chips lie on the low side and are cut again: flush them out.',
  'chips-fall-out': 'Chips fall out by themselves.',
  'chips-fall-to-floor': 'Chips fall to the floor of the hole and stay there.',
  'ahead-against-gravity': 'Chips have to be pushed up and out against their weight.',
  'ahead-falls-clear': 'Chips drop out below.',
  'back-must-be-lifted': 'Chips have to be lifted out against their weight.',
  'back-falls-clear': 'Chips that come back drop out by themselves.',
  'stand-clear-below': 'Nobody stands or looks up from below; face shield.',
};
