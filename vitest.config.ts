import { defineConfig } from 'vitest/config';

export const COLOURS = { FORCE_COLOR: '3', COLORTERM: 'truecolor', TERM: 'xterm-256color' };

export default defineConfig({
  test: {
    reporters: ['default'],
    // Against a hang, not for speed: a busy machine takes its time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/terminal/**', 'tests/**/*.long.test.*'],
          env: COLOURS,
          maxWorkers: '100%',
          setupFiles: ['tests/setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'terminal',
          include: ['tests/terminal/**/*.test.ts'],
          // One after the other, and after the rest: they wait for what a terminal shows.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          setupFiles: ['tests/setup.ts'],
        },
      },
    ],
  },
});
