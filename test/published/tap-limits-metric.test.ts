/** Metric D limits (ASME B94.9) as a tool catalogue prints them: micrometres above the basic pitch diameter. */
import { expect, it } from 'vitest';
import { readThread, tapLimit } from '../../core';
import { D_LIMITS } from './tables/taps';

it.each(D_LIMITS)('%s on %d, D%i: +%i to +%i', (text, basic, number, lower, upper) => {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const found = tapLimit(thread.value, 'D', number);
  if (!found.ok) throw new Error(text);
  expect(Math.round((found.value.pitch.min - basic) * 1000)).toBe(lower);
  expect(Math.round((found.value.pitch.max - basic) * 1000)).toBe(upper);
});
