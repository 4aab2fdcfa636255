/** Tinting strengths of the library's paints against those of acrylics. */
import { median } from 'simple-statistics';
import { greatestK } from '../paints/calibration/medium.js';
import { CATALOGUE } from '../paints/catalogue.js';
import { type Pigment, paintOf, type Studio } from '../paints/index.js';
import { acrylicStrength } from '../paints/tinting-strength.js';
import type { TintingRow, TintingRows } from './types.js';

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

function rowsOf(studio: Studio, evidence: Pigment['strengthEvidence']): TintingRows {
  const ultramarine = greatestK(paintOf(studio, 'ultramarine-blue').K);
  const rows = CATALOGUE.flatMap(({ id, tinting }): TintingRow[] => {
    const pigment = paintOf(studio, id);
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
export function tintingStrength(studio: Studio): TintingRows & { readonly measured: TintingRows } {
  return { ...rowsOf(studio, 'anchored'), measured: rowsOf(studio, 'measured') };
}
