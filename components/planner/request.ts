/** Reads the form into a request the core understands; what cannot be read is a problem at its field. Pure. */

import { readThread } from '../../core';
import type { Outcome } from '../../core/outcome';
import type { HoleRequest } from '../../core/plan/types';
import type { Thread } from '../../core/thread/thread';
import type { Unit } from '../words';
import type { Inputs } from './inputs';
import { Reader, type FieldProblem } from './reader';
import { REQUEST_PARTS } from './request-parts';

export type { FieldProblem } from './reader';

export interface Reading {
  thread: Outcome<Thread>;
  request: HoleRequest | null;
  /** What could be read so far, with stand-ins for what is missing: good for checking, not for planning. */
  draft: HoleRequest;
  problems: FieldProblem[];
}

/** Reads the form: a request when every field that matters can be read, otherwise why not. */
export function readInputs(values: Inputs, unit: Unit): Reading {
  const reader = new Reader(values, unit);
  const typed = values.thread.trim();
  const thread = readThread(typed);
  if (typed === '') reader.complain('thread', 'missing', true);
  else if (!thread.ok) {
    for (const problem of thread.problems) {
      reader.problems.push({ field: 'thread', problem, missing: false });
    }
  }
  const parts: Partial<HoleRequest>[] = REQUEST_PARTS.map(({ read }) => read(reader));
  const read: Partial<HoleRequest> = Object.assign({}, ...parts);
  const draft: HoleRequest = {
    ...read,
    thread: typed,
    hole: read.hole ?? { kind: 'blind' },
    material: read.material ?? 'steel-low',
  };
  const complete = reader.problems.length === 0 && read.hole && read.material;
  return { thread, request: complete ? draft : null, draft, problems: reader.problems };
}
