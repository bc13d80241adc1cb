import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE } from '../../components/planner/examples';
import { FIELDS, INPUT_NAMES, type Inputs } from '../../components/planner/inputs';
import { initialValues, readAddress, writeAddress } from '../../components/state/address';

describe('inputs in the address', () => {
  it('keeps what was typed, as typed', () => {
    const values: Inputs = {
      ...EXAMPLE,
      thread: '1/4-20 UNC-2B',
      depth: '3/4"',
      part: 'Körper & Co',
    };
    const { values: back, notes } = readAddress(writeAddress(values, FIELDS), FIELDS);
    expect(back).toEqual(values);
    expect(notes).toEqual([]);
  });

  it('comes back the same for any text in any field', () => {
    const texts = FIELDS.filter(({ choices }) => !choices).map(({ name }) => name);
    fc.assert(
      fc.property(fc.constantFrom(...texts), fc.string({ unit: 'grapheme' }), (name, text) => {
        const values = { ...EXAMPLE, [name]: text };
        expect(readAddress(writeAddress(values, FIELDS), FIELDS).values[name]).toBe(text);
      }),
    );
  });

  it('is empty for a blank form', () => {
    expect(writeAddress(initialValues(FIELDS), FIELDS)).toBe('');
  });

  it('reads well: no escapes in an ordinary hole', () => {
    expect(writeAddress({ ...EXAMPLE, thread: '1/4-20' }, FIELDS)).not.toContain('%');
  });

  it('falls back field by field, and says so', () => {
    const { values, notes } = readAddress('?thread=M8&material=unobtainium&colour=red', FIELDS);
    expect(values.thread).toBe('M8');
    expect(values.material).toBe('');
    expect(notes).toEqual([
      { reason: 'unknown-choice', name: 'material', typed: 'unobtainium' },
      { reason: 'unknown-name', name: 'colour', typed: 'red' },
    ]);
  });

  it('has one name for each input', () => {
    expect(new Set(INPUT_NAMES).size).toBe(INPUT_NAMES.length);
  });
});
