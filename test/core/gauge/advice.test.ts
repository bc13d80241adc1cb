/** GO, NOT GO, plain plugs and turns read together. Rules of turns: ASME B1.2 (three), ISO 1502 (two). */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gaugeAdvice, provedDepth, type GaugedDepth } from '../../../core/gauge/advice';
import type { GaugeReading } from '../../../core/gauge/reading';

const GOOD: GaugeReading = {
  go: 'all',
  notGoTurns: 1,
  threadTurns: 10,
  minorGo: true,
  minorNotGo: false,
};
const DEPTH: GaugedDepth = { turns: 11, pitch: 1.25, asked: 12 };

function advice(reading: Partial<GaugeReading> = {}, depth: GaugedDepth | undefined = DEPTH) {
  const outcome = gaugeAdvice({ ...GOOD, ...reading }, depth);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('gauges together', () => {
  test('all in order passes, and is written down', () => {
    expect(advice()).toMatchObject({ passes: true, actions: ['record-and-run'] });
  });

  test('two and a half turns: good under B1.2, not under ISO 1502, and the contract says which', () => {
    const read = advice({ notGoTurns: 2.5 });
    expect(read.rules.map(({ rule, accepts }) => [rule, accepts])).toEqual([
      ['asme-b1-2', true],
      ['iso-1502', false],
    ]);
    expect(read.passes).toBeNull();
    expect(read.actions[0]).toBe('ask-which-rule');
  });

  test('GO alone is not enough: without plain plugs nothing passes', () => {
    const read = gaugeAdvice({ go: 'all', notGoTurns: 0, threadTurns: 10 }, DEPTH);
    expect(read.ok && read.value).toMatchObject({ passes: null, actions: ['try-plain-plugs'] });
  });

  test('GO refuses: never forced, cleaned first', () => {
    expect(advice({ go: 'none' }).actions.slice(0, 2)).toEqual(['never-force', 'clean-and-retry']);
    expect(advice({ go: 'none' }).passes).toBe(false);
  });

  test('a hole drilled large fails whatever the thread plugs say', () => {
    expect(advice({ minorNotGo: true })).toMatchObject({ passes: false });
  });
});

describe('depth by turns', () => {
  test('9.5 turns of 1.25 prove between 10.6 and 11.3 mm: the gauge’s own start comes off', () => {
    const proved = provedDepth(9.5, 1.25);
    expect(proved.min).toBeCloseTo(10.625, 9);
    expect(proved.max).toBeCloseTo(11.25, 9);
  });

  test.each([
    [11, 'depth-reached'],
    [10.3, 'depth-doubtful'],
    [9, 'depth-short'],
  ])('%s turns for 12 mm: %s', (turns, code) => {
    expect(advice({}, { ...DEPTH, turns }).depth).toBe(code);
  });

  test('not counted is said, and does not pass', () => {
    const read = gaugeAdvice(GOOD);
    expect(read.ok && read.value).toMatchObject({
      depth: 'depth-unchecked',
      proved: null,
      passes: null,
      actions: ['count-turns'],
    });
  });

  test('more turns never prove less', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (turns) => {
        expect(provedDepth(turns + 1, 1).min).toBeGreaterThanOrEqual(provedDepth(turns, 1).min);
        expect(provedDepth(turns, 1).min).toBeLessThanOrEqual(provedDepth(turns, 1).max);
      }),
    );
  });

  test('every reading that does not pass says what to do next', () => {
    const reading = fc.record({
      go: fc.constantFrom('all', 'part', 'none'),
      notGoTurns: fc.double({ min: 0, max: 20, noNaN: true }),
      threadTurns: fc.constant(10),
      minorGo: fc.boolean(),
      minorNotGo: fc.boolean(),
    });
    fc.assert(
      fc.property(reading, (each) => {
        expect(advice(each as GaugeReading).actions.length).toBeGreaterThan(0);
      }),
    );
  });

  test('refuses turns below nothing', () => {
    expect(gaugeAdvice({ ...GOOD, notGoTurns: -1 }).ok).toBe(false);
    expect(gaugeAdvice(GOOD, { ...DEPTH, turns: -1 }).ok).toBe(false);
  });
});
