/**
 * Where bare paper lies on a sheet, and the light that falls on it.
 *
 * A margin is known by its place: it goes round the sheet, in one colour and one smooth light, and little is lighter. Where there is none the
 * lightest place is taken for paper, as a painter would, if it is light enough and of no colour that light does not have; it
 * cannot be told from a pale wash. Uneven light is told by a margin alone: a wash that gets weaker is the same as a shadow
 * where nothing says that the paper was one white.
 */
import { median, quantile } from 'simple-statistics';
import { drift, heightAt, type Order, paperSurface, type Spots, type Surface } from './lighting.js';
import { LUMINANCE } from './photograph.js';
import type { Flat } from './rectify.js';
import type { Photograph } from './types.js';

/** How the light falls: logarithms of luminance, and of red and of blue against green, over the photograph. */
export interface Light {
  readonly luminance: Surface;
  readonly red: Surface;
  readonly blue: Surface;
}

/** Bare paper as it was found. */
export interface Paper {
  /** Known by a margin, or the lightest place. */
  readonly by: 'margin' | 'place';
  readonly light: Light;
  /** Middle ratios of red and of blue to green, as logarithms. */
  readonly ratios: readonly [number, number];
  /** Share of the spots of the margin, or of the sheet, that it holds. */
  readonly share: number;
  /** Middle distance of its luminance from the surface, as a logarithm. */
  readonly grain: number;
}

/** Pixels from one spot to the next. */
const APART = 3;
/** Shares of the shorter side between which the margin is looked for: the very edge is mixed with the table, and may curl. */
const MARGIN = [0.012, 0.032] as const;
/** A margin: share of its spots on one surface; how far off that surface, as logarithms, they may lie; what share of the sheet may be lighter, and by how much. */
const HOLDS = { share: 0.6, off: 0.06, colour: 0.08, lighter: 0.04, by: 0.1 } as const;
/** Bare spots inside the painting: so near to the margin's surface and its colour. */
const INSIDE = { off: 0.02, colour: 0.025, weight: 0.3 } as const;
/** The lightest place: luminance from which it may be paper, share of the sheet that it must hold, how near to the lightest, how near in colour. */
const PLACE = { luminance: 0.25, share: 0.006, off: 0.12, colour: 0.06 } as const;
/** Logarithms of red and of blue to green of paper under lamps and under a blue sky, as sRGB has them. */
const PLAUSIBLE = { red: [-0.3, 0.85], blue: [-1.9, 0.45] } as const;
/** Added before a logarithm of colour: noise of near black is no colour. */
const FLOOR = 2e-3;

interface Seen extends Spots {
  readonly red: Float64Array;
  readonly blue: Float64Array;
  /** 1 where the margin is looked for. */
  readonly ring: Uint8Array;
}

function spotsOf({ width, height, light, project }: Flat, whole: Photograph): Seen {
  const [across, down] = [Math.ceil(width / APART), Math.ceil(height / APART)];
  const list = (): Float64Array => new Float64Array(across * down);
  const out = { u: list(), v: list(), height: list(), weight: list(), red: list(), blue: list() };
  const ring = new Uint8Array(across * down);
  const [near, farther] = MARGIN.map((share) => Math.max(1, share * Math.min(width, height))) as [
    number,
    number,
  ];
  const at = new Float64Array(2);
  const [wr, wg, wb] = LUMINANCE;
  for (let row = 0, spot = 0; row < height; row += APART)
    for (let column = 0; column < width; column += APART, spot++) {
      const from = 3 * (row * width + column);
      const [r, g, b] = [light[from] as number, light[from + 1] as number, light[from + 2] as number];
      project((column + 0.5) / width, (row + 0.5) / height, at);
      out.u[spot] = (at[0] as number) / whole.width - 0.5;
      out.v[spot] = (at[1] as number) / whole.height - 0.5;
      out.height[spot] = Math.log(Math.max(0, wr * r + wg * g + wb * b) + 1e-4);
      const green = Math.log(Math.max(0, g) + FLOOR);
      out.red[spot] = Math.log(Math.max(0, r) + FLOOR) - green;
      out.blue[spot] = Math.log(Math.max(0, b) + FLOOR) - green;
      const edge = Math.min(column + 1, width - column, row + 1, height - row);
      // Two spots wide at the least, whatever the size.
      ring[spot] = edge >= near && edge <= Math.max(farther, near + 2 * APART) ? 1 : 0;
    }
  return { ...out, ring };
}

const kept = (list: Float64Array, keep: (at: number) => boolean): number[] =>
  Array.from(list.filter((_, at) => keep(at)));

/** Heights over a surface. */
const overOf = ({ u, v, height }: Spots, surface: Surface): Float64Array =>
  height.map((h, at) => h - heightAt(surface, u[at] as number, v[at] as number));

function byMargin(seen: Seen): Paper | undefined {
  const ringed = seen.ring.reduce((sum, is) => sum + is, 0);
  if (ringed < 40) return undefined;
  const asRing: Spots = { ...seen, weight: Float64Array.from(seen.ring) };
  const first = paperSurface(asRing, 2);
  if (first === undefined) return undefined;
  const over = overOf(seen, first);
  const onIt = (at: number): boolean => seen.ring[at] === 1 && Math.abs(over[at] as number) < HOLDS.off;
  const count = over.reduce((sum, _, at) => sum + (onIt(at) ? 1 : 0), 0);
  if (count < 20) return undefined;
  const ratios: [number, number] = [median(kept(seen.red, onIt)), median(kept(seen.blue, onIt))];
  const near = (at: number, by: number): boolean =>
    Math.abs((seen.red[at] as number) - ratios[0]) < by &&
    Math.abs((seen.blue[at] as number) - ratios[1]) < 2 * by;
  const holds = over.reduce((sum, _, at) => sum + (onIt(at) && near(at, HOLDS.colour) ? 1 : 0), 0) / ringed;
  const lighter = over.reduce((sum, off) => sum + (off > HOLDS.by ? 1 : 0), 0) / over.length;
  if (holds < HOLDS.share || lighter > HOLDS.lighter || !isPlausible(ratios)) return undefined;
  // White paper inside the painting says how the light goes there, if it is as bare as the margin.
  const isBare = (at: number): boolean =>
    Math.abs(over[at] as number) < INSIDE.off && near(at, INSIDE.colour);
  const weight = asRing.weight.map((w, at) => (w === 1 ? 1 : isBare(at) ? INSIDE.weight : 0));
  const luminance = paperSurface({ ...seen, weight }, 2, first) ?? first;
  const again = overOf(seen, luminance);
  const bare = (at: number): boolean => onIt(at) && near(at, HOLDS.colour);
  return {
    by: 'margin',
    light: {
      luminance,
      red: drift({ ...seen, height: seen.red, weight: asRing.weight }, ratios[0]),
      blue: drift({ ...seen, height: seen.blue, weight: asRing.weight }, ratios[1]),
    },
    ratios,
    share: holds,
    grain: median(kept(again.map(Math.abs), bare)),
  };
}

const isPlausible = ([red, blue]: readonly [number, number]): boolean =>
  red > PLAUSIBLE.red[0] && red < PLAUSIBLE.red[1] && blue > PLAUSIBLE.blue[0] && blue < PLAUSIBLE.blue[1];

function byPlace(seen: Seen): Paper | undefined {
  const top = quantile(Array.from(seen.height), 0.995);
  const isLight = (at: number): boolean => top - (seen.height[at] as number) < PLACE.off;
  const ratios: [number, number] = [median(kept(seen.red, isLight)), median(kept(seen.blue, isLight))];
  const isBare = (at: number): boolean =>
    isLight(at) &&
    Math.abs((seen.red[at] as number) - ratios[0]) < PLACE.colour &&
    Math.abs((seen.blue[at] as number) - ratios[1]) < 2 * PLACE.colour;
  const heights = kept(seen.height, isBare);
  const share = heights.length / seen.height.length;
  if (share < PLACE.share || top < Math.log(PLACE.luminance) || !isPlausible(ratios)) return undefined;
  const middle = median(heights);
  return {
    by: 'place',
    light: { luminance: [middle], red: [], blue: [] },
    ratios,
    share,
    grain: median(heights.map((height) => Math.abs(height - middle))),
  };
}

/** Finds bare paper; undefined where nothing can be it. @param flat the sheet, smoothed */
export function findPaper(flat: Flat, whole: Photograph): Paper | undefined {
  const seen = spotsOf(flat, whole);
  return byMargin(seen) ?? byPlace(seen);
}

/** Order of the surface that a paper's light was laid with. */
export const orderOf = ({ by }: Paper): Order => (by === 'margin' ? 2 : 0);
