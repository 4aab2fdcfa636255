// Mutation tests of the pure rooms, the record and marking: `npm run test:mutants`; see mutants.config.mjs.
import { MUTATE } from './mutants.config.mjs';

export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutants.config.ts', related: false },
  mutate: MUTATE,
  coverageAnalysis: 'perTest',
  // What is worked out when a module is loaded is tables for the most part; each such mutant would cost a run of all tests.
  ignoreStatic: true,
  // An id made empty is refused by the type check, and what a message says is held where it is read: on the screens.
  mutator: { excludedMutations: ['StringLiteral'] },
  concurrency: 2,
  dryRunTimeoutMinutes: 30,
  timeoutMS: 10_000,
  incremental: true,
  incrementalFile: 'reports/mutants/incremental.json',
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', 'reports', 'coverage'],
  reporters: ['clear-text', 'progress-append-only', 'json', 'html'],
  jsonReporter: { fileName: 'reports/mutants/mutants.json' },
  htmlReporter: { fileName: 'reports/mutants/mutants.html' },
  clearTextReporter: { logTests: false, allowColor: false },
  thresholds: { high: 95, low: 85, break: 85 },
};
