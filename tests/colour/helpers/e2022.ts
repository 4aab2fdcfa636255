/**
 * Weights for tristimulus values, computed the way ASTM E2022 says, apart from the tables that the program holds:
 * 5 nm tables raised to 1 nm (Sprague, CIE 167:2005), then the Lagrange coefficients of reflectance between bands.
 */

/** Sprague interpolation from 5 nm to 1 nm. */
export function toOneNm(values: readonly number[]): number[] {
  const edge = (row: readonly number[], six: readonly number[]): number =>
    row.reduce((sum, c, i) => sum + c * (six[i] as number), 0) / 209;
  const outer = [884, -1960, 3033, -2648, 1080, -180];
  const inner = [508, -540, 488, -367, 144, -24];
  const first = values.slice(0, 6);
  const last = values.slice(-6).reverse();
  const padded = [edge(outer, first), edge(inner, first), ...values, edge(inner, last), edge(outer, last)];
  const out: number[] = [];
  for (let i = 0; i + 1 < values.length; i++) {
    const [p0 = 0, p1 = 0, p2 = 0, p3 = 0, p4 = 0, p5 = 0] = padded.slice(i, i + 6);
    const a1 = (2 * p0 - 16 * p1 + 16 * p3 - 2 * p4) / 24;
    const a2 = (-p0 + 16 * p1 - 30 * p2 + 16 * p3 - p4) / 24;
    const a3 = (-9 * p0 + 39 * p1 - 70 * p2 + 66 * p3 - 33 * p4 + 7 * p5) / 24;
    const a4 = (13 * p0 - 64 * p1 + 126 * p2 - 124 * p3 + 61 * p4 - 12 * p5) / 24;
    const a5 = (-5 * p0 + 25 * p1 - 50 * p2 + 50 * p3 - 25 * p4 + 5 * p5) / 24;
    for (let k = 0; k < 5; k++) {
      const t = k / 5;
      out.push(p2 + t * (a1 + t * (a2 + t * (a3 + t * (a4 + t * a5)))));
    }
  }
  out.push(values.at(-1) as number);
  return out;
}

/** The bands that a wavelength between bands draws on: four inside, three in the first and last interval. */
function neighbours(left: number, bands: number): number[] {
  if (left === 0) return [0, 1, 2];
  if (left === bands - 2) return [bands - 3, bands - 2, bands - 1];
  return [left - 1, left, left + 1, left + 2];
}

/**
 * Weights at `stepNm`, one row for each colour-matching function, Y of the perfect reflector 100.
 * @param illuminant 1 nm
 * @param observer x, y and z at 1 nm over the same range
 */
export function weights(
  illuminant: readonly number[],
  observer: readonly (readonly number[])[],
  stepNm: number,
): number[][] {
  const bands = Math.floor((illuminant.length - 1) / stepNm) + 1;
  const luminance = observer[1] as readonly number[];
  const scale = 100 / illuminant.reduce((sum, s, i) => sum + s * (luminance[i] as number), 0);
  return observer.map((matching) => {
    const row = new Array<number>(bands).fill(0);
    for (const [i, s] of illuminant.entries()) {
      const amount = s * (matching[i] as number) * scale;
      const at = i / stepNm;
      const near = neighbours(Math.min(Math.floor(at), bands - 2), bands);
      for (const a of near) {
        const share = near.reduce((product, b) => (a === b ? product : (product * (at - b)) / (a - b)), 1);
        row[a] = (row[a] as number) + amount * share;
      }
    }
    return row;
  });
}

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Adds the weights outside `from`-`to` (band numbers, inclusive) to the first and last band kept. */
export function fold(row: readonly number[], from: number, to: number): number[] {
  const kept = row.slice(from, to + 1);
  kept[0] = (kept[0] as number) + sum(row.slice(0, from));
  kept[kept.length - 1] = (kept.at(-1) as number) + sum(row.slice(to + 1));
  return kept;
}
