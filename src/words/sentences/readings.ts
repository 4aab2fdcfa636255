/** What is said of readings of dried patches: how strong tubes are, and how far the readings can be trusted. */
import { listWords } from '../../text/list-words.js';
import { sentence, stepsWords } from '../laid.js';

/** "1.4", "0.71": two figures say as much as is known. */
const times = (factor: number): string => `${Number(factor.toPrecision(2))}`;

/** "1 measure", "0.5 measures". */
const measures = (count: number): string => {
  const shown = Number(count.toFixed(1));
  return `${shown} ${shown === 1 ? 'measure' : 'measures'}`;
};

export interface StrengthFigures {
  readonly name: string;
  readonly factor: number;
  readonly interval: readonly [number, number];
}

const strengthWords = ({ name, factor, interval: [low, high] }: StrengthFigures): string =>
  `Your ${name} is about ${times(factor)} times as strong as the library’s, ${times(low)} to ${times(high)}`;

export const READINGS = {
  'tube-known': (figures: StrengthFigures): string => `${strengthWords(figures)}.`,
  'tube-unsure': (figures: StrengthFigures): string => `${strengthWords(figures)}: too wide to go by yet.`,
  'tube-cannot-tell': ({ names, byValue }: { names: readonly string[]; byValue: boolean }): string =>
    byValue
      ? `Value cannot tell how strong your ${listWords(names)} ${names.length === 1 ? 'is' : 'are'}: the patches hardly get darker with it. Read CIELAB or a Munsell notation with an instrument.`
      : `These patches cannot tell how strong your ${listWords(names)} ${names.length === 1 ? 'is' : 'are'}: they hardly change with it. Paint other mixtures.`,
  'tube-no-other': ({ names }: { names: readonly string[] }): string =>
    `Your ${listWords(names)} has no other tube to be compared with yet.`,
  'tubes-together': (): string =>
    'Tubes are told against each other, all that can be told counting 1 together; nine times in ten the strength lies between the two figures.',
  'reader-offset': ({ steps, giveOrTake }: { steps: number; giveOrTake: number }): string =>
    Math.abs(steps) < 0.05
      ? `Your grey scale and the prediction agree, give or take ${stepsWords(giveOrTake)}.`
      : `You read ${stepsWords(steps)} ${steps > 0 ? 'darker' : 'lighter'} than predicted throughout, give or take ${stepsWords(giveOrTake)}: your grey scale, your light or your eye. It is allowed for.`,
  'reading-disagrees': ({
    which,
    part,
    darker,
  }: {
    which: number;
    part: 'alone' | 'mixed';
    darker: number;
  }): string =>
    `Reading ${which} disagrees with the others: ${part === 'alone' ? 'its wash alone' : 'the mixture'} was read ${stepsWords(darker)} ${darker > 0 ? 'darker' : 'lighter'} than they lead to expect. It is left out; read or paint it again.`,
  'readings-at-odds': (): string =>
    'The readings disagree so much that none can be believed. Look at the scale and the light, and paint them again.',
  'wash-to-paint': ({ wash, water }: { wash: string; water: string }): string =>
    `Make a wash of ${wash} to ${water} of water, and paint a patch.`,
  'then-stir-in': ({ doses, thin }: { doses: readonly string[]; thin: number }): string =>
    `${sentence(`stir in ${listWords(doses)}`)} to each part of the paint in the wash, no water${thin === 1 ? '' : `; then add ${measures(thin - 1)} of water to each of the puddle`}, and paint another.`,
};
