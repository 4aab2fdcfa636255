/** What is asked and said where one of a few is chosen. */
import type { CriterionId, CriterionReading, Target } from '../../judgement/index.js';
import { sentence } from '../laid.js';
import { stepWords, type Voice } from '../voice.js';
import { askedOf, type ComparedItem, gapText, itemsText, readingText, targetText } from './criteria.js';

/** A colour as it is told. */
interface Told {
  readonly words: string;
  readonly step: number;
  readonly chroma: number;
}

const figuresOf = ({ step, chroma }: Omit<Told, 'words'>, voice: Voice): string =>
  `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`;

export const CHOOSE = {
  'choose-goal': ({ by, of }: { readonly by: CriterionId; readonly of: number }): string =>
    `pick: ${askedOf(by, of)}`,
  'choose-start': (colour: Omit<Told, 'words'>, voice: Voice): string => `start: ${figuresOf(colour, voice)}`,
  'choose-target': (target: Target, voice: Voice): string => `wanted: ${targetText(target, voice)}`,
  'choose-now': (colour: Told, voice: Voice): string =>
    `Yours is ${colour.words}: ${figuresOf(colour, voice)}.`,
  'choose-right': ({ by, of, reading, next }: RightFigures, voice: Voice): string => {
    const gap = gapText(by, reading, next.reading, of === 2 ? 'the other' : 'any other');
    if (gap !== '') return `That is right: ${askedOf(by, of)}${gap}.`;
    // What has no difference to be told is told by the figures of both; nearness by those of the next alone, after its own.
    const both = by === 'nearest' ? [next] : [{ label: 'yours', reading }, next];
    return `That is right: ${askedOf(by, of)}. ${sentence(itemsText(by, both, voice))}.`;
  },
  /** Two between which the prediction cannot tell. */
  'choose-tied': (
    { by, other }: { readonly by: CriterionId; readonly other: ComparedItem },
    voice: Voice,
  ): string =>
    `Too close to call between yours and ${other.label}, ${readingText(by, other.reading, voice)}: either way counts.`,
  'choose-better': ({ by, reading, best }: BetterFigures, voice: Voice): string =>
    `Better: ${best.label}, ${readingText(by, best.reading, voice)}${gapText(by, best.reading, reading, '')}.`,
  'choose-rest': (
    { by, rest }: { readonly by: CriterionId; readonly rest: readonly ComparedItem[] },
    voice: Voice,
  ): string => {
    const each = rest.map(({ label, reading }) => `${label}, ${readingText(by, reading, voice)}`);
    return `The other${rest.length === 1 ? '' : 's'}: ${each.join('; ')}.`;
  },
};

interface RightFigures {
  readonly by: CriterionId;
  /** How many there are to choose from. */
  readonly of: number;
  readonly reading: CriterionReading;
  readonly next: ComparedItem;
}

interface BetterFigures {
  readonly by: CriterionId;
  /** Of what was chosen. */
  readonly reading: CriterionReading;
  readonly best: ComparedItem;
}
