/** What is made from the finished pages, each time the site is built. */

import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeSearchIndex } from './search.ts';

export function afterBuild(): AstroIntegration {
  return {
    name: 'after-build',
    hooks: {
      'astro:build:done': ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        logger.info(`search: ${writeSearchIndex(folder)} entries`);
      },
    },
  };
}
