import { describe, test } from 'vitest';
import { expectSound, LEVELS, OTHER_FAMILIES } from './made.js';

describe.each(OTHER_FAMILIES)('made-up drills of %s', (family) => {
  test.each(LEVELS)('level %i: six seeds are sound, varied, and written as a file would hold them', (level) =>
    expectSound(family, level, 6),
  );
});
