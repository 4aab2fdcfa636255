/** The drill file: YAML with a format version, one family and its drills. See README.md beside it. */
import * as v from 'valibot';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { didYouMean } from '../text/nearest.js';
import { familyAsk } from './ask.js';
import { FAMILY_IDS, findFamily } from './families.js';
import { type Drill, drillSchema } from './kinds/index.js';
import { unknownPaint } from './paint-names.js';
import retired from './retired.json' with { type: 'json' };
import { parseYaml, type YamlSource } from './yaml-source.js';

/** Version of the file format; a file with another is refused. */
const DRILL_FORMAT = 1;

const familySchema = v.pipe(
  v.string('must be the id of a family'),
  v.check(
    (id) => findFamily(id) !== undefined,
    ({ input }) =>
      `no family is called "${String(input).slice(0, 60)}".${didYouMean(String(input), FAMILY_IDS)}`,
  ),
);

const fileSchema = v.strictObject({
  format: v.literal(DRILL_FORMAT, `format must be ${DRILL_FORMAT}`),
  family: familySchema,
  drills: v.pipe(
    v.array(drillSchema, 'must be a list'),
    v.minLength(1, 'must hold a drill'),
    v.maxLength(200, 'holds more than 200 drills'),
  ),
});

/** One drill with its family, for files that hold drills of several families. */
export const drillWithFamilySchema = v.strictObject({ family: familySchema, drill: drillSchema });

type ReadDrill = v.InferOutput<typeof drillSchema>;

/** Gives a drill its family and, where it words none, the family's question. */
export function withFamily(read: ReadDrill, familyId: string): Drill {
  const { ask, hint, ...rest } = read;
  return {
    ...rest,
    family: familyId,
    ask: ask ?? familyAsk(familyId, rest),
    ...(hint === undefined ? {} : { hint }),
  } as Drill;
}

/** Ids of drills that are no longer shipped: learners' records hold them, so no other drill may take one. */
const RETIRED: ReadonlySet<string> = new Set(retired.ids);

/** @throws DataError naming the line of the first paint that the studio does not have */
export function requirePaints(studio: Studio, { value, lineOf }: YamlSource<unknown>, name: string): void {
  const unknown = unknownPaint(studio, value);
  if (unknown === undefined) return;
  const { path, message } = unknown;
  throw new DataError(`${name}:${lineOf(path)}: ${path.join('.')}: ${message}`);
}

/** What is wrong with a drill that its schema cannot see: where below the drill, and in words. */
export interface DrillFault {
  readonly path: readonly string[];
  readonly message: string;
}

/**
 * Reads the drills of one file.
 * @param studio the paints that drills may name
 * @param text the file's content
 * @param name what to call the file in a message
 * @param faultOf what else may be wrong with a drill; the first such fault refuses the file
 * @throws DataError `name:line: what is wrong`
 */
export function parseDrillFile(
  studio: Studio,
  text: string,
  name: string,
  faultOf: (drill: Drill) => DrillFault | undefined = () => undefined,
): Drill[] {
  const source = parseYaml(text, fileSchema, name);
  const { value, lineOf } = source;
  requirePaints(studio, source, name);
  const seen = new Set<string>();
  for (const [index, drill] of value.drills.entries()) {
    const where = `${name}:${lineOf(['drills', index, 'id'])}: the id "${drill.id}"`;
    if (seen.has(drill.id)) throw new DataError(`${where} is used twice; every drill needs its own`);
    if (RETIRED.has(drill.id))
      throw new DataError(
        `${where} was that of a drill that is retired, and records hold it; choose another`,
      );
    seen.add(drill.id);
  }
  const drills = value.drills.map((drill) => withFamily(drill, value.family));
  for (const [index, drill] of drills.entries()) {
    const fault = faultOf(drill);
    if (fault === undefined) continue;
    const { path, message } = fault;
    const line = lineOf(['drills', index, ...path]);
    throw new DataError(`${name}:${line}: drills.${index}.${path.join('.')}: ${message}`);
  }
  return drills;
}

/** Puts the drills of several files together. @throws DataError when an id occurs in two of them */
export function joinDrills(
  files: readonly { readonly name: string; readonly drills: readonly Drill[] }[],
): Drill[] {
  const owner = new Map<string, string>();
  for (const { name, drills } of files) {
    for (const { id } of drills) {
      const other = owner.get(id);
      if (other !== undefined)
        throw new DataError(
          `${name}: the drill id "${id}" is also used in ${other}; every drill needs its own`,
        );
      owner.set(id, name);
    }
  }
  return files.flatMap(({ drills }) => drills);
}
