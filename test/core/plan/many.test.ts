/**
 * What the planner says of many holes, kept as a file in lines that can be read: of every corner of the rules
 * at least one hole. A change of a rule shows as the lines it changed, and is looked at. What an answer
 * should be is for the other tests to say.
 */
import { expect, test } from 'vitest';
import { planHole, type HoleRequest } from '../../../core';
import { REQUESTS } from './many-requests';
import { plain } from './plain';

/** A reason, warning, assumption or remedy: its code, and its numbers where it has any. */
function coded({ code, numbers }: { code: string; numbers: Record<string, number> }): string {
  return Object.keys(numbers).length === 0 ? code : `${code}${plain(numbers)}`;
}

function linesOf(request: HoleRequest): string {
  const outcome = planHole(request);
  const head = `# ${plain(request)}`;
  if (!outcome.ok) return [head, ...outcome.problems.map((each) => `! ${plain(each)}`)].join('\n');
  const { drill, drills, taps, remedies, cycle, warnings, assumptions } = outcome.value;
  const lines = taps.map(({ reasons, drill: own, depth, chamfer, ...rest }, at) => {
    const { process, style, hand, verdict } = rest;
    const name = `${verdict}: ${process} ${style} ${hand} ${chamfer.class} ${chamfer.form}`;
    const why = reasons.map(coded).join('; ');
    // The first of each kind of tap in full; of the others what was said.
    const first =
      verdict !== 'no' &&
      taps.findIndex((tap) => tap.style === style && tap.verdict === verdict) === at;
    const { torque, toothLoad, tapShare, spindleShare, chips } = rest;
    const full = { drill: own?.name, depth, torque, toothLoad, tapShare, spindleShare, chips };
    return `${name}: ${why}${first ? `\n    ${plain(full)}` : ''}`;
  });
  return [
    head,
    `drill ${plain(drill)} of ${drills.map((each) => `${each.name} ${each.verdict}`).join(', ')}`,
    ...lines,
    `remedies: ${remedies.map(coded).join('; ')}`,
    `cycle: ${plain(cycle)}`,
    `warnings: ${warnings.map(coded).join('; ')}`,
    `assumptions: ${assumptions.map(coded).join('; ')}`,
  ].join('\n');
}

test('many holes', async () => {
  const text = REQUESTS.map(linesOf).join('\n\n');
  await expect(`${text}\n`).toMatchFileSnapshot('golden/many.txt');
});
