/** Words of other countries' drawings put into English, so that one reader serves them all. */

import type { MarkedText } from '../marked';
import { FRENCH } from './french';
import { GERMAN } from './german';
import { ITALIAN } from './italian';
import { EAST_ASIAN } from './japanese';
import { SPANISH } from './spanish';
import type { Translation } from './translation';

/** The same in every Romance language, and read before the longer words. */
const SHARED: readonly Translation[] = [
  ['prof(?:ondita)?\\.?(?![a-z])', 'depth'],
  ['numero|n°|nro\\.?|n\\.(?=\\s*\\d)', 'no.'],
];

type Rule = readonly [pattern: RegExp, english: string];

const wordwise = (list: readonly Translation[]): Rule[] =>
  list.map(([pattern, english]) => [
    new RegExp(`(?<![a-z])(?:${pattern})(?![a-z])`, 'gi'),
    ` ${english} `,
  ]);

/** What no Latin letters stand around needs no edge of a word. */
const anywhere = (list: readonly Translation[]): Rule[] =>
  list.map(([pattern, english]) => [new RegExp(pattern, 'g'), ` ${english} `]);

const LATIN: readonly Rule[] = [
  ...wordwise([...GERMAN, ...FRENCH, ...SPANISH, ...ITALIAN]),
  ...wordwise(SHARED),
];
const EASTERN: readonly Rule[] = anywhere(EAST_ASIAN);

const EASTERN_SIGN = /[\u3040-\u30ff\u3400-\u9fff]/;

/** Puts known foreign words into English. Never throws. Source: common practice; no unit. */
export function inEnglish(text: MarkedText): void {
  if (EASTERN_SIGN.test(text.text))
    for (const [pattern, english] of EASTERN) text.replace(pattern, english);
  if (!/[a-z]{3}/i.test(text.text)) return;
  for (const [pattern, english] of LATIN) text.replace(pattern, english);
}
