/** What is mutated, room by room, and the tests that have to notice. `MUTANTS=optics,colour` takes some of them. */
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
    tests: ['tests/profile/{order,record}.test.ts', 'tests/files/*.test.ts'],
  },
  marking: {
    mutate: ['src/quiz/{digest,marking,seals}.ts'],
    tests: ['tests/quiz/{marking,seals,seals-going-on}.test.ts', 'tests/outside/quiz-seals.test.ts'],
  },
};

const asked = process.env['MUTANTS']?.split(',') ?? Object.keys(ROOMS);
const unknown = asked.find((name) => !Object.hasOwn(ROOMS, name));
if (unknown !== undefined)
  throw new Error(`MUTANTS=${unknown}: the rooms are ${Object.keys(ROOMS).join(', ')}`);
const rooms = Object.entries(ROOMS)
  .filter(([name]) => asked.includes(name))
  .map(([, room]) => room);

export const MUTATE = [...rooms.flatMap(({ mutate }) => mutate), '!src/**/index.ts'];
export const TESTS = rooms.flatMap(({ tests }) => tests);
