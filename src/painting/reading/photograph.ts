/** A photograph as an array of light: a part of it cut out, shrunk to cells, and read between its pixels. */
import type { Cut, Photograph, Place } from '../types.js';

/** Across and down from the left upper corner, in pixels; the middle of the first pixel is at one half. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A part of a photograph, with where it was cut from. */
export interface Part {
  readonly photograph: Photograph;
  readonly toWhole: (place: Place) => Place;
  readonly toPart: (place: Place) => Place;
}

const AS_IT_IS = (place: Place): Place => place;

/** Weights of the primaries of sRGB in luminance (IEC 61966-2-1). */
export const LUMINANCE = [0.2126, 0.7152, 0.0722] as const;

const within = (x: number, least: number, most: number): number => Math.min(most, Math.max(least, x));

/** Cuts a part out, on whole pixels, at least one wide and high. */
export function cutOut(photograph: Photograph, cut: Cut | undefined): Part {
  if (cut === undefined) return { photograph, toWhole: AS_IT_IS, toPart: AS_IT_IS };
  const { width: across, height: down, light } = photograph;
  const left = within(Math.floor(cut.x * across), 0, across - 1);
  const top = within(Math.floor(cut.y * down), 0, down - 1);
  const width = within(Math.round(cut.width * across), 1, across - left);
  const height = within(Math.round(cut.height * down), 1, down - top);
  const part = new Float32Array(3 * width * height);
  for (let row = 0; row < height; row++) {
    const from = 3 * ((top + row) * across + left);
    part.set(light.subarray(from, from + 3 * width), 3 * row * width);
  }
  return {
    photograph: { width, height, light: part },
    toWhole: ({ x, y }) => ({ x: (left + x * width) / across, y: (top + y * height) / down }),
    toPart: ({ x, y }) => ({ x: (x * across - left) / width, y: (y * down - top) / height }),
  };
}

/** A photograph shrunk by a whole number of pixels, so that noise is averaged away. */
export interface Cells extends Photograph {
  /** Pixels along the side of a cell. */
  readonly side: number;
}

/** Means over squares of pixels, so many that the longer side has at most `most`. */
export function shrunk({ width: across, height: down, light }: Photograph, most: number): Cells {
  const side = Math.max(1, Math.ceil(Math.max(across, down) / most));
  const [width, height] = [Math.max(1, Math.floor(across / side)), Math.max(1, Math.floor(down / side))];
  const sums = new Float32Array(3 * width * height);
  const [sx, sy] = [Math.min(side, across), Math.min(side, down)];
  for (let row = 0; row < height * sy; row++) {
    const into = 3 * width * Math.floor(row / sy);
    let from = 3 * row * across;
    for (let column = 0; column < width; column++) {
      const cell = into + 3 * column;
      for (let k = 0; k < sx; k++, from += 3) {
        sums[cell] = (sums[cell] as number) + (light[from] as number);
        sums[cell + 1] = (sums[cell + 1] as number) + (light[from + 1] as number);
        sums[cell + 2] = (sums[cell + 2] as number) + (light[from + 2] as number);
      }
    }
  }
  for (let at = 0; at < sums.length; at++) sums[at] = (sums[at] as number) / (sx * sy);
  return { width, height, light: sums, side };
}

/** Adds the light at a point, between the four pixels around it, to three numbers of `out`; beyond the border the border goes on. */
export function addLight(
  { width, height, light }: Photograph,
  x: number,
  y: number,
  out: Float32Array,
  into: number,
  weight: number,
): void {
  const fx = within(x - 0.5, 0, width - 1);
  const fy = within(y - 0.5, 0, height - 1);
  const x0 = within(fx | 0, 0, Math.max(0, width - 2));
  const y0 = within(fy | 0, 0, Math.max(0, height - 2));
  const ax = fx - x0;
  const ay = fy - y0;
  const right = width > 1 ? 3 : 0;
  const below = height > 1 ? 3 * width : 0;
  const at = 3 * (y0 * width + x0);
  const w00 = weight * (1 - ax) * (1 - ay);
  const w10 = weight * ax * (1 - ay);
  const w01 = weight * (1 - ax) * ay;
  const w11 = weight * ax * ay;
  for (let k = 0; k < 3; k++) {
    const from = at + k;
    out[into + k] =
      (out[into + k] as number) +
      w00 * (light[from] as number) +
      w10 * (light[from + right] as number) +
      w01 * (light[from + below] as number) +
      w11 * (light[from + right + below] as number);
  }
}

/** Luminance of each pixel; a little above nothing everywhere, so that it has a logarithm. */
export function luminances({ light }: Photograph): Float32Array {
  const [r, g, b] = LUMINANCE;
  const out = new Float32Array(light.length / 3);
  for (let at = 0, from = 0; at < out.length; at++, from += 3) {
    const y = r * (light[from] as number) + g * (light[from + 1] as number) + b * (light[from + 2] as number);
    out[at] = y > 1e-4 ? y : 1e-4;
  }
  return out;
}
