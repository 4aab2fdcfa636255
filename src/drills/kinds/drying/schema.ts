/** The drill that asks what a wet wash will be when it is dry, and what to do about it. */
import * as v from 'valibot';
import type { Target } from '../../../judgement/index.js';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';
import { targetSchema } from '../choose/schema.js';

const DRYING_ASKS = ['value', 'chroma', 'mend', 'wait'] as const;
/** Which way value goes; which way chroma goes and how far; what to do to the wash so that it dries to the target; how long to wait. */
export type DryingAsk = (typeof DRYING_ASKS)[number];

export interface DryingDrill extends DrillCommon {
  readonly kind: 'drying';
  /** The wash, as it is laid; its last layer is wet. */
  readonly wash: Laid;
  /** The dry colour that is wanted; needed by `mend`. */
  readonly target?: Target | undefined;
  readonly asks: readonly DryingAsk[];
}

/** The `drying` part of a drill file. */
export const dryingSchema = v.pipe(
  v.strictObject({
    kind: v.literal('drying'),
    ...commonEntries,
    wash: laidSchema,
    target: v.optional(targetSchema),
    asks: v.pipe(
      v.array(v.picklist(DRYING_ASKS, `asks are ${DRYING_ASKS.join(', ')}`), 'asks must be a list'),
      v.minLength(1, 'asks needs at least one'),
      v.check((list) => new Set(list).size === list.length, 'asks lists one twice'),
    ),
    note: v.optional(textSchema(300)),
  }),
  v.check(
    ({ asks, target }) => !asks.includes('mend') || target !== undefined,
    'target is missing: what to do about the wash depends on it',
  ),
  v.transform(({ note: _note, ...drill }) => drill),
);
