/** Gauge and drills of a pipe thread, and what is not said about it. */

import type { PipeNotes } from '../../core/gauge/pipe';
import type { Thread } from '../../core/thread/thread';
import { Notice } from '../result/Notice';
import { bothLengths, decimals, drillName, length, limitLength, type Unit } from '../words';
import { PIPE, PIPE_HOLES } from '../words/en/reference';
import { fill } from '../words/template';

function turnsOf(turns: number): string {
  return turns === 1 ? PIPE.turns1 : fill(PIPE.turns, { turns: decimals(turns, 2) }, 'mm');
}

function gaugeText({ gauge }: PipeNotes, thread: Thread, unit: Unit): string | null {
  if (!gauge) return null;
  return fill(
    thread.form.startsWith('NP') ? PIPE.gauge : PIPE.gaugeRc,
    {
      length: bothLengths(gauge.length, unit),
      turns: turnsOf(gauge.turns),
      travel: length(gauge.travel, unit),
    },
    unit,
  );
}

export function PipeList({
  notes,
  thread,
  unit,
}: {
  notes: PipeNotes;
  thread: Thread;
  unit: Unit;
}) {
  const { sizes, drills, taper } = notes;
  const gauge = gaugeText(notes, thread, unit);
  return (
    <>
      {taper && <p>{PIPE.taper}</p>}
      {gauge && <p>{gauge}</p>}
      {sizes && (
        <p>
          {fill(
            PIPE.sizes,
            {
              mouth: limitLength(sizes.pitchMouth, unit),
              effective: length(sizes.effective, unit),
            },
            unit,
          )}
        </p>
      )}
      {drills.length > 0 && (
        <ul>
          {drills.map((drill) => (
            <li key={drill.hole}>
              {PIPE.drills} <strong>{drillName(drill)}</strong> ({limitLength(drill.diameter, 'mm')}
              , {limitLength(drill.diameter, 'in')}), {PIPE_HOLES[drill.hole]}
            </li>
          ))}
        </ul>
      )}
      {drills.length === 0 && !gauge && <p>{PIPE.none}</p>}
      <Notice level="stop" title={PIPE.pressure.split('. ')[0] + '.'}>
        <p>{PIPE.pressure.split('. ').slice(1).join('. ')}</p>
      </Notice>
    </>
  );
}
