/** From light in the photograph to colour on the library's paper under D65: the light evened out, its white brought to the paper's. */
import { median } from 'simple-statistics';
import { adaptation, applied, type Matrix, SRGB_TO_D65, SRGB_TO_XYZ, times } from '../../colour/adapt.js';
import { reflectanceToXyz, whiteOf, type Xyz, yFromMunsellValue } from '../../colour/index.js';
import type { Studio } from '../../paints/index.js';
import type { ByHand, Photograph, Place } from '../types.js';
import { heightAt } from './lighting.js';
import type { Light, Paper } from './paper.js';
import { LUMINANCE } from './photograph.js';
import type { Flat } from './rectify.js';

/** Where white was taken and what follows from it. */
export interface White {
  readonly at: Place;
  /** Paper that was found, not said. */
  readonly found: boolean;
  /** Where it is from. */
  readonly by: Paper['by'] | 'hand' | 'file';
  /** Light of the primaries there; of evened light, where the light was evened. */
  readonly light: readonly [number, number, number];
  /** From evened light to tristimulus values, D65, 2 degrees, 0-100. */
  readonly toD65: Matrix;
}

/** Half the side of the square that a white given by hand is read in, as a share of the shorter side. */
const HAND_REACH = 0.008;

const xyzOf = ([x, y, z]: readonly [number, number, number]): Xyz => ({ x, y, z });

const paperXyz = (studio: Studio): Xyz => reflectanceToXyz(studio.paper.reflectance);

function neutral(value: number): Xyz {
  const { x, y, z } = whiteOf('D65-2');
  const share = yFromMunsellValue(value) / 100;
  return { x: x * share, y: y * share, z: z * share };
}

/** The matrix that takes light `[r, g, b]` to the colour wanted of it, and all other light with it. */
function towards([r, g, b]: readonly [number, number, number], wanted: Xyz): Matrix {
  return times(adaptation(xyzOf(applied(SRGB_TO_XYZ, r, g, b)), wanted), SRGB_TO_XYZ);
}

/** The white that was said: the middle of the light around the place, evened as the rest is. */
function byHandAt(photograph: Photograph, place: Place, light: Light | undefined): [number, number, number] {
  const { width, height } = photograph;
  const reach = Math.max(1, Math.round(HAND_REACH * Math.min(width, height)));
  const [x0, y0] = [Math.floor(place.x * width), Math.floor(place.y * height)];
  const lists: [number[], number[], number[]] = [[], [], []];
  for (let y = Math.max(0, y0 - reach); y <= Math.min(height - 1, y0 + reach); y++)
    for (let x = Math.max(0, x0 - reach); x <= Math.min(width - 1, x0 + reach); x++)
      for (const [k, list] of lists.entries()) list.push(photograph.light[3 * (y * width + x) + k] as number);
  const shares = lightAt(light, place.x - 0.5, place.y - 0.5);
  return lists.map((list, k) =>
    Math.max(1e-4, median(list.length > 0 ? list : [1]) / (shares[k] as number)),
  ) as [number, number, number];
}

/** What the light at a place is a multiple of, channel by channel. */
function lightAt(light: Light | undefined, u: number, v: number): [number, number, number] {
  if (light === undefined) return [1, 1, 1];
  const all = Math.exp(heightAt(light.luminance, u, v));
  return [all * Math.exp(heightAt(light.red, u, v)), all, all * Math.exp(heightAt(light.blue, u, v))];
}

/** Pixels from one place where the light is worked out to the next along a row; between them it is straight. */
const LIGHT_APART = 24;

/** Divides out uneven light. @returns light as multiples of the luminance of paper, in a new array */
export function evened(flat: Flat, { width, height }: Photograph, paper: Light): Float32Array {
  const { light } = flat;
  const out = new Float32Array(light.length);
  const at = new Float64Array(2);
  const stops = Math.ceil(flat.width / LIGHT_APART) + 1;
  const gains = new Float64Array(3 * stops);
  for (let row = 0, into = 0; row < flat.height; row++) {
    for (let stop = 0; stop < stops; stop++) {
      flat.project((stop * LIGHT_APART + 0.5) / flat.width, (row + 0.5) / flat.height, at);
      const shares = lightAt(paper, (at[0] as number) / width - 0.5, (at[1] as number) / height - 0.5);
      for (let k = 0; k < 3; k++) gains[3 * stop + k] = 1 / (shares[k] as number);
    }
    for (let column = 0; column < flat.width; column++, into += 3) {
      const stop = 3 * ((column / LIGHT_APART) | 0);
      const way = (column % LIGHT_APART) / LIGHT_APART;
      const red = (gains[stop] as number) * (1 - way) + (gains[stop + 3] as number) * way;
      const green = (gains[stop + 1] as number) * (1 - way) + (gains[stop + 4] as number) * way;
      const blue = (gains[stop + 2] as number) * (1 - way) + (gains[stop + 5] as number) * way;
      out[into] = (light[into] as number) * red;
      out[into + 1] = (light[into + 1] as number) * green;
      out[into + 2] = (light[into + 2] as number) * blue;
    }
  }
  return out;
}

/** How much less light may lie on bare paper than the surface has, as a logarithm, and how far its colour may be off. */
const BARE = { off: 0.05, colour: 0.07 } as const;

/** Which pixels of evened light are bare paper. */
export function barePixels(
  even: Float32Array,
  [r, g, b]: readonly [number, number, number],
  grain: number,
): Uint8Array {
  const out = new Uint8Array(even.length / 3);
  const [wr, wg, wb] = LUMINANCE;
  const level = wr * r + wg * g + wb * b;
  const off = Math.min(0.12, Math.max(BARE.off, 4 * grain));
  const [low, high] = [Math.exp(-off) * level, Math.exp(off) * level];
  const most = Math.exp(BARE.colour);
  for (let at = 0, from = 0; at < out.length; at++, from += 3) {
    const er = even[from] as number;
    const eg = even[from + 1] as number;
    const eb = even[from + 2] as number;
    const y = wr * er + wg * eg + wb * eb;
    if (y < low || y > high) continue;
    const red = (er * g) / (eg * r);
    const blue = (eb * g) / (eg * b);
    if (red < most && red > 1 / most && blue < most * most && blue > 1 / (most * most)) out[at] = 1;
  }
  return out;
}

/** The bare pixel that has most bare paper around it, as a place in the photograph; undefined where nothing is bare. */
export function barePlace(
  bare: Uint8Array,
  { width, height, project }: Flat,
  whole: Photograph,
): Place | undefined {
  const side = Math.max(3, Math.round(Math.min(width, height) / 40));
  let [best, most] = [-1, 0];
  for (let top = 0; top + side <= height; top += side)
    for (let left = 0; left + side <= width; left += side) {
      let count = 0;
      for (let row = top; row < top + side; row++)
        for (let column = left; column < left + side; column++) count += bare[row * width + column] as number;
      if (count > most) [best, most] = [(top + (side >> 1)) * width + left + (side >> 1), count];
    }
  if (best < 0) return undefined;
  const at = new Float64Array(2);
  project(((best % width) + 0.5) / width, (Math.floor(best / width) + 0.5) / height, at);
  return { x: (at[0] as number) / whole.width, y: (at[1] as number) / whole.height };
}

/** Settles the white: as it was said, as it was found, or that of sRGB. @param said its place in this photograph */
export function settleWhite(
  studio: Studio,
  photograph: Photograph,
  said: ByHand['white'],
  paper: Paper | undefined,
): Omit<White, 'at'> {
  if (said !== undefined) {
    const light = byHandAt(photograph, said, paper?.light);
    const wanted = said.value === undefined ? paperXyz(studio) : neutral(said.value);
    return { found: false, by: 'hand', light, toD65: towards(light, wanted) };
  }
  if (paper === undefined) return { found: false, by: 'file', light: [1, 1, 1], toD65: SRGB_TO_D65 };
  const [red, blue] = paper.ratios.map(Math.exp) as [number, number];
  // The surface is the luminance of paper: green is what makes it one.
  const [wr, wg, wb] = LUMINANCE;
  const green = 1 / (wr * red + wg + wb * blue);
  const light = [red * green, green, blue * green] as const;
  return { found: true, by: paper.by, light, toD65: towards(light, paperXyz(studio)) };
}
