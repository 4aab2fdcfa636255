import { describe, it } from 'vitest';
import { damage, READERS } from './damage.js';

/** Runs over the three readers together come to ten thousand. */
const RUNS = 3334;

describe('readers of quiz files against damaged files', () => {
  it.each(READERS)('$what', (reader) => damage(reader, RUNS));
});
