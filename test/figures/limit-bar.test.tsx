import { describe, it } from 'vitest';
import { LimitBar } from '../../components/chart/LimitBar';
import { holeBar, pitchBar } from '../../components/reference/bars';
import { threadReference, type ThreadReference } from '../../core';
import { expectPicture } from './snapshot';

function reference(text: string): ThreadReference {
  const found = threadReference(text);
  if (!found.ok) throw new Error(text);
  return found.value;
}

describe('limits as a bar', () => {
  it('drills across the hole of M8-6H', () =>
    expectPicture('bar-hole-m8', <LimitBar bar={holeBar(reference('M8'), 'mm')!} id="bar" />));

  it('the end of 3B and the trap drill of 1/2-13', () =>
    expectPicture(
      'bar-hole-half-inch',
      <LimitBar bar={holeBar(reference('1/2-13'), 'in')!} id="bar" />,
    ));

  it('a window too narrow for its two numbers', () =>
    expectPicture(
      'bar-hole-narrow',
      <LimitBar bar={holeBar(reference('M100x2'), 'mm')!} id="bar" />,
    ));

  it('taps across the pitch diameter, one of them too small', () =>
    expectPicture('bar-pitch-m6-6g', <LimitBar bar={pitchBar(reference('M6-6G'))!} id="bar" />));
});
