/**
 * `npm run mutation`: changes the core line by line, sees whether a test notices, and prints the share noticed
 * folder by folder; fails where one is under the least. Arguments go on to the mutation tester.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Percent of the mutants of each folder that a test must notice. */
const LEAST = 90;

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
const run = spawnSync(
  process.execPath,
  [program, 'run', 'test/stryker.config.mjs', ...process.argv.slice(2)],
  { cwd: ROOT, stdio: 'inherit' },
);
if (run.status !== 0) process.exit(run.status ?? 1);

const file = join(ROOT, 'test', 'output', 'mutation-report.json');
const weak: string[] = [];
console.log('\nfolder          noticed        share   reached by no test');
for (const [folder, score] of scores(JSON.parse(readFileSync(file, 'utf8')) as Report)) {
  const all = score.noticed + score.survived + score.uncovered;
  if (all === 0) continue;
  const share = (100 * score.noticed) / all;
  if (share < LEAST) weak.push(folder);
  const counts = `${score.noticed}/${all}`.padStart(11);
  console.log(
    `${folder.padEnd(12)}${counts}${share.toFixed(1).padStart(11)} %${String(score.uncovered).padStart(12)}`,
  );
}
if (weak.length > 0) {
  console.error(`\nUnder ${LEAST} %: ${weak.join(', ')}.`);
  process.exit(1);
}
