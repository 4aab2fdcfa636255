// Perspective, a lens that loses a fifth in its corners, warm light, noise and JPEG 70: the painting is read as it was painted.
import { expect, it } from 'vitest';
import { holdPhotographs } from './simulated.js';

it('reads six photographed sheets: range within 0.4 step, masses within half a step and C* 6', async () => {
  expect(await holdPhotographs([0, 5, 9, 16, 18, 22])).toBe(0);
});
