/** What would have to change before chips may be pushed ahead in this hole. */

import type { AheadWay, Way } from '../../../core/chips/ways';
import { decimals, type Unit } from '../../words/format';
import { roughLength } from '../numbers';

const TEXT = {
  heading: 'What would have to change',
  fits: 'Nothing: they fit as the hole is drawn.',
};

const WAYS: Record<Exclude<AheadWay, 'fits-already'>, string> = {
  'deeper-hole': 'Drill to about {to} at the shoulder, {by} deeper, if the floor allows it.',
  'shorter-thread': 'Ask for no more than about {to} of full thread.',
  'chip-that-breaks':
    'A metal, an edge or a fluid that breaks the chip, so that it packs to {factor} times the solid metal.',
  'draw-chips-back':
    'A tap that draws its chips back up: flutes that climb to the hand of the thread.',
  'form-instead': 'A form tap, which makes no chips; its hole is larger.',
  'hole-through': 'A hole drilled through, where chips may fall out below.',
};

function wayText({ way, numbers }: Way, unit: Unit): string {
  if (way === 'fits-already') return TEXT.fits;
  const { to = 0, by = 0, factor = 0 } = numbers;
  return WAYS[way]
    .replace('{to}', roughLength(to, unit))
    .replace('{by}', roughLength(by, unit))
    .replace('{factor}', decimals(factor, 0));
}

/** Nothing where the chips fit: the answer has said so. */
export function Ways({ ways, unit }: { ways: readonly Way[]; unit: Unit }) {
  if (ways[0]?.way === 'fits-already') return null;
  return (
    <section>
      <h2>{TEXT.heading}</h2>
      <ul>
        {ways.map((way) => (
          <li key={way.way}>{wayText(way, unit)}</li>
        ))}
      </ul>
    </section>
  );
}
