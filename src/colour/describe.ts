/** A colour with everything a screen shows of it. Imports culori and the Munsell tables. */
import type { Spectrum } from '../optics/grid.js';
import { munsellNotation } from './munsell-notation.js';
import { type ColourReading, readColour } from './reading.js';
import { greyOfValue, toScreen } from './screen.js';
import { colourInWords } from './words.js';

/** A reading, with its notation, its words and its colour on a screen. */
export interface ColourDescription extends ColourReading {
  /** Munsell notation: '4.2YR 3.6/5.1'. */
  readonly munsell: string;
  /** 'dark reddish brown'. */
  readonly words: string;
  /** '#rrggbb', nearest that an sRGB screen can show. */
  readonly hex: string;
  /** '#rrggbb', the grey of the same value. */
  readonly grey: string;
  /** False when the screen colour had to be brought in and so differs from the paint. */
  readonly inScreenGamut: boolean;
}

/**
 * Describes a reflectance (0-1 in the bands of the grid).
 * @throws RangeError when the reflectance holds something that is not a number
 */
export function describeColour(reflectance: Spectrum): ColourDescription {
  const reading = readColour(reflectance);
  return {
    ...reading,
    ...toScreen(reading.xyz),
    grey: greyOfValue(reading.value),
    munsell: munsellNotation(reading.xyz),
    words: colourInWords(reading.lab),
  };
}
