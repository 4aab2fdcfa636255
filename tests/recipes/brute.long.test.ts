import { describe, test } from 'vitest';
import { goalCase, targetCase } from './brute.js';

const SEEDS = Array.from({ length: 50 }, (_, at) => 100 + at);

describe('against brute force on a fine grid', () => {
  test.each(SEEDS)('an aim, seed %i: within half a mark', goalCase);
  test.each(SEEDS)('a target, seed %i: within CIEDE2000 0.2', targetCase);
});
