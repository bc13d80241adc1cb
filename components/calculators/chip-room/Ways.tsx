/** What would have to change before chips may be pushed ahead in this hole. */

import type { Way } from '../../../core/chips/ways';
import { decimals, type Unit } from '../../words/format';
import { roughLength } from '../numbers';
import { CHANGES, WAYS } from '../../words/en/calculators/chip-room/ways';
import { say } from '../../words/say';

function wayText({ way, numbers }: Way, unit: Unit): string {
  if (way === 'fits-already') return CHANGES.fits;
  const { to = 0, by = 0, factor = 0 } = numbers;
  return say(WAYS[way], {
    to: roughLength(to, unit),
    by: roughLength(by, unit),
    factor: decimals(factor, 0),
  });
}

/** Nothing where the chips fit: the answer has said so. */
export function Ways({ ways, unit }: { ways: readonly Way[]; unit: Unit }) {
  if (ways[0]?.way === 'fits-already') return null;
  return (
    <section>
      <h2>{CHANGES.heading}</h2>
      <ul>
        {ways.map((way) => (
          <li key={way.way}>{wayText(way, unit)}</li>
        ))}
      </ul>
    </section>
  );
}
