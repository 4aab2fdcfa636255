// The long runs: many seeds, many kills, every size of screen, and all cases of what the quick suite looks at some of. `npm run test:long`.
import { readdirSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { COLOURS } from './vitest.config.js';

/** Files that take some cases only in the quick suite (tests/cases.ts). */
const TAKES_SOME = /import \{[^}]*\b(some|casesOf)\b[^}]*\} from '[./]*cases\.js'|'\.\/shipped\.js'/;
const SOME = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name}`)
  .filter((path) => /\.test\.tsx?$/.test(path) && TAKES_SOME.test(readFileSync(path, 'utf8')));

export default defineConfig({
  test: {
    reporters: ['default'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    include: ['tests/**/*.long.test.ts', 'tests/**/*.long.test.tsx', ...SOME],
    env: { ...COLOURS, MUDLARK_CASES: 'all' },
    maxWorkers: '100%',
    setupFiles: ['tests/setup.ts'],
  },
});
