/** Chamfer lengths of each class and the room they need below the thread. */

import { Scroll } from '../calculators/Scroll';
import type { RoomTable } from '../../core/hole/room-table';
import type { Thread } from '../../core/thread/thread';
import { chamferText, length, lengthNumber, type Unit } from '../words';
import { HEADINGS, ROOM } from '../words/en/reference';
import { fill } from '../words/template';
import { depthPair } from './limits';

export function ChamferRoomTable({
  room,
  thread,
  unit,
}: {
  room: RoomTable;
  thread: Thread;
  unit: Unit;
}) {
  return (
    <>
      <Scroll label={HEADINGS.room}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{ROOM.chamfer}</th>
              <th scope="col" class="number">
                {fill(ROOM.length, { unit }, unit)}
              </th>
              <th scope="col" class="number">
                {ROOM.synchronous}
              </th>
              <th scope="col" class="number">
                {ROOM.floating}
              </th>
            </tr>
          </thead>
          <tbody>
            {room.rows.map((row) => (
              <tr key={row.chamfer.class}>
                <th scope="row">{chamferText(row.chamfer, thread.system)}</th>
                <td class="number">{depthPair(row.length, unit)}</td>
                <td class="number">{lengthNumber(row.synchronous.worst, unit)}</td>
                <td class="number">{lengthNumber(row.floating.worst, unit)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {fill(ROOM.note, room.hand ? { hand: length(room.hand.worst, unit) } : {}, unit)}
        {room.runOut !== null && fill(ROOM.runOut, { runOut: length(room.runOut, unit) }, unit)}
      </p>
    </>
  );
}
