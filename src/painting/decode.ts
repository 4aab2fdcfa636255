/** The samples of a picture as light at working size. Averages are taken of light, not of what the file holds: that is what the eye averages. */
import { lightOfCode } from '../colour/srgb.js';
import type { Profile } from './profile.js';
import type { Photograph } from './types.js';

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
    const [r, g, b] = [light[at] as number, light[at + 1] as number, light[at + 2] as number];
    light[at] = rr * r + rg * g + rb * b;
    light[at + 1] = gr * r + gg * g + gb * b;
    light[at + 2] = br * r + bg * g + bb * b;
  }
}

/** How the pixels of a side fall on the fewer ones of another: the first that each touches, and the share that falls on it; the rest falls on the next. */
function fallOn(from: number, to: number): { readonly first: Int32Array; readonly share: Float32Array } {
  const first = new Int32Array(from);
  const share = new Float32Array(from);
  const step = to / from;
  for (let at = 0; at < from; at++) {
    const start = at * step;
    const cell = Math.min(to - 1, Math.floor(start + 1e-9));
    first[at] = cell;
    share[at] = cell === to - 1 ? 1 : Math.min(1, (cell + 1 - start) / step);
  }
  return { first, share };
}

/** Sides no longer than `most`, in the same proportion; never enlarged. */
function fitted(width: number, height: number, most: number): readonly [number, number] {
  const scale = Math.min(1, most / Math.max(width, height));
  return [Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale))];
}

/**
 * Light of a picture, each pixel the mean of those that fall on it. What is transparent lies on white.
 * @param most pixels of the longer side
 * @returns the photograph, and whether a part of it was transparent
 */
export function lightOf(
  { width, height, channels, data, profile }: Samples,
  most: number,
): { readonly photograph: Photograph; readonly isTransparent: boolean } {
  const full = data instanceof Uint16Array ? 65_535 : 255;
  const [reds, greens, blues] = lightTables(profile, full);
  const [columns, rows] = fitted(width, height, most);
  const across = fallOn(width, columns);
  const down = fallOn(height, rows);
  const light = new Float32Array(columns * rows * 3);
  // One place more than the row is long: what falls on the next of the last is nothing.
  const row = new Float32Array((columns + 1) * 3);
  const [green, blue] = channels >= 3 ? [1, 2] : [0, 0];
  const alpha = channels % 2 === 0 ? channels - 1 : undefined;
  // Shares of a row and a column sum to the pixels that fall on one.
  const weight = (columns / width) * (rows / height);
  let isTransparent = false;
  for (let y = 0; y < height; y++) {
    row.fill(0);
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * channels;
      let r = reds[data[at] as number] as number;
      let g = greens[data[at + green] as number] as number;
      let b = blues[data[at + blue] as number] as number;
      if (alpha !== undefined && data[at + alpha] !== full) {
        const cover = (data[at + alpha] as number) / full;
        isTransparent = true;
        r = r * cover + 1 - cover;
        g = g * cover + 1 - cover;
        b = b * cover + 1 - cover;
      }
      const cell = (across.first[x] as number) * 3;
      const here = across.share[x] as number;
      row[cell] = (row[cell] as number) + r * here;
      row[cell + 1] = (row[cell + 1] as number) + g * here;
      row[cell + 2] = (row[cell + 2] as number) + b * here;
      if (here < 1) {
        const next = 1 - here;
        row[cell + 3] = (row[cell + 3] as number) + r * next;
        row[cell + 4] = (row[cell + 4] as number) + g * next;
        row[cell + 5] = (row[cell + 5] as number) + b * next;
      }
    }
    const here = down.share[y] as number;
    addRow((down.first[y] as number) * columns * 3, here * weight);
    if (here < 1) addRow(((down.first[y] as number) + 1) * columns * 3, (1 - here) * weight);
  }
  if (profile?.matrix !== undefined) toSrgb(light, profile.matrix);
  return { photograph: { width: columns, height: rows, light }, isTransparent };

  function addRow(from: number, share: number): void {
    const length = columns * 3;
    for (let at = 0; at < length; at++)
      light[from + at] = (light[from + at] as number) + (row[at] as number) * share;
  }
}
