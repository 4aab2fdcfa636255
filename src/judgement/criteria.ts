/** What options can be compared by: each criterion is one figure computed from the prediction, more being better. */
import { shadingLine } from '../colour/chroma.js';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import type { Evidence, Studio } from '../paints/index.js';
import { type Seen, seeWet } from '../washes/index.js';
import { MODEL_ERROR } from './table.js';

/** A colour to come near to: painter's step, and chroma and hue where they matter. */
export interface Target {
  readonly step: number;
  readonly chroma?: number | undefined;
  readonly hue?: number | undefined;
}

/** What a criterion may need to know beside the option. */
export interface Context {
  readonly studio: Studio;
  readonly start?: ColourReading | undefined;
  readonly target?: Target | undefined;
}

/** A way of comparing. */
export interface Criterion {
  /** "the most chroma". */
  readonly most: string;
  /** What is being compared, for an order: "chroma, most first". */
  readonly order: string;
  /** The figure; more is better. */
  readonly score: (seen: Seen, context: Context) => number;
  /** Two scores closer than this cannot be told apart by the model. */
  readonly tolerance: (evidence: Evidence) => number;
  /** "chroma 42", "step 6.1". */
  readonly words: (seen: Seen, context: Context) => string;
  /** "12 more chroma": what the better score has over the other, between the figures as `words` rounds them. */
  readonly gap: (better: number, other: number, context: Context) => string;
  /** The idea behind a wrong pick, unless the paints themselves show another. */
  readonly idea: string;
  readonly needs?: 'start' | 'target';
}

const step = (evidence: Evidence): number => MODEL_ERROR[evidence].step;
const chroma = (evidence: Evidence): number => MODEL_ERROR[evidence].chroma;

const chromaWords = ({ colour }: Seen): string => `chroma ${colour.chroma.toFixed(0)}`;
const stepWords = ({ colour }: Seen): string => `step ${colour.step.toFixed(1)}`;
const rounded = (figure: number, digits: number): number => Number(figure.toFixed(digits));
const between = (better: number, other: number, digits: number): string =>
  (rounded(better, digits) - rounded(other, digits)).toFixed(digits);
const lessWords = (what: string) => (better: number, other: number) => `${between(better, other, 0)} ${what}`;
const stepGap = (what: string) => (better: number, other: number) =>
  `${between(better, other, 1)} steps ${what}`;

/** How far a colour reaches towards a hue: its chroma, less what points elsewhere. */
function towards(hue: number, { colour }: Seen): number {
  return colour.chroma * Math.cos((hueDifference(hue, colour.hue) * Math.PI) / 180);
}

function leaning(name: string, most: string, hue: number): Criterion {
  return {
    most,
    order: `lean towards ${name}, most first`,
    score: (seen) => towards(hue, seen),
    tolerance: chroma,
    words: (seen) => `${towards(hue, seen).toFixed(0)} towards ${name}`,
    gap: lessWords(`further towards ${name}`),
    idea: 'wrong-lean',
  };
}

/** Share of the chroma that a shade of the start would have at this value; 1 is as bright as a shade can be expected. */
function onTheLine({ colour }: Seen, { start }: Context): number {
  if (start === undefined) return 0;
  return colour.chroma / Math.max(1, shadingLine(start.chroma, start.lab.l, colour.lab.l));
}

/** Distance from a target in L* and C* units; hue counts by the arc between. */
function farFrom({ colour }: Seen, { target }: Context): number {
  if (target === undefined) return 0;
  const light = 10 * (colour.step - target.step);
  if (target.chroma === undefined) return Math.abs(light);
  const strong = colour.chroma - target.chroma;
  const arc =
    target.hue === undefined
      ? 0
      : 2 *
        Math.sqrt(colour.chroma * target.chroma) *
        Math.sin((hueDifference(target.hue, colour.hue) * Math.PI) / 360);
  return Math.hypot(light, strong, arc);
}

/** C* lost between wet and dry. */
function lostInDrying(seen: Seen, { studio }: Context): number {
  return seeWet(studio, seen.laid).colour.chroma - seen.colour.chroma;
}

/** All criteria by the id that a drill file uses. */
export const CRITERIA = {
  'most-chroma': {
    most: 'the most chroma',
    order: 'chroma, most first',
    score: ({ colour }) => colour.chroma,
    tolerance: chroma,
    words: chromaWords,
    gap: lessWords('more chroma'),
    idea: 'lost-chroma',
  },
  greyest: {
    most: 'the least chroma',
    order: 'chroma, least first',
    score: ({ colour }) => -colour.chroma,
    tolerance: chroma,
    words: chromaWords,
    gap: lessWords('less chroma'),
    idea: 'stayed-near',
  },
  darkest: {
    most: 'the darkest value',
    order: 'value, darkest first',
    score: ({ colour }) => colour.step,
    tolerance: step,
    words: stepWords,
    gap: stepGap('darker'),
    idea: 'misread-value',
  },
  lightest: {
    most: 'the lightest value',
    order: 'value, lightest first',
    score: ({ colour }) => -colour.step,
    tolerance: step,
    words: stepWords,
    gap: stepGap('lighter'),
    idea: 'misread-value',
  },
  'keeps-colour': {
    most: 'the most colour kept for its value',
    order: 'colour kept for its value, most first',
    score: onTheLine,
    tolerance: (evidence) => chroma(evidence) / 40,
    words: (seen, context) =>
      `step ${seen.colour.step.toFixed(1)}, ${Math.round(100 * onTheLine(seen, context))} % of the chroma of a plain shade there`,
    gap: (better, other) => `${between(100 * better, 100 * other, 0)} % more of a plain shade's chroma`,
    idea: 'lost-chroma',
    needs: 'start',
  },
  nearest: {
    most: 'the colour nearest to the one wanted',
    order: 'nearness to the colour wanted, nearest first',
    score: (seen, context) => -farFrom(seen, context),
    tolerance: (evidence) => Math.hypot(10 * step(evidence), chroma(evidence)) / 2,
    words: ({ colour }, { target }) =>
      target?.chroma === undefined
        ? `step ${colour.step.toFixed(1)}`
        : `step ${colour.step.toFixed(1)}, chroma ${colour.chroma.toFixed(0)}`,
    gap: (better, other, { target }) =>
      target?.chroma === undefined
        ? stepGap('nearer')(better / 10, other / 10)
        : lessWords('nearer, value and colour taken together,')(better, other),
    idea: 'missed-target',
    needs: 'target',
  },
  warmest: leaning('orange', 'the warmest lean', 55),
  coolest: leaning('blue', 'the coolest lean', 235),
  greenest: leaning('green', 'the greenest lean', 150),
  'most-violet': leaning('violet', 'the most violet lean', 315),
  'dries-most': {
    most: 'the largest loss of chroma in drying',
    order: 'chroma lost in drying, most first',
    score: lostInDrying,
    // No figure for the drying model's own error is published; half of the paints' chroma error is ours.
    tolerance: (evidence) => chroma(evidence) / 2,
    words: (seen, { studio }) =>
      `chroma ${seeWet(studio, seen.laid).colour.chroma.toFixed(1)} wet, ${seen.colour.chroma.toFixed(1)} dry`,
    gap: (better, other) => `${(better - other).toFixed(0)} more chroma lost`,
    idea: 'misjudged-drying',
  },
} as const satisfies Record<string, Criterion>;

export type CriterionId = keyof typeof CRITERIA;

export const CRITERION_IDS = Object.keys(CRITERIA) as CriterionId[];

/** The criterion with this id. */
export function criterionOf(id: CriterionId): Criterion {
  return CRITERIA[id];
}
