import { defineConfig } from 'vitest/config';

const env = { FORCE_COLOR: '3', COLORTERM: 'truecolor', TERM: 'xterm-256color' };

export default defineConfig({
  test: {
    reporters: ['default'],
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/terminal/**', 'tests/program/**'],
          env,
          setupFiles: ['tests/setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'program',
          include: ['tests/terminal/**/*.test.ts', 'tests/program/**/*.test.ts'],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
          setupFiles: ['tests/setup.ts'],
        },
      },
    ],
  },
});
