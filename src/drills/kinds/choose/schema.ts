/** The drill that asks which of two to four things does something most: greyest, darkest, nearest to a target … */
import * as v from 'valibot';
import { CRITERION_IDS, type CriterionId, criterionOf, type Target } from '../../../judgement/index.js';
import type { Laid } from '../../../washes/index.js';
import { commonEntries, idSchema, textSchema } from '../../fields-schema.js';
import { laidSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';

/** One thing that can be picked. */
export interface ChooseOption {
  readonly id: string;
  /** Words instead of the names of the paints. */
  readonly label?: string | undefined;
  readonly laid: Laid;
}

export interface ChooseDrill extends DrillCommon {
  readonly kind: 'choose';
  readonly by: CriterionId;
  /** The colour that the question starts from; needed by `keeps-colour`. */
  readonly start?: Laid | undefined;
  /** Needed by `nearest`. */
  readonly target?: Target | undefined;
  /** Shows the colours of the options: for values to be read off, not predicted. */
  readonly show?: boolean | undefined;
  readonly options: readonly ChooseOption[];
}

export const criterionSchema = v.picklist(CRITERION_IDS, `by must be one of ${CRITERION_IDS.join(', ')}`);

export const targetSchema = v.strictObject({
  step: v.pipe(
    v.number('step must be a number'),
    v.minValue(0.5, 'step is 0.5 to 10.5'),
    v.maxValue(10.5, 'step is 0.5 to 10.5'),
  ),
  chroma: v.optional(
    v.pipe(
      v.number('chroma must be a number'),
      v.minValue(0, 'chroma is 0 to 150'),
      v.maxValue(150, 'chroma is 0 to 150'),
    ),
  ),
  hue: v.optional(
    v.pipe(
      v.number('hue must be degrees'),
      v.minValue(0, 'hue is 0 to 360'),
      v.maxValue(360, 'hue is 0 to 360'),
    ),
  ),
});

const optionSchema = v.strictObject({ id: idSchema, label: v.optional(textSchema(48)), laid: laidSchema });

/** Different ids in a list of things that have one. */
export function distinctIds(list: readonly { readonly id: string }[]): boolean {
  return new Set(list.map(({ id }) => id)).size === list.length;
}

/** The `choose` part of a drill file. */
export const chooseSchema = v.pipe(
  v.strictObject({
    kind: v.literal('choose'),
    ...commonEntries,
    by: criterionSchema,
    start: v.optional(laidSchema),
    target: v.optional(targetSchema),
    show: v.optional(v.boolean('show must be true or false')),
    options: v.pipe(
      v.array(optionSchema, 'options must be a list'),
      v.minLength(2, 'options needs two to four'),
      v.maxLength(4, 'options needs two to four'),
      v.check((list) => distinctIds(list), 'two options have the same id'),
    ),
    note: v.optional(textSchema(300)),
  }),
  v.check(
    ({ by, start }) => criterionOf(by).needs !== 'start' || start !== undefined,
    'start is missing: this way of comparing needs it',
  ),
  v.check(
    ({ by, target }) => criterionOf(by).needs !== 'target' || target !== undefined,
    'target is missing: this way of comparing needs it',
  ),
  v.transform(({ note: _note, ...drill }) => drill),
);
