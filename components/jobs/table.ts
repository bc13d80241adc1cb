/** Every kept hole as a row for a spreadsheet: what was asked and what is answered now. */

import { writeTable } from './csv';
import { bestTap, drillName, lengthNumber, rpm, tapName } from '../words';
import { plannedHole } from './planned';
import type { Job } from './shape';
import { SHEET_HEAD } from '../words/en/drawerLines';

export function jobRows(jobs: readonly Job[]): string[][] {
  const rows = jobs.flatMap(({ holes, ...job }) =>
    holes.map((hole, at) => {
      const { values, plan, request } = plannedHole(hole);
      const tap = plan ? bestTap(plan) : undefined;
      const depth = (mm: number | undefined) => (mm === undefined ? '' : lengthNumber(mm, 'mm'));
      const blind = request?.hole.kind === 'blind';
      return [
        job.job,
        job.part,
        job.operation,
        job.machine,
        String(at + 1),
        values.holes,
        plan?.thread.designation ?? values.thread,
        values.hole,
        values.material,
        plan && tap ? tapName(tap, plan.thread.system) : '',
        tap?.drill ? drillName(tap.drill) : '',
        blind ? depth(tap?.depth.shoulder) : '',
        depth(tap?.depth.tip),
        depth(tap?.depth.fullThread),
        plan?.cycle && tap ? rpm(plan.cycle.rpm) : '',
        plan?.cycle && tap ? String(plan.cycle.feedPerRev) : '',
      ];
    }),
  );
  return [SHEET_HEAD, ...rows];
}

/** Every kept hole as a table for a spreadsheet. */
export function jobsCsv(jobs: readonly Job[]): string {
  return writeTable(jobRows(jobs));
}
