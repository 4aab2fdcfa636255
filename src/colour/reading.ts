/** Everything a search or a grade asks of a colour, in one cheap call: no library behind it. */
import type { Spectrum } from '../optics/grid.js';
import { chromaOf, hueOf, type Lab, xyzToLab } from './lab.js';
import { munsellValueFromY, painterStep } from './value.js';
import { reflectanceToXyz, whiteOf, type Xyz } from './xyz.js';

/** A surface read under D65 by the CIE 1931 observer. */
export interface ColourReading {
  readonly xyz: Xyz;
  readonly lab: Lab;
  /** Munsell value, 0 black to 10 white. */
  readonly value: number;
  /** Painter's step, about 1 paper white to 10 darkest dark. */
  readonly step: number;
  /** C*ab. */
  readonly chroma: number;
  /** h_ab in degrees, 0 to 360; says little where chroma is near nothing. */
  readonly hue: number;
}

const WHITE = whiteOf('D65-2');

/** Reads a reflectance (0-1 in the bands of the grid). */
export function readColour(reflectance: Spectrum): ColourReading {
  return readXyz(reflectanceToXyz(reflectance));
}

/** Reads tristimulus values (D65, 2 degrees, 0-100). */
export function readXyz(xyz: Xyz): ColourReading {
  const lab = xyzToLab(xyz, WHITE);
  const value = munsellValueFromY(xyz.y);
  return { xyz, lab, value, step: painterStep(value), chroma: chromaOf(lab), hue: hueOf(lab) };
}
