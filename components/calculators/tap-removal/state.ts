/** From what is stuck where to the ways of getting it out. Pure. */

import {
  NEVER,
  nutMayBeWelded,
  removalChoices,
  type NeverId,
  type RemovalChoice,
  type StuckTap,
} from '../../../core/diagnose/removal';
import type { Thread } from '../../../core/thread/thread';
import { readPlain } from '../../fields/readNumber';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface RemovalAnswer {
  thread: Thread;
  tap: StuckTap;
  choices: RemovalChoice[];
  /** Where a stub stands out: may a nut be welded to it? */
  weldNut: boolean;
  never: readonly NeverId[];
}

function money(reader: Reader<Name>, name: 'value' | 'cost'): number | undefined {
  const text = reader.text(name);
  if (text === '') return undefined;
  const value = readPlain(text, []);
  return value === null || value < 0 ? reader.complain(name, { code: 'not-money' }) : value;
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, RemovalAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'size');
  const style = reader.needed('tap', reader.choice<StuckTap['style']>('tap'));
  const material = reader.needed('material', reader.material('material'));
  const stub = reader.needed('stub', reader.choice<StuckTap['stub']>('stub'));
  const hold = reader.needed('hold', reader.choice<StuckTap['hold']>('hold'));
  const machine = reader.needed('machine', reader.choice<'yes' | 'no'>('machine'));
  const boss = reader.needed('boss', reader.choice<'yes' | 'no'>('boss'));
  const partValue = money(reader, 'value');
  const removalCost = money(reader, 'cost');
  const { problems } = reader;
  if (problems.length > 0 || !thread || !style || !material || !stub || !hold) {
    return { answer: null, problems };
  }
  const tap: StuckTap = {
    diameter: thread.diameter,
    style,
    material,
    stub,
    hold,
    machine: machine === 'yes',
    wideBoss: boss === 'yes',
    steelFitted: reader.choice('steel') === 'yes',
    ...(partValue === undefined ? {} : { partValue }),
    ...(removalCost === undefined ? {} : { removalCost }),
  };
  const choices = removalChoices(tap);
  if (!choices.ok) {
    reader.lay(choices.problems, () => 'size');
    return { answer: null, problems };
  }
  const weldNut = stub === 'proud' && nutMayBeWelded(thread.diameter);
  return { answer: { thread, tap, choices: choices.value, weldNut, never: NEVER }, problems };
}
