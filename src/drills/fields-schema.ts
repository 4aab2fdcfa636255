/** Pieces of schema that every kind of drill shares. */
import * as v from 'valibot';

/** Control, escape and direction-changing characters: nothing that a scene needs, everything that a terminal obeys. */
const UNSAFE = /[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069\u061c]/u;

/** A line or two of text for a person. */
export function textSchema(most: number) {
  return v.pipe(
    v.string('must be a text'),
    v.trim(),
    v.minLength(1, 'must not be empty'),
    v.maxLength(most, `must be at most ${most} characters`),
    v.transform((text) => text.replace(/\s+/gu, ' ')),
    v.check((text) => !UNSAFE.test(text), 'holds a control or direction-changing character; take it out'),
  );
}

/** Short names used in files: lower case, digits, hyphens. */
export const idSchema = v.pipe(
  v.string('must be a text'),
  v.regex(/^[a-z][a-z0-9-]{1,63}$/, 'must be lower-case letters, digits and hyphens, 2 to 64 of them'),
);

/** Id of a paint; whether the studio has it is asked once the file is read: see paint-names.ts. */
export const paintIdSchema = v.pipe(v.string('must be the id of a paint'), idSchema);

/** Strength of a wash: above 0 (water) to 1 (masstone). */
export const strengthSchema = v.pipe(
  v.number('must be a number'),
  v.check((strength) => strength > 0 && strength <= 1, 'strength must be above 0 and at most 1'),
);

/** Paints and their parts. */
export const paintsSchema = v.pipe(
  v.record(
    paintIdSchema,
    v.pipe(
      v.number('parts must be a number'),
      v.check((parts) => parts > 0 && parts <= 1000, 'parts must be above 0 and at most 1000'),
    ),
    'must list paints and parts, like { burnt-sienna: 1 }',
  ),
  v.check((paints) => {
    const count = Object.keys(paints).length;
    return count >= 1 && count <= 4;
  }, 'must list one to four paints'),
);

/** Lowest and highest of something, in order. */
export function bandSchema(least: number, most: number, what: string) {
  const bound = v.pipe(
    v.number(`${what} must be a number`),
    v.minValue(least, `${what} must be ${least} to ${most}`),
    v.maxValue(most, `${what} must be ${least} to ${most}`),
  );
  return v.pipe(
    v.tuple([bound, bound], `${what} must be a pair like [${least}, ${most}]`),
    v.check(([low, high]) => low < high, `${what} must run from low to high`),
  );
}

/** A list of different things. */
export function distinctList<S extends v.GenericSchema<unknown, string | number>>(
  item: S,
  least: number,
  most: number,
) {
  return v.pipe(
    v.array(item, 'must be a list'),
    v.minLength(least, `must have at least ${least}`),
    v.maxLength(most, `must have at most ${most}`),
    v.check((list) => new Set(list).size === list.length, 'lists something twice'),
  );
}

/** The two areas of a picture that the colours of a drill lie in; whether the picture has them is asked once the file is read. */
export const liesSchema = v.strictObject({ start: idSchema, passage: idSchema });

/** What every drill has, whatever its kind; see DrillCommon. */
export const commonEntries = {
  id: idSchema,
  level: v.pipe(
    v.number('level must be a number'),
    v.integer('level must be whole'),
    v.minValue(1, 'level is 1 to 5'),
    v.maxValue(5, 'level is 1 to 5'),
  ),
  title: textSchema(60),
  scene: textSchema(400),
  ask: v.optional(textSchema(200)),
  hint: v.optional(textSchema(300)),
  picture: v.optional(idSchema),
  lies: v.optional(liesSchema),
};
