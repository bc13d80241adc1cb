/**
 * `npm run check` and `npm test`: every step in turn, those that use one core beside each other; the
 * output of what fails, a table at the end.
 * Later steps run even when an earlier one failed, so that one run tells everything.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const OUTPUT = join(ROOT, 'test', 'output');

interface Counts {
  passed: number;
  failed: number;
  skipped: number;
}

interface Step {
  name: string;
  /** A program of node_modules and its arguments; several run one after the other. */
  commands: string[][];
  /** Reads how many tests ran; without it the step counts as one check. */
  counts?: () => Counts;
  /** Is not worth running after a failure of this step. */
  needs?: string;
  before?: () => Promise<void>;
}

interface Result {
  step: Step;
  state: 'passed' | 'FAILED' | 'not run';
  counts: Counts;
  seconds: number;
}

function report<T>(name: string): T {
  return JSON.parse(readFileSync(join(OUTPUT, name), 'utf8')) as T;
}

function vitestCounts(name: string): () => Counts {
  return () => {
    const found = report<{
      numPassedTests: number;
      numFailedTests: number;
      numPendingTests: number;
      numTodoTests: number;
      testResults: { status: string; assertionResults: unknown[] }[];
    }>(name);
    // A file that could not be loaded has no tests to count: it is one failure itself.
    const unloaded = found.testResults.filter(
      ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
    );
    return {
      passed: found.numPassedTests,
      failed: found.numFailedTests + unloaded.length,
      skipped: found.numPendingTests + found.numTodoTests,
    };
  };
}

function playwrightCounts(): Counts {
  const { stats } = report<{
    stats: { expected: number; unexpected: number; skipped: number };
  }>('browser.json');
  return { passed: stats.expected, failed: stats.unexpected, skipped: stats.skipped };
}

function vitest(name: string, ...projects: string[]): Pick<Step, 'commands' | 'counts'> {
  const file = `${name}.json`;
  const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=test/output/${file}`];
  const chosen = projects.map((project) => `--project=${project}`);
  return {
    commands: [['vitest', 'run', '-c', 'test/vitest.config.ts', ...chosen, ...reporters]],
    counts: vitestCounts(file),
  };
}

const LINTED = ['core', 'components', 'site', 'test', 'astro.config.mjs'];

/** Steps that stand together run beside each other. */
type Wave = Step[];

const READING: Wave = [
  // Pages and every TypeScript module of the project: it asks the compiler about both.
  { name: 'types', commands: [['astro', 'check', '--minimumFailingSeverity', 'warning']] },
  { name: 'lint', commands: [['oxlint', '--deny-warnings', ...LINTED]] },
  { name: 'format', commands: [['prettier', '--check', '--log-level', 'warn', '.']] },
];

const QUICK: Wave[] = [
  READING,
  [{ name: 'unit, published, components', ...vitest('unit', 'pure', 'components') }],
];

const BROWSER: Step = {
  name: 'browser and access',
  commands: [['playwright', 'test', '-c', 'test/playwright.config.ts', '--reporter=dot,json']],
  counts: playwrightCounts,
  needs: 'build',
  async before() {
    const { findBrowser } = await import('../browser.mjs');
    const { path, from } = await findBrowser((line) => console.log(`  ${line}`));
    process.env['TESTS_BROWSER'] = path;
    process.env['PLAYWRIGHT_JSON_OUTPUT_FILE'] = join(OUTPUT, 'browser.json');
    console.log(`  with ${path} (${from})`);
  },
};

const REST: Wave[] = [
  [{ name: 'build', commands: [['astro', 'build', '--silent']] }],
  [{ name: 'built pages', ...vitest('built', 'built'), needs: 'build' }],
  [BROWSER],
];

/** Plain text in logs. The two ways to ask for it get in each other's way, so only one is set. */
const PLAIN = { NO_COLOR: '1', FORCE_COLOR: undefined };

/** Runs one command; its output is kept and shown only if it fails. */
function run([program = '', ...args]: string[]): Promise<{ ok: boolean; text: string }> {
  const windows = process.platform === 'win32';
  const path = join(ROOT, 'node_modules', '.bin', windows ? `${program}.cmd` : program);
  return new Promise((resolve) => {
    const child = spawn(path, args, {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: windows,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...PLAIN },
    });
    let text = '';
    child.stdout.on('data', (part: Buffer) => (text += part.toString()));
    child.stderr.on('data', (part: Buffer) => (text += part.toString()));
    child.on('error', (error) => resolve({ ok: false, text: `${text}${error.message}\n` }));
    child.on('close', (code) => resolve({ ok: code === 0, text }));
  });
}

async function perform(step: Step): Promise<Omit<Result, 'step' | 'seconds'>> {
  let ok = true;
  try {
    await step.before?.();
    for (const command of step.commands) {
      const done = await run(command);
      if (!done.ok) console.log(done.text);
      ok &&= done.ok;
    }
  } catch (error) {
    console.log(error instanceof Error ? error.message : error);
    ok = false;
  }
  let counts: Counts = { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 };
  try {
    if (step.counts) counts = step.counts();
  } catch {
    // No report was written: the step itself is the one failure.
  }
  // A failure outside the tests, such as an unhandled rejection, must not be lost in the sum.
  if (!ok && counts.failed === 0) counts = { ...counts, failed: 1 };
  if (ok && counts.failed > 0) ok = false;
  return { state: ok ? 'passed' : 'FAILED', counts };
}

function table(results: Result[]): string {
  return results
    .map(({ step, state, counts, seconds }) => {
      const tests =
        step.counts && state !== 'not run'
          ? `${counts.passed} of ${counts.passed + counts.failed} tests`
          : '';
      const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
      return `  ${state.padEnd(8)} ${step.name.padEnd(30)} ${`${seconds.toFixed(1)} s`.padStart(8)}  ${tests}${skipped}`;
    })
    .join('\n');
}

const waves = process.argv[2] === 'check' ? QUICK : [...QUICK, ...REST];
rmSync(OUTPUT, { recursive: true, force: true });
mkdirSync(OUTPUT, { recursive: true });

const results: Result[] = [];

async function take(step: Step): Promise<Result> {
  const started = performance.now();
  const blocked = results.some((done) => done.step.name === step.needs && done.state !== 'passed');
  if (!blocked) console.log(`${step.name} …`);
  const outcome = blocked
    ? { state: 'not run' as const, counts: { passed: 0, failed: 1, skipped: 0 } }
    : await perform(step);
  return { step, ...outcome, seconds: (performance.now() - started) / 1000 };
}

const began = performance.now();
for (const wave of waves) results.push(...(await Promise.all(wave.map(take))));

const total = (key: 'passed' | 'failed'): number =>
  results.reduce((sum, { counts }) => sum + counts[key], 0);
console.log(`\n${table(results)}\n`);
const minutes = ((performance.now() - began) / 60_000).toFixed(1);
console.log(`${minutes} min on ${cpus().length} cores, Node ${process.versions.node}`);
console.log(`${total('passed')} passed, ${total('failed')} failed`);
process.exitCode = total('failed') > 0 ? 1 : 0;
