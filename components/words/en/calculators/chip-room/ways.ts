/** What would have to change before chips may be pushed ahead, in words. English. */

import type { AheadWay } from '../../../../../core/chips/ways';

export const CHANGES = {
  heading: 'What would have to change',
  fits: 'Nothing: they fit as the hole is drawn.',
} as const;

export const WAYS: Record<Exclude<AheadWay, 'fits-already'>, string> = {
  'deeper-hole': 'Drill to about {to} at the shoulder, {by} deeper, if the floor allows it.',
  'shorter-thread': 'Ask for no more than about {to} of full thread.',
  'chip-that-breaks':
    'A metal, an edge or a fluid that breaks the chip, so that it packs to {factor} times the solid metal.',
  'draw-chips-back':
    'A tap that draws its chips back up: flutes that climb to the hand of the thread.',
  'form-instead': 'A form tap, which makes no chips; its hole is larger.',
  'hole-through': 'A hole drilled through, where chips may fall out below.',
};
