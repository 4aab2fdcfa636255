import { expect, test } from 'vitest';
import { faultsOf, MIX_FAMILIES, made, oddWords } from './made.js';

test.each(MIX_FAMILIES)(
  '%s: ten seeds at each level pass the checker and the file format, and read well',
  (family) => {
    const drills = made(family, () => Array.from({ length: 10 }, (_, seed) => seed));
    expect(faultsOf(drills, 2)).toEqual([]);
    expect(drills.flatMap(oddWords)).toEqual([]);
  },
);
