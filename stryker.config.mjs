// Mutation tests of the pure rooms, the record and marking: `npm run test:mutants`; `MUTANTS=optics,colour` takes some rooms only.
// There are some five thousand of them, about forty a minute while the machine does other things: take room by room. What did not change
// since the last run of the same rooms is taken from it.

/** What is mutated, room by room, and the tests that have to notice: those of the room itself, and the published figures. */
const ROOMS = {
  optics: {
    mutate: ['src/optics/*.ts'],
    tests: ['tests/optics/*.test.ts', 'tests/outside/optics.test.ts'],
  },
  colour: {
    mutate: ['src/colour/*.ts'],
    // tests/colour/imports.test.ts starts processes.
    tests: ['tests/colour/!(imports).test.ts', 'tests/outside/colour-*.test.ts'],
  },
  washes: {
    mutate: ['src/washes/*.ts'],
    tests: ['tests/washes/*.test.ts', 'tests/outside/washes-*.test.ts'],
  },
  judgement: {
    mutate: ['src/judgement/*.ts'],
    // tests/outside/judgement-relation.test.ts mixes every pair of the library: seconds for each mutant.
    tests: ['tests/judgement/*.test.ts'],
  },
  practice: {
    mutate: ['src/practice/*.ts'],
    // tests/practice/learners.test.ts lives through whole lives of practice.
    tests: ['tests/practice/!(learners).test.ts', 'tests/outside/scheduling.test.ts'],
  },
  record: {
    mutate: ['src/profile/{checkpoint,record-*,set-aside}.ts', 'src/files/write.ts'],
    tests: ['tests/profile/{order,record,record-lines,checkpoint}.test.ts', 'tests/files/*.test.ts'],
  },
  marking: {
    mutate: ['src/quiz/{marking,seals}.ts'],
    tests: [
      'tests/quiz/{marking,analysis,plan,seals-rule,seals-going-on}.test.ts',
      'tests/outside/quiz-seals.test.ts',
    ],
  },
};

const asked = process.env['MUTANTS']?.split(',') ?? Object.keys(ROOMS);
const unknown = asked.find((name) => !Object.hasOwn(ROOMS, name));
if (unknown !== undefined)
  throw new Error(`MUTANTS=${unknown}: the rooms are ${Object.keys(ROOMS).join(', ')}`);
const rooms = asked.map((name) => ROOMS[name]);

/** For vitest.mutants.config.mjs. */
export const TESTS = rooms.flatMap(({ tests }) => tests);

export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutants.config.mjs', related: false },
  mutate: [...rooms.flatMap(({ mutate }) => mutate), '!src/**/index.ts'],
  // An id made empty is refused by the type check, and what a message says is held where it is read: on the screens.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  // What is worked out when a module is loaded is tables for the most part; each such mutant would cost a run of all tests.
  ignoreStatic: true,
  concurrency: 2,
  dryRunTimeoutMinutes: 30,
  timeoutMS: 10_000,
  incremental: true,
  incrementalFile: `reports/mutants/incremental-${asked.join('-')}.json`,
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', 'reports', 'coverage'],
  reporters: ['clear-text', 'progress-append-only', 'json', 'html'],
  jsonReporter: { fileName: 'reports/mutants/mutants.json' },
  htmlReporter: { fileName: 'reports/mutants/mutants.html' },
  clearTextReporter: { logTests: false, allowColor: false },
  thresholds: { high: 95, low: 85, break: 85 },
};
