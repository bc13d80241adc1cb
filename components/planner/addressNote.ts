/** Something in the address that the planner could not use. */

import type { AddressNote } from '../state/address';
import { say } from '../words/say';
import type { InputName } from './inputs';
import { ADDRESS_NOTES, LABELS } from '../words/en/planner';

export function addressNoteText({ reason, name, typed }: AddressNote): string {
  // The name is somebody else's text: `__proto__` must not be looked up.
  const label = Object.hasOwn(LABELS, name) ? LABELS[name as InputName].toLowerCase() : '';
  return say(ADDRESS_NOTES[reason], { name, typed, label });
}
