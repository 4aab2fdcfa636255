/** Names of hues on the CIELAB wheel. */

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
