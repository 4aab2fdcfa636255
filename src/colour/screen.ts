/** The screen colour of a paint. Imports culori: keep it out of what a search runs. */
import { clampChroma, converter, formatHex } from 'culori';
import { yFromMunsellValue } from './value.js';
import { whiteOf, type Xyz } from './xyz.js';

/** A colour as an sRGB screen can show it. */
export interface ScreenColour {
  /** '#rrggbb'. */
  readonly hex: string;
  /** False when chroma had to be lowered to fit the screen. */
  readonly inScreenGamut: boolean;
}

const WHITE = whiteOf('D65-2');

/** White of culori's D65, from x 0.3127, y 0.3290: not quite the white of the ASTM weights. */
const SCREEN_WHITE = { x: 0.3127 / 0.329, y: 1, z: (1 - 0.3127 - 0.329) / 0.329 };

/** How far outside 0-1 a channel may lie and still count as inside: less than a tenth of an 8-bit step. */
const CHANNEL_SLACK = 3e-4;

const toRgb = converter('rgb');

/**
 * The nearest screen colour, white matched to white.
 *
 * Out of gamut, chroma is lowered at constant L* and CIELAB hue. On the mixtures of the measured paints that keeps value
 * and hue exactly, which is what a value study needs, and is also nearest: CIEDE2000 median 1.4 and at most 6.7 for
 * darks, against 1.7 and 7.2 for cutting channels and 1.7 and 6.6 for the CSS mapping in OKLCh, which both shift L*.
 * @param xyz D65, 2 degrees, 0-100
 * @throws RangeError when a component is not a number
 */
export function toScreen(xyz: Xyz): ScreenColour {
  if (![xyz.x, xyz.y, xyz.z].every(Number.isFinite)) {
    throw new RangeError(`screen colour: (${xyz.x}, ${xyz.y}, ${xyz.z}) is not a colour`);
  }
  const colour = {
    mode: 'xyz65' as const,
    x: (xyz.x / WHITE.x) * SCREEN_WHITE.x,
    y: (xyz.y / WHITE.y) * SCREEN_WHITE.y,
    z: (xyz.z / WHITE.z) * SCREEN_WHITE.z,
  };
  const { r, g, b } = toRgb(colour);
  const inScreenGamut = Math.min(r, g, b) >= -CHANNEL_SLACK && Math.max(r, g, b) <= 1 + CHANNEL_SLACK;
  return { hex: formatHex(inScreenGamut ? colour : clampChroma(colour, 'lch65', 'rgb')), inScreenGamut };
}

/** Tristimulus values (D65, 2 degrees, 0-100) of a screen colour given in culori's: white matched to white, as {@link toScreen} has it. */
export function xyzOfScreen({ x, y, z }: Xyz): Xyz {
  return {
    x: (x / SCREEN_WHITE.x) * WHITE.x,
    y: (y / SCREEN_WHITE.y) * WHITE.y,
    z: (z / SCREEN_WHITE.z) * WHITE.z,
  };
}

/** Screen grey of a Munsell value, 0 black to 10 white: '#rrggbb'. */
export function greyOfValue(value: number): string {
  const y = yFromMunsellValue(value) / WHITE.y;
  return toScreen({ x: WHITE.x * y, y: WHITE.y * y, z: WHITE.z * y }).hex;
}
