/** All kinds of drill: the one place that a new kind is added to. */
import * as v from 'valibot';
import { perStudio, type Studio } from '../../paints/index.js';
import type { Answer, Kind } from '../types.js';
import { chooseKind } from './choose/index.js';
import { type ChooseDrill, chooseSchema } from './choose/schema.js';
import { diagnosisKind } from './diagnosis/index.js';
import { type DiagnosisDrill, diagnosisSchema } from './diagnosis/schema.js';
import { dryingKind } from './drying/index.js';
import { type DryingDrill, dryingSchema } from './drying/schema.js';
import { mixKind } from './mix/index.js';
import { type MixDrill, mixSchema } from './mix/schema.js';
import { orderKind } from './order/index.js';
import { type OrderDrill, orderSchema } from './order/schema.js';
import { shadeChromaKind } from './shade-chroma/index.js';
import { type ShadeChromaDrill, shadeChromaSchema } from './shade-chroma/schema.js';
import { shadowValuesKind } from './shadow-values/index.js';
import { type ShadowValuesDrill, shadowValuesSchema } from './shadow-values/schema.js';
import { sortValuesKind } from './sort-values/index.js';
import { type SortValuesDrill, sortValuesSchema } from './sort-values/schema.js';
import { washesKind } from './washes/index.js';
import { type WashesDrill, washesSchema } from './washes/schema.js';
import { workedKind } from './worked/index.js';
import { type WorkedDrill, workedSchema } from './worked/schema.js';

/** Any drill. */
export type Drill =
  | MixDrill
  | ChooseDrill
  | OrderDrill
  | WashesDrill
  | SortValuesDrill
  | ShadowValuesDrill
  | ShadeChromaDrill
  | DryingDrill
  | DiagnosisDrill
  | WorkedDrill;

const kindsIn = perStudio((studio): { readonly [K in Drill['kind']]: Kind<Extract<Drill, { kind: K }>> } => ({
  mix: mixKind(studio),
  choose: chooseKind(studio),
  order: orderKind(studio),
  washes: washesKind(studio),
  'shadow-values': shadowValuesKind(studio),
  'shade-chroma': shadeChromaKind(studio),
  'sort-values': sortValuesKind(studio),
  drying: dryingKind(studio),
  diagnosis: diagnosisKind(studio),
  worked: workedKind(studio),
}));

/** What a drill's kind can do with it, with the paints and the paper of a studio. */
export function kindOf(studio: Studio, drill: Drill): Kind<Drill> {
  return kindsIn(studio)[drill.kind] as unknown as Kind<Drill>;
}

/** The mark of an answer, without the words where the kind can. @throws InputError when the answer does not fit the fields */
export function markOf(studio: Studio, drill: Drill, answer: Answer): number {
  const kind = kindOf(studio, drill);
  return kind.mark?.(drill, answer) ?? kind.grade(drill, answer).mark;
}

/** One drill as a file holds it, without the family, which the file states once. */
export const drillSchema = v.variant(
  'kind',
  [
    mixSchema,
    chooseSchema,
    orderSchema,
    washesSchema,
    shadowValuesSchema,
    shadeChromaSchema,
    sortValuesSchema,
    dryingSchema,
    diagnosisSchema,
    workedSchema,
  ],
  'kind must be one of the kinds that the guide lists',
);
