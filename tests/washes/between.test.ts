/** The best between the amounts, on a small tray: against the scales, and what is promised of the list. */
import { describe, expect, test } from 'vitest';
import { hueDifference } from '../../src/colour/lab.js';
import type { ColourReading } from '../../src/colour/reading.js';
import {
  bestBetween,
  bestOf,
  bestOnScale,
  combinations,
  layMixture,
  linesOf,
  type Open,
  roughStudio,
  scalesOf,
  seeLaid,
  survey,
} from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const FIRST = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
const OPEN: Open = {
  first: FIRST,
  tray: ['alizarin-crimson', 'ultramarine-blue', 'lemon-yellow'],
  most: 2,
  ratios: [1 / 8, 1 / 2, 2],
  glazes: [0.1, 0.4],
  strokes: [
    { share: 0.2, strength: 0.3 },
    { share: 0.45, strength: 0.3 },
  ],
  thins: [1],
};
const nearTo =
  (step: number, chroma: number, hue: number) =>
  (colour: ColourReading): number => {
    const arc =
      2 * Math.sqrt(colour.chroma * chroma) * Math.sin((hueDifference(hue, colour.hue) * Math.PI) / 360);
    return -Math.hypot(10 * (colour.step - step), colour.chroma - chroma, arc);
  };
const MERITS = [nearTo(5.5, 45, 35), nearTo(4, 6, 250), nearTo(4.6, 22, 60)];

describe('the best between the amounts', () => {
  test('is no worse than the best on the scales, lies between their ends, and gives what it says', () => {
    for (const merit of MERITS) {
      const [best] = bestBetween(STUDIO, OPEN, merit);
      if (best === undefined) throw new Error('nothing found');
      expect(best.merit).toBeGreaterThanOrEqual((bestOnScale(STUDIO, OPEN, merit)?.merit ?? 0) - 1e-9);
      const laid = seeLaid(STUDIO, layMixture(FIRST, best.mixture)).colour;
      expect(merit(laid)).toBeCloseTo(best.merit, 9);
      expect(best.colour.chroma).toBeCloseTo(laid.chroma, 9);
      expect(best.first).toBe(FIRST);
      for (const [at, scale] of scalesOf(OPEN, best.line).entries()) {
        expect(best.amounts[at]).toBeGreaterThanOrEqual(scale[0] as number);
        expect(best.amounts[at]).toBeLessThanOrEqual(scale.at(-1) as number);
      }
    }
  });

  test('is a top: a hundredth of a doubling more or less of any paint is no better', () => {
    for (const merit of MERITS) {
      const [best] = bestBetween(STUDIO, OPEN, merit);
      if (best === undefined) throw new Error('nothing found');
      for (const at of best.amounts.keys()) {
        for (const by of [2 ** 0.01, 2 ** -0.01]) {
          const [least, most] = [scalesOf(OPEN, best.line)[at]?.[0], scalesOf(OPEN, best.line)[at]?.at(-1)];
          const amount = Math.min(
            most as number,
            Math.max(least as number, (best.amounts[at] as number) * by),
          );
          const added = best.mixture.added.map((one, i) => (i === at ? { ...one, amount } : one));
          const there = merit(seeLaid(STUDIO, layMixture(FIRST, { ...best.mixture, added })).colour);
          expect(there).toBeLessThanOrEqual(best.merit + 1e-9);
        }
      }
    }
  });

  test('gives as many as asked, best first, each line once', () => {
    const found = bestBetween(STUDIO, OPEN, MERITS[0] as (typeof MERITS)[0], 4);
    expect(found).toHaveLength(4);
    expect(found.map(({ merit }) => merit)).toEqual(
      found.map(({ merit }) => merit).toSorted((a, b) => b - a),
    );
    expect(new Set(found.map(({ line }) => `${line.way} ${line.ids} ${line.strength}`)).size).toBe(4);
    expect(bestBetween(STUDIO, { ...OPEN, ratios: [], glazes: [], strokes: [] }, () => 1)).toEqual([]);
  });
});

describe('the best of a survey', () => {
  const known = survey(STUDIO, [OPEN]);
  const [merit] = MERITS as [(typeof MERITS)[0]];
  const sortOf = ({
    line: { way, ids },
  }: {
    readonly line: { readonly way: string; readonly ids: readonly string[] };
  }) => `${way} ${ids.length}`;

  test('has every mixture on the scales, roughly', () => {
    const lines = linesOf(OPEN);
    expect(known.map(({ line }) => line)).toEqual(lines);
    for (const { line, samples, ranges } of known) {
      expect(samples.map(({ amounts }) => amounts)).toEqual(combinations(line, scalesOf(OPEN, line)));
      expect(ranges).toEqual(scalesOf(OPEN, line).map((scale) => [scale[0], scale.at(-1)]));
    }
    const [{ samples, exact }] = known as [(typeof known)[number]];
    for (const { amounts, colour } of samples)
      expect(Math.abs(colour.step - exact()(amounts).step)).toBeLessThan(0.2);
  });

  test('rough paper has two thicknesses with the mean of the real one, and level paper stays level', () => {
    const { tooth } = roughStudio(STUDIO).paper;
    expect(tooth).toHaveLength(2);
    expect(((tooth[0] as number) + (tooth[1] as number)) / 2).toBeCloseTo(1, 12);
    const level = { ...STUDIO, paper: { ...STUDIO.paper, tooth: [1] } };
    expect(roughStudio(level).paper.tooth).toEqual([1]);
  });

  test('keeps some of each number of paints in each way, as many as are wanted of each', () => {
    const found = bestOf(known, merit, { ofSort: 1 });
    expect(found.map(sortOf).toSorted()).toEqual([...new Set(known.map(sortOf))].toSorted());
    const two = bestOf(known, merit, { ofSort: 2 });
    expect(two).toHaveLength(2 * found.length);
    expect(two[0]?.merit).toBeCloseTo(found[0]?.merit ?? 0, 2);
  });

  test('leaves out what is worse than the best by more than is allowed', () => {
    const all = bestOf(known, merit, { ofSort: 3 });
    const best = all[0]?.merit ?? 0;
    const near = bestOf(known, merit, { ofSort: 3, worse: 5 });
    expect(near.length).toBeLessThan(all.length);
    expect(near.every((one) => one.merit >= best - 5 - 0.01)).toBe(true);
    expect(near.length).toBeGreaterThanOrEqual(all.filter((one) => one.merit >= best - 4.9).length);
  });

  test('the finest are climbed to the end', () => {
    const [fine, ...rest] = bestOf(known, merit, { finest: 1, ofSort: 2 });
    const [finer, second] = bestOf(known, merit, { finest: 2, ofSort: 2 });
    expect(finer?.merit).toBeCloseTo(fine?.merit ?? 0, 9);
    expect(second?.merit).toBeGreaterThanOrEqual((rest[0]?.merit ?? 0) - 1e-12);
  });
});
