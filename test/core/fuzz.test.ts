/** A short run of `npm run fuzz`: mangled text and wild requests get an answer or a typed refusal. */
import { describe, expect, test } from 'vitest';
import { mangledCallouts, mangledThreads, wildRequests } from '../tools/mangle';
import { faultOfCallout, faultOfRequest, faultOfThread, unsound } from '../tools/sound';

function faults<T>(cases: Iterable<T>, fault: (each: T) => string | null): string[] {
  const found: string[] = [];
  for (const each of cases) {
    const said = fault(each);
    if (said) found.push(`${JSON.stringify(each)} ${said}`);
  }
  return found;
}

describe('no throw, no number that is none, no line lost', () => {
  test('designations', () => expect(faults(mangledThreads(20_000, 11), faultOfThread)).toEqual([]));
  test('callouts', () => expect(faults(mangledCallouts(2_000, 12), faultOfCallout)).toEqual([]));
  test('requests', () => expect(faults(wildRequests(4_000, 13), faultOfRequest)).toEqual([]));
});

test('the same seed mangles the same, and the judge sees what is unsound', () => {
  expect([...mangledThreads(50, 3)]).toEqual([...mangledThreads(50, 3)]);
  expect(unsound({ a: [1, { b: Number.NaN }] })).toBe('.a.1.b is NaN');
  expect(unsound({ a: [1, 2] })).toBeNull();
  // Even what is no request at all is refused, not thrown at.
  expect(faultOfRequest(null as never)).toBeNull();
});
