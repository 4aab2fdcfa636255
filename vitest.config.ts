import { defineConfig } from 'vitest/config';

export const COLOURS = { FORCE_COLOR: '3', COLORTERM: 'truecolor', TERM: 'xterm-256color' };

/** Files that put something else in place of a module, which the others must not see. */
const ALONE = ['tests/painting/no-sharp.test.ts', 'tests/tui/sheet.test.tsx'];

export default defineConfig({
  test: {
    reporters: ['default'],
    // Against a hang, not for speed: a busy machine takes its time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    maxWorkers: '100%',
    setupFiles: ['tests/setup.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/terminal/**', 'tests/**/*.long.test.*', ...ALONE],
          // The program is loaded once for all files of a worker: loading it for each took a third of the time.
          isolate: false,
          env: COLOURS,
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: ALONE, env: COLOURS },
      },
      {
        extends: true,
        test: {
          name: 'terminal',
          include: ['tests/terminal/**/*.test.ts'],
          // One after the other, and after the rest: they wait for what a terminal shows, and some for pauses between keys.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
