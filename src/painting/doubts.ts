/** What takes from the trust in a reading, as sentences. */
import type { Doubt } from './types.js';

const percent = (share = 0): string => `${Math.max(1, Math.round(100 * share))} %`;

/** What is the matter, and what to do about it. */
const SENTENCES: Readonly<Record<string, (figures: Readonly<Record<string, number>>) => string>> = {
  'no-white': () =>
    'No bare paper was found, so the white of the file stands for it. Show where paper or a white card is with --white.',
  'white-guessed': () =>
    'The lightest large patch was taken for bare paper. If it is painted, show where paper is with --white.',
  'light-unknown': () =>
    'Without a margin of paper around the painting, uneven light cannot be told from painted light.',
  'white-clipped': ({ share }) =>
    `${percent(share)} of the paper is as bright as the file can hold. Take the photograph a little darker.`,
  'strong-cast': () => 'The light is strongly coloured. Photograph it in daylight or in the shade.',
  dim: () => 'The photograph is dark, and its darks are noise. Take it lighter.',
  'uneven-light': ({ ratio = 1 }) =>
    `One side has ${ratio.toFixed(1)} times the light of another. Light it evenly, from both sides or out of doors.`,
  'rough-light': () => 'A shadow or a fold lies on the sheet. Lay it flat, and stand out of the light.',
  'few-pixels': ({ pixels = 0 }) =>
    `The painting fills only ${Math.round(pixels / 1000)} thousand pixels of what was read. Go nearer, or cut with --crop.`,
  soft: () => 'The photograph is not sharp; edges run into each other.',
  'lighter-than-white': ({ share }) =>
    `${percent(share)} of the painting is lighter than its white. Show where paper is with --white.`,
  bare: () => 'Nearly all of it is bare paper.',
  'cut-off': () => 'The photograph ends where the painting may go on. Show the whole sheet.',
};

/** A doubt as a sentence. */
export function doubtWords({ id, figures = {} }: Doubt): string {
  return SENTENCES[id]?.(figures) ?? `The photograph leaves a doubt: ${id.replaceAll('-', ' ')}.`;
}
