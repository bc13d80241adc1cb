/** Names of counted chamfers. Ranges: ASME B94.9 as printed in TM 9-254; ISO 8830 / DIN 2197 from catalogues. */
import { describe, expect, it } from 'vitest';
import { chamferNames, chamfersWithin } from '../../../core/chamfer/names';

const words = (count: number, spiralPoint = false) => {
  const { us, iso, uk } = chamferNames(count, spiralPoint);
  return {
    us: us.map(({ name, holds }) => (holds ? name : `near ${name}`)),
    iso: iso.map(({ name, holds }) => (holds ? name : `near ${name}`)),
    uk,
  };
};

describe('a counted chamfer', () => {
  it.each([
    [8, ['taper'], ['A'], ['taper']],
    [4, ['plug'], ['D'], ['second']],
    [2.5, ['semi-bottoming'], ['C'], ['second']],
    [1.25, ['bottoming'], ['F'], ['plug']],
    [9, ['taper'], ['near A'], ['taper']],
    [6, ['near taper', 'near plug'], ['A'], ['taper', 'second']],
    [3.2, ['plug'], ['near D', 'near C'], ['second']],
    [12, ['near taper'], ['near A'], ['taper']],
    [0.5, ['near bottoming'], ['near F'], ['plug']],
  ] as const)('%s threads', (count, us, iso, uk) => {
    expect(words(count)).toEqual({ us, iso, uk });
  });

  it('where two ranges meet both are named', () => {
    expect(words(3).us).toEqual(['plug', 'semi-bottoming']);
    expect(words(2).us).toEqual(['semi-bottoming', 'bottoming']);
    expect(words(2).iso).toEqual(['C', 'E']);
    expect(words(1.5).iso).toEqual(['E', 'F']);
  });

  it('the letter of 3.5 to 5.5 threads is B with a spiral point', () => {
    expect(words(4.5, true).iso).toEqual(['B']);
    expect(words(2.5, true).iso).toEqual(['C']);
  });

  it('UK plug is the bottoming tap, US plug is the second one (common practice)', () => {
    expect(words(1.5).uk).toEqual(['plug']);
    expect(words(4).us).toEqual(['plug']);
  });
});

describe('chamfers that fit a room', () => {
  const fits = (threads: number, system: 'inch' | 'metric') =>
    chamfersWithin(threads, system).map((each) => each.fits);

  it('2.5 threads hold the short ones of 2 to 3, and every bottoming one', () => {
    expect(fits(2.5, 'metric')).toEqual(['no', 'no', 'some', 'sure']);
  });

  it('metric and inch classes differ', () => {
    expect(fits(5, 'inch')).toEqual(['no', 'sure', 'sure', 'sure']);
    expect(fits(5, 'metric')).toEqual(['no', 'some', 'sure', 'sure']);
  });

  it('no room holds none', () => {
    expect(fits(0, 'inch')).toEqual(['no', 'no', 'no', 'no']);
  });
});
