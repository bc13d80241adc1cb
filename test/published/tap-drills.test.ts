/**
 * Tap drills as printed in ISO 2306 (FreeCAD's table, which is labelled so) and in handbook lists,
 * judged against the class limits; probable oversize after the handbook (from memory).
 */
import { describe, expect, it } from 'vitest';
import { readThread, threadLimits, type ThreadLimits } from '../../core';
import { HANDBOOK_INCH, ISO_2306_COARSE } from '../../core/drill/listed';
import { judgeDrill } from '../../core/drill/judge';
import { likelyOversize } from '../../core/drill/oversize';
import { percentThread } from '../../core/drill/percent';
import { STOCKED_DRILLS } from '../../core/drill/sizes';
import { coneLength } from '../../core/chips/room';
import { PRINTED, OVERSIZE } from './tables/drills';

function limitsOf(text: string): ThreadLimits {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  return limits.value;
}

const drill = (name: string) => STOCKED_DRILLS.find((each) => each.name === name)!;

describe('ISO 2306: every coarse drill leaves a 6H hole', () => {
  // 6H is not tabulated below M1.6; the usual class there is 5H.
  it.each(Object.entries(ISO_2306_COARSE))('M%s: %s mm', (size, diameter) => {
    const { minor } = limitsOf(`M${size}`);
    expect(diameter).toBeGreaterThanOrEqual(minor.min);
    expect(diameter).toBeLessThanOrEqual(minor.max!);
  });
});

describe('handbook inch drills: percent of thread, US shop base', () => {
  it.each(PRINTED)('%s with %s: %s %%', (thread, name, printed) => {
    const read = readThread(thread);
    if (!read.ok) throw new Error(thread);
    const { shop } = percentThread(read.value.diameter, read.value.pitch, drill(name).diameter);
    expect(Math.abs(shop - printed)).toBeLessThanOrEqual(0.75);
  });
});

const OVER_2B = ['9/16-18', '5/8-18'];
const OVER_3B = [
  '9/16-12',
  '3/4-10',
  '7/8-14',
  '1-12',
  '1-1/8-12',
  '1-1/4-12',
  '1-3/8-6',
  '1-1/2-6',
  '1-1/2-12',
  '1-3/4-5',
];

describe('handbook inch drills fall outside their class exactly where the lists are known to', () => {
  it.each(Object.entries(HANDBOOK_INCH))('%s with %s', (thread, name) => {
    const size = Math.round((drill(name).diameter / 25.4) * 1e6) / 1e6;
    const over = (suffix: string) => size > limitsOf(`${thread}${suffix}`).minor.max!;
    expect(over('-2B')).toBe(OVER_2B.includes(thread));
    expect(over('-3B')).toBe(OVER_2B.includes(thread) || OVER_3B.includes(thread));
  });
});

describe('probable drilled oversize (handbook means, from memory)', () => {
  it.each(OVERSIZE)('%s cuts about %s in over', (name, printed) => {
    // The list's own values scatter by 0.0003 about the table they come from.
    expect(
      Math.abs(likelyOversize(drill(name as string).diameter) / 25.4 - (printed as number)),
    ).toBeLessThanOrEqual(0.0003);
  });

  it('#7 in 1/4-20 leaves about .2048, which is 70 %', () => {
    const { minor } = limitsOf('1/4-20-2B');
    const window = {
      min: minor.min * 25.4,
      max: minor.max! * 25.4,
      major: 6.35,
      pitch: 1.27,
      oversizeShare: 1,
    };
    const judged = judgeDrill(drill('#7'), window);
    expect(judged.likely / 25.4).toBeCloseTo(0.2048, 3);
    expect(judged.verdict).toBe('inside');
    expect(percentThread(6.35, 1.27, judged.likely).shop).toBeCloseTo(70, 0);
  });
});

describe('the two bases of percent thread', () => {
  it('D − P is 77.0 % on the shop base and 92.4 % on the ISO base', () => {
    const { shop, iso } = percentThread(10, 1.5, 8.5);
    expect(shop).toBeCloseTo(77.0, 1);
    expect(iso).toBeCloseTo(92.4, 1);
  });
});

describe('drill-point cones, share of the diameter (geometry)', () => {
  it.each([
    [118, 0.3],
    [130, 0.233],
    [135, 0.207],
    [140, 0.182],
    [180, 0],
  ])('%s°', (angle, share) => {
    expect(coneLength(1, angle)).toBeCloseTo(share, 3);
  });
});
