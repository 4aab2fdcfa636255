import { describe, it } from 'vitest';
import { damage, READERS } from './damage.js';

/** Runs for each reader; over all of them they come to 1200. */
const RUNS = 200;

describe('readers of quiz files against damaged files', () => {
  it.each(READERS)('$what', (reader) => damage(reader, RUNS));
});
