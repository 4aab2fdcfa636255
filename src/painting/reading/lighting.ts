/**
 * Uneven light, as bare paper shows it: a smooth surface of low order in the logarithm of light. Lenses darken towards their corners and a
 * window is on one side; both are smooth, and paint is not.
 */
import { Matrix, solve } from 'ml-matrix';

/** Terms of a surface of each order in two places. */
const TERMS = { 0: 1, 1: 3, 2: 6 } as const;
export type Order = keyof typeof TERMS;

/** Coefficients of 1, u, v, u², uv, v². */
export type Surface = readonly number[];

/** Height of a surface; u and v are shares of the photograph from its middle. */
export function heightAt(surface: Surface, u: number, v: number): number {
  const of = (term: number): number => surface[term] ?? 0;
  return of(0) + u * (of(1) + u * of(3) + v * of(4)) + v * (of(2) + v * of(5));
}

/** What a surface is laid through. */
export interface Spots {
  readonly u: Float64Array;
  readonly v: Float64Array;
  readonly height: Float64Array;
  /** 0 leaves a spot out. */
  readonly weight: Float64Array;
}

/** Least squares with the weights given. */
function laid({ u, v, height }: Spots, weight: Float64Array, order: Order): Surface | undefined {
  const terms = TERMS[order];
  const normal = Matrix.zeros(terms, terms);
  const right = Matrix.zeros(terms, 1);
  const sums = new Float64Array(terms * terms);
  const rights = new Float64Array(terms);
  const row = new Float64Array(6);
  for (let at = 0; at < weight.length; at++) {
    const w = weight[at] as number;
    if (w === 0) continue;
    const [x, y, z] = [u[at] as number, v[at] as number, height[at] as number];
    row[0] = 1;
    row[1] = x;
    row[2] = y;
    row[3] = x * x;
    row[4] = x * y;
    row[5] = y * y;
    for (let i = 0; i < terms; i++) {
      const wi = w * (row[i] as number);
      rights[i] = (rights[i] as number) + wi * z;
      for (let j = 0; j < terms; j++)
        sums[i * terms + j] = (sums[i * terms + j] as number) + wi * (row[j] as number);
    }
  }
  for (let i = 0; i < terms; i++) {
    right.set(i, 0, rights[i] as number);
    for (let j = 0; j < terms; j++) normal.set(i, j, (sums[i * terms + j] as number) + (i === j ? 1e-9 : 0));
  }
  if ((sums[0] as number) < terms) return undefined;
  return solve(normal, right).to1DArray();
}

/** Reach of the weights in each round, as logarithms of light: from what may be a shadow down to the grain of paper. */
const REACHES = [0.4, 0.25, 0.15, 0.1, 0.07, 0.05];
/** Paint is darker than paper and never lighter: what lies under the surface counts for less. */
const UNDER = 0.6;

/**
 * Lays a surface through the spots that are paper: least squares again and again with Tukey's biweight (A. E. Beaton, J. W. Tukey,
 * Technometrics 16, 147, 1974), the reach narrowing, and narrower below than above.
 * @param from where to begin; its first rounds are left out
 */
export function paperSurface(spots: Spots, order: Order, from?: Surface): Surface | undefined {
  const { u, v, height, weight } = spots;
  let surface = from ?? [upperMiddle(spots)];
  const own = new Float64Array(weight.length);
  for (const reach of from === undefined ? REACHES : REACHES.slice(-2)) {
    for (let at = 0; at < own.length; at++) {
      const off = (height[at] as number) - heightAt(surface, u[at] as number, v[at] as number);
      const share = off / (off < 0 ? UNDER * reach : reach);
      own[at] = Math.abs(share) < 1 ? (weight[at] as number) * (1 - share * share) ** 2 : 0;
    }
    const next = laid(spots, own, order);
    if (next === undefined) return undefined;
    surface = next;
  }
  return surface;
}

/** Three quarters of the spots lie under it. */
function upperMiddle({ height, weight }: Spots): number {
  const kept = height.filter((_, at) => (weight[at] as number) > 0).sort();
  return kept[Math.floor(0.75 * kept.length)] ?? 0;
}

/** A plane through spots of which most are right, without its height: how a ratio drifts over the paper. */
export function drift(spots: Spots, middle: number): Surface {
  const own = spots.weight.map((w, at) => (Math.abs((spots.height[at] as number) - middle) < 0.1 ? w : 0));
  const [, cu = 0, cv = 0] = laid(spots, own, 1) ?? [];
  return [0, cu, cv];
}
