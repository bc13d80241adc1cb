import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeTapLimits, readThread, standardThreads, tapLimit, threadLimits } from '../../../core';
import type { Thread, ThreadLimits } from '../../../core';
import { RECOMMENDED_D, RECOMMENDED_H } from '../../../core/data/tap-limit-lists';
import { MOST_STEPS, TAP_LIMIT_SYSTEMS, tapLimitSystems } from '../../../core/tap/limits';

function read(text: string): { thread: Thread; limits: ThreadLimits } {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  return { thread: thread.value, limits: limits.value };
}

function listedOf(text: string) {
  const { thread, limits } = read(text);
  return judgeTapLimits(thread, limits).filter((choice) => choice.listed !== null);
}

describe('every recommended limit lies in the pitch zone of its class', () => {
  const inch = Object.keys(RECOMMENDED_H).flatMap((key) => [`${key}-2B`, `${key}-3B`]);
  it.each(inch)('%s', (text) => {
    const [choice, ...rest] = listedOf(text);
    expect(rest).toEqual([]);
    expect(choice?.system).toBe('H');
    expect(choice?.verdict).toBe('inside');
  });

  it.each(Object.keys(RECOMMENDED_D))('M%s-6H', (key) => {
    const listed = listedOf(`M${key}-6H`);
    expect(listed.map(({ system }) => system)).toEqual(['D', 'ISO']);
    expect(listed.every(({ verdict }) => verdict === 'inside')).toBe(true);
  });

  it('a 3B tap also makes 2B', () => {
    for (const [key, [, three]] of Object.entries(RECOMMENDED_H)) {
      const { thread, limits } = read(`${key}-2B`);
      const choice = judgeTapLimits(thread, limits).find(
        ({ system, number }) => system === 'H' && number === three,
      );
      expect(choice?.verdict, key).toBe('inside');
    }
  });

  it('ISO 2857 classes lie in every class they are meant for, over the whole series', () => {
    for (const thread of standardThreads().filter(({ system }) => system === 'metric')) {
      for (const grade of ['4H', '5H', '6H', '6G', '7H', '8H']) {
        const own = { ...thread, class: grade };
        const limits = threadLimits(own);
        if (!limits.ok || limits.value.basis === 'computed') continue;
        const meant = judgeTapLimits(own, limits.value).filter((choice) => choice.listed);
        for (const choice of meant.filter(({ system }) => system === 'ISO')) {
          expect(choice.verdict, `${thread.designation} ${grade} ${choice.name}`).not.toBe(
            'outside',
          );
        }
      }
    }
  });
});

describe('judging', () => {
  it('H3 is listed for 3B and H5 for 2B in 1/4-20: not one limit for all', () => {
    expect(listedOf('1/4-20-2B').map(({ name }) => name)).toEqual(['H5']);
    expect(listedOf('1/4-20-3B').map(({ name }) => name)).toEqual(['H3']);
  });

  it('tells how far a tap may wear and how large it may cut', () => {
    const h5 = listedOf('1/4-20-2B')[0]!;
    expect(h5.wear).toBeCloseTo(0.002, 6);
    expect(h5.spare).toBeCloseTo(0.0024, 6);
  });

  it('a limit that only fits at its own size is at risk; beyond the zone it is outside', () => {
    const { thread, limits } = read('1/4-20-2B');
    const verdicts = Object.fromEntries(
      judgeTapLimits(thread, limits).map(({ name, verdict }) => [name, verdict]),
    );
    expect(verdicts['H8']).toBe('inside');
    expect(verdicts['H9']).toBe('risk');
    expect(verdicts['H10']).toBe('outside');
    expect(verdicts['L1']).toBeUndefined();
  });

  it('6G moves the zone up: ISO 1 is too small, ISO 3 is meant for it', () => {
    const { thread, limits } = read('M6-6G');
    const iso = judgeTapLimits(thread, limits).filter(({ system }) => system === 'ISO');
    expect(iso.map(({ verdict }) => verdict)).toEqual(['outside', 'inside', 'inside']);
    expect(iso[2]?.listed).toBe('iso-2857');
  });

  it('says nothing for pipe threads', () => {
    const { thread, limits } = read('G1/4');
    expect(judgeTapLimits(thread, limits)).toEqual([]);
  });
});

describe('refusals', () => {
  const code = (
    text: string,
    ...limit: Parameters<typeof tapLimit> extends [unknown, ...infer R] ? R : never
  ) => {
    const outcome = tapLimit(read(text).thread, ...limit);
    return outcome.ok ? 'ok' : outcome.problems[0]?.code;
  };
  it.each([
    ['M8', 'H', 3, 'tap-limit-other-system'],
    ['1/4-20', 'D', 4, 'tap-limit-other-system'],
    ['1/4-20', 'ISO', 2, 'tap-limit-other-system'],
    ['1/4-20', 'H', 0, 'tap-limit-number'],
    ['1/4-20', 'H', 2.5, 'tap-limit-number'],
    ['M8', 'ISO', 4, 'tap-limit-number'],
    ['M64', 'D', 9, 'tap-limit-beyond'],
    ['M1x0.2', 'ISO', 2, 'tap-limit-beyond'],
    ['2-1/4-4.5', 'H', 4, 'tap-limit-beyond'],
  ] as const)('%s %s%d: %s', (text, system, number, expected) => {
    expect(code(text, system, number)).toBe(expected);
  });
});

describe('properties', () => {
  const threads = standardThreads();
  const cases = fc.record({
    thread: fc.constantFrom(...threads),
    system: fc.constantFrom(...TAP_LIMIT_SYSTEMS),
    number: fc.integer({ min: 1, max: 14 }),
  });

  it('each step up moves the limit up, and no limit is empty', () => {
    fc.assert(
      fc.property(cases, ({ thread, system, number }) => {
        const here = tapLimit(thread, system, number);
        const next = tapLimit(thread, system, number + 1);
        if (!here.ok) return;
        expect(here.value.pitch.min).toBeLessThan(here.value.pitch.max);
        if (!next.ok) return;
        const up = next.value.pitch.max - here.value.pitch.max;
        expect(Math.sign(up)).toBe(system === 'L' ? -1 : 1);
      }),
    );
  });

  it('a thread knows only its own systems', () => {
    fc.assert(
      fc.property(cases, ({ thread, system, number }) => {
        const found = tapLimit(thread, system, Math.min(number, MOST_STEPS[system]));
        if (found.ok) expect(tapLimitSystems(thread)).toContain(system);
      }),
    );
  });
});
