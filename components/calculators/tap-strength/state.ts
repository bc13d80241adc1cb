/** From a tap to what breaks it, and what a torque is of that. Pure. */

import { strengthStudy, type StrengthStudy } from '../../../core/plan/strength-study';
import type { TwistedStyle } from '../../../core/tap/web';
import type { Problem } from '../../../core/outcome';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { threadOf } from '../reading';
import type { Name } from './inputs';

export interface StrengthAnswer {
  style: TwistedStyle;
  study: StrengthStudy;
  flutesGiven: boolean;
}

const fieldOf = ({ field }: Problem): Name => (field === 'web' ? 'web' : 'thread');

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, StrengthAnswer> {
  const reader = new Reader<Name>(values, unit);
  const thread = threadOf(reader, 'thread');
  const style = reader.needed('tap', reader.choice<TwistedStyle>('tap'));
  const flutes = style === 'straight-flute' ? reader.choice<'3' | '4'>('flutes') : undefined;
  const web = style === 'form' ? undefined : reader.length('web');
  const torque = reader.torque('torque');
  const { problems } = reader;
  if (problems.length > 0 || !thread || !style) return { answer: null, problems };
  const study = strengthStudy({
    thread: reader.text('thread'),
    style,
    flutes: flutes && Number(flutes),
    web,
    torque,
  });
  if (!study.ok) {
    reader.lay(study.problems, fieldOf);
    return { answer: null, problems };
  }
  return { answer: { style, study: study.value, flutesGiven: flutes !== undefined }, problems };
}
