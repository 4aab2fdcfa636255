/** The samples of a picture as light at working size. Averages are taken of light, not of what the file holds: that is what the eye averages. */
import { lightOfCode } from '../../colour/srgb.js';
import type { Photograph } from '../types.js';
import type { Profile } from './profile.js';

/** A picture as it was kept, row by row from the left upper corner. */
export interface Samples {
  readonly width: number;
  readonly height: number;
  /** 1 grey, 2 grey and opacity, 3 red, green, blue, 4 these and opacity. */
  readonly channels: number;
  readonly data: Uint8Array | Uint16Array;
  /** What its numbers mean; sRGB where there is none. */
  readonly profile?: Profile | undefined;
}

/** Light of every number that a sample may be, by channel. */
function lightTables(profile: Profile | undefined, most: number): [Float32Array, Float32Array, Float32Array] {
  const table = (curve: (code: number) => number): Float32Array => {
    const light = new Float32Array(most + 1);
    for (let code = 0; code <= most; code++) light[code] = curve(code / most);
    return light;
  };
  const [red = lightOfCode, green = red, blue = red] = profile?.curves ?? [];
  const first = table(red);
  return [first, green === red ? first : table(green), blue === red ? first : table(blue)];
}

/** Brings light of other primaries to those of sRGB; what these do not hold goes below 0. */
function toSrgb(light: Float32Array, m: readonly number[]): void {
  const [rr, rg, rb, gr, gg, gb, br, bg, bb] = m as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let at = 0; at < light.length; at += 3) {
    const r = light[at] as number;
    const g = light[at + 1] as number;
    const b = light[at + 2] as number;
    light[at] = rr * r + rg * g + rb * b;
    light[at + 1] = gr * r + gg * g + gb * b;
    light[at + 2] = br * r + bg * g + bb * b;
  }
}

/** Where the cells of a side of fewer pixels begin among the pixels of another, and one end more. */
const cellsOf = (from: number, to: number): Float64Array =>
  Float64Array.from({ length: to + 1 }, (_, cell) => (cell * from) / to);

/** Sides no longer than `most`, in the same proportion; never enlarged. */
function fitted(width: number, height: number, most: number): readonly [number, number] {
  const scale = Math.min(1, most / Math.max(width, height));
  return [Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale))];
}

/** Lays a row of samples on white, as light; three numbers a pixel. @returns whether any was transparent */
function rowOfLight(
  { width, channels, data }: Samples,
  [reds, greens, blues]: readonly [Float32Array, Float32Array, Float32Array],
  y: number,
  row: Float32Array,
): boolean {
  const [green, blue] = channels >= 3 ? [1, 2] : [0, 0];
  const end = 3 * width;
  let from = y * width * channels;
  for (let at = 0; at < end; at += 3, from += channels) {
    row[at] = reds[data[from] as number] as number;
    row[at + 1] = greens[data[from + green] as number] as number;
    row[at + 2] = blues[data[from + blue] as number] as number;
  }
  if (channels % 2 === 1) return false;
  const full = data instanceof Uint16Array ? 65_535 : 255;
  let isTransparent = false;
  from = y * width * channels + channels - 1;
  for (let at = 0; at < end; at++) {
    const cover = (data[from + channels * Math.floor(at / 3)] as number) / full;
    if (cover === 1) continue;
    isTransparent = true;
    row[at] = (row[at] as number) * cover + 1 - cover;
  }
  return isTransparent;
}

/** Adds a row, its pixels averaged into cells, to the light of a row of cells. */
function addRow(
  row: Float32Array,
  cells: Float64Array,
  share: number,
  light: Float32Array,
  into: number,
): void {
  const width = row.length / 3;
  let start = 0;
  for (let cell = 1, to = into; cell < cells.length; cell++, to += 3) {
    const end = cells[cell] as number;
    let r = 0;
    let g = 0;
    let b = 0;
    for (let x = Math.floor(start), at = 3 * x; x < end && x < width; x++, at += 3) {
      const part = (x + 1 < end ? x + 1 : end) - (x > start ? x : start);
      r += part * (row[at] as number);
      g += part * (row[at + 1] as number);
      b += part * (row[at + 2] as number);
    }
    const weight = share / (end - start);
    light[to] = (light[to] as number) + weight * r;
    light[to + 1] = (light[to + 1] as number) + weight * g;
    light[to + 2] = (light[to + 2] as number) + weight * b;
    start = end;
  }
}

/**
 * Light of a picture, each pixel the mean of those that fall on it. What is transparent lies on white.
 * @param most pixels of the longer side
 * @returns the photograph, and whether a part of it was transparent
 */
export function lightOf(
  samples: Samples,
  most: number,
): { readonly photograph: Photograph; readonly isTransparent: boolean } {
  const { width, height, data, profile } = samples;
  const tables = lightTables(profile, data instanceof Uint16Array ? 65_535 : 255);
  const [columns, rows] = fitted(width, height, most);
  const across = cellsOf(width, columns);
  const down = cellsOf(height, rows);
  const light = new Float32Array(columns * rows * 3);
  const row = new Float32Array(3 * width);
  let isTransparent = false;
  let cell = 0;
  for (let y = 0; y < height; y++) {
    if (rowOfLight(samples, tables, y, row)) isTransparent = true;
    // A row lies in one row of cells, or on the border of two.
    for (let from = y; from < y + 1 && cell < rows; ) {
      const end = Math.min(y + 1, down[cell + 1] as number);
      const whole = (down[cell + 1] as number) - (down[cell] as number);
      addRow(row, across, (end - from) / whole, light, 3 * columns * cell);
      if (end === down[cell + 1]) cell++;
      from = end;
    }
  }
  if (profile?.matrix !== undefined) toSrgb(light, profile.matrix);
  return { photograph: { width: columns, height: rows, light }, isTransparent };
}
