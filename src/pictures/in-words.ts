/** A painted picture for the ear, and drawn with characters: where there are no colours. */
import { colourInWords, valueWord } from '../colour/index.js';
import { listWords } from '../text/list-words.js';
import { stepText, toVoice, type Voice, valueWords } from '../words/voice.js';
import type { AreaLook, Painted, Tone } from './covering.js';
import { colourPixels } from './pixels.js';
import { raster } from './raster.js';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "dark red, middle dark, step 6.3"; without a voice only what the eye says. */
function toneWords({ colour }: Tone, voice: Voice | undefined): string {
  if (voice === undefined) return colourInWords(colour.lab);
  return `${colourInWords(colour.lab)}, ${valueWord(colour.value)}, ${valueWords(colour.value, voice)}`;
}

function lookWords(look: AreaLook, far: number | undefined, voice: Voice | undefined): string {
  if (look.kind === 'open') return 'left open';
  if (look.strokes !== undefined) {
    const strokes = look.strokes.map(
      ({ tone, share }) => `${Math.round(share * 100)} % ${colourInWords(tone.colour.lab)}`,
    );
    return `strokes, ${listWords(strokes)}; together ${toneWords(look.tone, voice)}`;
  }
  if (far === undefined) return toneWords(look.tone, voice);
  const end = look.graded(far);
  const figure = voice === undefined ? '' : `, ${stepText(end.colour.step, voice)}`;
  return `${toneWords(look.tone, voice)}, running out to ${colourInWords(end.colour.lab)}${figure}`;
}

/**
 * One line an area, in the order in which a picture is read out: "The roof: strong orange, middle, step 4.2."
 * @param voice of the learner
 * @param unread areas whose values are to be judged by eye: no figure is said of them
 */
export function inWords({ picture, looks }: Painted, voice: Voice, unread: readonly string[] = []): string[] {
  return picture.areas.map(({ id, words }) => {
    const far = picture.shapes.find(({ area, graded }) => area === id && graded !== undefined)?.graded?.to;
    const look = lookWords(looks[id] as AreaLook, far, unread.includes(id) ? undefined : voice);
    return toVoice(`${upper(words)}: ${look}.`, voice);
  });
}

/** Signs from paper white to the darkest dark, and that of an open passage. */
export interface ValueSigns {
  readonly ramp: string;
  readonly open: string;
}

/** The denser a sign, the darker the paint. */
export const SHADE_SIGNS: ValueSigns = { ramp: ' ·░▒▓█', open: '/' };
export const ASCII_SIGNS: ValueSigns = { ramp: ' .:-=+*#%@', open: '/' };

/** Munsell values that the ramp runs between. */
const LIGHTEST = 9.3;
const DARKEST = 2.5;

/** The sign of a Munsell value. */
export function signOf(value: number, ramp: string): string {
  const way = (LIGHTEST - value) / (LIGHTEST - DARKEST);
  const signs = [...ramp];
  return signs[Math.min(signs.length - 1, Math.max(0, Math.floor(way * signs.length)))] as string;
}

/**
 * A painted picture as lines of characters, one a cell, by value.
 * @throws RangeError for a size that nobody can look at
 */
export function inCharacters(from: Painted, columns: number, lines: number, signs: ValueSigns): string[] {
  const drawn = raster(from.picture, columns, lines);
  const { tones, at } = colourPixels(from, drawn);
  const byTone = tones.map(({ colour }) => signOf(colour.value, signs.ramp));
  const isOpen = from.picture.areas.map(({ id }) => from.looks[id]?.kind === 'open');
  const signAt = (pixel: number): string =>
    isOpen[drawn.area[pixel] as number] === true ? signs.open : (byTone[at[pixel] as number] as string);
  return Array.from({ length: lines }, (_, y) =>
    Array.from({ length: columns }, (_, x) => signAt(y * columns + x)).join(''),
  );
}
