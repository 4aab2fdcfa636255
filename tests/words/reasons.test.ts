import { describe, expect, test } from 'vitest';
import type { Way } from '../../src/washes/index.js';
import { layMixture, madeUp, partsOf, stirIn } from '../../src/washes/index.js';
import { reasonFor } from '../../src/words/reasons.js';
import { STUDIO } from '../studio.js';
import { laidFaults, pairFaults } from './claims.js';

const BOX = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
const PAINTS = [...BOX, 'chinese-white'];
const PAIRS = PAINTS.flatMap((a) => PAINTS.filter((b) => b !== a).map((b) => [a, b] as const));
const STRENGTHS = [0.1, 0.3, 0.8];

/** Every reason with what is wrong with it, over all pairs of the box. */
function faultsOver(
  way: Way,
  amounts: readonly number[],
  faultsOf: (text: string, first: { a: string; b: string; strength: number; amount: number }) => string[],
): string[] {
  return PAIRS.flatMap(([a, b]) =>
    STRENGTHS.flatMap((strength) =>
      amounts.flatMap((amount) => {
        const first = { paints: { [a]: 1 }, strength };
        const laid = layMixture(first, { way, added: [{ id: b, amount }], strength, thin: 1 });
        const text = reasonFor(STUDIO, laid);
        if (text === undefined) return [`${a} ${b}: no reason`];
        const faults = way === 'puddle' ? faultsOf(text, { a, b, strength, amount }) : laidFaults(text, laid);
        return faults.map((fault) => `${a} at ${strength} ${way} ${b} ${amount}: ${fault}`);
      }),
    ),
  );
}

describe('a reason never contradicts the swatch, over all ordered pairs of the default box and white', () => {
  test('stirred in', () => {
    const faults = faultsOver(
      'puddle',
      [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4],
      (text, { a, b, strength, amount }) => {
        const mixed = stirIn(madeUp(partsOf(STUDIO, { [a]: 1 }), strength), partsOf(STUDIO, { [b]: amount }));
        return pairFaults(text, {
          one: mixed.filter(({ pigment }) => pigment.id === a),
          other: mixed.filter(({ pigment }) => pigment.id === b),
        });
      },
    );
    expect(faults).toEqual([]);
  }, 60_000);

  test('glazed', () => {
    expect(faultsOver('glaze', [0.05, 0.1, 0.2, 0.4, 0.8], () => [])).toEqual([]);
  }, 60_000);

  test('in strokes', () => {
    expect(faultsOver('strokes', [0.1, 0.25, 0.4], () => [])).toEqual([]);
  }, 60_000);
});
