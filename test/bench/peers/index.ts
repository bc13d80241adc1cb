/**
 * `node test/bench/peers/index.ts <folder outside the repository>`, after a build: our lesson and calculator
 * beside the same prose and the same core in three general documentation frameworks. Bytes as they cross
 * the wire (gzip), and Lighthouse, all in one run. Not part of any test: it installs the frameworks.
 */
import { build } from 'esbuild';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { ROOT } from '../../tools/modules.ts';
import { DIST } from '../../tools/pages.ts';
import { listen, siteServer } from '../../tools/serve.ts';
import { withBrowser, withLighthouse } from '../measure.ts';
import { peers, type Peer } from './projects.ts';

const HERE = join(ROOT, 'test/bench/peers');
const LESSON = join(ROOT, 'site/content/lessons/07-class-and-tap-limits.mdx');
const PORT = 4438;
/** What a page fetches later than this, nobody waits for. */
const SETTLED_MS = 2500;

const KINDS = ['Document', 'Script', 'Stylesheet', 'Font', 'other'] as const;
type Bytes = Record<(typeof KINDS)[number], number> & { requests: number };

/** The lesson's words: what only our pages can show is taken out, tag by tag. */
function proseOf(mdx: string): string {
  return mdx
    .replace(/^---\n.*?\n---\n/s, '')
    .replace(/^import .*$/gm, '')
    .replace(/\{\/\*.*?\*\/\}/gs, '')
    .replace(/<[A-Z][^>]*?(?:\{[^<>]*?\}[^<>]*?)*\/>/gs, '')
    .replace(/<\/?[A-Z][^>]*>/gs, '')
    .replace(/\{[^{}]*\}/gs, '')
    .replace(/[{}<>]/g, '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/\n{3,}/g, '\n\n');
}

function run(command: string, args: string[], cwd: string): void {
  const { status, stderr, stdout } = spawnSync(command, args, { cwd, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}\n${stdout}\n${stderr}`);
}

function make(peer: Peer, folder: string): string {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(peer.files)) {
    // Installed before: kept, so that a second run measures the same versions.
    if (name === 'package.json' && existsSync(join(folder, name))) continue;
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const installed = join(folder, 'node_modules', peer.versionOf, 'package.json');
  if (!existsSync(installed))
    run('npm', ['install', '--no-audit', '--no-fund', ...peer.packages], folder);
  run('npx', peer.build, folder);
  return (JSON.parse(readFileSync(installed, 'utf8')) as { version: string }).version;
}

async function bytesOf(url: string): Promise<Bytes> {
  return withBrowser([], async (browser) => {
    const context = await browser.newContext({
      viewport: { width: 1366, height: 768 },
      // Ours keeps the whole site for later; that is another question.
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    const kinds = new Map<string, string>();
    const bytes: Bytes = { Document: 0, Script: 0, Stylesheet: 0, Font: 0, other: 0, requests: 0 };
    session.on('Network.responseReceived', ({ requestId, type }) => kinds.set(requestId, type));
    session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
      const kind = KINDS.find((known) => known === kinds.get(requestId)) ?? 'other';
      bytes[kind] += encodedDataLength;
      bytes.requests += 1;
    });
    await page.goto(url, { waitUntil: 'load' });
    await page.waitForTimeout(SETTLED_MS);
    return bytes;
  });
}

async function rowOf(name: string, root: string, page: string): Promise<string> {
  const server = siteServer(root);
  const url = (await listen(server, PORT)).replace(/\/$/, '') + page;
  try {
    const bytes = await bytesOf(url);
    const { scores, largest } = await withLighthouse((ask) => ask(url));
    const kb = (kind: (typeof KINDS)[number]): string => (bytes[kind] / 1024).toFixed(1);
    const sum = KINDS.reduce((total, kind) => total + bytes[kind], 0);
    const cells = [name, bytes.requests, ...KINDS.map(kb), (sum / 1024).toFixed(1)];
    const row = [...cells, scores.join(' / '), (largest / 1000).toFixed(2)];
    return `| ${row.join(' | ')} |`;
  } finally {
    server.close();
  }
}

const folder = process.argv[2] && resolve(process.argv[2]);
if (!folder || folder.startsWith(ROOT))
  throw new Error('Name a work folder outside the repository.');
const limits = await build({
  entryPoints: [join(HERE, 'limits.ts')],
  bundle: true,
  format: 'esm',
  write: false,
});
const all = peers(proseOf(readFileSync(LESSON, 'utf8')), limits.outputFiles[0]?.text ?? '');
const lines: string[] = [];
const versions: string[] = [];
const places: { name: string; root: string; pages: Peer['pages'] }[] = [
  {
    name: 'This handbook',
    root: `${DIST}/`,
    pages: { lesson: '/lessons/class-and-tap-limits/', calculator: '/calculators/thread-limits/' },
  },
];
for (const peer of all) {
  const home = join(folder, peer.name.toLowerCase());
  versions.push(`${peer.name} ${make(peer, home)}`);
  places.push({ name: peer.name, root: join(home, peer.out) + '/', pages: peer.pages });
  console.log(`built ${versions.at(-1)}`);
}
for (const kind of ['lesson', 'calculator'] as const) {
  for (const { name, root, pages } of places) {
    const row = await rowOf(`${kind}: ${name}`, root, pages[kind]);
    console.log(row);
    lines.push(row);
  }
}
const heads = ['Page', 'Requests', 'HTML', 'Script', 'CSS', 'Fonts', 'Other', 'Sum'];
const table = [
  `| ${[...heads, 'Lighthouse', 'Largest, s'].join(' | ')} |`,
  `|${' --- |'.repeat(heads.length + 2)}`,
  ...lines,
].join('\n');
const today = new Date().toISOString().slice(0, 10);
writeFileSync(
  join(HERE, 'result.md'),
  `# Measured ${today}

${versions.join(', ')}; Node ${process.versions.node}. Sizes in kB as they cross the wire, gzip, first visit. Lighthouse: performance / accessibility / best practices / search, as on a phone.

${table}
`,
);
