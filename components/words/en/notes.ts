/** What should be said beside an answer that was given. English. */

import type { ThreadNoteCode } from '../../../core/thread/codes';

export const NOTES: Record<ThreadNoteCode, string> = {
  'number-size-read': 'Read as the number size {size}.',
  'not-standard-pair':
    'Not a pair of the standard lists. It is treated as special: its limits are computed, not tabulated.',
  'class-assumed': 'No class given: {class} taken, the usual one.',
  'coarse-assumed': 'No pitch given: coarse taken, {pitch} mm.',
  'pitch-from-series': 'Pitch taken from {series}: {tpi} threads per inch.',
  'dash-pitch': 'The number after the dash was read as the pitch, {pitch} mm.',
  'decimal-read-as': '{typed} was read as {size}.',
  'old-series-name': '{typed} is the old name of {series}.',
  'series-named': 'This pair has a name of its own: {series}.',
  'external-root-name': '{typed} is a form for screws; the hole is {series}.',
  'did-you-mean-fraction':
    'Read as {size} inch. Did you mean {fraction}? Type size and pitch, like {example}.',
  'six-h-not-tabulated': '6H is not tabulated for this pitch; {class} is the usual class.',
  'fit-internal-part': '{typed} is a fit; the hole’s part of it, {class}, was read.',
  'lower-case-class':
    '{typed} was read as {class}: capitals are for holes, small letters for screws.',
  'pipe-name': '{typed} was read as {form}.',
  'gauging-dropped': 'The gauging note {typed} does not change the hole and was left out.',
};
