import { describe, expect, it } from 'vitest';
import {
  findMaterial,
  neededEngagement,
  PURPOSES,
  readThread,
  standardThreads,
  threadLimits,
} from '../../../core';
import type { Engagement, EngagementRequest, MaterialId, ScrewGrade } from '../../../core';

function request(text: string, screw: ScrewGrade, material: MaterialId): EngagementRequest {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  return { thread: thread.value, limits: limits.value, screw, material: findMaterial(material)! };
}

function needed(...args: Parameters<typeof request>): Engagement {
  const outcome = neededEngagement(request(...args));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('how deep is enough', () => {
  it('M10 8.8 in 6061-T6: 10.4 mm to match, 1.3 to 1.6 diameters to ask for', () => {
    const found = needed('M10', '8.8', 'al-wrought');
    expect(found.matching).toBeCloseTo(10.4, 1);
    expect(found.inDiameters.matching).toBeCloseTo(1.04, 2);
    expect(found.inDiameters.specify.min).toBeCloseTo(1.3, 1);
    expect(found.inDiameters.specify.max).toBeCloseTo(1.57, 2);
    expect(found.governs).toBe('hole');
  });

  it('a 12.9 screw in the same hole wants 15.9 mm', () => {
    expect(needed('M10', '12.9', 'al-wrought').matching).toBeCloseTo(15.9, 1);
  });

  it('in metal stronger than the screw, the screw’s own thread governs', () => {
    expect(needed('M10', '8.8', 'steel-alloy-30hrc').governs).toBe('screw');
  });

  it('the shop’s certificate outranks the table', () => {
    const own = neededEngagement({ ...request('M10', '8.8', 'al-wrought'), shear: 414 });
    const table = needed('M10', '8.8', 'al-wrought');
    expect(own.ok && own.value.matching).toBeLessThan(table.matching);
  });

  it('a stronger screw never needs less, over the whole series', () => {
    for (const { designation } of standardThreads().filter(({ system }) => system === 'metric')) {
      const lengths = (['8.8', '10.9', '12.9'] as const).map(
        (screw) => needed(designation, screw, 'al-wrought').matching,
      );
      expect(lengths[0]).toBeLessThan(lengths[1]!);
      expect(lengths[1]).toBeLessThan(lengths[2]!);
    }
  });
});

describe('what is refused', () => {
  const base = request('M10', '8.8', 'al-wrought');
  const code = (change: Partial<EngagementRequest>) => {
    const outcome = neededEngagement({ ...base, ...change });
    return outcome.ok ? 'ok' : outcome.problems[0]?.code;
  };

  it('everything but one steady pull', () => {
    for (const purpose of PURPOSES) {
      expect(code({ purpose })).toBe(purpose === 'static' ? 'ok' : 'not-rated');
    }
  });

  it('a material whose strength is not stated', () => {
    expect(code({ material: findMaterial('nickel')! })).toBe('strength-unknown');
  });

  it('wire inserts, pipe threads, and an unknown minor diameter', () => {
    const other = (text: string) => {
      const { thread, limits } = request(text, '8.8', 'al-wrought');
      return code({ thread, limits });
    };
    expect(other('EG M10')).toBe('engagement-other-thread');
    expect(other('G1/4')).toBe('engagement-other-thread');
    expect(other('1/4-20 UNJC-3B')).toBe('engagement-minor-unknown');
  });
});
