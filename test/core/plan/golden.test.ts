/**
 * The whole answer to each worked job, kept as a file: a change of any number or reason shows as a line
 * in the change that made it, and is looked at. What an answer should be is for the other tests to say.
 */
import { expect, test } from 'vitest';
import { planHole } from '../../../core';
import { checkFeed, cleanSpeeds } from '../../../core/cycle/feed';
import { JOBS } from './jobs';

/** Six digits: beyond them is how a machine keeps a number. */
function plain(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(6));
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, plain(each)]));
}

test.each(Object.entries(JOBS))('%s', async (name, request) => {
  const outcome = planHole(request);
  expect(outcome.ok).toBe(true);
  const text = JSON.stringify({ request, outcome: plain(outcome) }, null, 1);
  await expect(`${text}\n`).toMatchFileSnapshot(`golden/${name}.json`);
});

test('J8: M8 in an inch program, F24 and F24.6, and speeds that need no rounding', async () => {
  const question = { pitch: 1.25, rpm: 500, unit: 'in', mode: 'per-minute', thread: 20 } as const;
  const answers = {
    question,
    feeds: [24, 24.6].map((programmed) => checkFeed({ ...question, programmed })),
    clean: cleanSpeeds(1.25, 500, 'in'),
  };
  expect(answers.feeds.map(({ verdict }) => verdict)).toEqual(['refuse', 'good']);
  const text = JSON.stringify(plain(answers), null, 1);
  await expect(`${text}\n`).toMatchFileSnapshot('golden/J8.json');
});
