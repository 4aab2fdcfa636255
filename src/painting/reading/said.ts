/** What is said by hand of a photograph, looked at before it is used. */
import { InputError } from '../../errors.js';
import type { ByHand, Place } from '../types.js';
import { areaOf } from './hull.js';
import type { Point } from './photograph.js';

/** Least area of a sheet, pixels: a line has no inside. */
const LEAST_AREA = 16;

/** A sheet whose corners bend inwards or cross has no projection. */
function isConvex(corners: readonly Point[]): boolean {
  return corners.every((here, at) => {
    const [before, after] = [corners[(at + 3) % 4] as Point, corners[(at + 1) % 4] as Point];
    return areaOf([before, here, after]) > 0;
  });
}

/** @throws InputError for corners of which no sheet can be made @param corners in pixels */
export function requireSheet(corners: readonly Point[]): readonly Point[] {
  if (!isConvex(corners) || areaOf(corners) < LEAST_AREA)
    throw new InputError(
      'the corners make no sheet: give them in the order left upper, right upper, right lower, left lower, as the painting stands upright',
    );
  return corners;
}

/** Whether a place lies in the photograph, or in the part that its shares count. */
export const isWithin = ({ x, y }: Place): boolean => x >= 0 && x <= 1 && y >= 0 && y <= 1;

/** @throws InputError for a white that lies outside of the photograph */
export function requireWhite<T extends NonNullable<ByHand['white']>>(white: T): T {
  if (!isWithin(white)) throw new InputError('the white lies outside of the photograph');
  if (white.value !== undefined && !(white.value > 0.5 && white.value <= 10))
    throw new InputError('the value of the white goes from above 0.5 to 10, on the scale of Munsell');
  return white;
}
