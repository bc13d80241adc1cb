/** Something in the address that a page could not use. */

import type { AddressNote } from '../state/address';
import { say } from '../words/say';
import { ADDRESS_NOTES } from '../words/en/calculators/shared';

export function addressText({ reason, name, typed }: AddressNote, label?: string): string {
  return label === undefined
    ? say(ADDRESS_NOTES['unknown-name'], { name, typed })
    : say(ADDRESS_NOTES[reason], { name, typed, label });
}
