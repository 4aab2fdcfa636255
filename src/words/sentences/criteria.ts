/** What things are compared by, in a painter's words. */
import type { CriterionId, CriterionReading, Target } from '../../judgement/index.js';
import { percent, stepsWords } from '../laid.js';
import { scaleUnit, stepText, stepWords, type Voice } from '../voice.js';

interface CriterionWords {
  /** What is asked: "the most chroma". */
  readonly most: string;
  /** The same between two: "more chroma". */
  readonly more: string;
  /** For an order: "chroma, most first". */
  readonly order: string;
  /** What the figure is of: "chroma"; on the learner's scale. */
  readonly unit: (voice: Voice) => string;
  /** The figure alone, or all of what is told where there are several: "42". */
  readonly figure: (reading: CriterionReading, voice: Voice) => string;
  /** By how much one is better, between the figures as they are written: "12 more"; empty where that says nothing. */
  readonly gap: (better: CriterionReading, other: CriterionReading) => string;
}

const rounded = (figure: number, digits: number): number => Number(figure.toFixed(digits));
const apart = (a: number, b: number, digits: number): string =>
  Math.abs(rounded(a, digits) - rounded(b, digits)).toFixed(digits);

type Words = Pick<CriterionWords, 'most' | 'more' | 'order'>;
const none = (): string => '';

const ofChroma = (words: Words, more: string): CriterionWords => ({
  ...words,
  unit: () => 'chroma',
  figure: ({ own }) => own.toFixed(0),
  gap: (better, other) => `${apart(better.own, other.own, 0)} ${more}`,
});

const ofValue = (words: Words, more: string): CriterionWords => ({
  ...words,
  unit: scaleUnit,
  figure: ({ own }, voice) => stepText(own, voice),
  gap: (better, other) => `${stepsWords(Number(apart(better.own, other.own, 1)))} ${more}`,
});

const leaning = (name: string, most: string, more: string): CriterionWords => ({
  most: `the ${most} lean`,
  more: `the ${more} lean`,
  order: `lean towards ${name}, most first`,
  unit: () => `towards ${name}`,
  figure: ({ own }) => own.toFixed(0),
  gap: (better, other) => `${apart(better.own, other.own, 0)} further`,
});

export const CRITERION_WORDS: Readonly<Record<CriterionId, CriterionWords>> = {
  'most-chroma': ofChroma(
    { most: 'the most chroma', more: 'more chroma', order: 'chroma, most first' },
    'more',
  ),
  greyest: ofChroma({ most: 'the least chroma', more: 'less chroma', order: 'chroma, least first' }, 'less'),
  darkest: ofValue(
    { most: 'the darkest value', more: 'the darker value', order: 'value, darkest first' },
    'darker',
  ),
  lightest: ofValue(
    { most: 'the lightest value', more: 'the lighter value', order: 'value, lightest first' },
    'lighter',
  ),
  'keeps-colour': {
    most: 'the most colour kept for its value',
    more: 'more colour kept for its value',
    order: 'colour kept for its value, most first',
    unit: () => 'of what less light would leave,',
    figure: ({ own }) => percent(own),
    gap: none,
  },
  nearest: {
    most: 'the nearest to what is wanted',
    more: 'the nearer to what is wanted',
    order: 'nearness to what is wanted, nearest first',
    unit: none,
    figure: ({ step, chroma }, voice) => `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`,
    gap: none,
  },
  warmest: leaning('orange', 'warmest', 'warmer'),
  coolest: leaning('blue', 'coolest', 'cooler'),
  greenest: leaning('green', 'greenest', 'greener'),
  'most-violet': leaning('violet', 'most violet', 'more violet'),
  'dries-most': {
    most: 'the largest loss of chroma in drying',
    more: 'the larger loss of chroma in drying',
    order: 'chroma lost in drying, most first',
    unit: () => 'chroma wet and dry',
    figure: ({ chroma, own }) => `${own.toFixed(0)} to ${chroma.toFixed(0)}`,
    gap: none,
  },
};

/** What is asked of so many: of two "more chroma", of several "the most chroma". */
export const askedOf = (by: CriterionId, count: number): string =>
  CRITERION_WORDS[by][count === 2 ? 'more' : 'most'];

/** One of the things compared, as it is told. */
export interface ComparedItem {
  readonly label: string;
  readonly reading: CriterionReading;
}

/** "chroma 42", "step 5.0, chroma 30". */
export function readingText(by: CriterionId, reading: CriterionReading, voice: Voice): string {
  const { unit, figure } = CRITERION_WORDS[by];
  return `${unit(voice)} ${figure(reading, voice)}`.trim();
}

/** "chroma: raw sienna 42; sap green 12". */
export function itemsText(by: CriterionId, items: readonly ComparedItem[], voice: Voice): string {
  const { unit, figure } = CRITERION_WORDS[by];
  const head = unit(voice).replace(/,$/, '');
  const each = (word: string): string =>
    items.map(({ label, reading }) => `${label}${word} ${figure(reading, voice)}`).join('; ');
  return head === '' ? each(' at') : `${head}: ${each('')}`;
}

/** ", 12 more than the other", or nothing. */
export function gapText(
  by: CriterionId,
  better: CriterionReading,
  other: CriterionReading,
  than: string,
): string {
  const gap = CRITERION_WORDS[by].gap(better, other);
  return gap === '' ? '' : `, ${gap}${than === '' ? '' : ` than ${than}`}`;
}

/** "step 5.0, chroma 30, hue 50°": what is wanted. */
export function targetText({ step, chroma, hue }: Target, voice: Voice): string {
  return [
    stepWords(step, voice),
    chroma === undefined ? '' : `chroma ${chroma.toFixed(0)}`,
    hue === undefined ? '' : `hue ${hue.toFixed(0)}°`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
