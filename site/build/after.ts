/** What is made beside and from the finished pages, each time the site is built. */

import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { TRANSLATIONS } from '../language.ts';
import { writeWorker } from './offline.ts';
import { writeSearchIndex } from './search.ts';
import { addTranslation } from './translation.ts';

export function afterBuild(): AstroIntegration {
  return {
    name: 'after-build',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        for (const language of TRANSLATIONS) await addTranslation(language, folder);
        logger.info(`search: ${writeSearchIndex(folder)} entries`);
        // Last: it lists what is there.
        const { handbook, threads } = await writeWorker(folder);
        logger.info(`kept on the device: ${handbook} files, then ${threads} of threads`);
      },
    },
  };
}
