/**
 * Mutants of the core: `npm run mutation`. What survives, and why, is in `test/mutation/survivors.md`.
 * Two of them at a time on two cores; the next run does only what changed.
 */
export default {
  testRunner: 'vitest',
  vitest: { configFile: 'test/mutation.config.ts', related: true },
  plugins: ['@stryker-mutator/vitest-runner'],
  packageManager: 'npm',
  coverageAnalysis: 'perTest',
  incremental: true,
  tempDirName: 'test/output/mutants',
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, reportTests: false, reportScoreTable: false },
  jsonReporter: { fileName: 'test/output/mutation-report.json' },
  concurrency: 2,
  timeoutMS: 20000,
  // Tables are made when a module loads; each of their mutants would need all tests anew. Published rows hold them.
  ignoreStatic: true,
  // Two of three texts in these folders are codes and ids whose type refuses an empty one; the others are in survivors.md.
  mutator: { excludedMutations: ['StringLiteral'] },
  // Folder by folder, and the least for each, by test/tools/mutation.ts: one strong folder must not carry a weak one.
  thresholds: { high: 95, low: 90, break: null },
};
