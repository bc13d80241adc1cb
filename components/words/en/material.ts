/** How a written material was understood, and what to type instead. English. */

import type { MaterialProblemCode } from '../../../core/material/read-material-codes';
import type { Kind } from '../../../core/material/designations-words';

export const MATERIAL_READ = {
  'material-read': 'Read as {designation}: {row}.',
  'material-usual': 'Read in its usual meaning: {row}.',
  'material-state': 'State: {state}.',
  'material-hardness': 'Planned for {hb} HB, the hard end.',
  'material-hard-side':
    'Aged to its hard end, 40 to 47 HRC: slow, and the tap wears fast. Ask for the hardness.',
  'material-hardened':
    'That is its hardened state. If the thread is cut before hardening, write the state it is then in.',
  /** A hardness and no name. */
  bare: 'Read as {row}.',
  /** The list says something else. */
  chosen: 'The list below says {row}, and that is planned.',
} as const;

export const MATERIAL_ASKS = {
  condition:
    'In which condition? Add it, like annealed, HT, +QT, T6, H1150 or 30 HRC. Planned so far as {row}.',
  hardness: 'How hard is it? Add it, like 30 HRC or 280 HB. Planned so far as {row}.',
} as const;

export const MATERIAL_PROBLEMS: Record<MaterialProblemCode, string> = {
  'material-empty': 'Type the material as the drawing writes it.',
  'material-unreadable':
    '“{typed}” cannot be placed[: “{extra}” is not understood]. Choose its group below; what you typed stays on the card.',
  'material-ambiguous': '“{typed}” may be more than one. Type {offers}, or choose from the list.',
  'material-contradictory':
    '“{name}” and “{other}” do not go together. Check the drawing, or choose from the list.',
};

/** Between the last two offers. */
export const MATERIAL_OR = ' or ';

/** What a plain word promised, where it contradicts the name beside it. */
export const KIND_NAMES: Record<Kind, string> = {
  steel: 'steel',
  'plain-steel': 'steel',
  stainless: 'stainless',
  iron: 'cast iron',
  aluminium: 'aluminium',
  'cast-aluminium': 'cast aluminium',
  magnesium: 'magnesium',
  zinc: 'zinc',
  brass: 'brass',
  bronze: 'bronze',
  copper: 'copper',
  titanium: 'titanium',
  nickel: 'nickel',
  plastic: 'plastic',
};
