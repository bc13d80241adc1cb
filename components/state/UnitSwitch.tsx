/** The switch in the header: millimetres or inches, for every length on the page. */

import { UNITS as WORDS } from '../words/en/fields';
import { chooseUnit, UNITS, useUnit } from './units';

export function UnitSwitch() {
  const unit = useUnit();
  return (
    <fieldset class="units">
      <legend class="unseen">{WORDS.lengthsIn}</legend>
      <div class="tiles">
        {UNITS.map((choice) => (
          <label class="tile" key={choice}>
            <input
              type="radio"
              name="units"
              value={choice}
              checked={unit === choice}
              autocomplete="off"
              onChange={() => chooseUnit(choice)}
            />
            <span>{WORDS[choice]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
