// The long runs: many seeds, many kills, every size of screen. `npm run test:long`.
import { defineConfig } from 'vitest/config';
import { COLOURS } from './vitest.config.js';

export default defineConfig({
  test: {
    reporters: ['default'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    include: ['tests/**/*.long.test.ts', 'tests/**/*.long.test.tsx'],
    env: COLOURS,
    maxWorkers: '100%',
    setupFiles: ['tests/setup.ts'],
  },
});
