import { build } from 'esbuild';
import { existsSync, globSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import {
  circles,
  impurities,
  layerBreaks,
  reachesInto,
  tooNew,
  undocumented,
  unsaid,
} from './tools/layers';
import { exportedFunctions, modulesUnder, parse, ROOT } from './tools/modules';
import { leftOut, strays, topLevel } from './tools/topLevel';
import { textsOfUsers, unused } from './tools/unused';

const core = modulesUnder('core');
const components = modulesUnder('components');

describe('the core', () => {
  test('imports only from lower layers', () => {
    expect(core.length).toBeGreaterThan(10);
    expect(layerBreaks(core)).toEqual([]);
  });

  test('has no circle of imports', () => {
    expect(circles(core)).toEqual([]);
  });

  test('knows no browser, clock, chance, network, locale or package', () => {
    expect(impurities(core)).toEqual([]);
  });

  test('every exported function has a doc comment', () => {
    expect(undocumented(core)).toEqual([]);
  });

  test('public functions name their units and their source', () => {
    const face = publicFunctions();
    expect(face.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['planHole', 'readThread', 'threadLimits']),
    );
    const silent = face
      .map(({ name, doc }) => ({ name, missing: unsaid(doc) }))
      .filter(({ missing }) => missing.length > 0);
    expect(silent).toEqual([]);
  });

  test('bundles into one file with plain esbuild', async () => {
    const { outputFiles } = await build({
      entryPoints: [join(ROOT, 'core/index.ts')],
      bundle: true,
      format: 'esm',
      target: ['chrome109', 'firefox115'],
      write: false,
      logLevel: 'silent',
    });
    const text = outputFiles[0]?.text ?? '';
    const bundled = (await import(
      `data:text/javascript;base64,${Buffer.from(text).toString('base64')}`
    )) as Record<string, unknown>;
    expect(bundled['planHole']).toBeTypeOf('function');
    expect(text).not.toMatch(/^import\s/m);
  });
});

describe('one direction: core ← components ← site', () => {
  test('no two files of a folder differ by case or ending alone: Windows and macOS would mix them up', () => {
    const names = [...core, ...components].map((file) =>
      file.path.replace(/\.tsx?$/, '').toLowerCase(),
    );
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  test('components take nothing from the site or the tests', () => {
    expect(components.length).toBeGreaterThan(0);
    expect([...reachesInto(components, 'site'), ...reachesInto(components, 'test')]).toEqual([]);
  });

  test('components have no circle of imports', () => {
    expect(circles(components)).toEqual([]);
  });

  test('nothing needs a newer browser than the floor has', () => {
    expect(tooNew([...core, ...components])).toEqual([]);
  });
});

test('no exported name is without a user', () => {
  expect(unused([...core, ...components, ...modulesUnder('site')], textsOfUsers())).toEqual([]);
});

describe('the same word names a calculator everywhere', () => {
  const folders = globSync('components/calculators/*/', { cwd: ROOT }).map(
    (path) => path.replaceAll('\\', '/').replace(/\/$/, '').split('/').at(-1) ?? '',
  );

  test.each(folders)('%s has its files, its words and a page', (slug) => {
    const folder = join(ROOT, 'components/calculators', slug);
    for (const part of ['view.tsx', 'state.ts', 'examples.ts']) {
      expect(existsSync(join(folder, part)), `${slug}/${part}`).toBe(true);
    }
    const pages = ['astro', 'mdx'].flatMap((kind) => [
      `site/pages/calculators/${slug}.${kind}`,
      `site/pages/calculators/${slug}/index.${kind}`,
    ]);
    expect(
      pages.some((page) => existsSync(join(ROOT, page))),
      `a page for ${slug}`,
    ).toBe(true);
  });

  test('every calculator page has its folder', () => {
    const pages = globSync('site/pages/calculators/*.{astro,mdx}', { cwd: ROOT })
      .map(
        (path) =>
          path
            .replaceAll('\\', '/')
            .split('/')
            .at(-1)
            ?.replace(/\.\w+$/, '') ?? '',
      )
      .filter((slug) => slug !== 'index' && !slug.startsWith('['));
    expect(pages.filter((slug) => !folders.includes(slug))).toEqual([]);
  });
});

test('the top of the repository holds what is on its list and nothing else', () => {
  const names = topLevel();
  expect(names).toEqual(expect.arrayContaining(['core/', 'README.md', 'package.json']));
  expect(strays(names, leftOut())).toEqual([]);
});

describe('the rules catch what they are for', () => {
  const low = parse('core/outcome.ts', '');

  test('an import that climbs, or goes sideways', () => {
    const up = parse('core/units.ts', "import type { A } from './thread/thread';");
    const side = parse('core/thread/thread.ts', "import { B } from '../material/material';");
    const down = parse('core/material/material.ts', "import { C } from '../outcome';");
    expect(layerBreaks([low, up, side, down])).toEqual([
      'core/units.ts → core/thread/thread.ts',
      'core/thread/thread.ts → core/material/material.ts',
    ]);
    expect(layerBreaks([parse('core/novelty/novelty.ts', '')])).toHaveLength(1);
  });

  test('a circle', () => {
    const a = parse('core/plan/a.ts', "export * from './b';");
    const b = parse('core/plan/b.ts', "import type { A } from './a';");
    expect(circles([a, b])).toEqual(['core/plan/a.ts → core/plan/b.ts → core/plan/a.ts']);
    expect(circles([a, low])).toEqual([]);
  });

  test('a clock, a die, a package, a way out of the core', () => {
    const text =
      "import { ticks } from 'd3-array'; import { w } from '../../components/w';" +
      'export const x = () => Date.now() + Math.random() + window.innerWidth;';
    expect(impurities([parse('core/plan/x.ts', text)])).toEqual([
      'core/plan/x.ts: window',
      'core/plan/x.ts: Date',
      'core/plan/x.ts: Math.random',
      'core/plan/x.ts: d3-array',
      'core/plan/x.ts: ../../components/w',
    ]);
    const innocent =
      'interface P { location: string } const p = { history: 1 }; Math.round(p.history);';
    expect(impurities([parse('core/plan/y.ts', innocent)])).toEqual([]);
  });

  test('a note, a folder or an unlisted hidden folder left at the top', () => {
    const names = [
      'core/',
      'notes.txt',
      'scratch/',
      '.notes/',
      '.prettierrc.json',
      'dist/',
      'a.log',
    ];
    expect(strays(names, ['dist/', '/folder/', '*.log'])).toEqual([
      'notes.txt',
      'scratch/',
      '.notes/',
    ]);
    expect(strays(['folder/', 'dist'], ['dist/', '/folder/'])).toEqual(['dist']);
  });

  test('a component that reaches up, and a call that is too new', () => {
    const view = parse(
      'components/planner/view.tsx',
      "import page from '../../site/layouts/page'; export const v = [1].toSorted();",
    );
    expect(reachesInto([view], 'site')).toHaveLength(1);
    expect(tooNew([view])).toEqual(['components/planner/view.tsx: .toSorted']);
  });

  test('a name that nobody uses', () => {
    const text = 'export const a = 1, b = 2;\nexport type C = typeof b;\nexport function d() {}';
    const module = parse('core/plan/z.ts', text);
    expect(unused([module], [text, 'd()'])).toEqual(['core/plan/z.ts: a', 'core/plan/z.ts: C']);
  });

  test('a missing doc comment, and one that leaves out units or source', () => {
    const text =
      '/** Depth, mm. Source: derived. */\nexport function a() {}\nexport const b = () => 1;';
    expect(undocumented([parse('core/plan/z.ts', text)])).toEqual(['core/plan/z.ts: b']);
    expect(unsaid('Depth, mm. Source: derived.')).toEqual([]);
    expect(unsaid('The depth of the hole.')).toEqual(['units', 'source']);
  });
});

/** The functions that `core/index.ts` hands out, with their doc comments, wherever they are written. */
function publicFunctions(): { name: string; doc: string }[] {
  const index = join(ROOT, 'core/index.ts');
  const program = ts.createProgram([index], {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    target: ts.ScriptTarget.ESNext,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(index);
  const symbol = source && checker.getSymbolAtLocation(source);
  if (!symbol) return [];
  return checker.getExportsOfModule(symbol).flatMap((exported) => {
    const alias = (exported.flags & ts.SymbolFlags.Alias) !== 0;
    const target = alias ? checker.getAliasedSymbol(exported) : exported;
    const file = target.declarations?.[0]?.getSourceFile();
    if (!file) return [];
    const written = exportedFunctions({ path: file.fileName, source: file });
    return written.filter(({ name }) => name === target.name);
  });
}
