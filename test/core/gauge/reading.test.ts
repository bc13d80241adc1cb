import { describe, expect, it } from 'vitest';
import { gaugeSet, readGauges, readThread, threadLimits } from '../../../core';
import type { GaugeReading } from '../../../core';
import { GAUGE_PROOFS } from '../../../core/gauge/members';
import { depthByTurns } from '../../../core/gauge/reading';

const sound: GaugeReading = {
  go: 'all',
  notGoTurns: 0.5,
  threadTurns: 12,
  minorGo: true,
  minorNotGo: false,
};

function read(change: Partial<GaugeReading>) {
  const outcome = readGauges({ ...sound, ...change });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const accepts = Object.fromEntries(
    outcome.value.rules.map(({ rule, accepts: own }) => [rule, own]),
  );
  return { findings: outcome.value.findings, inch: accepts['asme-b1-2'], iso: accepts['iso-1502'] };
}

describe('turns: ASME B1.2 allows three, ISO 1502 two (as gauge makers quote them)', () => {
  it.each([
    [0, true, true, 'pitch-in-class'],
    [2, true, true, 'pitch-in-class'],
    [2.5, true, false, 'rules-disagree'],
    [3, true, false, 'rules-disagree'],
    [3.25, false, false, 'pitch-large'],
  ] as const)('%d turns', (notGoTurns, inch, iso, finding) => {
    expect(read({ notGoTurns })).toEqual({ findings: [finding], inch, iso });
  });

  it('right through a thin part is too far, however few the turns', () => {
    expect(read({ notGoTurns: 1.5, threadTurns: 1.5 })).toEqual({
      findings: ['pitch-large'],
      inch: false,
      iso: false,
    });
  });
});

describe('what the gauges point to', () => {
  it('GO will not start', () => {
    expect(read({ go: 'none', notGoTurns: 0 }).findings).toEqual(['pitch-small']);
  });
  it('GO stops part way', () => {
    expect(read({ go: 'part', notGoTurns: 0 }).findings).toEqual(['go-stops']);
  });
  it('GO refused while NOT GO enters: not a matter of size', () => {
    expect(read({ go: 'none', notGoTurns: 4 }).findings).toEqual(['both-wrong']);
  });
  it('the thread plugs pass and the drilled hole does not', () => {
    expect(read({ minorNotGo: true })).toEqual({
      findings: ['pitch-in-class', 'minor-large'],
      inch: false,
      iso: false,
    });
    expect(read({ minorGo: false }).findings).toContain('minor-small');
  });
  it('says so when no plain plug was tried', () => {
    const outcome = readGauges({ go: 'all', notGoTurns: 0, threadTurns: 10 });
    expect(outcome.ok && outcome.value.findings).toEqual(['pitch-in-class', 'minor-unchecked']);
  });
  it('refuses turns that cannot be', () => {
    expect(readGauges({ ...sound, notGoTurns: -1 }).ok).toBe(false);
    expect(readGauges({ ...sound, notGoTurns: NaN }).ok).toBe(false);
    expect(readGauges({ ...sound, threadTurns: 0 }).ok).toBe(false);
  });
});

describe('the set of gauges', () => {
  const set = (text: string) => {
    const thread = readThread(text);
    if (!thread.ok) throw new Error(text);
    const limits = threadLimits(thread.value);
    if (!limits.ok) throw new Error(text);
    return gaugeSet(thread.value, limits.value);
  };

  it('M8-6H: GO 7.188, NOT GO 7.348, plain 6.647 and 6.912 mm', () => {
    const { gauges, usual } = set('M8');
    expect(gauges.map(({ member, size }) => [member, size])).toEqual([
      ['go', 7.188],
      ['not-go', 7.348],
      ['minor-go', 6.647],
      ['minor-not-go', 6.912],
    ]);
    expect(usual).toBe('iso-1502');
  });

  it('together they prove everything once; the GO plug alone says nothing of the drilled hole', () => {
    const { gauges } = set('1/4-20');
    const proved = gauges.flatMap(({ proves }) => proves);
    expect([...proved].sort()).toEqual([...GAUGE_PROOFS].sort());
    expect(gauges[0]?.proves.some((proof) => proof.startsWith('minor'))).toBe(false);
  });

  it('has no plain NOT GO where the limit is not known, and no turns for pipe', () => {
    expect(set('1/4-20 UNJC-3B').gauges).toHaveLength(3);
    expect(set('G1/4').turns).toEqual([]);
  });

  it('eight turns of a GO plug in M8 prove 10 mm', () => {
    expect(depthByTurns(8, 1.25)).toBe(10);
  });
});
