/** Tinting strengths of the library's paints against those of acrylics. */
import { median } from 'simple-statistics';
import { greatestK } from '../paints/calibration/medium.js';
import { CATALOGUE } from '../paints/catalogue.js';
import { findPigment, type Pigment } from '../paints/index.js';
import { acrylicStrength } from '../paints/tinting-strength.js';
import type { TintingRow, TintingRows } from './types.js';

function known(id: string): Pigment {
  const pigment = findPigment(id);
  if (pigment === undefined) throw new Error(`the catalogue names ${id}, which the library lacks`);
  return pigment;
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

function rowsOf(evidence: Pigment['strengthEvidence']): TintingRows {
  const ultramarine = greatestK(known('ultramarine-blue').K);
  const rows = CATALOGUE.flatMap(({ id, tinting }): TintingRow[] => {
    const pigment = known(id);
    if (tinting?.same === undefined || pigment.strengthEvidence !== evidence) return [];
    const acrylic = acrylicStrength(tinting.same);
    const predicted = greatestK(pigment.K) / ultramarine;
    return [
      { id, acrylic: rounded(acrylic), predicted: rounded(predicted), ratio: rounded(predicted / acrylic) },
    ];
  });
  return { n: rows.length, medianRatio: rounded(median(rows.map(({ ratio }) => ratio))), rows };
}

/**
 * Strength of paints of one pigment in watercolour and in acrylic, each against ultramarine blue of its own medium. Those of the measured
 * paints check that the two media go together; the anchored ones were set by the acrylics and check nothing but the arithmetic.
 */
export function tintingStrength(): TintingRows & { readonly measured: TintingRows } {
  return { ...rowsOf('anchored'), measured: rowsOf('measured') };
}
