/** A sheet of pixels as lines of pieces: a character holds two pixels, the upper one as ink and the lower one as ground. */
import { type Pixels, screenTones } from '../../pictures/pixels.js';
import type { Piece } from './row.js';
import { patchStyle, type TextStyle } from './theme.js';

const UPPER = '▀';

/** Cells of one look in a run. */
interface Run {
  readonly upper: number;
  readonly lower: number;
  length: number;
}

/** Neighbouring cells with the same two colours, together. @param colours screen colour of each tone, so that like tones join */
function runsOf(
  { width, at }: Pixels,
  colours: readonly number[],
  upperRow: number,
  lowerRow: number,
): Run[] {
  const runs: Run[] = [];
  let last: Run | undefined;
  for (let x = 0; x < width; x++) {
    const upper = colours[at[upperRow * width + x] as number] as number;
    const lower = colours[at[lowerRow * width + x] as number] as number;
    if (last !== undefined && last.upper === upper && last.lower === lower) last.length++;
    else {
      last = { upper, lower, length: 1 };
      runs.push(last);
    }
  }
  return runs;
}

/** How a sheet of pixels is shown. */
export interface PixelLook {
  /** The greys of the value check. */
  readonly inGrey?: boolean;
  /** One line a row of pixels, blanks on a ground: where a sign beyond ASCII may not be drawn. */
  readonly plain?: boolean;
}

/**
 * Lines of pieces, as few as the colours allow; the terminal's own colour level is kept where pieces are drawn.
 * @param pixels an even number of rows for half blocks; of an odd one the last row fills its line
 */
export function halfBlocks(pixels: Pixels, { inGrey = false, plain = false }: PixelLook = {}): Piece[][] {
  const hexes = screenTones(pixels, inGrey);
  const first = hexes.map((hex) => hexes.indexOf(hex));
  const apart = plain ? 1 : 2;
  return Array.from({ length: Math.ceil(pixels.height / apart) }, (_, line) => {
    const upper = line * apart;
    const lower = plain ? upper : Math.min(upper + 1, pixels.height - 1);
    return runsOf(pixels, first, upper, lower).map((run): Piece => {
      const [ink, ground] = [hexes[run.upper] as string, hexes[run.lower] as string];
      if (ink === ground) return { text: ' '.repeat(run.length), style: patchStyle(ground) };
      const style: TextStyle = { color: ink, backgroundColor: ground };
      return { text: UPPER.repeat(run.length), style };
    });
  });
}
