import { describe, it } from 'vitest';
import { damage, READERS } from './damage.js';

/** Runs over the five readers together come to 1500. */
const RUNS = 300;

describe('readers of quiz files against damaged files', () => {
  it.each(READERS)('$what', (reader) => damage(reader, RUNS));
});
