/** What is said of the photograph of a painting: how far its values reach, what its darks do to colour, what to do next. */
import { KEPT_LINE } from '../../judgement/index.js';
import { listWords } from '../../text/list-words.js';
import { percent, sentence, stepsWords } from '../laid.js';
import { stepText, stepWords, type Voice } from '../voice.js';

/** How far a reading can be believed, and what can take from it: see src/painting/types.ts. */
export type Trust = 'good' | 'fair' | 'low';
export type DoubtId =
  | 'no-white'
  | 'white-guessed'
  | 'light-unknown'
  | 'white-clipped'
  | 'strong-cast'
  | 'dim'
  | 'uneven-light'
  | 'rough-light'
  | 'few-pixels'
  | 'soft'
  | 'lighter-than-white'
  | 'bare'
  | 'cut-off';

/** A mass as it is pointed at. */
export interface Named {
  /** From 1, as the masses of its reading are numbered on the screen and in the table. */
  readonly number: number;
  /** "dark reddish brown". */
  readonly words: string;
  /** Shares of the width and the height. */
  readonly x: number;
  readonly y: number;
}

const third = (at: number, names: readonly [string, string, string]): string =>
  names[at < 0.36 ? 0 : at > 0.64 ? 2 : 1];

/** "upper left", "on the right", "in the middle". */
export function placeWords({ x, y }: { readonly x: number; readonly y: number }): string {
  const across = third(x, ['left', '', 'right']);
  const down = third(y, ['upper', '', 'lower']);
  if (across === '' && down === '') return 'in the middle';
  if (across === '') return down === 'upper' ? 'at the top' : 'at the bottom';
  return down === '' ? `on the ${across}` : `${down} ${across}`;
}

/** "mass 3 (dark reddish brown, lower left)". */
const namedMass = (mass: Named): string => `mass ${mass.number} (${mass.words}, ${placeWords(mass)})`;

const between = (light: number, dark: number, voice: Voice): string =>
  `${stepWords(light, voice)} to ${stepText(dark, voice)}`;

export interface MovedFigures {
  readonly mass: Named;
  /** Painter's steps before and after. */
  readonly steps: readonly [number, number];
  /** C* before and after. */
  readonly chroma: readonly [number, number];
  /** Share of the shading line that is kept, where the mass grew darker and had colour to keep. */
  readonly kept?: number | undefined;
}

function movedWords({ mass, steps: [from, to], chroma: [before, after], kept }: MovedFigures): string {
  const gap = to - from;
  const value =
    Math.abs(gap) < 0.05 ? 'as light as it was' : `${stepsWords(gap)} ${gap > 0 ? 'darker' : 'lighter'}`;
  const colour =
    kept === undefined
      ? ''
      : kept >= 1.1
        ? ', richer than a mere shade'
        : kept >= KEPT_LINE
          ? ', the colour kept'
          : ', duller than a shade would be';
  return `What was ${namedMass(mass)} is ${value}, chroma ${before.toFixed(0)} to ${after.toFixed(0)}${colour}.`;
}

/** What takes from the trust in a reading, and what would mend it. */
const DOUBTS: Readonly<Record<DoubtId, (figures: Readonly<Record<string, number>>) => string>> = {
  'no-white': () =>
    'No bare paper was found, so the white of the file stands for it. Show where paper or a white card is with --white.',
  'white-guessed': () =>
    'The lightest large patch was taken for bare paper. If it is painted, show where paper is with --white.',
  'light-unknown': () =>
    'Without a margin of paper around the painting, uneven light cannot be told from painted light.',
  'white-clipped': ({ share = 0 }) =>
    `${percent(share)} of the paper is as bright as the file can hold. Take the photograph a little darker.`,
  'strong-cast': () =>
    'The light is strongly coloured, so hues are less sure. Photograph it in daylight or in the shade.',
  dim: () => 'The photograph is dark, and its darks are noise. Take it lighter.',
  'uneven-light': ({ ratio = 1 }) =>
    `One side has ${ratio.toFixed(1)} times the light of another. Light it evenly, from both sides or out of doors.`,
  'rough-light': () => 'A shadow or a fold lies on the sheet. Lay it flat, and stand out of the light.',
  'few-pixels': ({ pixels = 0 }) =>
    `The painting fills only ${Math.round(pixels / 1000)} thousand pixels of what was read. Go nearer, or cut with --crop.`,
  soft: () => 'The photograph is not sharp; edges run into each other, and small darks are lost.',
  'lighter-than-white': ({ share = 0 }) =>
    `${percent(share)} of the painting is lighter than its white. Show where paper is with --white.`,
  bare: () => 'Nearly all of it is bare paper.',
  'cut-off': () => 'The photograph ends where the painting may go on. Show the whole sheet.',
};

const TRUST: Readonly<Record<Trust, string>> = {
  good: 'This reading can be trusted.',
  fair: 'This reading is fair: half a step either way.',
  low: 'This reading is not to be trusted far.',
};

export const PAINTING = {
  'painting-trust': ({ trust }: { trust: Trust }): string => TRUST[trust],
  'painting-doubt': ({ id, figures }: { id: DoubtId; figures: Readonly<Record<string, number>> }): string =>
    DOUBTS[id](figures),
  'painting-reach': ({ light, dark }: { light: number; dark: number }, voice: Voice): string =>
    `Values run from ${between(light, dark, voice)}: from the lights to true darks.`,
  'painting-shallow': ({ light, dark }: { light: number; dark: number }, voice: Voice): string =>
    `Values run from ${between(light, dark, voice)}: there are darks, but none that is deep. A few accents at ${stepWords(8.5, voice)} would make the lights shine.`,
  'painting-no-darks': ({ light, dark }: { light: number; dark: number }, voice: Voice): string =>
    `Values run from ${between(light, dark, voice)}: no darks. If mist or a bright haze is meant, leave it.`,
  'painting-few-darks': (
    { light, dark, share }: { light: number; dark: number; share: number },
    voice: Voice,
  ): string =>
    `Values run from ${between(light, dark, voice)}, but the darks take only ${percent(share)} of the painting: too little to be seen from across a room.`,
  'painting-no-lights': ({ light, dark }: { light: number; dark: number }, voice: Voice): string =>
    `Values run from ${between(light, dark, voice)}: no lights. Paper that is painted over does not come back; a paint that stains does not lift.`,
  'painting-all-middle': ({ share }: { share: number }): string =>
    `${percent(share)} of the painting lies in the middle values: light and dark have little to say.`,
  'painting-like-shares': ({
    shares: [light, middle, dark],
  }: {
    shares: readonly [number, number, number];
  }): string =>
    `Light ${percent(light)}, middle ${percent(middle)}, dark ${percent(dark)}: nearly alike, so that none leads.`,
  /** A dark and a light of one hue may be two things: only the painter knows. */
  'painting-veil': ({ mass, from, below }: { mass: Named; from: Named; below: number }): string =>
    `If ${namedMass(mass)} is the turned side of mass ${from.number} (${from.words}), it is duller than less light makes it: shade alone would leave ${below.toFixed(0)} more of chroma. If it is another thing, leave it.`,
  'painting-clear': (): string => 'The darks are no duller than less light makes them.',
  'painting-focus': ({
    one,
    other,
    steps,
    at,
  }: {
    one: Named;
    other: Named;
    steps: number;
    at: { x: number; y: number };
  }): string =>
    `The strongest contrast, ${stepsWords(steps)}, lies ${placeWords(at)}, where mass ${one.number} meets mass ${other.number}.`,
  'painting-focus-edge': ({ at }: { at: { x: number; y: number } }): string =>
    `It lies at the rim of the sheet (${placeWords(at)}) and leads the eye out. Is that where you want it?`,
  'painting-competes': ({ mass }: { mass: Named }): string =>
    `${sentence(namedMass(mass))} is at the rim and as bright as anything in the picture: it competes with the centre of interest.`,
  'painting-darken': (
    { mass, steps, to, isBright }: { mass: Named; steps: number; to: number; isBright: boolean },
    voice: Voice,
  ): string =>
    `Take ${namedMass(mass)} darker by ${stepsWords(steps)}, to about ${stepWords(to, voice)}${isBright ? ', and keep it bright' : ''}.`,
  'painting-unveil': ({ mass, from }: { mass: Named; from: Named }): string =>
    `If they are one thing, mix ${namedMass(mass)} again as the shade of mass ${from.number}: as dark, and brighter.`,
  'painting-three-values': (): string =>
    'Before the next one, plan light, middle and dark in three unequal shares, and leave the paper where the lights are to be.',
  'painting-quieten': ({ mass }: { mass: Named }): string =>
    `Dull ${namedMass(mass)} on purpose, as light as it is, so that the centre of interest has the colour.`,
  'painting-match': ({ mass, made, deltaE00 }: { mass: Named; made: string; deltaE00: number }): string =>
    `${sentence(namedMass(mass))} is taken for a wash of ${made} strong: ${deltaE00 <= 3 ? 'a near' : 'a rough'} match (colour difference ${deltaE00.toFixed(1)}).`,
  'painting-no-match': ({ mass, deltaE00 }: { mass: Named; deltaE00: number }): string =>
    `These paints do not make ${namedMass(mass)}: the nearest is another colour (colour difference ${deltaE00.toFixed(0)}). Name the paints that you used.`,
  /** `staining`: paints of the wash that do not lift, by their published ratings. */
  'painting-lift': ({ staining }: { staining: readonly string[] }): string =>
    staining.length === 0
      ? 'What lies on the paper can only be lifted: wet it, wait, take it up with a clean brush. The recipes are for fresh paper.'
      : `What lies on the paper will not lift: ${listWords(staining)} ${staining.length === 1 ? 'stains' : 'stain'}. The recipes are for fresh paper.`,
  'painting-newcomer': ({ names }: { names: readonly string[] }): string =>
    `The paints of the painting do not reach it. ${sentence(listWords(names))} would be new to it: use ${names.length === 1 ? 'it' : 'them'} elsewhere too, or it will look put in from another picture.`,
  'painting-unlike': (): string =>
    'The two are not framed alike, or are not one painting: only their values as a whole are compared.',
  'painting-wider': (
    { before, after }: { before: readonly [number, number]; after: readonly [number, number] },
    voice: Voice,
  ): string => `The range is wider: ${between(...before, voice)} then, ${between(...after, voice)} now.`,
  'painting-as-wide': (
    { before, after }: { before: readonly [number, number]; after: readonly [number, number] },
    voice: Voice,
  ): string => `The range is no wider: ${between(...before, voice)} then, ${between(...after, voice)} now.`,
  'painting-narrower': (
    { before, after }: { before: readonly [number, number]; after: readonly [number, number] },
    voice: Voice,
  ): string => `The range is narrower: ${between(...before, voice)} then, ${between(...after, voice)} now.`,
  'painting-kept': ({ kept }: { kept: number }): string =>
    kept > 1.1
      ? 'Where a strong colour was darkened it grew richer than a mere shade. Well done.'
      : 'Where a strong colour was darkened it was kept. Well done.',
  'painting-dulled': ({ kept }: { kept: number }): string =>
    `Where a strong colour was darkened it went dull: ${percent(kept)} of what a shade keeps is left. Darken it with a neighbour that is itself dark.`,
  'painting-nothing-darkened': (): string => 'No passage of strong colour was darkened.',
  'painting-moved': movedWords,
};
