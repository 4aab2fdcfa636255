// The program's weights against CIE tables and printed ASTM figures; sources inside data/colour-cie-tables.json.
import { describe, expect, it } from 'vitest';
import d50Observer2 from '../../src/colour/data/observer-d50-2.json' with { type: 'json' };
import d50Observer10 from '../../src/colour/data/observer-d50-10.json' with { type: 'json' };
import d65Observer2 from '../../src/colour/data/observer-d65-2.json' with { type: 'json' };
import { fold, sum, toOneNm, weights } from '../colour/helpers/e2022.js';
import tables from './data/colour-cie-tables.json' with { type: 'json' };

const oneNm = (set: Record<'x' | 'y' | 'z', number[]>) => [toOneNm(set.x), toOneNm(set.y), toOneNm(set.z)];
const OBSERVERS = { 2: oneNm(tables.observer2), 10: oneNm(tables.observer10) };
/** D65 is defined as straight between its rows. */
const straight = (rows: number[]): number[] =>
  rows.flatMap((row, i) => {
    const next = rows[i + 1];
    return next === undefined ? [row] : [0, 1, 2, 3, 4].map((k) => row + ((next - row) * k) / 5);
  });
const ILLUMINANTS = {
  D65: straight(tables.illuminants.D65),
  D50: toOneNm(tables.illuminants.D50),
  A: toOneNm(tables.illuminants.A),
};

function weightsFor(illuminant: keyof typeof ILLUMINANTS, degrees: 2 | 10, stepNm = 10): number[][] {
  return weights(ILLUMINANTS[illuminant], OBSERVERS[degrees], stepNm);
}

describe('the method of ASTM E2022', () => {
  it('gives the 20 nm weights printed in ASTM E308-15 for D65 and the 1931 observer', () => {
    const printed = [tables.printed20nm.wx, tables.printed20nm.wy, tables.printed20nm.wz];
    for (const [i, row] of weightsFor('D65', 2, 20).entries()) {
      // The printed table runs on to 820 nm with weights of 0.000; the last bands here take those over.
      for (const [band, weight] of row.slice(0, 20).entries()) {
        expect(Math.abs(weight - (printed[i]?.[band] ?? Number.NaN))).toBeLessThan(0.0008);
      }
    }
  });

  it('gives the sums of the 10 nm table printed in ASTM E308 for D65 and the 1964 observer (Westland and Ripamonti 2004, p. 59)', () => {
    const sums = weightsFor('D65', 10).map((row) =>
      sum(row.map((weight) => Math.round(weight * 1000) / 1000)),
    );
    for (const [i, printed] of tables.printedSumsD65of1964.entries()) {
      expect(Math.abs((sums[i] as number) - printed)).toBeLessThan(0.0025);
    }
  });

  it.each(tables.whites as [keyof typeof ILLUMINANTS, 2 | 10, number, number, number][])(
    'gives the ASTM E308 white of %s, %d degrees',
    (illuminant, degrees, ...white) => {
      for (const [i, row] of weightsFor(illuminant, degrees).entries()) {
        expect(sum(row)).toBeCloseTo(white[i] as number, 2);
      }
    },
  );
});

describe('the observers of the program', () => {
  it.each([
    ['D65', 2, d65Observer2],
    ['D50', 2, d50Observer2],
    ['D50', 10, d50Observer10],
  ] as const)('%s, %d degrees: weights come from the CIE tables', (illuminant, degrees, file) => {
    const held = [file.wx, file.wy, file.wz];
    for (const [i, row] of weightsFor(illuminant, degrees).entries()) {
      const computed = fold(row, 2, 39);
      expect(held[i]).toHaveLength(38);
      for (const [band, weight] of computed.entries()) {
        expect(Math.abs(weight - (held[i]?.[band] ?? Number.NaN))).toBeLessThan(0.0012);
      }
      expect(sum(held[i] ?? [])).toBeCloseTo(file.white[i] ?? Number.NaN, 2);
    }
  });
});
