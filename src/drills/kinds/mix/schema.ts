/** The drill that darkens or dulls a colour: which second paint, how much of it, how it goes on, and how much water. */
import * as v from 'valibot';
import { AIMS, type Goal } from '../../../judgement/index.js';
import type { FirstWash, StrokeAmount } from '../../../washes/index.js';
import {
  bandSchema,
  commonEntries,
  distinctList,
  paintIdSchema,
  paintsSchema,
  strengthSchema,
  textSchema,
} from '../../fields-schema.js';
import { shareSchema } from '../../laid-schema.js';
import { subjectSchema } from '../../lexicon.js';
import type { DrillCommon } from '../../types.js';

/** Amounts stirred in, parts of the second paint to one part of the paint of the wash, least first: what painters call touches. */
export const TOUCHES = ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1', '2:1', '4:1'] as const;
export type Touch = (typeof TOUCHES)[number];
/** Those that are open where a drill says nothing: more than equal parts is another wash. */
export const USUAL_TOUCHES: readonly Touch[] = TOUCHES.slice(0, 6);

/** Parts of the second paint to one part of the paint of the wash. */
export function touchRatio(touch: string): number {
  const [second, first] = touch.split(':').map(Number);
  return (second as number) / (first as number);
}

export interface MixDrill extends DrillCommon {
  readonly kind: 'mix';
  readonly start: FirstWash;
  readonly goal: Goal;
  /** What is painted, an entry of the lexicon: the best answer must be a colour that it can have. */
  readonly subject?: string | undefined;
  /** Second paints to choose from; one alone is given, and the rest is the question. */
  readonly tray: readonly string[];
  /** Paints that the painting already has: free, where any other costs cohesion. Absent: no cost. */
  readonly painting?: readonly string[] | undefined;
  /** Amounts that may be stirred in; none closes the way. */
  readonly amounts: readonly Touch[];
  /** Strengths of a glaze that may be laid over the dry wash. */
  readonly glazes: readonly number[];
  /** Strokes that may be laid beside it: their share of the paper and their strength. */
  readonly strokes: readonly StrokeAmount[];
  /** Water after stirring: one part in so many, 1 for none. */
  readonly thins: readonly number[];
}

const PLACES = ['second paint', 'third paint', 'fourth paint', 'fifth paint'] as const;

/** What the paint to be chosen is called, by how many the wash has; where it may be one of several in the wash, the paint to add. */
export function addedPaint({ start, tray }: Pick<MixDrill, 'start' | 'tray'>): string {
  const inWash = Object.keys(start.paints);
  const isOpen = inWash.length > 1 && tray.some((id) => inWash.includes(id));
  return isOpen ? 'paint to add' : (PLACES[inWash.length - 1] as string);
}

const goalSchema = v.pipe(
  v.strictObject({
    aim: v.picklist(AIMS, `aim must be one of ${AIMS.join(', ')}`),
    value: bandSchema(0.5, 10.5, 'value (painter’s steps, 1 paper to 10 dark)'),
    chroma: v.optional(bandSchema(0, 150, 'chroma')),
    hue: v.optional(
      v.strictObject({
        near: v.union(
          [v.literal('start'), v.pipe(v.number(), v.minValue(0), v.maxValue(360))],
          'near must be `start` or an angle 0 to 360',
        ),
        within: v.pipe(
          v.number('within must be degrees'),
          v.minValue(5, 'within is 5 to 180'),
          v.maxValue(180, 'within is 5 to 180'),
        ),
      }),
    ),
  }),
  v.check(
    ({ aim, chroma }) => aim === 'rich' || (aim === 'shade') === (chroma === undefined),
    'a shade has its chroma from the light: leave chroma out; dull, distance, neutral and lean need it',
  ),
  v.check(
    ({ aim, hue }) => aim !== 'lean' || typeof hue?.near === 'number',
    'a lean needs a hue, near an angle',
  ),
);

const thinSchema = v.pipe(
  v.number('a thinning must be a number'),
  v.check((thin) => thin >= 1 && thin <= 16, 'a thinning is 1 (no water) to 16'),
);

/** The `mix` part of a drill file. */
export const mixSchema = v.pipe(
  v.strictObject({
    kind: v.literal('mix'),
    ...commonEntries,
    start: v.strictObject({ paints: paintsSchema, strength: strengthSchema }),
    goal: goalSchema,
    subject: v.optional(subjectSchema),
    tray: distinctList(paintIdSchema, 1, 12),
    painting: v.optional(distinctList(paintIdSchema, 1, 12)),
    amounts: v.optional(
      distinctList(v.picklist(TOUCHES, `an amount is one of ${TOUCHES.join(', ')}`), 0, TOUCHES.length),
    ),
    glazes: v.optional(distinctList(strengthSchema, 0, 8), []),
    strokes: v.optional(
      v.pipe(
        v.array(v.strictObject({ share: shareSchema, strength: strengthSchema }), 'strokes must be a list'),
        v.maxLength(8, 'strokes takes at most eight'),
        v.check(
          (list) => new Set(list.map(({ share, strength }) => `${share} ${strength}`)).size === list.length,
          'strokes lists one twice',
        ),
      ),
      [],
    ),
    thins: v.optional(distinctList(thinSchema, 1, 6), [1]),
    // Words for teachers reading the file; never shown to a learner.
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, amounts, ...drill }) => ({
    ...drill,
    amounts: amounts ?? (drill.glazes.length + drill.strokes.length > 0 ? [] : USUAL_TOUCHES),
  })),
  v.check(
    ({ amounts, glazes, strokes, thins }) =>
      (thins.length === 1 && thins[0] === 1) || (amounts.length > 0 && glazes.length + strokes.length === 0),
    'thins go with stirring alone: a glaze and strokes have their water in their strength',
  ),
  v.check(
    ({ tray, amounts, glazes, strokes, thins }) =>
      tray.length * (amounts.length + glazes.length + strokes.length) * thins.length > 1,
    'leaves nothing to choose: open a second paint, an amount, a way or the water',
  ),
);
