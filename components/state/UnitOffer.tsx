/** An inch thread on a millimetre page, or the other way round: half an inch must not become half a millimetre. */

import { fieldId } from '../fields/field';
import { UNITS } from '../words/en/fields';
import type { Unit } from '../words/format';
import { chooseUnit } from './units';

export interface UnitOfferProps {
  /** What was typed as the thread, in the field of this name. */
  typed: string;
  field: string;
  /** The unit its system is drawn in, and the page's. */
  likely: Unit;
  unit: Unit;
}

export function UnitOffer({ typed, field, likely, unit }: UnitOfferProps) {
  if (typed.trim() === '' || likely === unit) return null;
  const turn = () => {
    chooseUnit(likely);
    // This button goes away: leave the keyboard where it came from.
    document.getElementById(fieldId(field))?.focus();
  };
  return (
    <p class="unit-offer">
      {UNITS.readIn[unit]}{' '}
      <button type="button" class="link-button" onClick={turn}>
        {UNITS.turnTo[likely]}
      </button>
    </p>
  );
}
