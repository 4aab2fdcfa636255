import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export const COLOURS = { FORCE_COLOR: '3', COLORTERM: 'truecolor', TERM: 'xterm-256color' };

/** The program's own modules, as a pattern of their paths. */
const SOURCE = RegExp(`^${fileURLToPath(new URL('src/', import.meta.url)).replace(/[^\w/]/g, '\\$&')}`);

/** The program runs as it ships: as Node's own modules, which call each other faster than a test runner's, and React as it is built. */
export const AS_IT_SHIPS = {
  execArgv: ['--import', 'tsx'],
  server: { deps: { external: [SOURCE] } },
};
export const BUILT = { NODE_ENV: 'production' };
/** Elements as they are built, too. */
export const OXC = { jsx: { development: false } };

/** Files that put something else in place of a module: the others must not see it, and it has to be the test runner's own. */
export const ALONE = ['tests/painting/no-sharp.test.ts'];

export default defineConfig({
  test: {
    reporters: ['default'],
    // Against a hang, not for speed: a busy machine takes its time.
    testTimeout: 120_000,
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
          name: 'core',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/**/*.long.test.*', ...ALONE],
          // The program is loaded once for all files of a worker: loading it for each took a third of the time.
          isolate: false,
          env: { ...COLOURS, ...BUILT },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: ALONE, env: COLOURS },
      },
    ],
  },
});
