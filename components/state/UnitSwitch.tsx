/** The switch in the header: millimetres or inches, for every length on the page. */

import { chooseUnit, UNITS, useUnit } from './units';

const LABELS = { mm: 'mm', in: 'inch' } as const;

export function UnitSwitch() {
  const unit = useUnit();
  return (
    <fieldset class="units">
      <legend class="unseen">Lengths in</legend>
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
            <span>{LABELS[choice]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
