/** What stands beside a photographed painting: the mass in front, the painting as a whole, the share of each step. Pure. */
import { chromaWord, colourInWords, valueWord } from '../../colour/index.js';
import type { PaintingReading } from '../../painting/index.js';
import { percent, sentence, stepsWords } from '../../words/laid.js';
import { placeWords } from '../../words/sentences/painting.js';
import { scaleUnit, stepText, stepWords, type Voice } from '../../words/voice.js';
import type { Piece } from '../kit/row.js';
import { type PhotographState, type PhotographWorld, paintingIn } from './state.js';

/** Neighbours of a mass that are told. */
const NEIGHBOURS = 2;

/** "Mass 3 of 7, dark brown, lower left", its figures, its neighbours, and what may be asked of it. */
export function massWords({ masses, borders, veil }: PaintingReading, mass: number, voice: Voice): string[] {
  const one = masses[mass];
  if (one === undefined) return [];
  const { colour, share } = one;
  const beside = borders
    .filter(({ between }) => between.includes(mass))
    .slice(0, NEIGHBOURS)
    .map(({ between: [light, dark], steps }) => {
      const other = light === mass ? dark : light;
      return `Beside mass ${other + 1}: ${stepsWords(steps)} apart.`;
    });
  const veiled = veil.masses
    .filter((each) => each.mass === mass)
    .map(
      ({ from, below }) =>
        `If it is the turned side of mass ${from + 1}, a mere shade would have ${below.toFixed(0)} more of chroma.`,
    );
  return [
    `Mass ${mass + 1} of ${masses.length}: ${colourInWords(colour.lab)}, ${placeWords(one)}.`,
    `${sentence(valueWord(colour.value))}, ${stepWords(colour.step, voice)}; ${chromaWord(colour.lab)}, chroma ${colour.chroma.toFixed(0)}; ${percent(share)} of the painting.`,
    ...beside,
    ...veiled,
  ];
}

/** The painting as a whole. */
export function wholeWords({ range, shares }: PaintingReading, voice: Voice): string[] {
  return [
    `Values ${stepWords(range.light, voice)} to ${stepText(range.dark, voice)}.`,
    `Light ${percent(shares.light)}, middle ${percent(shares.middle)}, dark ${percent(shares.dark)}.`,
  ];
}

/** Bars of the shares of the ten steps, each with its step. */
export function histogramLines(
  { histogram }: PaintingReading,
  voice: Voice,
  columns: number,
  full: string,
): Piece[][] {
  const most = Math.max(...histogram);
  const room = columns - 11;
  return [
    [{ text: `Share of each ${scaleUnit(voice) === 'V' ? 'value' : 'step'}`, role: 'muted' }],
    ...histogram.map((share, index): Piece[] => [
      {
        text: stepText(index + 1, voice)
          .replace(/\.0$/, '')
          .padStart(3),
        role: 'muted',
      },
      { text: ` ${full.repeat(Math.round((room * share) / most))} ` },
      { text: share < 0.005 ? '' : percent(share), role: 'muted' },
    ]),
  ];
}

const LOOK_WORDS = {
  colour: '',
  grey: 'in greys',
  2: 'in two values',
  3: 'in three values',
  5: 'in five values',
} as const;
export const WHICH = ['before', 'after'] as const;

/** "after, in greys"; nothing of one picture in its colours. */
export const lookWords = (world: PhotographWorld, { painting, look }: PhotographState): string =>
  [world.paintings.length > 1 ? WHICH[painting] : '', LOOK_WORDS[look]].filter(Boolean).join(', ');

/** A mass for a title: "mass 3, dark brown". */
export const massTitle = (world: PhotographWorld, state: PhotographState): string => {
  const { masses } = paintingIn(world, state).reading;
  const mass = masses[state.mass];
  return mass === undefined ? '' : `mass ${state.mass + 1}, ${colourInWords(mass.colour.lab)}`;
};
