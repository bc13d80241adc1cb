/**
 * `npm run translate`, after a build: the planner and its card in another language, into a folder of `dist/`.
 * Not part of the build yet: their sentences are translated, some of their labels are not.
 */
import { build } from 'astro';
import { TRANSLATIONS } from '../../site/language.ts';

for (const language of TRANSLATIONS) {
  process.env['HANDBOOK_LANGUAGE'] = language;
  await build({ logLevel: 'error' });
}
