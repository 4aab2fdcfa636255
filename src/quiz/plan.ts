/** A practice plan: which families one student is to practise, made from a quiz. Taken by `mudlark practise --plan FILE`. */
import * as v from 'valibot';
import { Document, isMap } from 'yaml';
import { FAMILY_IDS, findFamily } from '../drills/families.js';
import { textSchema } from '../drills/fields-schema.js';
import { drillWithFamilySchema } from '../drills/format.js';
import { parseYaml, requireSize } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import { cleanText } from '../text/sanitize.js';
import { NOT_A_MAP } from './handout.js';
import { MOST_NAME, shownName } from './names.js';

/** Version of the file format; a file with another is refused. */
const PLAN_FORMAT = 1;

/** Largest plan, in characters. */
const MOST_PLAN = 50_000;

/** Most drills that one family may be given. */
const MOST_PLANNED = 60;

/** One family to practise. */
export interface PlannedFamily {
  /** Id of the family. */
  readonly family: string;
  /** How many drills of it. */
  readonly drills: number;
  /** Level to practise at, 1-5; absent: as the learner's record says. */
  readonly level?: number | undefined;
  /** One line for the learner. */
  readonly why: string;
}

/** A plan for one student; families in the order of need, the most needed first. */
export interface PracticePlan {
  readonly name: string;
  /** Title of the quiz that it was made from. */
  readonly quiz: string;
  readonly families: readonly PlannedFamily[];
}

const whole = (what: string, most: number) =>
  v.pipe(
    v.number(`${what} must be a number`),
    v.integer(`${what} must be whole`),
    v.minValue(1, `${what} is 1 to ${most}`),
    v.maxValue(most, `${what} is 1 to ${most}`),
  );

const planSchema = v.strictObject(
  {
    format: v.literal(PLAN_FORMAT, `format must be ${PLAN_FORMAT}`),
    name: textSchema(MOST_NAME),
    quiz: textSchema(120),
    families: v.pipe(
      v.array(
        v.strictObject(
          {
            family: drillWithFamilySchema.entries.family,
            drills: whole('drills', MOST_PLANNED),
            level: v.optional(whole('level', 5)),
            why: textSchema(300),
          },
          NOT_A_MAP,
        ),
        'must be a list',
      ),
      v.minLength(1, 'must name a family'),
      v.maxLength(FAMILY_IDS.length, `holds more than ${FAMILY_IDS.length} families`),
    ),
  },
  NOT_A_MAP,
);

/**
 * Reads a plan.
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`, always one line
 */
export function parsePlan(text: string, name: string): PracticePlan {
  requireSize(text, MOST_PLAN, 'plan', name);
  const { value, lineOf } = parseYaml(text, planSchema, name);
  const seen = new Set<string>();
  for (const [index, { family }] of value.families.entries()) {
    if (seen.has(family))
      throw new DataError(`${name}:${lineOf(['families', index, 'family'])}: "${family}" stands here twice`);
    seen.add(family);
  }
  const { format: _format, ...plan } = value;
  return plan;
}

/** The text of a plan file. */
export function planText({ name, quiz, families }: PracticePlan): string {
  const document = new Document({
    format: PLAN_FORMAT,
    name: shownName(name),
    quiz: cleanText(quiz, 120),
    families: families.map((planned) => JSON.parse(JSON.stringify(planned)) as object),
  });
  document.commentBefore = ' A practice plan. Use it with: mudlark practise --plan THIS-FILE';
  if (isMap(document.contents)) {
    for (const [index, { family }] of families.entries()) {
      const node = document.getIn(['families', index], true);
      if (isMap(node)) node.commentBefore = ` ${findFamily(family)?.name ?? family}`;
    }
  }
  return document.toString({ lineWidth: 110 });
}
