/** The handout of a quiz: the rules and the questions in full, in YAML that a teacher reads and edits. */
import * as v from 'valibot';
import { textSchema } from '../drills/fields-schema.js';
import { drillWithFamilySchema, requirePaints, withFamily } from '../drills/format.js';
import { type Drill, drillSchema } from '../drills/kinds/index.js';
import { parseYaml, requireSize } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { cleanText } from '../text/sanitize.js';
import { asItStands } from './as-it-stands.js';
import { handoutDigest } from './digest.js';
import { instantSchema } from './instant.js';
import { SECRET_SHAPE } from './seals.js';

/** Version of the file format: with a secret that seals the answers, and the one before it, without. */
export const HANDOUT_FORMAT = 3;
export const UNSEALED_HANDOUT_FORMAT = 2;

/** Most questions of one handout. */
export const MOST_QUESTIONS = 60;

/** Largest handout, in characters; sixty questions take a third of it. */
const MOST_HANDOUT = 250_000;

/** Said where a text or a list stands in place of a map. */
export const NOT_A_MAP = 'must hold keys and values';

/** When results may be shown. */
export const SHOW_RESULT = ['end', 'each', 'later'] as const;
export type ShowResult = (typeof SHOW_RESULT)[number];

/** How a sitting goes. */
export interface Rules {
  /** Seconds from the moment a question is first shown; absent: no clock. */
  readonly timePerQuestionSeconds?: number | undefined;
  /** Whether the drill's hint stands under the question, for everyone and without cost. */
  readonly hints: boolean;
  /** When a student sees results: at the end of the sitting, after each question, or later, when the teacher releases them. */
  readonly showResult: ShowResult;
  /** Whether one may go back to a question and change the answer. */
  readonly backAllowed: boolean;
  /** Whether each student gets an order of their own. */
  readonly shuffle: boolean;
  /** Sittings finished after this moment are reported as late. ISO 8601 with a zone. */
  readonly due?: string | undefined;
}

export interface Question {
  readonly drill: Drill;
  /** What a full mark is worth. */
  readonly points: number;
}

export interface Handout {
  /** The paints that its questions are predicted with. */
  readonly studio: Studio;
  readonly title: string;
  /** Version of the program that wrote it. */
  readonly engine: string;
  readonly seed: number;
  /** Key of the seals over the answers; absent in a handout of the format without seals. */
  readonly secret?: string;
  readonly rules: Rules;
  readonly questions: readonly Question[];
  /** SHA-256 of what matters for marking and order; see digest.ts. */
  readonly digest: string;
}

const flag = (what: string) => v.boolean(`${what} must be true or false`);

const wholeNumber = (what: string, least: number, most: number) =>
  v.pipe(
    v.number(`${what} must be a number`),
    v.integer(`${what} must be whole`),
    v.minValue(least, `${what} is ${least} to ${most}`),
    v.maxValue(most, `${what} is ${least} to ${most}`),
  );

/** Largest seed. */
export const MOST_SEED = 0x7fff_ffff;

const rulesSchema = v.strictObject(
  {
    timePerQuestionSeconds: v.optional(wholeNumber('timePerQuestionSeconds', 5, 3600)),
    hints: v.optional(flag('hints'), false),
    showResult: v.optional(
      v.picklist(
        SHOW_RESULT,
        'showResult must be end, each or later; later keeps results back until you release them',
      ),
      'end',
    ),
    backAllowed: v.optional(flag('backAllowed'), true),
    shuffle: v.optional(flag('shuffle'), true),
    due: v.optional(instantSchema),
  },
  NOT_A_MAP,
);

const questionSchema = v.strictObject(
  {
    points: v.optional(
      v.pipe(
        v.number('points must be a number'),
        v.check((points) => points > 0 && points <= 100, 'points must be above 0 and at most 100'),
      ),
      1,
    ),
    family: drillWithFamilySchema.entries.family,
    drill: drillSchema,
  },
  NOT_A_MAP,
);

/** The first format counted amounts at a fixed strength, so that its best answers are no longer right. */
function formatFault(format: unknown): string {
  return format === 1
    ? 'format 1 is of an earlier model of mixing; write the quiz again with: mudlark quiz write'
    : `format must be ${UNSEALED_HANDOUT_FORMAT} or ${HANDOUT_FORMAT}`;
}

const handoutSchema = v.strictObject(
  {
    format: v.picklist([UNSEALED_HANDOUT_FORMAT, HANDOUT_FORMAT], ({ input }) => formatFault(input)),
    title: textSchema(120),
    engine: v.pipe(
      v.string('must be a text like "0.1.0"'),
      v.regex(/^\d+\.\d+\.\d+[\w.+-]{0,40}$/, 'must be a version like "0.1.0"'),
    ),
    seed: wholeNumber('seed', 0, MOST_SEED),
    secret: v.optional(
      v.pipe(
        v.string('secret must be a text'),
        v.regex(SECRET_SHAPE, 'secret must be the 64 digits that quiz write made'),
      ),
    ),
    rules: rulesSchema,
    questions: v.pipe(
      v.array(questionSchema, 'must be a list'),
      v.minLength(1, 'must hold a question'),
      v.maxLength(MOST_QUESTIONS, `holds more than ${MOST_QUESTIONS} questions`),
    ),
  },
  NOT_A_MAP,
);

/** Every text in a drill as it may be shown; ids are plain letters and stay as they are. */
function cleaned<T>(value: T): T {
  if (typeof value === 'string') return cleanText(value) as T;
  if (Array.isArray(value)) return value.map(cleaned) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, cleaned(inner)])) as T;
}

/**
 * Reads a handout.
 * @param studio the paints that its drills may name
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`, always one line
 */
export function parseHandout(studio: Studio, text: string, name: string): Handout {
  requireSize(text, MOST_HANDOUT, 'handout', name);
  // The digest is taken from what stands in the file, not from what this version of the program adds to it.
  const { keeping, rawNow } = asItStands(handoutSchema);
  const source = parseYaml(text, keeping, name);
  const { value, lineOf } = source;
  requirePaints(studio, source, name);
  const { format, secret } = value;
  if ((format === HANDOUT_FORMAT) !== (secret !== undefined))
    throw new DataError(
      secret === undefined
        ? `${name}:${lineOf(['format'])}: secret is missing; put back the line that quiz write made`
        : `${name}:${lineOf(['secret'])}: a handout with a secret is of format ${HANDOUT_FORMAT}, not ${format}`,
    );
  const seen = new Set<string>();
  for (const [index, { drill }] of value.questions.entries()) {
    if (seen.has(drill.id)) {
      const line = lineOf(['questions', index, 'drill', 'id']);
      throw new DataError(
        `${name}:${line}: the id "${drill.id}" is used twice; every question needs its own`,
      );
    }
    seen.add(drill.id);
  }
  return {
    studio,
    title: cleanText(value.title) || 'Quiz',
    engine: value.engine,
    seed: value.seed,
    ...(secret === undefined ? {} : { secret }),
    rules: value.rules,
    questions: value.questions.map(({ drill, family, points }) => ({
      drill: withFamily(cleaned(drill), family),
      points,
    })),
    digest: handoutDigest(rawNow()),
  };
}
