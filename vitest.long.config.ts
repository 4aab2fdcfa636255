// The long runs: many seeds, many kills, every size of screen, and all cases of what the quick suite looks at some of. `npm run test:long`.
import { readdirSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { ALONE, AS_IT_SHIPS, BUILT, COLOURS, OXC } from './vitest.config.js';

/** Files that take some cases only in the quick suite (tests/cases.ts). */
const TAKES_SOME = /import \{[^}]*\b(some|casesOf)\b[^}]*\} from '[./]*cases\.js'|'\.\/shipped\.js'/;
const SOME = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name}`)
  .filter((path) => /\.test\.tsx?$/.test(path) && TAKES_SOME.test(readFileSync(path, 'utf8')));

const ALL = { ...COLOURS, MUDLARK_CASES: 'all' };

export default defineConfig({
  test: {
    reporters: ['default'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    maxWorkers: '100%',
    globalSetup: ['tests/temporary.ts'],
    setupFiles: ['tests/setup.ts'],
    projects: [
      {
        extends: true,
        oxc: OXC,
        test: {
          ...AS_IT_SHIPS,
          name: 'long',
          include: ['tests/**/*.long.test.ts', 'tests/**/*.long.test.tsx', ...SOME],
          exclude: ALONE,
          env: { ...ALL, ...BUILT },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: ALONE.filter((path) => SOME.includes(path)), env: ALL },
      },
    ],
  },
});
