/** The way back from CIELAB, ISO/CIE 11664-4: the program never goes it, tests make colours by it. */
import type { Lab } from '../../../src/colour/lab.js';
import type { Xyz } from '../../../src/colour/xyz.js';

/** (6/29)³ and (29/3)³. */
const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;

function expand(f: number): number {
  const cubed = f * f * f;
  return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA;
}

/** Tristimulus values from CIELAB: the inverse of `xyzToLab`. */
export function labToXyz(lab: Lab, white: Xyz): Xyz {
  const fy = (lab.l + 16) / 116;
  return {
    x: white.x * expand(fy + lab.a / 500),
    y: white.y * expand(fy),
    z: white.z * expand(fy - lab.b / 200),
  };
}
