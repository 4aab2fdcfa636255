import { expect, test } from 'vitest';
import { LIBRARY } from '../../src/paints/index.js';
import { expectPage } from './page.js';

test.each([60, 80, 120])(
  'every page keeps to %i columns without colour, and defers to the label',
  (columns) => {
    for (const { id } of LIBRARY) expectPage(id, columns);
    expect(LIBRARY.length).toBeGreaterThan(70);
  },
);
