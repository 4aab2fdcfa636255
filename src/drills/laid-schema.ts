/** The schema of laid paint in a drill file. */
import * as v from 'valibot';
import { paintsSchema, strengthSchema } from './fields-schema.js';

const washEntries = {
  paints: paintsSchema,
  strength: strengthSchema,
  add: v.optional(paintsSchema),
  thin: v.optional(
    v.pipe(
      v.number('thin must be a number'),
      v.check((thin) => thin >= 1 && thin <= 16, 'thin is 1 (no water) to 16'),
    ),
  ),
};

/** One puddle: made up to a strength, perhaps stirred into, perhaps thinned. */
export const washSchema = v.strictObject(washEntries);

/** A share of the paper. */
export const shareSchema = v.pipe(
  v.number('share must be a number'),
  v.check((share) => share > 0 && share < 1, 'share must be above 0 and below 1'),
);

const strokeSchema = v.strictObject({ ...washEntries, share: shareSchema });

export const layersSchema = v.strictObject({
  layers: v.pipe(
    v.array(washSchema, 'layers must be a list of washes'),
    v.minLength(2, 'layers needs at least two washes'),
    v.maxLength(4, 'layers takes at most four washes'),
  ),
});

const strokesSchema = v.strictObject({
  strokes: v.pipe(
    v.array(strokeSchema, 'strokes must be a list of washes with their shares'),
    v.minLength(2, 'strokes needs at least two washes'),
    v.maxLength(4, 'strokes takes at most four washes'),
    v.check(
      (strokes) => Math.abs(strokes.reduce((sum, { share }) => sum + share, 0) - 1) < 1e-6,
      'the shares of the strokes must add up to 1',
    ),
  ),
});

/** See `Laid`. Which of the three it is, is told by its keys, so that a fault is named where it stands. */
export const laidSchema = v.lazy((input: unknown) => {
  if (typeof input === 'object' && input !== null) {
    if ('layers' in input) return layersSchema;
    if ('strokes' in input) return strokesSchema;
  }
  return washSchema;
});
