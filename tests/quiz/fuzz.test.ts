import { describe, it } from 'vitest';
import { damage, READERS } from './damage.js';

/** Runs for each reader; over all eight they come to 1600. */
const RUNS = 200;

describe('readers of quiz files against damaged files', () => {
  it.each(READERS)('$what', (reader) => damage(reader, RUNS));
});
