/** The drill that finds what is wrong with a passage and the one repair that mends it. */
import * as v from 'valibot';
import type { Laid, Wash } from '../../../washes/index.js';
import { bandSchema, commonEntries, idSchema, textSchema } from '../../fields-schema.js';
import { laidSchema, layersSchema, washSchema } from '../../laid-schema.js';
import type { DrillCommon } from '../../types.js';
import { distinctIds } from '../choose/schema.js';

/** Where an area should be. */
export interface Plan {
  readonly step: readonly [number, number];
  readonly chroma?: readonly [number, number] | undefined;
  readonly hue?: { readonly near: number; readonly within: number } | undefined;
}

export interface PlannedArea {
  readonly id: string;
  readonly name: string;
  /** What lies there, dry: one wash or layers. */
  readonly laid: Wash | { readonly layers: readonly Wash[] };
  readonly plan: Plan;
}

/** Something to do to an area: glaze it, lift a share of the paint, lay it anew, or leave it. */
export type Repair =
  | { readonly glaze: Wash }
  | { readonly lift: number }
  | { readonly anew: Laid }
  | { readonly leave: true };

export interface RepairOption {
  readonly id: string;
  readonly label?: string | undefined;
  readonly repair: Repair;
}

export interface DiagnosisDrill extends DrillCommon {
  readonly kind: 'diagnosis';
  readonly areas: readonly PlannedArea[];
  readonly repairs: readonly RepairOption[];
  /** Nothing may be out, as the scene says; "none" is offered only then. */
  readonly none?: boolean | undefined;
}

const planSchema = v.strictObject({
  step: bandSchema(0.5, 10.5, 'step (1 paper to 10 dark)'),
  chroma: v.optional(bandSchema(0, 150, 'chroma')),
  hue: v.optional(
    v.strictObject({
      near: v.pipe(
        v.number('near must be degrees'),
        v.minValue(0, 'near is 0 to 360'),
        v.maxValue(360, 'near is 0 to 360'),
      ),
      within: v.pipe(
        v.number('within must be degrees'),
        v.minValue(5, 'within is 5 to 180'),
        v.maxValue(180, 'within is 5 to 180'),
      ),
    }),
  ),
});

const lyingSchema = v.lazy((input: unknown) =>
  typeof input === 'object' && input !== null && 'layers' in input ? layersSchema : washSchema,
);

const repairSchema = v.lazy((input: unknown) => {
  if (typeof input === 'object' && input !== null) {
    if ('lift' in input) {
      return v.strictObject({
        lift: v.pipe(
          v.number('lift must be the share of the paint taken up'),
          v.check((share) => share > 0 && share < 1, 'lift must be above 0 and below 1'),
        ),
      });
    }
    if ('anew' in input) return v.strictObject({ anew: laidSchema });
    if ('leave' in input) return v.strictObject({ leave: v.literal(true, 'leave must be true') });
  }
  return v.strictObject({ glaze: washSchema });
});

/** The `diagnosis` part of a drill file. */
export const diagnosisSchema = v.pipe(
  v.strictObject({
    kind: v.literal('diagnosis'),
    ...commonEntries,
    areas: v.pipe(
      v.array(
        v.strictObject({ id: idSchema, name: textSchema(20), laid: lyingSchema, plan: planSchema }),
        'areas must be a list',
      ),
      v.minLength(2, 'areas needs two to five'),
      v.maxLength(5, 'areas needs two to five'),
      v.check((list) => distinctIds(list), 'two areas have the same id'),
      v.check((list) => list.every(({ id }) => id !== 'none'), 'an area cannot have the id "none"'),
    ),
    repairs: v.pipe(
      v.array(
        v.strictObject({ id: idSchema, label: v.optional(textSchema(48)), repair: repairSchema }),
        'repairs must be a list',
      ),
      v.minLength(2, 'repairs needs two to six'),
      v.maxLength(6, 'repairs needs two to six'),
      v.check((list) => distinctIds(list), 'two repairs have the same id'),
    ),
    none: v.optional(v.boolean('none must be true or false')),
    note: v.optional(textSchema(300)),
  }),
  v.transform(({ note: _note, ...drill }) => drill),
);
