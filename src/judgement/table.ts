/**
 * Every tolerance, margin, boundary and mark that a judgement rests on. Nothing in the program judges by a figure that does
 * not stand here. Value is in painter's steps (1 paper, 10 darkest), chroma in C*ab, hue in CIELAB degrees, marks 0-100.
 */
import type { Evidence } from '../paints/index.js';
import type { Aim } from './types.js';

/** A mark of this or more is good: every part of the answer is. */
export const GOOD_MARK = 85;
/** Below this an answer is off. */
export const FAIR_MARK = 55;
/** A trap must mark below this. */
export const POOR_MARK = 50;
/** Most marks for a wrong pick. */
export const WRONG_PICK_MARK = 45;

/** Beyond the asked band: steps that still count as fair. */
export const VALUE_MARGIN = 0.5;
/** C* beyond a bound that still counts as fair: a share of the bound, at least so much. */
export const CHROMA_MARGIN = { share: 0.15, least: 5 } as const;
/** Degrees beyond the asked angle that still count as fair. */
export const HUE_MARGIN_DEG = 15;

/** Below this chroma a paint or a wash is a black, a grey or a white rather than a colour. */
export const NEUTRAL_CHROMA = 12;
/** Below this chroma a colour has no hue to speak of. */
export const NO_HUE_CHROMA = 5;
/** A neutral paint lighter than this step is a white. */
export const WHITE_STEP = 2;

/** How far the hue may turn from the start's, degrees, where a drill asks no hue of its own; only where the start is a colour. */
export const HUE_BOUND_DEG: Readonly<Partial<Record<Aim, number>>> = {
  shade: 25,
  rich: 40,
  dull: 25,
  distance: 30,
};
/** A shade is at least so much darker than its start, a distance so much lighter, steps. */
export const LEAST_MOVE = { shade: 0.5, distance: 0.3 } as const;
/** A dulled colour keeps at most this share of the start's chroma. */
export const DULLED_SHARE = 0.75;
/** Share of the start's chroma from which nothing was dulled at all, and the most that such a chroma scores, 0-1. */
export const NOT_DULLED = { share: 0.9, score: 0.25 } as const;

/**
 * Two answers differ so that it is seen: by so many steps; by a third of the better one's C*, from `most` in any case and never by
 * less than `least`; or by so many degrees of hue, where both have one.
 */
export const SEEN_APART = { step: 0.5, chroma: { share: 1 / 3, least: 5, most: 10 }, hueDeg: 20 } as const;

/** Marks taken for a paint that the painting does not have yet. */
export const COHESION_COST = 8;
/** Share of the tray's brightest that is asked where it can do better than hold the shading line. */
export const TRAY_SHARE = 0.75;
/** Share of the shading line from which colour counts as kept. */
export const KEPT_LINE = 0.85;

/**
 * What two paints do on the way from one to the other, both at `strength` (see relation.ts). `kept`: chroma left, as a share of
 * what a straight way would have; `least`: C* at the greyest point; `thirdDeg`: degrees from both paints at which a third
 * colour has appeared. Set on thirty-six pairs that painters know (common practice, no source).
 */
export const RELATION = {
  strength: 0.3,
  step: 0.05,
  across: { kept: 0.4, least: 16 },
  around: { kept: 0.8, thirdDeg: 45 },
} as const;

/** How far a prediction of a change may be off, root mean square. */
export interface ModelError {
  readonly step: number;
  readonly chroma: number;
}

/**
 * Error of the predicted change from a start to a mixture, by the weakest evidence among the paints.
 * `measured`: root mean square over 1130 changes from a measured film to a mixture that the fit did not see, all at masstone and
 * thicker (src/accuracy/data/blind.json, modelError). In thinner washes nothing was measured; the spread of fits alone gives less
 * there (0.26 steps, 4.5), so the measured figure stands for them too. The others know their strength to a factor of two at
 * best, which a change of value shows first.
 */
export const MODEL_ERROR: Readonly<Record<Evidence, ModelError>> = {
  measured: { step: 0.34, chroma: 5.2 },
  transferred: { step: 0.55, chroma: 7 },
  estimated: { step: 0.55, chroma: 7 },
};

/** The narrowest band that may be asked, from its middle to its edge, by the weakest evidence. */
export const LEAST_BAND: Readonly<Record<Evidence, ModelError>> = {
  measured: { step: 0.5, chroma: 8 },
  transferred: { step: 0.8, chroma: 11 },
  estimated: { step: 0.8, chroma: 11 },
};
/** Amounts of a paint whose strength is only estimated differ at least by this factor. */
export const LEAST_FACTOR = 4;

/** L* 25, where a dark is deep, as a step. */
export const DEEP_STEP = 7.95;
/** Chroma that ends a lean: up to here a colour is a grey that leans. */
export const LEAN_CHROMA = 20;
/** Least chroma of a start whose brightness or hue is asked to be kept. */
export const CHROMATIC_START = 20;

/** Share of random answers that may mark well: of many, of two (one in two is unavoidable), of many in a made-up drill. */
export const MOST_LUCK = { many: 0.45, two: 0.6, made: 0.4 } as const;
/** By how much an answer between the shown amounts may beat the best of them. */
export const BETWEEN_ROOM = 0.1;

/**
 * Steps at which light gives way to middle and middle to dark: the range of watercolour from paper (L* 97) to the darkest
 * masstone (L* 20) cut in three even parts, L* 71 and 46. Range: B. MacEvoy, handprint.com, color11.html (value).
 */
export const VALUE_BOUNDS = [3.5, 6] as const;
/** So near to a bound, in steps, a value counts on either side. */
export const BOUND_ROOM = 0.4;
/** Span of a plan from lightest to darkest from which it is wide, steps of the eight from paper to black. Common practice, no source. */
export const WIDE_SPAN = 6;

/** Two values this near share a value; a change of less is none. */
export const SAME_VALUE = 0.5;
/**
 * Loss of chroma in drying, as a share, from which it is more than a little; within `room` of it both sizes count. The same film wet
 * and dry shares its errors, so that a change of value is told apart from within `roomSteps`.
 */
export const DRYING_LOSS = { clear: 0.1, room: 0.01, roomSteps: 0.1 } as const;

/** Degrees beyond a plan at which a hue scores nothing. */
export const PLAN_HUE_FALL = 40;
/** Staining, 0-4, from which a paint holds on to the paper. */
export const STAINS = 3;

/**
 * What a recipe is held to. `value`: steps that it may lie from the value asked, half of what still shares a value; `dulled`: shares of
 * the start's chroma between which a colour is dulled and still a colour; `reached`: CIEDE2000 up to which a target is reached,
 * about what is just noticed side by side; `matters`: CIEDE2000 from which a paint has a part in what a mixture gives, for anyone to see.
 */
export const RECIPE = { value: SAME_VALUE / 2, dulled: [0.35, 0.65], reached: 1, matters: 2 } as const;
