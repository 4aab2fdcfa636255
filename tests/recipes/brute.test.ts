import { describe, test } from 'vitest';
import { some } from '../cases.js';
import { goalCase, targetCase } from './brute.js';

describe('against brute force on a fine grid', () => {
  test.each(some([1, 2, 3, 4], 2))('an aim, seed %i: within half a mark', goalCase, 60_000);
  test.each(some([1, 2, 3], 2))('a target, seed %i: within CIEDE2000 0.2', targetCase, 60_000);
});
