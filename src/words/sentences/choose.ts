/** What is asked and said where one of a few is chosen. */
import type { CriterionId, CriterionReading, Target } from '../../judgement/index.js';
import { sentence } from '../laid.js';
import { stepWords, type Voice } from '../voice.js';
import {
  type ComparedItem,
  CRITERION_WORDS,
  gapText,
  itemsText,
  readingText,
  targetText,
} from './criteria.js';

/** A colour as it is told. */
interface Told {
  readonly words: string;
  readonly step: number;
  readonly chroma: number;
}

const figuresOf = ({ step, chroma }: Omit<Told, 'words'>, voice: Voice): string =>
  `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`;

export const CHOOSE = {
  'choose-goal': ({ by }: { readonly by: CriterionId }): string => `pick: ${CRITERION_WORDS[by].most}`,
  'choose-start': (colour: Omit<Told, 'words'>, voice: Voice): string => `start: ${figuresOf(colour, voice)}`,
  'choose-target': (target: Target, voice: Voice): string => `wanted: ${targetText(target, voice)}`,
  'choose-now': (colour: Told, voice: Voice): string =>
    `Yours is ${colour.words}: ${figuresOf(colour, voice)}.`,
  'choose-right': ({ by, reading, next, isOnly }: RightFigures): string =>
    `That is right: ${CRITERION_WORDS[by].most}${gapText(by, reading, next.reading, isOnly ? 'the other' : 'any other')}.`,
  /** Right, and another one counts as well. */
  'choose-tied': ({ by, next }: RightFigures): string =>
    `That is right: ${CRITERION_WORDS[by].most}. ${sentence(next.label)} comes so near that it counts as well.`,
  'choose-close': ({ by, reading, best }: BetterFigures): string =>
    `${sentence(best.label)} is ahead${gapText(by, best.reading, reading, '')}: too close to call, so yours counts.`,
  'choose-better': ({ by, reading, best }: BetterFigures, voice: Voice): string =>
    `Better: ${best.label}, ${readingText(by, best.reading, voice)}${gapText(by, best.reading, reading, '')}.`,
  'choose-rest': (
    { by, rest }: { readonly by: CriterionId; readonly rest: readonly ComparedItem[] },
    voice: Voice,
  ): string => `The rest, ${itemsText(by, rest, voice)}.`,
};

interface RightFigures {
  readonly by: CriterionId;
  readonly reading: CriterionReading;
  readonly next: ComparedItem;
  /** There are no more than these two. */
  readonly isOnly: boolean;
}

interface BetterFigures {
  readonly by: CriterionId;
  /** Of what was chosen. */
  readonly reading: CriterionReading;
  readonly best: ComparedItem;
}
