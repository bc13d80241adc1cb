/** From a hole and the taps in the drawer to how it is tapped by hand. Pure. */

import type { MaterialId } from '../../../core/material/material';
import { findMaterial } from '../../../core/material/table';
import { handTapping, type HandPlan, type HandSet, type HandStyle } from '../../../core/tap/hand';
import type { Thread } from '../../../core/thread/thread';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface HandAnswer {
  thread: Thread;
  plan: HandPlan;
  fullThread: number;
  /** mm; missing in a through hole. */
  shoulder?: number;
  set: HandSet;
  style: HandStyle;
  material?: MaterialId;
}

const FIELDS: Record<string, Name> = { fullThread: 'full', shoulder: 'shoulder', style: 'flutes' };

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, HandAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const hole = reader.needed('hole', reader.choice<'blind' | 'through'>('hole'));
  const fullThread = reader.needed('full', reader.length('full'));
  const shoulder =
    hole === 'blind' ? reader.needed('shoulder', reader.length('shoulder')) : undefined;
  const set = reader.choice<HandSet>('set') ?? 'same-diameter';
  const style = reader.choice<HandStyle>('flutes') ?? 'straight-flute';
  const material = reader.material('material');
  const { problems } = reader;
  if (problems.length > 0 || !thread || fullThread === undefined) {
    return { answer: null, problems };
  }
  const plan = handTapping({
    thread,
    fullThread,
    hole: shoulder === undefined ? { kind: 'through' } : { kind: 'blind', shoulder },
    set,
    style,
    material: material && findMaterial(material),
  });
  if (!plan.ok) {
    const refusal = plan.problems.find(({ code }) => code === 'taper-by-hand');
    if (refusal) return { answer: null, problems, refusal };
    reader.lay(plan.problems, ({ field }) => FIELDS[field ?? ''] ?? 'thread');
    return { answer: null, problems };
  }
  return {
    answer: { thread, plan: plan.value, fullThread, shoulder, set, style, material },
    problems,
  };
}
