import { describe, it } from 'vitest';
import { damage, READERS } from './damage.js';

/** Runs for each reader; over all eight they come to sixteen thousand. */
const RUNS = 2000;

describe('readers of quiz files against damaged files', () => {
  it.each(READERS)('$what', (reader) => damage(reader, RUNS));
});
