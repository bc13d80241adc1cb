/** What the calculator of every framework calls: the core's own reading and limits, as rows to show. */
import { readThread, threadLimits } from '../../../core/index';

export function limitsOf(text: string): { rows: [string, string][]; problem: string } {
  const thread = readThread(text);
  if (!thread.ok) return { rows: [], problem: thread.problems[0]?.code ?? '' };
  const limits = threadLimits(thread.value);
  if (!limits.ok) return { rows: [], problem: limits.problems[0]?.code ?? '' };
  const { unit, pitch, minor, majorMin } = limits.value;
  const shown = (value: number | undefined): string =>
    value === undefined ? 'no limit' : `${value.toFixed(unit === 'in' ? 4 : 3)} ${unit}`;
  return {
    rows: [
      ['Minor diameter', `${shown(minor.min)} to ${shown(minor.max)}`],
      ['Pitch diameter', `${shown(pitch.min)} to ${shown(pitch.max)}`],
      ['Major diameter at least', shown(majorMin)],
    ],
    problem: '',
  };
}
