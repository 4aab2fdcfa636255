/** The text of measured.json. */
import { LICENCE, PAINT_IDS, SOURCE } from './measurements.js';
import type { Table } from './unknowns.js';

const DIGITS = 4;

const METHOD =
  'K and S fitted together, band by band, to reflectance (cube roots, least squares) of 156 single films and 620 mixtures of two paints and to ln transmittance of 44 single films (one free scale a paint; not ivory black, not Prussian blue), films uneven over the tooth of the paper, S and K smooth from band to band';

function list(values: ArrayLike<number>): string {
  return JSON.stringify(Array.from(values, (value) => Number(value.toPrecision(DIGITS)))).replaceAll(
    ',',
    ', ',
  );
}

/**
 * The text of the shipped file, one paint a line.
 * @param date day of the fit, YYYY-MM-DD
 */
export function measuredFile(table: Table, date: string): string {
  const head = {
    source: `K and S derived from ${SOURCE}`,
    licence: LICENCE,
    method: METHOD,
    date,
  };
  const fields = Object.entries(head).map(
    ([key, value]) => ` ${JSON.stringify(key)}: ${JSON.stringify(value)},`,
  );
  const rows = table.map(
    ({ K, S }, paint) => `  {"id": ${JSON.stringify(PAINT_IDS[paint])}, "K": ${list(K)}, "S": ${list(S)}}`,
  );
  return `{\n${fields.join('\n')}\n "pigments": [\n${rows.join(',\n')}\n ]\n}\n`;
}
