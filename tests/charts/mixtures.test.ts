import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import complements from '../../src/accuracy/data/complements.json' with { type: 'json' };
import { mixingLine } from '../../src/accuracy/neutral.js';
import { fiveAmounts } from '../../src/charts/five-amounts.js';
import { greyestOf, leanOf } from '../../src/charts/greys.js';
import { exercisesFor } from '../../src/charts/practice.js';
import { recipeExercise } from '../../src/charts/practice-recipe.js';
import { type Pair, pairsOf, seePair } from '../../src/charts/two-paints.js';
import { chromaOf, type Lab } from '../../src/colour/lab.js';
import { tidyParts } from '../../src/washes/tidy.js';
import { paintOf, STUDIO } from '../studio.js';
import { boxOf } from './fixture.js';

// CIE 142-2001, as culori has it.
const ciede2000 = differenceCiede2000();
const apart = (one: Lab, other: Lab): number =>
  ciede2000({ mode: 'lab65', ...one }, { mode: 'lab65', ...other });

const TWELVE = boxOf('twelve');

/** Length of the way between two places, in small steps of strength shares. */
function way(pair: Pair): (share: number) => number {
  const loads = [0, 1].map((at) => paintOf(pair[at] as string).fullStrength) as [number, number];
  const places = 400;
  const labs = Array.from({ length: places + 1 }, (_, at) => {
    const share = at / places;
    return seePair(STUDIO, pair, [(1 - share) * loads[0], share * loads[1]]).colour.lab;
  });
  const sums = [0];
  for (let at = 1; at <= places; at++)
    sums.push((sums[at - 1] as number) + apart(labs[at - 1] as Lab, labs[at] as Lab));
  return (share) => (sums[Math.round(share * places)] as number) / (sums.at(-1) as number);
}

describe('five amounts', () => {
  it('are equal steps as CIEDE2000 counts them, where equal parts are not', () => {
    let worst = 0;
    let worstOfEqualParts = 0;
    for (const pair of pairsOf(TWELVE)) {
      const along = way(pair);
      const [a, b] = pair.map((id) => paintOf(id).fullStrength) as [number, number];
      const shareOf = ([one, other]: readonly [number, number]): number => other / b / (one / a + other / b);
      const seen = fiveAmounts(STUDIO, pair);
      expect(seen).toHaveLength(5);
      for (const [at, { laid }] of seen.entries()) {
        const paints = 'paints' in laid ? laid.paints : {};
        const parts = [paints[pair[0]] ?? 0, paints[pair[1]] ?? 0] as const;
        worst = Math.max(worst, Math.abs(along(shareOf(parts)) - at / 4));
      }
      for (const [at, parts] of (
        [
          [3, 1],
          [1, 1],
          [1, 3],
        ] as const
      ).entries())
        worstOfEqualParts = Math.max(worstOfEqualParts, Math.abs(along(shareOf(parts)) - (at + 1) / 4));
    }
    expect(worst).toBeLessThan(0.06);
    expect(worstOfEqualParts).toBeGreaterThan(0.15);
  });

  it('have parts that can be counted', () => {
    for (let ratio = 1 / 150; ratio < 150; ratio *= 1.07) {
      const [[first, second] = [0, 0]] = tidyParts(ratio);
      expect(Number.isInteger(first) && Number.isInteger(second)).toBe(true);
      expect(Math.min(first, second)).toBeLessThanOrEqual(4);
      expect(Math.abs(Math.log(second / first / ratio))).toBeLessThan(0.15);
    }
  });
});

describe('greys', () => {
  const found = pairsOf(TWELVE).map((pair) => greyestOf(STUDIO, pair));

  it('are the least chroma of a fine grid, which the search does not use', () => {
    let counted = 0;
    for (const { pair, least, seen, makes } of found) {
      const [a, b] = pair.map(paintOf) as [ReturnType<typeof paintOf>, ReturnType<typeof paintOf>];
      const grid = mixingLine(STUDIO, a, b, 4 / 13)
        .filter(({ share }) => share > 1 / 65 && share < 64 / 65)
        .map(({ lab }) => chromaOf(lab));
      expect(least, pair.join()).toBeLessThan(Math.min(...grid) + 0.05);
      if (makes !== 'none') counted = Math.max(counted, seen.colour.chroma - least);
    }
    expect(counted).toBeLessThan(2);
  });

  it('hold for the pairs that were published as complements, and not for those published as none', () => {
    // B. MacEvoy, handprint.com: pairs that a spectrophotometer found to mix to C* 5 or less, and pairs that stop at another colour.
    const makesOf = ([one, other]: readonly unknown[]) =>
      greyestOf(STUDIO, [one as string, other as string]).makes;
    const share = (pairs: readonly (readonly unknown[])[], which: readonly string[]): number =>
      pairs.filter((pair) => which.includes(makesOf(pair))).length / pairs.length;
    // Full strength gives 72 % (src/accuracy/README.md); a thin wash in parts that can be counted, a little less.
    expect(share(complements.pairs, ['grey'])).toBeGreaterThan(0.55);
    expect(share(complements.pairs, ['grey', 'leaning'])).toBeGreaterThan(0.97);
    expect(share(complements.nonComplements, ['grey'])).toBeLessThan(0.1);
  });

  it('lean the way that they are seen to', () => {
    expect(leanOf({ chroma: 1, hue: 50 })).toBe('none');
    expect(leanOf({ chroma: 6, hue: 60 })).toBe('warm');
    expect(leanOf({ chroma: 6, hue: 350 })).toBe('warm');
    expect(leanOf({ chroma: 6, hue: 250 })).toBe('cool');
    expect(leanOf({ chroma: 6, hue: 140 })).toBe('neither');
  });
});

describe('the practice sheet', () => {
  const sheetOf = (seed: number) => exercisesFor(STUDIO, boxOf('twelve'), seed, () => {});
  const sheets = [sheetOf(3), sheetOf(4)] as const;

  it('is eight mixtures of several families, the same for the same seed', () => {
    for (const sheet of sheets) {
      expect(sheet).toHaveLength(8);
      expect(new Set(sheet.map(({ family }) => family)).size).toBeGreaterThan(3);
      expect(new Set(sheet.map(({ wash }) => JSON.stringify(wash))).size).toBe(8);
      for (const { wash } of sheet)
        for (const id of [...Object.keys(wash.paints), ...Object.keys(wash.add ?? {})])
          expect(TWELVE).toContain(id);
    }
    const washes = sheets.map((sheet) => sheet.map(({ wash }) => wash));
    expect(washes[0]).not.toEqual(washes[1]);
    expect(sheetOf(3).map(({ wash }) => wash)).toEqual(washes[0]);
  });

  it('asks what its families say', () => {
    for (const { family, start, mixed } of sheets.flat()) {
      if (family.startsWith('Darken')) expect(mixed.colour.step).toBeGreaterThan(start.colour.step + 0.4);
      if (family.startsWith('Dull')) expect(mixed.colour.chroma).toBeLessThan(0.9 * start.colour.chroma);
      if (family.startsWith('Find the neutraliser')) expect(mixed.colour.chroma).toBeLessThan(14);
    }
  });

  it('has recipes in touches where a box is too small for drills', () => {
    const box = ['burnt-sienna', 'ultramarine-blue'];
    const found = [1, 2, 3, 4].flatMap((seed) => recipeExercise(STUDIO, box, seed, () => false) ?? []);
    expect(found.length).toBeGreaterThan(2);
    for (const { wash, start, mixed } of found) {
      for (const ratio of Object.values(wash.add ?? {}))
        expect(Number.isInteger(Math.log2(ratio))).toBe(true);
      expect(apart(start.colour.lab, mixed.colour.lab)).toBeGreaterThan(5);
    }
    expect(recipeExercise(STUDIO, box, 1, () => true)).toBeUndefined();
    expect(recipeExercise(STUDIO, ['ivory-black'], 1, () => false)).toBeUndefined();
  });
});
