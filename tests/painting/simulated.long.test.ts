// The long run of simulated.test.ts.
import { expect, it } from 'vitest';
import { holdPhotographs } from './simulated.js';

it('reads fifty photographed sheets, and owns that it cannot in three at most', async () => {
  expect(await holdPhotographs(Array.from({ length: 50 }, (_, seed) => seed))).toBeLessThanOrEqual(3);
});
