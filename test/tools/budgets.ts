/**
 * `npm run budgets`: what each built page costs, brotli, against what a floor PC can be asked to load.
 * Script counts whole: the page's own, every island's chunk and all that those import.
 */
import { build } from 'esbuild';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { parse, type HTMLElement } from 'node-html-parser';
import { allPages, DIST, htmlOf } from './pages.ts';

const KB = 1024;
/** At most, in bytes. Fonts have no budget of their own and are listed to be seen. */
const LIMITS = {
  html: 20 * KB,
  css: 12 * KB,
  script: { plain: 2 * KB, calculator: 35 * KB, planner: 50 * KB },
};

interface Cost {
  page: string;
  kind: keyof typeof LIMITS.script;
  html: number;
  css: number;
  script: number;
  fonts: number;
}

const sizes = new Map<string, number>();

function compressed(text: string | Buffer): number {
  return brotliCompressSync(text).length;
}

function sizeOf(address: string): number {
  const known = sizes.get(address);
  if (known !== undefined) return known;
  const file = join(DIST, address);
  // A font is compressed in itself; the host sends it as it is.
  const size = address.endsWith('.woff2')
    ? readFileSync(file).length
    : compressed(readFileSync(file));
  sizes.set(address, size);
  return size;
}

/** Chunk → the chunks it imports at once; what it imports on first use is left out. */
async function importGraph(entries: readonly string[]): Promise<Map<string, string[]>> {
  if (entries.length === 0) return new Map();
  const { metafile } = await build({
    entryPoints: entries.map((entry) => join(DIST, entry)),
    absWorkingDir: DIST,
    bundle: true,
    format: 'esm',
    splitting: true,
    outdir: 'unused',
    write: false,
    metafile: true,
    logLevel: 'error',
  });
  return new Map(
    Object.entries(metafile.inputs).map(([path, { imports }]) => [
      `/${path}`,
      imports.filter(({ kind }) => kind === 'import-statement').map((each) => `/${each.path}`),
    ]),
  );
}

function reach(entries: readonly string[], graph: ReadonlyMap<string, string[]>): Set<string> {
  const found = new Set<string>();
  const queue = [...entries];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    queue.push(...(graph.get(next) ?? []));
  }
  return found;
}

/** Scripts that the page asks for by address. */
function entriesOf(root: HTMLElement): string[] {
  const scripts = root.querySelectorAll('script[src]').map((each) => each.getAttribute('src'));
  const islands = root
    .querySelectorAll('astro-island')
    .flatMap((island) => [
      island.getAttribute('component-url'),
      island.getAttribute('renderer-url'),
    ]);
  return [...new Set([...scripts, ...islands])].filter((each) => each !== undefined);
}

function kindOf(page: string, root: HTMLElement): Cost['kind'] {
  if (/^\/([a-z]{2}\/)?(plan\/)?$/.test(page)) return 'planner';
  return root.querySelector('astro-island') ? 'calculator' : 'plain';
}

function inline(root: HTMLElement, selector: string): number {
  const texts = root.querySelectorAll(selector).map((each) => each.rawText);
  return texts.length > 0 ? compressed(texts.join('\n')) : 0;
}

function costOf(page: string, root: HTMLElement, graph: ReadonlyMap<string, string[]>): Cost {
  const sheets = root
    .querySelectorAll('link[rel=stylesheet]')
    .map((link) => link.getAttribute('href') ?? '');
  const css = sheets.map((sheet) => readFileSync(join(DIST, sheet), 'utf8'));
  const fonts = new Set(css.flatMap((text) => text.match(/\/_astro\/[^)"']+\.woff2/g) ?? []));
  const sum = (addresses: Iterable<string>): number =>
    [...addresses].reduce((total, address) => total + sizeOf(address), 0);
  return {
    page,
    kind: kindOf(page, root),
    html: compressed(htmlOf(page)),
    css: sum(sheets) + inline(root, 'style'),
    // The small starter scripts stand in the page itself, so they count in both columns.
    script:
      sum(reach(entriesOf(root), graph)) + inline(root, 'script:not([src]):not([type*=json])'),
    fonts: sum(fonts),
  };
}

function over(cost: Cost): string[] {
  const limits = { html: LIMITS.html, css: LIMITS.css, script: LIMITS.script[cost.kind] };
  return Object.entries(limits)
    .filter(([key, limit]) => cost[key as keyof typeof limits] > limit)
    .map(([key, limit]) => `${key} over ${limit / KB} KB`);
}

const pages = allPages().map((page) => ({ page, root: parse(htmlOf(page)) }));
const entries = [...new Set(pages.flatMap(({ root }) => entriesOf(root)))];
const missing = entries.filter((entry) => !existsSync(join(DIST, entry)));
if (missing.length > 0) throw new Error(`Not built: ${missing.join(', ')}`);
const graph = await importGraph(entries);
const costs = pages.map(({ page, root }) => costOf(page, root, graph));

const kb = (bytes: number): string => (bytes / KB).toFixed(1).padStart(8);
console.log(
  `${'page'.padEnd(44)}${'HTML'.padStart(8)}${'CSS'.padStart(8)}${'script'.padStart(8)}${'fonts'.padStart(8)}  KB, brotli`,
);
let broken = 0;
for (const cost of costs.toSorted((a, b) => b.script - a.script || b.html - a.html)) {
  const faults = over(cost);
  broken += faults.length;
  const figures = [cost.html, cost.css, cost.script, cost.fonts].map(kb).join('');
  console.log(
    `${cost.page.padEnd(44)}${figures}  ${faults.length > 0 ? `OVER: ${faults.join(', ')}` : cost.kind}`,
  );
}
console.log(`${costs.length} pages, ${broken} over budget`);
process.exitCode = broken > 0 ? 1 : 0;
