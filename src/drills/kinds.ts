/** All kinds of drill: the one place that a new kind is added to. */
import * as v from 'valibot';
import { mixKind } from './mix/index.js';
import { type MixDrill, mixSchema } from './mix/schema.js';
import type { Kind } from './types.js';

/** Any drill. */
export type Drill = MixDrill;

const KINDS: Readonly<Record<Drill['kind'], Kind<never>>> = { mix: mixKind };

/** What a drill's kind can do with it. */
export function kindOf(drill: Drill): Kind<Drill> {
  return KINDS[drill.kind] as unknown as Kind<Drill>;
}

/** One drill as a file holds it, without the family, which the file states once. */
export const drillSchema = v.variant(
  'kind',
  [mixSchema],
  'kind must be one of the kinds that the guide lists',
);
