/** CIELAB (CIE 1976 L*a*b*), with lightness, chroma and hue angle. Source: ISO/CIE 11664-4. */
import type { Spectrum } from '../optics/grid.js';
import { type ObserverId, reflectanceToXyz, whiteOf, type Xyz } from './xyz.js';

/** CIELAB coordinates: `l` 0 black to 100 white, `a` green to red, `b` blue to yellow. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** Where the cube root gives way to a straight line, (6/29)³, and the slope of that line, (29/3)³. */
const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;

function compress(ratio: number): number {
  return ratio > EPSILON ? Math.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
}

/**
 * CIELAB from tristimulus values.
 * @param white of the same illuminant and observer, same scale: see `whiteOf`
 * Worked number: D65, 2 degrees, (20, 20, 20) against (95.047, 100, 108.883) is L* 51.84, a* 4.99, b* 3.27.
 */
export function xyzToLab(xyz: Xyz, white: Xyz): Lab {
  const fx = compress(xyz.x / white.x);
  const fy = compress(xyz.y / white.y);
  const fz = compress(xyz.z / white.z);
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

function expand(f: number): number {
  const cubed = f * f * f;
  return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA;
}

/** Tristimulus values from CIELAB: the inverse of {@link xyzToLab}. */
export function labToXyz(lab: Lab, white: Xyz): Xyz {
  const fy = (lab.l + 16) / 116;
  return {
    x: white.x * expand(fy + lab.a / 500),
    y: white.y * expand(fy),
    z: white.z * expand(fy - lab.b / 200),
  };
}

/** L* from luminance factor Y, both 0-100. */
export function lightnessFromY(y: number): number {
  return 116 * compress(y / 100) - 16;
}

/** Chroma C*ab, the distance from grey: 0 for a neutral. */
export function chromaOf(lab: Lab): number {
  return Math.hypot(lab.a, lab.b);
}

/** Hue angle h_ab in degrees, 0 up to but not including 360; 0 for an exact neutral, which has no hue. */
export function hueOf(lab: Lab): number {
  const degrees = (Math.atan2(lab.b, lab.a) * 180) / Math.PI;
  if (degrees >= 0) return degrees;
  // A tiny negative angle plus 360 rounds to 360 itself.
  const turned = degrees + 360;
  return turned === 360 ? 0 : turned;
}

/**
 * The shorter way round the wheel from one hue angle to another, degrees.
 * @returns -180 to 180, positive from red towards yellow; swapping the arguments swaps the sign
 */
export function hueDifference(from: number, to: number): number {
  const turn = (to - from) % 360;
  if (turn > 180) return turn - 360;
  if (turn < -180) return turn + 360;
  return turn;
}

/** CIELAB of a surface from its reflectance (0-1 in the bands of the grid). */
export function reflectanceToLab(r: Spectrum, observer: ObserverId = 'D65-2'): Lab {
  return xyzToLab(reflectanceToXyz(r, observer), whiteOf(observer));
}
