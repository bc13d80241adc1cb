/** After `astro build`: the pages that exist in another language, into a folder of `dist/`. */
import { build } from 'astro';
import { TRANSLATIONS } from '../../site/language.ts';

for (const language of TRANSLATIONS) {
  process.env['HANDBOOK_LANGUAGE'] = language;
  await build({ logLevel: 'error' });
}
