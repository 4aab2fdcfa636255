/** Names of hues on the CIELAB wheel, and which way a hue leans. */
import { hueDifference } from './lab.js';

/**
 * Hue angle in degrees at which each name begins. Boundaries of our own, set so that the principal Munsell hues and
 * the single pigments a painter names a hue after (vermilion red, cadmium orange, viridian blue green …) fall inside
 * their names. CIELAB spreads red to yellow over 80 degrees and packs the violets, so the bands are uneven.
 */
const HUES = [
  [10, 'red'],
  [40, 'red orange'],
  [48, 'orange'],
  [64, 'yellow orange'],
  [78, 'yellow'],
  [106, 'yellow green'],
  [130, 'green'],
  [170, 'blue green'],
  [213, 'blue'],
  [288, 'violet blue'],
  [306, 'violet'],
  [319, 'purple'],
  [340, 'magenta'],
] as const;

/** A hue by name. */
export type HueName = (typeof HUES)[number][1];

/** Every hue name in order of hue angle, red first. */
export const HUE_NAMES: readonly HueName[] = HUES.map(([, name]) => name);

const wrap = (degrees: number): number => ((degrees % 360) + 360) % 360;

function hueIndex(hue: number): number {
  if (!Number.isFinite(hue)) throw new RangeError(`hue angle: ${hue} is not an angle in degrees`);
  const angle = wrap(hue);
  const index = HUES.findLastIndex(([from]) => angle >= from);
  return index < 0 ? HUES.length - 1 : index;
}

/** Name of a hue angle h_ab in degrees; angles outside 0-360 wrap round. Meaningless for a neutral. @throws RangeError when not finite */
export function hueName(hue: number): HueName {
  return HUE_NAMES[hueIndex(hue)] ?? 'red';
}

/** The neighbouring hue that a hue angle lies nearer to: a red at 35 degrees leans towards red orange. */
export function leansTowards(hue: number): HueName {
  const index = hueIndex(hue);
  const from = HUES[index]?.[0] ?? 0;
  const width = wrap((HUES[(index + 1) % HUES.length]?.[0] ?? 0) - from);
  const next = wrap(hue - from) >= width / 2 ? index + 1 : index - 1;
  return HUE_NAMES[(next + HUES.length) % HUES.length] ?? 'red';
}

/** Warm and cool as painters use the words. */
export type Lean = 'warm' | 'cool' | 'between warm and cool';

/** Middle of the warm side in degrees: orange. Its opposite, a greenish blue, is the middle of the cool side. */
const WARMEST = 55;

/**
 * Whether a hue is warm or cool: warm within 70 degrees of orange, cool within 70 degrees of its opposite, and
 * neither for the yellow greens, purples and magentas between. Common practice, no source.
 * @param hue h_ab in degrees
 */
export function lean(hue: number): Lean {
  const away = Math.abs(hueDifference(WARMEST, hue));
  if (away <= 70) return 'warm';
  if (away >= 110) return 'cool';
  return 'between warm and cool';
}
