/** The drill that names the value of a shaded side or a cast shadow from what is lit. */
import * as v from 'valibot';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';
import type { Light, Shadow } from './rules.js';

/** Something lit, and which shadow of it is asked: its own shaded side, or the shadow that falls on it. */
export interface LitThing {
  readonly name: string;
  readonly shadow: Shadow;
  /** Painter's step where it is lit; or the paint that stands for it, whose step is then computed. */
  readonly lit: number | Laid;
}

export interface ShadowValuesDrill extends DrillCommon {
  readonly kind: 'shadow-values';
  readonly light: Light;
  readonly things: readonly LitThing[];
  /** Steps to choose from, whole numbers. */
  readonly steps: readonly number[];
}

const litSchema = v.lazy((input: unknown) =>
  typeof input === 'number'
    ? v.pipe(
        v.number(),
        v.minValue(0.5, 'lit is a step 0.5 to 10.5'),
        v.maxValue(10.5, 'lit is a step 0.5 to 10.5'),
      )
    : laidSchema,
);

const STEPS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/** The `shadow-values` part of a drill file. */
export const shadowValuesSchema = v.pipe(
  v.strictObject({
    kind: v.literal('shadow-values'),
    ...commonEntries,
    light: v.picklist(['sun', 'hard-sun', 'overcast'], 'light must be sun, hard-sun or overcast'),
    things: v.pipe(
      v.array(
        v.strictObject({
          name: textSchema(28),
          shadow: v.picklist(['shade', 'cast'], 'shadow must be shade or cast'),
          lit: litSchema,
        }),
        'things must be a list',
      ),
      v.minLength(1, 'things needs one to four'),
      v.maxLength(4, 'things needs one to four'),
    ),
    steps: v.optional(
      v.pipe(
        v.array(
          v.pipe(v.number(), v.integer('steps are whole numbers'), v.minValue(1), v.maxValue(10)),
          'steps must be a list',
        ),
        v.minLength(2, 'steps needs at least two'),
        v.check((steps) => new Set(steps).size === steps.length, 'steps lists one twice'),
      ),
      STEPS,
    ),
    note: v.optional(textSchema(300)),
  }),
  v.check(
    ({ light, things }) => light !== 'overcast' || things.every(({ shadow }) => shadow === 'shade'),
    'under a grey sky only shaded sides can be asked: there is no cast shadow to measure',
  ),
  v.transform(({ note: _note, ...drill }) => drill),
);
