/** What stood in a file before a schema cleaned it or filled anything in: digests and seals go over that. */
import * as v from 'valibot';

/** A schema that takes what another takes. @returns also a reader of what it was given last */
export function asItStands<S extends v.GenericSchema>(schema: S) {
  let raw: unknown;
  const keeping = v.pipe(
    v.unknown(),
    v.check((input) => {
      raw = input;
      return true;
    }),
    schema,
  );
  return { keeping, rawNow: (): unknown => raw };
}
