/**
 * Nothing ships without its notice. The build itself stops on a package without one (site/build/shipped.ts);
 * here the worker and every component are bundled again, so that the fault shows before a build does.
 */
import { build } from 'esbuild';
import { globSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { LICENCES } from '../../components/words/en/pages/licences';
import { packageOf, packagesIn, refuseUnnoticed, withoutNotice } from '../../site/build/shipped';
import { ROOT } from '../tools/modules';

/** Brought by the builders, or read by no script: the typeface, what wakes the islands, what joins the files. */
const BESIDE = [
  '@fontsource-variable/atkinson-hyperlegible-next',
  '@astrojs/preact',
  '@preact/signals',
  '@preact/signals-core',
  'astro',
  'rolldown',
  'vite',
];

async function bundled(patterns: string[]) {
  const { metafile } = await build({
    entryPoints: globSync(patterns, { cwd: ROOT }).map((path) => join(ROOT, path)),
    absWorkingDir: ROOT,
    bundle: true,
    splitting: true,
    format: 'esm',
    outdir: 'unused',
    write: false,
    metafile: true,
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'silent',
  });
  return metafile;
}

test('scripts and worker hold what has a notice, and nothing has a notice that does not ship', async () => {
  const found = packagesIn(
    await bundled(['components/**/*.tsx', 'site/offline/*.ts', 'site/folder/*.ts']),
  );
  expect(found).toEqual(expect.arrayContaining(['preact', 'd3-path', 'workbox-strategies']));
  expect(withoutNotice(found)).toEqual([]);
  const works = Object.keys(LICENCES.works);
  expect(works.filter((name) => !found.includes(name) && !BESIDE.includes(name))).toEqual([]);
});

test.each(Object.keys(LICENCES.works))('%s came with its licence', (name) => {
  const files = readdirSync(join(ROOT, 'node_modules', name));
  expect(files.some((file) => /^licen[cs]e/i.test(file))).toBe(true);
});

test.each(Object.keys(LICENCES.data))('%s: a notice with its owner and its terms', (file) => {
  const text = readFileSync(join(ROOT, file), 'utf8');
  expect(text).toMatch(/^Copyright \d{4} .+/);
  expect(text).toContain('Redistributions in binary form must reproduce');
});

test('the rule catches what it is for', () => {
  expect(packageOf('/a/node_modules/@preact/signals-core/dist/x.mjs')).toBe('@preact/signals-core');
  expect(packageOf('C:\\a\\node_modules\\one\\node_modules\\two\\x.js')).toBe('two');
  expect(packageOf('\0vite/preload-helper.js')).toBe('vite');
  expect(packageOf('/a/components/chart/series.ts')).toBeNull();
  expect(withoutNotice(['preact', 'left-pad', 'left-pad'])).toEqual(['left-pad']);
  const part = (path: string, bytesInOutput: number) => ({
    inputs: {},
    outputs: {
      'x.js': { bytes: 1, imports: [], exports: [], inputs: { [path]: { bytesInOutput } } },
    },
  });
  expect(() => refuseUnnoticed(part('node_modules/left-pad/x.js', 9), 'x')).toThrow('left-pad');
  // Named by an import, but shaken out: it does not ship.
  expect(() => refuseUnnoticed(part('node_modules/left-pad/x.js', 0), 'x')).not.toThrow();
});
