import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layMixture, seeLaid, trialOf, WAYS, type Way } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const paint = fc.constantFrom(...STUDIO.paints.map(({ id }) => id));
const strength = fc.double({ min: 0.01, max: 1, noNaN: true });

/** Amounts that mean something in each way. */
const AMOUNT: Readonly<Record<Way, fc.Arbitrary<number>>> = {
  puddle: fc.double({ min: 1 / 64, max: 4, noNaN: true }),
  glaze: strength,
  strokes: fc.double({ min: 0.01, max: 0.49, noNaN: true }),
};

describe('the quick trial', () => {
  test.each(WAYS)(
    '%s: gives the colour of the full prediction to 1e-12 of it, for one and two paints',
    (way) => {
      fc.assert(
        fc.property(
          fc.tuple(paint, paint),
          fc.uniqueArray(paint, { minLength: 1, maxLength: 2 }),
          fc.tuple(AMOUNT[way], AMOUNT[way]),
          strength,
          strength,
          fc.double({ min: 1, max: 16, noNaN: true }),
          ([one, two], ids, amounts, startAt, at, thin) => {
            const first = { paints: { [one]: 2, [two]: 1 }, strength: startAt };
            const line = { way, ids, strength: at, thin: way === 'puddle' ? thin : 1 };
            const quick = trialOf(STUDIO, first, line)(amounts.slice(0, ids.length));
            const added = ids.map((id, index) => ({ id, amount: amounts[index] as number }));
            const full = seeLaid(STUDIO, layMixture(first, { ...line, added })).colour;
            for (const axis of ['x', 'y', 'z'] as const) {
              expect(Math.abs(quick.xyz[axis] - full.xyz[axis])).toBeLessThan(1e-12 * 100);
            }
            // L* and a*, b* go with the cube root, which is steep near black.
            expect(Math.abs(quick.lab.l - full.lab.l)).toBeLessThan(1e-11);
            expect(Math.abs(quick.lab.a - full.lab.a)).toBeLessThan(1e-10);
            expect(Math.abs(quick.lab.b - full.lab.b)).toBeLessThan(1e-10);
          },
        ),
        { numRuns: 200, seed: 7 },
      );
    },
  );
});
