/** The material as the drawing writes it, in the planner and on the drawing page: read, said back, asked, kept. */
import { describe, expect, it } from 'vitest';
import { MATERIAL_NOTE_CODES, MATERIAL_PROBLEM_CODES } from '../../core';
import { attempt as attemptPart } from '../../components/part/state';
import { PART_FIELDS } from '../../components/part/inputs';
import { designationChanges } from '../../components/planner/designation';
import { cardAddress, EXAMPLE } from '../../components/planner/examples';
import { FIELDS, type Inputs } from '../../components/planner/inputs';
import { readingOf } from '../../components/planner/reading';
import { attempt } from '../../components/planner/state';
import { initialValues, readAddress, writeAddress } from '../../components/state/address';
import { MATERIAL_PROBLEMS, MATERIAL_READ } from '../../components/words/en/material';
import { materialReadText } from '../../components/words/material';

const typed = (designation: string): Inputs => ({ ...EXAMPLE, ...designationChanges(designation) });

describe('one field reads a designation', () => {
  it('chooses the group, and plans with it', () => {
    const values = typed('42CrMo4+QT');
    expect(values.material).toBe('steel-alloy-30hrc');
    expect(attempt(values, 'mm').plan).not.toBeNull();
  });

  it('plans from the name alone, where an address carries no group', () => {
    const { request } = attempt({ ...EXAMPLE, material: '', designation: 'GG25' }, 'mm');
    expect(request?.material).toBe('iron-grey');
  });

  it('asks for the group where the name is unknown, and keeps what was typed', () => {
    const values = typed('Borstahl 33');
    expect(values).toMatchObject({ designation: 'Borstahl 33', material: '' });
    const { problems, plan } = attempt(values, 'mm');
    expect(plan).toBeNull();
    expect(problems.map(({ field }) => field)).toEqual(['material']);
    const chosen = { ...values, material: 'steel-alloy-30hrc' };
    expect(attempt(chosen, 'mm').plan).not.toBeNull();
    expect(readAddress(cardAddress(chosen).split('/card/')[1]!, FIELDS).values.designation).toBe(
      'Borstahl 33',
    );
  });

  it('leaves the list alone when the name is taken out again', () => {
    expect(designationChanges('')).toEqual({ designation: '' });
  });
});

describe('the reading is said back', () => {
  it.each([
    ['1.4301', /^Read as 1\.4301: austenitic stainless\.$/],
    ['cast iron', /usual meaning: grey iron/],
    ['4140', /Read as 4140: annealed alloy steel\. In which condition\?/],
    ['4140 28-32 HRC', /302 HB/],
    ['P20', /How hard is it\?/],
    ['17-4PH H900', /40 to 47 HRC/],
    ['D2 60 HRC', /cut before hardening/],
    ['steel 45 HRC', /^Read as hardened steel\./],
    ['C22', /may be more than one\. Type 1\.0402 or C22000/],
    ['Borstahl 33', /^“Borstahl 33” cannot be placed\. Choose its group below/],
    ['Zuperloy 718', /“ZUPERLOY” is not understood/],
    ['6061 brass', /“6061” and “brass” do not go together/],
  ])('%s', (text, said) => expect(materialReadText(text, '')).toMatch(said));

  it('says when the list says something else', () => {
    const values = { ...typed('304'), material: 'stainless-free' };
    expect(readingOf('designation', values, 'mm', attempt(values, 'mm'))).toMatch(
      /list below says free-cutting stainless/,
    );
  });

  it('has words for every code', () => {
    for (const code of MATERIAL_NOTE_CODES) expect(MATERIAL_READ).toHaveProperty(code);
    for (const code of MATERIAL_PROBLEM_CODES) expect(MATERIAL_PROBLEMS).toHaveProperty(code);
  });
});

it('the drawing page reads it too, and its address carries it', () => {
  const values = { ...initialValues(PART_FIELDS), holes: 'M6 ↧12', designation: '6061-T6' };
  expect(attemptPart(values, 'mm').shop?.material).toBe('al-wrought');
  const query = writeAddress(values, PART_FIELDS);
  expect(readAddress(query, PART_FIELDS).values.designation).toBe('6061-T6');
});
