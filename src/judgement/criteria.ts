/** What options can be compared by: each criterion is one figure computed from the prediction, more being better. */
import { shadingLine } from '../colour/chroma.js';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import type { Evidence, Studio } from '../paints/index.js';
import { type Seen, seeWet } from '../washes/index.js';
import { MODEL_ERROR, SEEN_APART } from './table.js';

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

/** What is told of one thing that was compared: its value and chroma, and the criterion's own figure. */
export interface CriterionReading {
  /** Painter's step. */
  readonly step: number;
  /** C*. */
  readonly chroma: number;
  /** What is compared, in its own unit: see {@link CRITERIA}. */
  readonly own: number;
}

/** A way of comparing. */
export interface Criterion {
  /** The figure compared; more is better. */
  readonly score: (seen: Seen, context: Context) => number;
  /** Two scores closer than this cannot be told apart by the model. */
  readonly tolerance: (evidence: Evidence) => number;
  /** A difference of less is not seen, however sure the model is; absent where the model's own room is what can be seen. */
  readonly seen?: number;
  /** The criterion's own figure as it is told. */
  readonly own: (seen: Seen, context: Context) => number;
  /** The idea behind a wrong pick, unless the paints themselves show another. */
  readonly idea: string;
  readonly needs?: 'start' | 'target';
}

const step = (evidence: Evidence): number => MODEL_ERROR[evidence].step;
const chroma = (evidence: Evidence): number => MODEL_ERROR[evidence].chroma;

/** How far a colour reaches towards a hue: its chroma, less what points elsewhere. */
function towards(hue: number, { colour }: Seen): number {
  return colour.chroma * Math.cos((hueDifference(hue, colour.hue) * Math.PI) / 180);
}

/** C* towards a hue. */
function leaning(hue: number): Criterion {
  const score = (seen: Seen): number => towards(hue, seen);
  return { score, tolerance: chroma, seen: SEEN_APART.chroma.least, own: score, idea: 'wrong-lean' };
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

const ownChroma = ({ colour }: Seen): number => colour.chroma;
const ownStep = ({ colour }: Seen): number => colour.step;
const OF_CHROMA = { tolerance: chroma, seen: SEEN_APART.chroma.least, own: ownChroma };
const OF_VALUE = { tolerance: step, seen: SEEN_APART.step, own: ownStep };

/** All criteria by the id that a drill file uses. */
const CRITERIA = {
  /** C*. */
  'most-chroma': { score: ownChroma, ...OF_CHROMA, idea: 'lost-chroma' },
  greyest: { score: (seen) => -ownChroma(seen), ...OF_CHROMA, idea: 'stayed-near' },
  /** Painter's step. */
  darkest: { score: ownStep, ...OF_VALUE, idea: 'misread-value' },
  lightest: { score: (seen) => -ownStep(seen), ...OF_VALUE, idea: 'misread-value' },
  /** Share of the chroma that less light alone would leave, 0-1 and above. */
  'keeps-colour': {
    score: onTheLine,
    tolerance: (evidence) => chroma(evidence) / 40,
    own: onTheLine,
    idea: 'lost-chroma',
    needs: 'start',
  },
  /** Distance from the target, L* and C* units. */
  nearest: {
    score: (seen, context) => -farFrom(seen, context),
    tolerance: (evidence) => Math.hypot(10 * step(evidence), chroma(evidence)) / 2,
    own: farFrom,
    idea: 'missed-target',
    needs: 'target',
  },
  warmest: leaning(55),
  coolest: leaning(235),
  greenest: leaning(150),
  'most-violet': leaning(315),
  /** C* while wet. */
  'dries-most': {
    score: lostInDrying,
    // No figure for the drying model's own error is published; half of the paints' chroma error is ours.
    tolerance: (evidence) => chroma(evidence) / 2,
    own: (seen, { studio }) => seeWet(studio, seen.laid).colour.chroma,
    idea: 'misjudged-drying',
  },
} as const satisfies Record<string, Criterion>;

export type CriterionId = keyof typeof CRITERIA;

export const CRITERION_IDS = Object.keys(CRITERIA) as CriterionId[];

/** The criterion with this id. */
export function criterionOf(id: CriterionId): Criterion {
  return CRITERIA[id];
}

/** What is told of one thing compared. */
export function readingBy(by: CriterionId, seen: Seen, context: Context): CriterionReading {
  const { step: value, chroma: strength } = seen.colour;
  return { step: value, chroma: strength, own: criterionOf(by).own(seen, context) };
}
