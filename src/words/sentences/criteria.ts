/** What things are compared by, in a painter's words. */
import type { CriterionId, CriterionReading, Target } from '../../judgement/index.js';
import { percent } from '../laid.js';
import { stepWords, type Voice } from '../voice.js';

interface CriterionWords {
  /** What is asked: "the most chroma". */
  readonly most: string;
  /** For an order: "chroma, most first". */
  readonly order: string;
  /** What is told of one thing: "chroma 42". */
  readonly is: (reading: CriterionReading, voice: Voice) => string;
  /** By how much one is better, between the figures as they are written: "12 more chroma"; empty where that says nothing. */
  readonly gap: (better: CriterionReading, other: CriterionReading) => string;
}

const rounded = (figure: number, digits: number): number => Number(figure.toFixed(digits));
const apart = (a: number, b: number, digits: number): string =>
  Math.abs(rounded(a, digits) - rounded(b, digits)).toFixed(digits);

const chromaIs = ({ own }: CriterionReading): string => `chroma ${own.toFixed(0)}`;
const valueIs = ({ own }: CriterionReading, voice: Voice): string => stepWords(own, voice);
const byChroma = (what: string) => (better: CriterionReading, other: CriterionReading) =>
  `${apart(better.own, other.own, 0)} ${what}`;
const bySteps = (what: string) => (better: CriterionReading, other: CriterionReading) =>
  `${apart(better.own, other.own, 1)} ${what}`;

function leaning(name: string, most: string): CriterionWords {
  return {
    most,
    order: `lean towards ${name}, most first`,
    is: ({ own }) =>
      own < 0 ? `${(-own).toFixed(0)} away from ${name}` : `${own.toFixed(0)} towards ${name}`,
    gap: byChroma(`further towards ${name}`),
  };
}

export const CRITERION_WORDS: Readonly<Record<CriterionId, CriterionWords>> = {
  'most-chroma': {
    most: 'the most chroma',
    order: 'chroma, most first',
    is: chromaIs,
    gap: byChroma('more chroma'),
  },
  greyest: {
    most: 'the least chroma',
    order: 'chroma, least first',
    is: chromaIs,
    gap: byChroma('less chroma'),
  },
  darkest: { most: 'the darkest value', order: 'value, darkest first', is: valueIs, gap: bySteps('darker') },
  lightest: {
    most: 'the lightest value',
    order: 'value, lightest first',
    is: valueIs,
    gap: bySteps('lighter'),
  },
  'keeps-colour': {
    most: 'the most colour kept for its value',
    order: 'colour kept for its value, most first',
    is: ({ step, own }, voice) =>
      `${stepWords(step, voice)}, ${percent(own)} of the colour that less light would leave`,
    gap: () => '',
  },
  nearest: {
    most: 'the nearest to the colour wanted',
    order: 'nearness to the colour wanted, nearest first',
    is: ({ step, chroma }, voice) => `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`,
    gap: () => '',
  },
  warmest: leaning('orange', 'the warmest lean'),
  coolest: leaning('blue', 'the coolest lean'),
  greenest: leaning('green', 'the greenest lean'),
  'most-violet': leaning('violet', 'the most violet lean'),
  'dries-most': {
    most: 'the largest loss of chroma in drying',
    order: 'chroma lost in drying, most first',
    is: ({ chroma, own }) => `chroma ${own.toFixed(0)} wet, ${chroma.toFixed(0)} dry`,
    gap: (better, other) => `${apart(lost(better), lost(other), 0)} more chroma lost`,
  },
};

const lost = ({ chroma, own }: CriterionReading): number => rounded(own, 0) - rounded(chroma, 0);

/** One of the things compared, as it is told. */
export interface ComparedItem {
  readonly label: string;
  readonly reading: CriterionReading;
}

/** "raw sienna, chroma 42; sap green, chroma 12". */
export function itemsText(by: CriterionId, items: readonly ComparedItem[], voice: Voice): string {
  return items.map(({ label, reading }) => `${label} ${CRITERION_WORDS[by].is(reading, voice)}`).join('; ');
}

/** ", 12 more chroma than sap green", or nothing. */
export function gapText(
  by: CriterionId,
  better: CriterionReading,
  other: CriterionReading,
  than: string,
): string {
  const gap = CRITERION_WORDS[by].gap(better, other);
  return gap === '' ? '' : `, ${gap} than ${than}`;
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
