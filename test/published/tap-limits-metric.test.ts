/** Metric D limits (ASME B94.9) as a tool catalogue prints them: micrometres above the basic pitch diameter. */
import { expect, it } from 'vitest';
import { readThread, tapLimit } from '../../core';

it.each([
  ['M5x0.8', 4.48, 4, 32, 52],
  ['M6x1', 5.35, 5, 40, 65],
  ['M8x1.25', 7.188, 5, 34, 65],
  ['M10x1.5', 9.026, 6, 47, 78],
  ['M10x1.25', 9.188, 5, 34, 65],
])('%s on %d, D%i: +%i to +%i', (text, basic, number, lower, upper) => {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const found = tapLimit(thread.value, 'D', number);
  if (!found.ok) throw new Error(text);
  expect(Math.round((found.value.pitch.min - basic) * 1000)).toBe(lower);
  expect(Math.round((found.value.pitch.max - basic) * 1000)).toBe(upper);
});
