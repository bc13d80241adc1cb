import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHardness } from '../../components/fields/readHardness';
import { readLength, restateLength } from '../../components/fields/readLength';
import { readPlain, readTyped } from '../../components/fields/readNumber';
import { readTorque } from '../../components/fields/readTorque';

describe('lengths as they are typed', () => {
  // 25.4 mm to the inch, exactly (since 1959): derived.
  it.each([
    ['16', 16],
    ['12,5', 12.5],
    [' 12.5 ', 12.5],
    ['.5', 0.5],
    ['16 mm', 16],
    ['16mm', 16],
    ['.75 in', 19.05],
    ['3/4', 19.05],
    ['3/4"', 19.05],
    ['3/4 in', 19.05],
    ['¾', 19.05],
    ['1 1/2 in', 38.1],
    ['1-1/2"', 38.1],
    ['1½″', 38.1],
    ['8 µm', 0.008],
    ['0', 0],
    ['-5', -5],
    ['−5 mm', -5],
  ])('on a millimetre page %s is %d mm', (text, mm) => {
    expect(readLength(text, 'mm')?.mm).toBe(mm);
  });

  it.each([
    ['.75', 19.05],
    ['3/4', 19.05],
    ['16 mm', 16],
    ['1', 25.4],
  ])('on an inch page %s is %d mm', (text, mm) => {
    expect(readLength(text, 'in')?.mm).toBe(mm);
  });

  it.each(['', 'deep', '1.234,5', '16 furlongs', '3/0', '1/2/3', '12 5', '--5', '16 N·m', 'NaN'])(
    'refuses %s',
    (text) => {
      expect(readLength(text, 'mm')).toBeNull();
    },
  );

  it('takes a fraction without a unit for inches, whatever the page shows', () => {
    expect(readLength('3/4', 'mm')).toEqual({ mm: 19.05, unit: 'in', bare: false });
  });
});

describe('turning the page to the other unit', () => {
  it('says a bare number in its own unit and converts nothing', () => {
    expect(restateLength('16', 'mm', 'in')).toBe('16 mm');
    expect(restateLength('16 mm', 'in', 'mm')).toBe('16');
  });

  it('leaves alone what says its unit, and what cannot be read', () => {
    expect(restateLength('3/4"', 'mm', 'in')).toBe('3/4"');
    expect(restateLength('deep', 'mm', 'in')).toBe('deep');
    expect(restateLength('', 'mm', 'in')).toBe('');
  });

  it('never changes the length that was typed', () => {
    const sizes = fc.integer({ min: 1, max: 99_999 }).map((n) => String(n / 1000));
    fc.assert(
      fc.property(sizes, fc.constantFrom('', ' mm', ' in', '"'), (size, unit) => {
        const text = size + unit;
        const before = readLength(text, 'mm');
        const there = restateLength(text, 'mm', 'in');
        const back = restateLength(there, 'in', 'mm');
        expect(readLength(there, 'in')?.mm).toBe(before?.mm);
        expect(readLength(back, 'mm')?.mm).toBe(before?.mm);
      }),
    );
  });
});

describe('torques and plain numbers', () => {
  // 1 lbf·ft = 1.3558 N·m: from the exact foot, pound and standard gravity, derived.
  it.each([
    ['30', 30],
    ['30 N·m', 30],
    ['30 Nm', 30],
    ['4,5', 4.5],
    ['22 ft-lb', 29.83],
    ['22 lbf·ft', 29.83],
    ['100 in-lb', 11.3],
  ])('%s is %d N·m', (text, torque) => {
    expect(readTorque(text)).toBeCloseTo(torque, 2);
  });

  it('refuses a torque in another unit', () => {
    expect(readTorque('30 mm')).toBeNull();
    expect(readTorque('plenty')).toBeNull();
  });

  it('takes only the units that a field knows', () => {
    expect(readPlain('118°', ['°'])).toBe(118);
    expect(readPlain('118', ['°'])).toBe(118);
    expect(readPlain('118 mm', ['°'])).toBeNull();
  });

  it('never gives a number that is not finite, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const typed = readTyped(text);
        expect(typed === null || Number.isFinite(typed.value)).toBe(true);
      }),
    );
  });
});

describe('as workshops write them', () => {
  // 1 lbf·ft is 1.3558 N·m, 1 lbf·in a twelfth of it: derived.
  it.each([
    ['22 ft-lbs', 29.828],
    ['22 ft·lbs', 29.828],
    ['264 in-lbs', 29.828],
    ['264 lbf·in', 29.828],
  ])('%s is a torque', (text, expected) => {
    expect(readTorque(text)).toBeCloseTo(expected, 3);
  });

  it.each([
    ['58-60 HRC', 60, 'HRC'],
    ['58 to 60 HRC', 60, 'HRC'],
    ['58–60 HRc', 60, 'HRC'],
    ['HRC 28-32', 32, 'HRC'],
    ['300 HB', 300, 'HB'],
  ])('%s is a hardness', (text, value, scale) => {
    expect(readHardness(text)).toEqual({ value, scale });
  });

  it.each(['58-60', 'very hard', '4140 30 HRC', '58-60 HRX'])('%s is none', (text) => {
    expect(readHardness(text)).toBeNull();
  });
});
