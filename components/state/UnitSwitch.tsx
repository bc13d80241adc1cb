/** The switch in the header: millimetres or inches, for every length on the page. */

import { useState } from 'preact/hooks';
import { UNITS as WORDS } from '../words/en/fields';
import { chooseUnit, UNITS, useUnit } from './units';

export function UnitSwitch() {
  const unit = useUnit();
  const [kept, setKept] = useState(true);
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
              onChange={() => setKept(chooseUnit(choice) === 'kept')}
            />
            <span>{WORDS[choice]}</span>
          </label>
        ))}
      </div>
      {!kept && <small role="status">{WORDS.notSaved}</small>}
    </fieldset>
  );
}
