/** What stands above each public function of the core: meaning, units, range, refusals, source; examples run. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as core from '../../core';

const CORE = new URL('../../core/', import.meta.url);
const read = (file: string): string => readFileSync(new URL(file, CORE), 'utf8');

interface Public {
  name: string;
  doc: string;
}

/** The functions that `core/index.ts` hands out, with the comment above each where it is written. */
const functions: Public[] = [
  ...read('index.ts').matchAll(/export \{([^}]*)\} from '\.\/([^']+)'/g),
].flatMap(([, names = '', file = '']) => {
  const text = read(`${file}.ts`);
  return names
    .split(',')
    .map((name) => name.trim())
    .filter((name) => typeof (core as Record<string, unknown>)[name] === 'function')
    .map((name) => {
      const found = new RegExp(
        String.raw`/\*\*((?:(?!\*/)[\s\S])*)\*/\nexport function ${name}\b`,
      ).exec(text);
      return { name, doc: (found?.[1] ?? '').replaceAll(/\n\s*\* ?/g, '\n') };
    });
});

const ASKED: [string, RegExp][] = [
  ['units', /\b(mm|N·m|N\/mm²|inch|turns|percent|no unit|as text|rev\/min)\b/i],
  [
    'the valid range',
    /\babove\b|or more|\d+ to \d|outside|as typed|from `readThread`|for ranges|the ranges|\bany\b|already read|0-based|whatever|stocked|nothing is asked|of the class|for well-formed|as that does|as the/i,
  ],
  [
    'what it refuses',
    /refuses|refused|\bnull\b|undefined|never throws|never refuses|is missing|nothing to refuse/i,
  ],
  ['its source', /sources?\b|derived|from memory|common practice/i],
];

test('every function that is handed out was found', () => {
  const handed = Object.entries(core).filter(([, value]) => typeof value === 'function');
  expect(functions.map(({ name }) => name).sort()).toEqual(handed.map(([name]) => name).sort());
});

describe.each(functions)('$name', ({ doc }) => {
  test.each(ASKED)('says %s', (_, pattern) => {
    expect(doc.replaceAll(/\s+/g, ' ')).toMatch(pattern);
  });
});

/** `expression // value`, a line each, under `@example`. */
const examples = functions.flatMap(({ name, doc }) => {
  const [, block = ''] = /@example([\s\S]*)$/.exec(doc) ?? [];
  return block
    .split('\n')
    .map((line) => /^\s*(.+?) \/\/ (.+)$/.exec(line))
    .filter((found) => found !== null)
    .map(([, question = '', value = '']) => ({ name, question, value }));
});

test('the functions that others call first each have an example', () => {
  const shown = new Set(examples.map(({ name }) => name));
  const first = [
    'readThread',
    'threadLimits',
    'planHole',
    'readCallout',
    'planDrawing',
    'tapLimit',
    'percentThread',
    'formTapHole',
  ];
  expect(first.filter((name) => !shown.has(name))).toEqual([]);
});

test.each(examples)('example: $question', ({ question, value }) => {
  const names = Object.keys(core);
  // The example is text of this repository, run as its reader would run it.
  // oxlint-disable-next-line no-new-func, typescript/no-implied-eval
  const run = (text: string): unknown =>
    new Function(...names, `return (${text});`)(...Object.values(core));
  expect(run(question)).toEqual(run(value));
});
