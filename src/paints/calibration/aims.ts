/** What a calibrated film should look like, and how far it is from that. */
import { hueDifference, hueOf, type Lab, type ObserverId, reflectanceToLab } from '../../colour/index.js';
import { type Coefficients, type Ground, puddle } from '../../optics/index.js';

/** A colour at some strength (1 is the masstone film), within about `tolerance` CIEDE2000 units. */
export interface ColourAim {
  readonly kind: 'colour';
  readonly strength: number;
  readonly lab: Lab;
  readonly observer: ObserverId;
  readonly tolerance?: number;
}

/** A lightness alone. */
export interface LightnessAim {
  readonly kind: 'lightness';
  readonly strength: number;
  readonly lightness: number;
  readonly observer: ObserverId;
  readonly tolerance?: number;
}

/** A hue angle alone, degrees; loose for a dull colour, where hue hardly shows. */
export interface HueAim {
  readonly kind: 'hue';
  readonly strength: number;
  readonly hueDeg: number;
  readonly observer: ObserverId;
}

/** Hue angle of the tint minus that of the masstone, degrees. */
export interface HueShiftAim {
  readonly kind: 'hue-shift';
  readonly tintStrength: number;
  readonly shiftDeg: number;
  readonly observer: ObserverId;
  readonly toleranceDeg?: number;
}

/** CIEDE2000 units that a published mean colour is trusted to; makers differ by more. */
const COLOUR_TOLERANCE = 1.2;

export type Aim = ColourAim | LightnessAim | HueAim | HueShiftAim;

/** Colour of the film at a share of its masstone load. */
export function filmColour(film: Coefficients, strength: number, observer: ObserverId, on: Ground): Lab {
  return reflectanceToLab(puddle([{ paint: film, load: strength }], on), observer);
}

/** Differences of lightness, chroma and hue scaled as CIEDE2000 scales them, without its rotation term: smooth for a solver. */
function colourResiduals(found: Lab, asked: Lab, tolerance: number): number[] {
  const foundChroma = Math.hypot(found.a, found.b);
  const askedChroma = Math.hypot(asked.a, asked.b);
  const mean = (foundChroma + askedChroma) / 2;
  const off = (found.l - 50) ** 2;
  const turn = Math.atan2(found.b * asked.a - found.a * asked.b, found.a * asked.a + found.b * asked.b);
  return [
    (found.l - asked.l) / (1 + (0.015 * off) / Math.sqrt(20 + off)) / tolerance,
    (foundChroma - askedChroma) / (1 + 0.045 * mean) / tolerance,
    (2 * Math.sqrt(foundChroma * askedChroma) * Math.sin(turn / 2)) / (1 + 0.015 * mean) / tolerance,
  ];
}

/** How far a film is from one aim; every number is near 1 at the aim's tolerance. */
export function aimResiduals(film: Coefficients, aim: Aim, on: Ground): number[] {
  if (aim.kind === 'hue-shift') {
    const tint = hueOf(filmColour(film, aim.tintStrength, aim.observer, on));
    const shift = hueDifference(hueOf(filmColour(film, 1, aim.observer, on)), tint);
    return [hueDifference(aim.shiftDeg, shift) / (aim.toleranceDeg ?? 5)];
  }
  const found = filmColour(film, aim.strength, aim.observer, on);
  if (aim.kind === 'colour') return colourResiduals(found, aim.lab, aim.tolerance ?? COLOUR_TOLERANCE);
  if (aim.kind === 'lightness') return [(found.l - aim.lightness) / (aim.tolerance ?? COLOUR_TOLERANCE)];
  const arc = (hueDifference(aim.hueDeg, hueOf(found)) * Math.PI) / 180;
  return [(Math.hypot(found.a, found.b) * arc) / 2];
}
