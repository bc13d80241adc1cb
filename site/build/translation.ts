/** The pages of another language: a second, small build, laid into the first. */

import { spawn } from 'node:child_process';
import { cpSync, existsSync, globSync, readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const ASTRO = join(
  dirname(createRequire(import.meta.url).resolve('astro/package.json')),
  'bin/astro.mjs',
);

/** Where the second build writes, from the top of the repository. */
export const outOfLanguage = (language: string): string => `./node_modules/.astro-${language}/site`;

/** In a process of its own: a build keeps its configuration, and so its language, for as long as it runs. */
function build(language: string): Promise<void> {
  const running = spawn(process.execPath, [ASTRO, 'build', '--silent'], {
    cwd: ROOT,
    env: { ...process.env, HANDBOOK_LANGUAGE: language },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return new Promise((resolve, reject) => {
    running.on('error', reject);
    running.on('exit', (code) =>
      code === 0 ? resolve() : reject(new Error(`The pages in ${language} were not built.`)),
    );
  });
}

/**
 * Builds the pages of `language` and lays them into `folder`. What both builds made alike, fonts and
 * shared scripts, has the same name and stays one file.
 */
export async function addTranslation(language: string, folder: string): Promise<void> {
  await build(language);
  const made = join(ROOT, outOfLanguage(language));
  for (const file of globSync('**/*', { cwd: made })) {
    const [from, to] = [join(made, file), join(folder, file)];
    if (!statSync(from).isFile()) continue;
    if (existsSync(to) && !readFileSync(from).equals(readFileSync(to)))
      throw new Error(`${file} differs between the languages.`);
    cpSync(from, to);
  }
}
