/** What is said and shown of a colour, taken from src/colour once per spectrum. Loads culori: nothing that a search runs may import it. */
import { chromaWord, colourInWords, hueName, readColour, valueWord } from '../colour/index.js';
import { greyOfValue, toScreen } from '../colour/screen.js';
import type { Spectrum } from '../optics/index.js';
import { type Voice, valueWords } from './voice.js';

export interface Look {
  /** Screen colour, and the grey of the same value. */
  readonly hex: string;
  readonly grey: string;
  /** False when the screen cannot show it and shows the nearest instead. */
  readonly inScreenGamut: boolean;
  /** "dark reddish brown". */
  readonly words: string;
  /** Munsell value, 0 black to 10 white. */
  readonly value: number;
  readonly valueWord: string;
  /** C*ab. */
  readonly chroma: number;
  readonly chromaWord: string;
  /** h_ab, degrees. */
  readonly hue: number;
  readonly hueName: string;
}

const known = new WeakMap<object, Look>();

/** How a reflectance looks. */
export function lookOf(reflectance: Spectrum): Look {
  const seen = known.get(reflectance);
  if (seen !== undefined) return seen;
  const { xyz, lab, value, chroma, hue } = readColour(reflectance);
  const strength = chromaWord(lab);
  const look: Look = {
    ...toScreen(xyz),
    grey: greyOfValue(value),
    words: colourInWords(lab),
    value,
    valueWord: valueWord(value),
    chroma,
    chromaWord: strength,
    hue,
    // A neutral has an angle but no hue.
    hueName: strength === 'neutral' ? 'no hue' : hueName(hue),
  };
  known.set(reflectance, look);
  return look;
}

/** One line that says all of a colour: "dark red, step 6.3, chroma 41". */
export function spokenLook(look: Look, voice: Voice): string {
  return `${look.words}, ${valueWords(look.value, voice)}, chroma ${look.chroma.toFixed(0)}`;
}

/** What may be said of a colour whose value and chroma the learner has to judge: its hue. */
export const unreadWords = (look: Look): string => (look.hueName === 'no hue' ? 'a grey' : look.hueName);

/** A swatch in one line: all of its colour, or what may be said of it before the answer. */
export function swatchWords(
  { reflectance, unread }: { readonly reflectance: Spectrum; readonly unread?: 'value' | 'figures' },
  voice: Voice,
): string {
  const look = lookOf(reflectance);
  if (unread === undefined) return spokenLook(look, voice);
  return unread === 'figures' ? look.words : unreadWords(look);
}
