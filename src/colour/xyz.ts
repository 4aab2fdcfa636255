/** Tristimulus values from reflectance: ASTM E308 summation with weights on the program's wavelength grid. */
import { GRID, type Spectrum } from '../optics/grid.js';
import d50Observer2 from './data/observer-d50-2.json' with { type: 'json' };
import d50Observer10 from './data/observer-d50-10.json' with { type: 'json' };
import d65Observer2 from './data/observer-d65-2.json' with { type: 'json' };

/** CIE tristimulus values on the scale where the perfect white has y = 100. */
export interface Xyz {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * Illuminant and observer. `D65-2` (daylight, CIE 1931) is the one the program judges by; `D50-2` and `D50-10`
 * (CIE 1964) exist to compare with colours published under those conditions.
 */
export type ObserverId = 'D65-2' | 'D50-2' | 'D50-10';

interface Observer {
  readonly white: Xyz;
  readonly wx: Float64Array;
  readonly wy: Float64Array;
  readonly wz: Float64Array;
}

interface WeightTable {
  readonly white: readonly number[];
  readonly wx: readonly number[];
  readonly wy: readonly number[];
  readonly wz: readonly number[];
}

const OBSERVERS: Readonly<Record<ObserverId, Observer>> = {
  'D65-2': observer(d65Observer2),
  'D50-2': observer(d50Observer2),
  'D50-10': observer(d50Observer10),
};

function observer(table: WeightTable): Observer {
  const [x = Number.NaN, y = Number.NaN, z = Number.NaN] = table.white;
  return {
    white: { x, y, z },
    wx: Float64Array.from(table.wx),
    wy: Float64Array.from(table.wy),
    wz: Float64Array.from(table.wz),
  };
}

/**
 * The white point that goes with an observer's weights.
 *
 * It is the one printed in ASTM E308, not the sum of the rounded weights, and differs in the fourth figure from
 * whites derived from chromaticity (x 0.3127, y 0.3290). Mixing the two leaves a tint on a perfect white.
 */
export function whiteOf(observer: ObserverId): Xyz {
  return OBSERVERS[observer].white;
}

/**
 * Tristimulus values of a surface.
 * @param r reflectance 0-1 in the 38 bands of the grid
 * @returns y 0-100; x and z up to the white of the observer. Not a number in, not a number out.
 * Source: ASTM E308, 10 nm weights, measured range shorter than the table.
 */
export function reflectanceToXyz(r: Spectrum, observer: ObserverId = 'D65-2'): Xyz {
  const { wx, wy, wz } = OBSERVERS[observer];
  let x = 0;
  let y = 0;
  let z = 0;
  for (let band = 0; band < GRID.count; band++) {
    const reflectance = r[band] as number;
    x += (wx[band] as number) * reflectance;
    y += (wy[band] as number) * reflectance;
    z += (wz[band] as number) * reflectance;
  }
  return { x, y, z };
}
