/** A likeness as a picture in its colours. Pure. */
import { labToXyz, whiteOf } from '../colour/index.js';
import { toScreen } from '../colour/screen.js';
import type { FilePixels } from './file-pixels.js';
import type { Likeness } from './types.js';

const WHITE = whiteOf('D65-2');

/** Colours are looked up in whole units of CIELAB: nobody sees less. */
export function asSeen({ width, height, lab }: Likeness): FilePixels {
  const known = new Map<number, number>();
  const data = new Uint8Array(3 * width * height);
  for (let at = 0; at < data.length; at += 3) {
    const [l, a, b] = [0, 1, 2].map((k) => Math.round(lab[at + k] as number)) as [number, number, number];
    const key = (l * 512 + a + 256) * 512 + b + 256;
    let colour = known.get(key);
    if (colour === undefined) {
      colour = Number.parseInt(toScreen(labToXyz({ l, a, b }, WHITE)).hex.slice(1), 16);
      known.set(key, colour);
    }
    data[at] = colour >> 16;
    data[at + 1] = (colour >> 8) & 255;
    data[at + 2] = colour & 255;
  }
  return { width, height, data };
}
