/**
 * The check of a printed grey: dots of black on paper, or of paper in black, that leave so much of the paper bare that from afar they
 * have the value of the grey. A dot is ink or it is not, so that no setting of a printer can lighten it; a grey has to be mixed.
 *
 * Over areas seen as one, luminance is the mean by their shares (Murray 1936, as for strokes). Between a paper and a black of any
 * depth a faithful print keeps the shares, so that they hold for every paper and ink.
 */
import { greyOfValue } from '../colour/screen.js';
import { munsellValueFromY, PAPER_VALUE, yFromMunsellValue } from '../colour/value.js';
import { MM } from '../paper/types.js';

/** From dot to dot, in points: a printer thickens an edge by hundredths of a millimetre, which must not count. */
const PITCH = 1.2 * MM;

/** Share of the light of the paper that a Munsell value has, the paper being the first painter's step; what is lighter is bare. */
const lightShare = (value: number): number =>
  Math.min(1, yFromMunsellValue(value) / yFromMunsellValue(PAPER_VALUE));

/** Share of black that has a Munsell value, 0-1. */
export const blackShare = (value: number): number => 1 - lightShare(value);

/** Grey of a Munsell value as it is printed on paper: white where the paper stays bare. */
export const printedGrey = (value: number): string => greyOfValue(munsellValueFromY(100 * lightShare(value)));

/** Square dots in rows over a field. */
export interface Dots {
  /** Whether the dots are of bare paper in a black field, or black on bare paper. */
  readonly isFieldBlack: boolean;
  /** Width and height of each, in points. */
  readonly size: readonly [width: number, height: number];
  /** Left upper corners. */
  readonly at: readonly (readonly [x: number, y: number])[];
}

/** Dots that give a field of so many points a Munsell value: whole dots only, their shares exact. */
export function dotsOf(value: number, width: number, height: number): Dots {
  const share = blackShare(value);
  const isFieldBlack = share > 0.5;
  const side = Math.sqrt(isFieldBlack ? 1 - share : share);
  const [across, down] = [Math.round(width / PITCH), Math.round(height / PITCH)];
  const [stepX, stepY] = [width / across, height / down];
  const at = Array.from({ length: side === 0 ? 0 : across * down }, (_, dot) => {
    const [column, row] = [dot % across, Math.floor(dot / across)];
    return [(column + (1 - side) / 2) * stepX, (row + (1 - side) / 2) * stepY] as const;
  });
  return { isFieldBlack, size: [side * stepX, side * stepY], at };
}
