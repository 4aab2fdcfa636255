/** Readings of dried patches as a learner's file holds them. Pure. */
import * as v from 'valibot';
import { washSchema } from '../drills/laid-schema.js';

/** Readings of one learner, and how many of a box's latest are used: tubes get empty, and new ones are others. */
export const MOST_READINGS = 400;
export const READINGS_USED = 40;

const bounded = (what: string, least: number, most: number) =>
  v.pipe(
    v.number(`${what} must be a number`),
    v.check((x) => x >= least && x <= most, `${what} must be ${least} to ${most}`),
  );

const driedSchema = v.lazy((input: unknown) =>
  typeof input === 'object' && input !== null && 'lab' in input
    ? v.strictObject({
        lab: v.strictObject({
          l: bounded('L*', 0, 100),
          a: bounded('a*', -200, 200),
          b: bounded('b*', -200, 200),
        }),
      })
    : v.strictObject({ step: bounded('step', 0.5, 10.5) }),
);

/** See `Reading`; `at` is when it was entered, UTC. */
export const readingEntries = {
  at: v.pipe(
    v.string('must be a date and time'),
    v.isoTimestamp('must be a date and time like 2026-03-02T10:15:00.000Z'),
  ),
  wash: washSchema,
  alone: v.optional(driedSchema),
  mixed: driedSchema,
};
