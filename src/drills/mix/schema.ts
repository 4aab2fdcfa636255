/** The drill that darkens or dulls a colour: which second paint, how much, and, where opened, which way and how strong. */
import * as v from 'valibot';
import type { Way } from '../../paints/index.js';
import {
  bandSchema,
  commonEntries,
  distinctList,
  pigmentIdSchema,
  recipeSchema,
  strengthSchema,
  textSchema,
  waySchema,
} from '../fields-schema.js';
import type { DrillCommon, Recipe } from '../types.js';

/** Amounts of the second paint for one part of the first, least first: what painters call touches. */
export const TOUCHES = ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'] as const;
export type Touch = (typeof TOUCHES)[number];

/** Parts of the second paint for one part of the first. */
export function touchRatio(touch: string): number {
  const [second, first] = touch.split(':').map(Number);
  return (second as number) / (first as number);
}

/** What the mixture has to do. Value in painter's steps (1 paper, 10 dark); chroma as C*, or `bright`: as much as can be kept. */
export interface MixGoal {
  readonly value: readonly [number, number];
  readonly chroma: 'bright' | readonly [number, number];
  readonly hue?: { readonly near: 'start' | number; readonly within: number } | undefined;
}

export interface MixDrill extends DrillCommon {
  readonly kind: 'mix';
  readonly start: Recipe;
  readonly goal: MixGoal;
  /** Second paints to choose from; one alone is given, and the rest is the question. */
  readonly tray: readonly string[];
  /** Paints that the painting already has: free, where any other costs cohesion. Absent: no cost. */
  readonly painting?: readonly string[] | undefined;
  readonly amounts: readonly Touch[];
  readonly ways: readonly Way[];
  readonly strengths: readonly number[];
}

/** The `mix` part of a drill file. */
export const mixSchema = v.pipe(
  v.strictObject({
    kind: v.literal('mix'),
    ...commonEntries,
    start: v.pipe(
      recipeSchema,
      v.check(
        ({ way }) => way === undefined || way === 'puddle',
        'a mix drill starts from a puddle: leave `way` out',
      ),
    ),
    goal: v.strictObject({
      value: bandSchema(0.5, 10.5, 'value (painter’s steps, 1 paper to 10 dark)'),
      chroma: v.union(
        [v.literal('bright'), bandSchema(0, 150, 'chroma')],
        'chroma must be `bright` or a pair like [0, 12]',
      ),
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
    tray: distinctList(pigmentIdSchema, 1, 12),
    painting: v.optional(distinctList(pigmentIdSchema, 1, 12)),
    amounts: v.optional(
      distinctList(v.picklist(TOUCHES, `an amount is one of ${TOUCHES.join(', ')}`), 1, TOUCHES.length),
      [...TOUCHES],
    ),
    ways: v.optional(distinctList(waySchema, 1, 3), ['puddle']),
    strengths: v.optional(distinctList(strengthSchema, 1, 8)),
    // Words for teachers reading the file; never shown to a learner.
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, ...drill }) => ({
    ...drill,
    strengths: drill.strengths ?? [drill.start.strength],
  })),
  v.check(
    ({ tray, amounts, ways, strengths }) => tray.length * amounts.length * ways.length * strengths.length > 1,
    'leaves nothing to choose: open a second paint, amount, way or strength',
  ),
);
