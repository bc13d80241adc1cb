/** The sources page finds by itself where a source is used; nothing is listed by hand. */

import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SOURCES, type SourceId } from '../../core';
import { CAUTIONS } from '../../components/words/en/cautions';
import { MODULES } from '../../components/words/en/modules';
import { whereUsed } from '../../components/words/used';

const files = Object.fromEntries(
  globSync('core/**/*.ts').map((path) => [path.replaceAll('\\', '/'), readFileSync(path, 'utf8')]),
);

describe('where a source is used', () => {
  test('is found by id and, for a standard, by name; a longer number is another standard', () => {
    const used = whereUsed({
      'core/limits/a.ts': "reason('x', {}, 'iso-965-1');",
      'core/drill/b.ts': '/** Sizes of ISO 2306 and ISO\n * 724. */',
      'core/gauge/c.ts': '/** ISO 68-12 is not ours, nor is common-practice without quotes. */',
    });
    expect(used['iso-965-1']).toEqual([MODULES['limits']]);
    expect(used['iso-2306']).toEqual([MODULES['drill']]);
    expect(used['iso-724']).toEqual([MODULES['drill']]);
    expect(used['iso-68-1']).toEqual([]);
    expect(used['common-practice']).toEqual([]);
  });

  test('every part of the core has a name to stand on the page', () => {
    const folders = Object.keys(files).flatMap((path) => /^core\/([\w-]+)\//.exec(path)?.[1] ?? []);
    for (const folder of new Set(folders)) expect(MODULES, folder).toHaveProperty(folder);
  });

  test('no source stands in the registry for nothing', () => {
    const used = whereUsed(files);
    const inCautions = new Set<SourceId>(
      Object.values(CAUTIONS).flatMap(({ sources }) => [...sources]),
    );
    // Lessons and calculators name their sources.
    const elsewhere = globSync([
      'site/content/**/*.{md,mdx}',
      'components/**/*.ts',
      'test/published/*.ts',
    ])
      .map((path) => readFileSync(path, 'utf8'))
      .join('\n');
    const idle = (Object.keys(SOURCES) as SourceId[]).filter(
      (id) =>
        used[id].length === 0 &&
        // Some works serve only to check the core against; they say so.
        !SOURCES[id].trust.includes('Kept for checks') &&
        !inCautions.has(id) &&
        !elsewhere.includes(id),
    );
    expect(idle).toEqual([]);
  });
});
