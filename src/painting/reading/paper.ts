/**
 * Where bare paper lies on a sheet, and the light that falls on it.
 *
 * A margin is known by its place: it goes round the sheet, in one colour and one smooth light, and little is lighter. Where there is none the
 * lightest place is taken for paper, as a painter would, if it is light enough and of no colour that light does not have; it
 * cannot be told from a pale wash. Uneven light is told by a margin alone: a wash that gets weaker is the same as a shadow
 * where nothing says that the paper was one white.
 */
import { median, quantile } from 'simple-statistics';
import type { Surface } from './lighting.js';
import { kept, type Seen } from './spots.js';

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
  /** Sides of the sheet that have the margin. */
  readonly sides: number;
  readonly light: Light;
  /** Middle ratios of red and of blue to green, as logarithms. */
  readonly ratios: readonly [number, number];
  /** Middle distance of its luminance from the surface, as a logarithm. */
  readonly grain: number;
}

/** The lightest place: luminance from which it may be paper, share of the sheet that it must hold, how near to the lightest, how near in colour. */
const PLACE = { luminance: 0.25, share: 0.006, off: 0.12, colour: 0.06 } as const;
/** Logarithms of red and of blue to green of paper under lamps and under a blue sky, as sRGB has them. */
const PLAUSIBLE = { red: [-0.3, 0.85], blue: [-1.9, 0.45] } as const;
/** Whether paper may have these ratios under a light that people paint by. */
export const isPlausible = ([red, blue]: readonly [number, number]): boolean =>
  red > PLAUSIBLE.red[0] && red < PLAUSIBLE.red[1] && blue > PLAUSIBLE.blue[0] && blue < PLAUSIBLE.blue[1];

/** Paper as the lightest place of a sheet; undefined where that can hardly be it. */
export function paperOfPlace(seen: Seen): Paper | undefined {
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
    sides: 0,
    light: { luminance: [middle], red: [], blue: [] },
    ratios,
    grain: median(heights.map((height) => Math.abs(height - middle))),
  };
}
