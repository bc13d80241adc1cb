/** Chamfer lengths and the blind room they need, class by class, for one pitch: the table of a thread's page. */

import { chamferOf, FORM_F, middleThreads, type ChamferSystem } from '../chamfer/classes';
import { CHAMFER_CLASSES, type Chamfer } from '../chamfer/chamfer';
import { RUN_OUT } from '../data/din-76-run-outs';
import type { Range } from '../units';
import { HAND_FINISH_CLEARANCE, roomBelowThread, STOP_CLEARANCE } from './depth';

export interface ChamferRoom {
  chamfer: Chamfer;
  /** Length of the chamfer on the tap, mm. */
  length: Range;
  /** Room below the full thread that the longest and the middle of the class need, mm, by kind of spindle. */
  synchronous: { worst: number; middle: number };
  floating: { worst: number; middle: number };
}

export interface RoomTable {
  rows: readonly ChamferRoom[];
  /** Finishing by hand with the shortest chamfer there is (form F) and a careful stop, mm; null where no such tap is made. */
  hand: { threads: Range; worst: number } | null;
  /** DIN 76-1 run-out (e1, regular), mm; null where its table has no such pitch. */
  runOut: number | null;
}

/**
 * What each chamfer class needs below the full thread of a blind hole: chamfer and stop clearance, no chips, no
 * external centre. `only`: the one chamfer that taps of this thread are made with. `pitch` mm, above 0; answers in mm. Never refuses. Sources: `asme-b94-9`, `iso-8830`, `common-practice` for
 * the clearances, `din-76-1` for the run-out.
 */
export function roomTable(pitch: number, system: ChamferSystem, only?: Chamfer): RoomTable {
  const room = (chamferThreads: number, clearance: number) =>
    roomBelowThread({ pitch, chamferThreads, clearance, centre: 0 });
  const chamfers = only ? [only] : CHAMFER_CLASSES.map((name) => chamferOf(name, system));
  const rows = chamfers.map((chamfer): ChamferRoom => {
    const both = (clearance: number) => ({
      worst: room(chamfer.threads.max, clearance),
      middle: room(middleThreads(chamfer), clearance),
    });
    return {
      chamfer,
      length: { min: chamfer.threads.min * pitch, max: chamfer.threads.max * pitch },
      synchronous: both(STOP_CLEARANCE.synchronous),
      floating: both(STOP_CLEARANCE.floating),
    };
  });
  return {
    rows,
    hand: only
      ? null
      : { threads: FORM_F.threads, worst: room(FORM_F.threads.max, HAND_FINISH_CLEARANCE) },
    runOut: only ? null : (RUN_OUT[pitch] ?? null),
  };
}
