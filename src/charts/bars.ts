/**
 * The check of a printed grey: black bars that leave so much of the paper bare that from afar they have the value of the grey. A bar
 * is ink or it is not, so that no setting of a printer can lighten it; a grey patch has to be mixed by the printer.
 *
 * Over areas seen as one, luminance is the mean by their shares (Murray 1936, as for strokes). Between a paper and a black of any
 * depth a faithful print keeps the shares, so that they hold for every paper and ink.
 */
import { yFromMunsellValue } from '../colour/value.js';
import { MM } from '../paper/types.js';

/** Bars of black over a height, each with its top and its thickness. */
export interface Bars {
  /** Share of the area that is black, 0-1. */
  readonly share: number;
  readonly bars: readonly { readonly top: number; readonly thick: number }[];
}

/** From bar to bar, in points: coarse enough for a printer to keep, fine enough to melt at arm's length. */
const PITCH = { least: 0.8 * MM, most: 2 * MM } as const;
/** A bar and a gap want to be so thick, and have to be, in points: printers thicken a bar by about a twentieth of a millimetre. */
const THICK = { wanted: 0.3 * MM, least: 0.06 * MM } as const;

/** Share of black that has a Munsell value. */
export const blackShare = (value: number): number => 1 - yFromMunsellValue(value) / yFromMunsellValue(10);

/** Bars of a Munsell value over so many points; undefined where a bar or a gap would be too thin to be printed. */
export function barsOf(value: number, height: number): Bars | undefined {
  const share = blackShare(value);
  if (share === 0) return { share, bars: [] };
  const thinner = Math.min(share, 1 - share);
  const pitch = Math.min(PITCH.most, Math.max(PITCH.least, THICK.wanted / thinner));
  if (thinner * pitch < THICK.least) return undefined;
  const count = Math.round(height / pitch);
  const each = height / count;
  const gap = each * (1 - share);
  return {
    share,
    bars: Array.from({ length: count }, (_, at) => ({ top: at * each + gap / 2, thick: each * share })),
  };
}
