/** The drill that puts three things in order by value, chroma or another figure. */
import * as v from 'valibot';
import { type CriterionId, criterionOf, type Target } from '../../../judgement/index.js';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, idSchema, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';
import { criterionSchema, distinctIds, targetSchema } from '../choose/schema.js';

/** One of the three; the name is short, since the orders are written out in full. */
export interface OrderItem {
  readonly id: string;
  readonly name: string;
  readonly laid: Laid;
}

export interface OrderDrill extends DrillCommon {
  readonly kind: 'order';
  readonly by: CriterionId;
  /** A second question: which one comes first by this. */
  readonly also?: CriterionId | undefined;
  readonly start?: Laid | undefined;
  readonly target?: Target | undefined;
  readonly items: readonly OrderItem[];
}

const itemSchema = v.strictObject({ id: idSchema, name: textSchema(12), laid: laidSchema });

/** The `order` part of a drill file. */
export const orderSchema = v.pipe(
  v.strictObject({
    kind: v.literal('order'),
    ...commonEntries,
    by: criterionSchema,
    also: v.optional(criterionSchema),
    start: v.optional(laidSchema),
    target: v.optional(targetSchema),
    items: v.pipe(
      v.array(itemSchema, 'items must be a list'),
      v.length(3, 'items needs exactly three'),
      v.check((list) => distinctIds(list), 'two items have the same id'),
    ),
    note: v.optional(textSchema(300)),
  }),
  v.check(
    ({ by, also, start }) =>
      start !== undefined ||
      (criterionOf(by).needs !== 'start' && (also === undefined || criterionOf(also).needs !== 'start')),
    'start is missing: this way of comparing needs it',
  ),
  v.check(
    ({ by, also, target }) =>
      target !== undefined ||
      (criterionOf(by).needs !== 'target' && (also === undefined || criterionOf(also).needs !== 'target')),
    'target is missing: this way of comparing needs it',
  ),
  v.transform(({ note: _note, ...drill }) => drill),
);
