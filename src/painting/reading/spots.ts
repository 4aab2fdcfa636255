/** Spots of a sheet laid flat: how light each is, its colour, and whether it lies where a margin would. */

import type { Photograph } from '../types.js';
import { heightAt, type Spots, type Surface } from './lighting.js';
import { LUMINANCE } from './photograph.js';
import type { Flat } from './rectify.js';

/** Pixels from one spot to the next. */
const APART = 3;
/** Shares of the shorter side between which the margin is looked for: the very edge is mixed with the table, and may curl. */
const MARGIN = [0.016, 0.036] as const;
/** Added before a logarithm of colour: noise of near black is no colour. */
const FLOOR = 2e-3;

/** Spots, their light as logarithms: of luminance (`height`), of red and of blue against green. */
export interface Seen extends Spots {
  readonly red: Float64Array;
  readonly blue: Float64Array;
  /** 0, or the side of the sheet whose margin is looked for there: 1 upper, 2 right, 3 lower, 4 left. */
  readonly ring: Uint8Array;
}

/** Looks at every third pixel. @param whole the photograph that the sheet lies in */
export function spotsOf({ width, height, light, project }: Flat, whole: Photograph): Seen {
  const [across, down] = [Math.ceil(width / APART), Math.ceil(height / APART)];
  const list = (): Float64Array => new Float64Array(across * down);
  const out = { u: list(), v: list(), height: list(), weight: list(), red: list(), blue: list() };
  const ring = new Uint8Array(across * down);
  const [near, farther] = MARGIN.map((share) => Math.max(1, share * Math.min(width, height))) as [
    number,
    number,
  ];
  // Two spots wide at the least, whatever the size.
  const wide = Math.max(farther, near + 2 * APART);
  const at = new Float64Array(2);
  const [wr, wg, wb] = LUMINANCE;
  for (let row = 0, spot = 0; row < height; row += APART)
    for (let column = 0; column < width; column += APART, spot++) {
      const from = 3 * (row * width + column);
      const r = light[from] as number;
      const g = light[from + 1] as number;
      const b = light[from + 2] as number;
      project((column + 0.5) / width, (row + 0.5) / height, at);
      out.u[spot] = (at[0] as number) / whole.width - 0.5;
      out.v[spot] = (at[1] as number) / whole.height - 0.5;
      out.height[spot] = Math.log(Math.max(0, wr * r + wg * g + wb * b) + 1e-4);
      const green = Math.log(Math.max(0, g) + FLOOR);
      out.red[spot] = Math.log(Math.max(0, r) + FLOOR) - green;
      out.blue[spot] = Math.log(Math.max(0, b) + FLOOR) - green;
      const across = Math.min(column + 1, width - column);
      const along = Math.min(row + 1, height - row);
      const edge = Math.min(across, along);
      if (edge < near || edge > wide) continue;
      if (along <= across) ring[spot] = 2 * row < height ? 1 : 3;
      else ring[spot] = 2 * column < width ? 4 : 2;
    }
  return { ...out, ring };
}

/** Those of a list whose places are kept. */
export function kept(list: Float64Array, keep: (at: number) => boolean): number[] {
  const out: number[] = [];
  for (let at = 0; at < list.length; at++) if (keep(at)) out.push(list[at] as number);
  return out;
}

/** Spots of a weight, the others left out. */
export function weighed(seen: Seen, weightOf: (at: number) => number): Seen {
  const weights = seen.u.map((_, at) => weightOf(at));
  const keep = (at: number): boolean => weights[at] !== 0;
  const of = (list: Float64Array): Float64Array => Float64Array.from(kept(list, keep));
  const { u, v, height, red, blue, ring } = seen;
  return {
    u: of(u),
    v: of(v),
    height: of(height),
    red: of(red),
    blue: of(blue),
    weight: of(weights),
    ring: ring.filter((_, at) => keep(at)),
  };
}

/** Heights over a surface. */
export function overOf({ u, v, height }: Spots, surface: Surface): Float64Array {
  const out = new Float64Array(height.length);
  for (let at = 0; at < out.length; at++)
    out[at] = (height[at] as number) - heightAt(surface, u[at] as number, v[at] as number);
  return out;
}
