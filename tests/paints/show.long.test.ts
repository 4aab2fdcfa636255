import { expect, test } from 'vitest';
import { STUDIO } from '../studio.js';
import { expectPage } from './page.js';

test.each([60, 80, 120])(
  'every page keeps to %i columns without colour, and defers to the label',
  (columns) => {
    for (const { id } of STUDIO.paints) expectPage(id, columns);
    expect(STUDIO.paints.length).toBeGreaterThan(70);
  },
);
