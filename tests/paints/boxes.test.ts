/** Boxes as their owner has them. Sources: Kubelka and Munk 1931 (a film so thick that nothing shines through), Duncan 1940 (K and S of a mixture add up by amount), ASTM D4838 (relative tinting strength: K/S of equal tints with white, at the most absorbed wavelength). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { throughSurface } from '../../src/optics/index.js';
import {
  boxStudio,
  type Palette,
  type Pigment,
  paintOf,
  revisionOf,
  STRENGTH_FACTOR,
  withBoxes,
  withStrength,
} from '../../src/paints/index.js';
import { madeUp, puddleReflectance, seeLaid, stirIn } from '../../src/washes/index.js';
import { masstoneReflectance } from '../optics/films.js';
import { STUDIO } from '../studio.js';

const box = (more: Partial<Palette> = {}): Palette => ({
  id: 'mine',
  name: 'mine box',
  note: '',
  pigments: ['burnt-sienna', 'ultramarine-blue'],
  isOwn: true,
  ...more,
});
const factor = fc.double({ min: STRENGTH_FACTOR.least, max: STRENGTH_FACTOR.most, noNaN: true });
const paint = fc.constantFrom(...STUDIO.paints);

/** K/S of parts of paints, by Duncan's sum, and what a thick film of it reflects, by Kubelka and Munk. */
function thickByHand(parts: readonly (readonly [Pigment, number])[], band: number): number {
  const sum = (of: (pigment: Pigment) => ArrayLike<number>): number =>
    parts.reduce((total, [pigment, share]) => total + share * (of(pigment)[band] as number), 0);
  return throughSurface(masstoneReflectance(sum(({ K }) => K) / sum(({ S }) => S)), STUDIO.paper.surface);
}

const THICK = 1e5;

describe('a tube of another strength', () => {
  it('takes the share in a thick film that Duncan and Kubelka-Munk give to so many times its parts', () => {
    const [sienna, ultramarine] = [paintOf(STUDIO, 'burnt-sienna'), paintOf(STUDIO, 'ultramarine-blue')];
    for (const strength of [0.25, 0.7, 1.4, 4]) {
      const mixed = puddleReflectance(
        [
          { pigment: withStrength(sienna, strength), load: THICK },
          { pigment: ultramarine, load: 2 * THICK },
        ],
        STUDIO.paper,
      );
      for (const [band, seen] of mixed.entries()) {
        const byHand = thickByHand(
          [
            [sienna, strength],
            [ultramarine, 2],
          ],
          band,
        );
        expect(seen).toBeCloseTo(byHand, 6);
      }
    }
  });

  it('has the relative tinting strength of ASTM D4838 that its owner gave it', () => {
    const white = paintOf(STUDIO, 'chinese-white');
    for (const id of ['ultramarine-blue', 'burnt-sienna', 'phthalo-blue-green-shade']) {
      const library = paintOf(STUDIO, id);
      const band = library.K.indexOf(Math.max(...library.K));
      /** What a little of it adds to the K/S of white. */
      const tint = ({ K, S }: Pigment): number => {
        const share = 1e-5;
        const [k, s] = [K[band] as number, S[band] as number];
        const [kWhite, sWhite] = [white.K[band] as number, white.S[band] as number];
        return (share * k + kWhite) / (share * s + sWhite) - kWhite / sWhite;
      };
      for (const strength of [0.4, 1.4, 2.5])
        expect(tint(withStrength(library, strength)) / tint(library)).toBeCloseTo(strength, 2);
    }
  });

  it('does with a part what as many parts of the library’s paint do, in a puddle of the same strength', () => {
    fc.assert(
      fc.property(
        paint,
        paint,
        factor,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (one, other, times, t) => {
          fc.pre(one !== other);
          const part = (pigment: Pigment, parts: number) => ({ pigment, parts });
          const tube = madeUp([part(withStrength(one, times), 1), part(other, 1)], t);
          const library = madeUp([part(one, times), part(other, 1)], t);
          const [seen, expected] = [tube, library].map((loads) => puddleReflectance(loads, STUDIO.paper));
          for (const [band, value] of (seen ?? []).entries())
            expect(value).toBeCloseTo(expected?.[band] ?? Number.NaN, 9);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('keeps its masstone, and where all tubes are as many times as strong no mixture changes', () => {
    fc.assert(
      fc.property(paint, paint, factor, (one, other, times) => {
        fc.pre(one !== other);
        const mixed = (first: Pigment, second: Pigment) =>
          puddleReflectance(
            stirIn(madeUp([{ pigment: first, parts: 1 }], 0.3), [{ pigment: second, parts: 0.25 }]),
            STUDIO.paper,
          );
        const [before, after] = [
          mixed(one, other),
          mixed(withStrength(one, times), withStrength(other, times)),
        ];
        for (const [band, value] of after.entries()) expect(value).toBeCloseTo(before[band] as number, 9);
        const alone = (pigment: Pigment) =>
          puddleReflectance(madeUp([{ pigment, parts: 1 }], 1), STUDIO.paper);
        const masstone = alone(one);
        for (const [band, value] of alone(withStrength(one, times)).entries())
          expect(value).toBeCloseTo(masstone[band] as number, 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the studio of a box', () => {
  const stirred = { paints: { 'burnt-sienna': 1 }, strength: 0.3, add: { 'ultramarine-blue': 0.25 } };

  it('is the library’s where nothing is said of its paints, and the same one each time', () => {
    expect(boxStudio(STUDIO, box())).toBe(STUDIO);
    expect(boxStudio(STUDIO, box({ strengths: { 'burnt-sienna': 1 }, names: {} }))).toBe(STUDIO);
    const own = box({ names: { 'burnt-sienna': 'my sienna' } });
    expect(boxStudio(STUDIO, own)).toBe(boxStudio(STUDIO, own));
  });

  it('names paints as their owner does, and predicts with the owner’s strengths', () => {
    const own = boxStudio(
      STUDIO,
      box({ names: { 'burnt-sienna': 'my sienna' }, strengths: { 'ultramarine-blue': 2 } }),
    );
    expect(paintOf(own, 'burnt-sienna').name).toBe('my sienna');
    expect(paintOf(own, 'ultramarine-blue').name).toBe('ultramarine blue');
    expect(paintOf(own, 'burnt-sienna').K).toBe(paintOf(STUDIO, 'burnt-sienna').K);
    // Twice as strong a blue greys the sienna more than the library's.
    expect(seeLaid(own, stirred).colour.chroma).toBeLessThan(seeLaid(STUDIO, stirred).colour.chroma - 5);
    expect(paintOf(STUDIO, 'ultramarine-blue').timesLibrary).toBeUndefined();
  });

  it('joins the shipped boxes; of two of one name the learner’s stays', () => {
    const six = box({ id: 'six' });
    const joined = withBoxes(STUDIO, [box(), six]).palettes;
    expect(joined.map(({ id }) => id)).toEqual(['twelve', 'harbour', 'clear', 'mine', 'six']);
    expect(joined.at(-1)).toBe(six);
    expect(withBoxes(STUDIO, [])).toBe(STUDIO);
  });
});

it('gives a box another revision when its paints or strengths change, not when names or their order do', () => {
  const same = [
    box(),
    box({ pigments: ['ultramarine-blue', 'burnt-sienna'] }),
    box({ names: { 'burnt-sienna': 'my sienna' } }),
    box({ strengths: { 'burnt-sienna': 1 } }),
  ];
  const others = [
    box({ strengths: { 'burnt-sienna': 1.4 } }),
    box({ strengths: { 'ultramarine-blue': 1.4 } }),
    box({ pigments: ['burnt-sienna'] }),
    box({ pigments: ['burnt-sienna', 'ultramarine-blue', 'viridian'] }),
  ];
  expect(new Set(same.map(revisionOf)).size).toBe(1);
  expect(new Set([...same, ...others].map(revisionOf)).size).toBe(1 + others.length);
  for (const each of [...same, ...others]) expect(revisionOf(each)).toMatch(/^[0-9a-f]{8}$/);
});
