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

/** A grey scale that is known so well, in steps either way, can be said to agree. */
const KNOWN_STEPS = 0.5;

export interface StrengthFigures {
  readonly name: string;
  readonly factor: number;
  readonly interval: readonly [number, number];
}

export interface RatioFigures extends StrengthFigures {
  readonly other: string;
  readonly isSure: boolean;
}

const strengthWords = ({ name, factor, interval: [low, high] }: StrengthFigures): string =>
  low <= 1 && high >= 1
    ? `Your ${name} may be just as strong as the library’s: ${times(low)} to ${times(high)} times`
    : `Your ${name} is about ${times(factor)} times as strong as the library’s, ${times(low)} to ${times(high)}`;

export const READINGS = {
  'tube-known': (figures: StrengthFigures): string => `${strengthWords(figures)}.`,
  'tube-unsure': (figures: StrengthFigures): string => `${strengthWords(figures)}: too wide to go by yet.`,
  /** `moves`: the most that a patch moves for e times the strength, in steps or tenths of CIELAB. */
  'tube-cannot-tell': ({
    names,
    byValue,
    moves,
  }: {
    names: readonly string[];
    byValue: boolean;
    moves: number;
  }): string => {
    const who = `how strong your ${listWords(names)} ${names.length === 1 ? 'is' : 'are'}`;
    return byValue
      ? `Value cannot tell ${who}: nearly three times the strength would move these patches by ${stepsWords(moves)} at most. Read CIELAB or a Munsell notation with an instrument.`
      : `These patches cannot tell ${who}: nearly three times the strength would move them by ${(10 * moves).toFixed(0)} at most in CIELAB. Paint other mixtures.`;
  },
  'tube-no-other': ({ names }: { names: readonly string[] }): string =>
    `Your ${listWords(names)} has no other tube to be compared with yet.`,
  'tubes-middle': (): string =>
    'The middle one of these tubes is taken to be as strong as the library’s, and the others are told by it. Nine times in ten a tube lies between its two figures.',
  /** Of two tubes only how they stand to each other can be told. */
  'tubes-ratio': ({ name, other, factor, interval: [low, high], isSure }: RatioFigures): string =>
    `${low <= 1 && high >= 1 ? `Your ${name} may be as strong against your ${other} as in the library: about` : `Against the library’s, your ${name} is`} ${times(factor)} times your ${other}, nine times in ten ${times(low)} to ${times(high)}${isSure ? '' : ': too wide to go by yet'}. Which of the two is unlike the library’s these readings cannot tell, a third tube would; a correction moves each of them half way.`,
  /** What would tell more: so it comes out of the fit itself, where nine mixtures by eye leave a factor of about 1.7 either way. */
  'strengths-narrow': ({ byValue }: { byValue: boolean }): string =>
    byValue
      ? 'More mixtures narrow these figures slowly: mudlark dried ask names those that tell most. An instrument narrows them most: six mixtures read in CIELAB or Munsell (--lab) tell more than two dozen read by eye.'
      : 'More mixtures narrow these figures: mudlark dried ask --lab names those that tell most.',
  'reader-offset': ({ steps, giveOrTake }: { steps: number; giveOrTake: number }): string => {
    if (Math.abs(steps) > giveOrTake)
      return `You read ${stepsWords(steps)} ${steps > 0 ? 'darker' : 'lighter'} than predicted throughout, give or take ${stepsWords(giveOrTake)}: your grey scale, your light or your eye. It is allowed for.`;
    return giveOrTake <= KNOWN_STEPS
      ? `Your grey scale and the prediction agree, give or take ${stepsWords(giveOrTake)}.`
      : `Whether your grey scale is off as a whole cannot be told yet: it is known to ${stepsWords(giveOrTake)} either way.`;
  },
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
  'readings-at-odds': ({ count }: { count: number }): string =>
    `${count === 1 ? 'The reading does not fit what was mixed' : 'The readings do not fit together'}: no strength of your tubes explains what was read, and nothing is corrected. Read the patches again, all on one scale and in daylight; then forget what was wrong, and paint again where it still does not fit.`,
  'wash-to-paint': ({ wash, water }: { wash: string; water: string }): string =>
    `Make a wash of ${wash} to ${water} of water, and paint a patch.`,
  'then-stir-in': ({ doses, thin }: { doses: readonly string[]; thin: number }): string =>
    `${sentence(`stir in ${listWords(doses)}`)} to each part of the paint in the wash, no water${thin === 1 ? '' : `; then add ${measures(thin - 1)} of water to each of the puddle`}, and paint another.`,
};
