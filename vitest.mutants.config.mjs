// The tests that mutants are held against; see stryker.config.mjs.
import { defineConfig } from 'vitest/config';
import { TESTS } from './stryker.config.mjs';
import { COLOURS } from './vitest.config.js';

export default defineConfig({
  test: {
    testTimeout: 600_000,
    include: TESTS,
    exclude: ['tests/**/*.long.test.*'],
    // Each mutant has a worker of its own; the files in it share what is loaded.
    isolate: false,
    env: COLOURS,
    setupFiles: ['tests/setup.ts'],
  },
});
