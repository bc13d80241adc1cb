/** How much room packed chips want beside the flute that should carry them, for each mm of depth. */

import { fluteDuty } from '../../../core/chips/duty';
import { CHIP_BULKS } from '../../../core/chips/fit';
import { webSpread } from '../../../core/tap/web';
import { tapMajor } from '../../../core/tap/major';
import { basicDiameters } from '../../../core/thread/profile';
import type { Bars } from '../../chart/bars';
import { decimals, length } from '../../words';
import { ROOM } from '../../words/en/chips';
import { fill } from '../../words/template';
import { planned } from '../planned';
import { CHIP_JOBS } from './jobs';

/** Flutes of the tap that is drawn: a usual number for its size. */
const FLUTES = 3;

/** mm² of each mm of depth: solid metal, flute, and every bulk of chip packed. */
export function roomOfChips() {
  const { thread, drill } = planned(CHIP_JOBS.volute);
  if (!drill) throw new Error(`No drill for ${thread.designation}.`);
  const groove = { major: tapMajor(thread), pitch: thread.pitch, hole: drill.diameter };
  const web = webSpread('straight-flute', groove.major, basicDiameters(thread).minor, FLUTES);
  const of = (bulk: (typeof CHIP_BULKS)[number]) => fluteDuty(groove, web.likely, bulk);
  const { solid, section } = of('short');
  const packed = CHIP_BULKS.map((bulk) => ({ bulk, room: of(bulk).packed }));
  return { thread, groove, solid, section, packed };
}

/** The bars of that, to be drawn while the page is built. */
export function roomBars(): Bars {
  const { thread, groove, solid, section, packed } = roomOfChips();
  const row = (label: string, high: number, strong = false) => ({ label, low: 0, high, strong });
  return {
    title: ROOM.title,
    subtitle: fill(
      ROOM.subtitle,
      { thread: thread.designation, hole: length(groove.hole, 'mm') },
      'mm',
    ),
    description: ROOM.description,
    axis: { label: ROOM.axis, unit: ROOM.unit, write: (value) => decimals(value, 0) },
    rows: [
      row(ROOM.solid, solid),
      row(ROOM.flute, section, true),
      ...packed.map(({ bulk, room }) => row(ROOM[bulk], room)),
    ],
    rowsAre: ROOM.rows,
    reference: { at: section, label: ROOM.flute },
    fromZero: true,
  };
}
