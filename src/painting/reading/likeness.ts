/** The painting alone, in CIELAB and Munsell value. */

import type { Matrix } from '../../colour/adapt.js';
import { munsellValueFromY, whiteOf } from '../../colour/index.js';
import type { Likeness } from '../types.js';
import type { Box } from './margin.js';

/** CIELAB's function of a ratio to white, tabled: linear between entries it is right to 1e-4 of a unit of L* above L* 4. */
const TABLE = 8192;
/** Highest ratio: what shines is lighter than white. */
const MOST = 1.6;
const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;

/** Entries at equal steps of the square root of the ratio, which spreads the darks. */
const F = Float64Array.from({ length: TABLE + 2 }, (_, at) => {
  const ratio = MOST * (at / TABLE) ** 2;
  return ratio > EPSILON ? Math.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
});
const VALUE = Float64Array.from({ length: TABLE + 2 }, (_, at) =>
  munsellValueFromY(100 * MOST * (at / TABLE) ** 2),
);

function between(table: Float64Array, place: number): number {
  const at = place | 0;
  const low = table[at] as number;
  return low + (place - at) * ((table[at + 1] as number) - low);
}

const placeOf = (ratio: number): number =>
  ratio <= 0 ? 0 : ratio >= MOST ? TABLE : TABLE * Math.sqrt(ratio / MOST);

/** Reads every pixel of a part of evened light. @param width of the whole of it */
export function likenessOf(even: Float32Array, width: number, box: Box, toD65: Matrix): Likeness {
  const size = { width: box.right - box.left, height: box.bottom - box.top };
  const lab = new Float32Array(3 * size.width * size.height);
  const value = new Float32Array(size.width * size.height);
  const white = whiteOf('D65-2');
  const [xr, xg, xb] = toD65.slice(0, 3).map((m) => m / white.x) as [number, number, number];
  const [yr, yg, yb] = toD65.slice(3, 6).map((m) => m / white.y) as [number, number, number];
  const [zr, zg, zb] = toD65.slice(6, 9).map((m) => m / white.z) as [number, number, number];
  let into = 0;
  for (let row = box.top; row < box.bottom; row++) {
    let from = 3 * (row * width + box.left);
    for (let column = 0; column < size.width; column++, from += 3, into++) {
      const r = even[from] as number;
      const g = even[from + 1] as number;
      const b = even[from + 2] as number;
      const y = placeOf(yr * r + yg * g + yb * b);
      const fx = between(F, placeOf(xr * r + xg * g + xb * b));
      const fy = between(F, y);
      const fz = between(F, placeOf(zr * r + zg * g + zb * b));
      lab[3 * into] = 116 * fy - 16;
      lab[3 * into + 1] = 500 * (fx - fy);
      lab[3 * into + 2] = 200 * (fy - fz);
      value[into] = between(VALUE, y);
    }
  }
  return { ...size, lab, value };
}
