import { describe, expect, test } from 'vitest';
import type { Way } from '../../src/washes/index.js';
import { layMixture, madeUp, partsOf, stirIn } from '../../src/washes/index.js';
import { reasonFor } from '../../src/words/reasons.js';
import { type Finding, sayFinding } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { some } from '../cases.js';
import { STUDIO } from '../studio.js';
import { pairFaults } from './claims.js';
import { laidFaults } from './laid-claims.js';

const BOX = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
const PAINTS = [...BOX, 'chinese-white'];
const PAIRS = PAINTS.flatMap((a) => PAINTS.filter((b) => b !== a).map((b) => [a, b] as const));
const STRENGTHS = [0.1, 0.3, 0.8];

/** Every reason with what is wrong with it, over all pairs of the box. */
function faultsOver(
  way: Way,
  amounts: readonly number[],
  faultsOf: (reason: Finding, first: { a: string; b: string; strength: number; amount: number }) => string[],
): string[] {
  return some(PAIRS, 3).flatMap(([a, b]) =>
    STRENGTHS.flatMap((strength) =>
      amounts.flatMap((amount) => {
        const first = { paints: { [a]: 1 }, strength };
        const laid = layMixture(first, { way, added: [{ id: b, amount }], strength, thin: 1 });
        const reason = reasonFor(STUDIO, laid);
        if (reason === undefined) return [`${a} ${b}: no reason`];
        const faults =
          way === 'puddle' ? faultsOf(reason, { a, b, strength, amount }) : laidFaults(reason, laid);
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
      (reason, { a, b, strength, amount }) => {
        const mixed = stirIn(madeUp(partsOf(STUDIO, { [a]: 1 }), strength), partsOf(STUDIO, { [b]: amount }));
        return pairFaults(reason, {
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

describe('what painters know of single mixtures', () => {
  const words = (laid: Parameters<typeof reasonFor>[1]): string => {
    const reason = reasonFor(STUDIO, laid);
    return reason === undefined ? '' : sayFinding(reason, WRITTEN);
  };
  const stirred = (first: string, second: string, strength: number): string =>
    words({ paints: { [first]: 1, [second]: 1 }, strength });

  test('a colour sets the hue of a grey only where a hue is left', () => {
    const black = (add: number): string =>
      words({ paints: { 'ivory-black': 1 }, strength: 0.6, add: { 'raw-sienna': add } });
    expect(black(0.02)).not.toContain('sets the hue');
    expect(black(2)).toContain('raw sienna sets the hue');
  });

  // Common practice, no source: what any beginner's chart shows.
  test('a clear yellow and a clear blue make a green, and neither is said to cancel the other', () => {
    for (const yellow of ['lemon-yellow', 'cadmium-yellow'])
      for (const blue of ['prussian-blue', 'cerulean-blue', 'phthalo-blue-green-shade']) {
        const text = stirred(yellow, blue, 0.3);
        expect(text, `${yellow} ${blue}`).toMatch(
          /(make|come out as) a ((blue |yellow )?green|blue: the colour is kept)/,
        );
        expect(text).not.toContain('each swallows what the other sends back');
      }
  });

  test('burnt sienna and ultramarine cancel', () => {
    expect(stirred('burnt-sienna', 'ultramarine-blue', 0.5)).toContain(
      'each swallows what the other sends back',
    );
  });

  test('no violet is told as mostly red, no green as anything but green', () => {
    expect(stirred('ultramarine-blue', 'dioxazine-violet', 0.6)).not.toMatch(/Mostly [a-z ]*red/);
    expect(stirred('sap-green', 'phthalo-green-blue-shade', 0.6)).not.toMatch(/Mostly [a-z ]*red/);
  });

  // Ratings of transparency averaged over makers: B. MacEvoy, handprint.com (src/paints/data/appearance.json), 0 opaque to 4 clear.
  test.each([
    ['cadmium-red', 0.8],
    ['venetian-red', 0.4],
    ['chromium-oxide-green', 0],
    ['naples-yellow', 1],
  ])('%s, rated %d, covers a dark blue when laid thick', (id) => {
    const layers = [
      { paints: { 'prussian-blue': 1 }, strength: 0.5 },
      { paints: { [id]: 1 }, strength: 1 },
    ];
    expect(words({ layers })).toMatch(/covers/);
  });

  test.each([
    ['alizarin-crimson', 3.9],
    ['perylene-maroon', 3.8],
    ['anthraquinone-red', 4],
    ['phthalo-blue-green-shade', 3.8],
    ['quinacridone-burnt-orange', 4],
  ])('%s, rated %d, filters at any strength', (id) => {
    for (const strength of [0.1, 0.3, 0.6, 1])
      expect(
        words({
          layers: [
            { paints: { 'cadmium-red': 1 }, strength: 0.5 },
            { paints: { [id]: 1 }, strength },
          ],
        }),
      ).toMatch(/filters/);
  });
});
