// Perspective, a lens that loses a fifth in its corners, warm light, noise and JPEG 70: the painting is read as it was painted. The long run has
// these and 47 more.
import { expect, it } from 'vitest';
import { holdPhotographs } from './simulated.js';

it('reads three photographed sheets: range within 0.4 step, masses within half a step and C* 6', async () => {
  expect(await holdPhotographs([5, 16, 22])).toBe(0);
});
