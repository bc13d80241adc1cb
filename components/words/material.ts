/** A written material, said back: what was recognised, why that group, and what is still asked. */

import { readMaterial } from '../../core';
import type { MaterialId } from '../../core/material/material';
import type { Note, Problem } from '../../core/outcome';
import {
  KIND_NAMES,
  MATERIAL_ASKS,
  MATERIAL_OR,
  MATERIAL_PROBLEMS,
  MATERIAL_READ,
} from './en/material';
import { materialShort } from './names';
import { say } from './say';
import { fill } from './template';

function offersText(offers: string): string {
  const all = offers.split('|');
  const last = all.pop() ?? '';
  return all.length > 0 ? `${all.join(', ')}${MATERIAL_OR}${last}` : last;
}

function refusalText({ code, data = {} }: Problem): string {
  const sentence = (MATERIAL_PROBLEMS as Record<string, string>)[code] ?? code;
  const { other, offers, ...rest } = data;
  return fill(
    sentence,
    {
      ...rest,
      ...(other === undefined
        ? {}
        : { other: (KIND_NAMES as Record<string, string>)[other] ?? other }),
      ...(offers === undefined ? {} : { offers: offersText(offers) }),
    },
    'mm',
  );
}

function noteSaid({ code, data = {}, numbers = {} }: Note, row: string): string {
  const sentence = (MATERIAL_READ as Record<string, string>)[code] ?? code;
  const { hb } = numbers;
  const hard: Record<string, string> = hb === undefined ? {} : { hb: String(Math.round(hb)) };
  return say(sentence, { ...data, ...hard, row });
}

/** The reading of a material under its field; `chosen` is the group in the list, if any. */
export function materialReadText(text: string, chosen: MaterialId | string): string {
  const read = readMaterial(text);
  if (!read.ok) return refusalText(read.problems[0]!);
  const { id, asks } = read.value;
  const row = materialShort(id);
  const [first, ...more] = read.notes.map((note) => noteSaid(note, row));
  const named = read.notes.some(({ code }) => /^material-(read|usual)$/.test(code));
  const said = named ? [first!, ...more] : [say(MATERIAL_READ.bare, { row }), first!, ...more];
  for (const ask of asks) {
    said.push(say((MATERIAL_ASKS as Record<string, string>)[ask] ?? ask, { row }));
  }
  if (chosen !== '' && chosen !== id) {
    said.push(say(MATERIAL_READ.chosen, { row: materialShort(chosen as MaterialId) }));
  }
  return said.filter((sentence) => sentence !== undefined).join(' ');
}
