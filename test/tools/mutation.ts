/**
 * `npm run mutation`: changes the core line by line, sees whether a test notices, and prints the share noticed
 * folder by folder; fails where one is under the least. `-- hole drill` does only those folders.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Percent of the mutants that a test must notice, in each of the folders held to it. */
const LEAST = 90;
const HELD = ['thread', 'limits', 'drill', 'hole', 'load', 'chips', 'plan'];

interface Report {
  files: Record<string, { mutants: { status: string }[] }>;
}

interface Score {
  noticed: number;
  survived: number;
  /** Reached by no test at all; counted among those not noticed. */
  uncovered: number;
}

/** Scores by folder of the core, in the order of the report. */
function scores(report: Report): Map<string, Score> {
  const found = new Map<string, Score>();
  for (const [file, { mutants }] of Object.entries(report.files)) {
    const folder = file.split('/').slice(0, 2).join('/');
    const score = found.get(folder) ?? { noticed: 0, survived: 0, uncovered: 0 };
    found.set(folder, score);
    for (const { status } of mutants) {
      if (status === 'Killed' || status === 'Timeout') score.noticed += 1;
      if (status === 'Survived') score.survived += 1;
      if (status === 'NoCoverage') score.uncovered += 1;
    }
  }
  return found;
}

const program = join(ROOT, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
const REPORT = join(ROOT, 'test', 'output', 'mutation-report.json');

/** One folder, with the tests that `test/mutation.config.ts` names for it. What did not change is not tried again. */
function scoreOf(folder: string): Score {
  const run = spawnSync(
    process.execPath,
    [
      ...[program, 'run', 'test/stryker.config.mjs', '--mutate', `core/${folder}/**/*.ts`],
      ...['--incrementalFile', `node_modules/.cache/mutation-${folder}.json`],
    ],
    { cwd: ROOT, stdio: 'inherit', env: { ...process.env, MUTATION_FOLDER: folder } },
  );
  if (run.status !== 0) process.exit(run.status ?? 1);
  const all = scores(JSON.parse(readFileSync(REPORT, 'utf8')) as Report);
  return all.get(`core/${folder}`) ?? { noticed: 0, survived: 0, uncovered: 0 };
}

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !existsSync(join(ROOT, 'core', name)));
if (unknown !== undefined) {
  console.error(
    `No folder core/${unknown}. Say which of the core's folders, such as: ${HELD.join(' ')}.`,
  );
  process.exit(1);
}
const folders = asked.length > 0 ? asked : HELD;
const rows = folders.map((folder) => ({ folder, score: scoreOf(folder) }));

const weak: string[] = [];
console.log('\nfolder          noticed        share   reached by no test');
for (const { folder, score } of rows) {
  const all = score.noticed + score.survived + score.uncovered;
  const share = all === 0 ? 100 : (100 * score.noticed) / all;
  if (share < LEAST && HELD.includes(folder)) weak.push(folder);
  const counts = `${score.noticed}/${all}`.padStart(11);
  console.log(
    `${folder.padEnd(12)}${counts}${share.toFixed(1).padStart(11)} %${String(score.uncovered).padStart(12)}`,
  );
}
if (weak.length > 0) {
  console.error(`\nUnder ${LEAST} %: ${weak.join(', ')}.`);
  process.exit(1);
}
