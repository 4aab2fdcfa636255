/**
 * The result file of one student: what a released sitting shows, in words, with the handout and the sitting that it was made
 * from, so that the program can open it again by itself. Written by `mudlark quiz release`, read by `mudlark quiz sit`.
 */
import * as v from 'valibot';
import { kindOf } from '../drills/kinds/index.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { canonicalJson } from '../text/canonical-json.js';
import { jsonOf, membersOf } from '../text/json.js';
import { parseJson } from '../text/json-source.js';
import { cleanText } from '../text/sanitize.js';
import { sayAll } from '../words/tell.js';
import { WRITTEN } from '../words/voice.js';
import { type Sitting, sittingData, sittingSchema } from './answers.js';
import { asItStands } from './as-it-stands.js';
import type { ClassResult, Student } from './class.js';
import { type Handout, MOST_QUESTIONS, NOT_A_MAP, parseHandout } from './handout.js';
import { instantSchema } from './instant.js';
import { hmacSha256 } from './seals.js';

/** Version of the file format; a file with another is refused. */
const RESULTS_FORMAT = 1;

/** Largest result file, in characters: a handout and the longest sitting. */
export const MOST_RESULTS = 9_000_000;

/** Most lines of reasons of one question. */
const MOST_REASONS = 40;

const text = (most: number) =>
  v.pipe(
    v.string('must be a text'),
    v.maxLength(most, `must be at most ${most} characters`),
    v.transform((given) => cleanText(given)),
  );

const amount = v.pipe(
  v.number('must be a number'),
  v.finite('must be finite'),
  v.minValue(0, 'is 0 or more'),
);

const resultSchema = v.strictObject(
  {
    title: text(2000),
    ask: text(2000),
    /** Absent: not answered. */
    yours: v.optional(text(2000)),
    mark: v.pipe(amount, v.maxValue(100, 'is 0 to 100')),
    points: amount,
    possible: amount,
    best: text(2000),
    /** Why the mark is what it is. */
    why: v.pipe(
      v.array(text(2000), 'must be a list'),
      v.maxLength(MOST_REASONS, `holds more than ${MOST_REASONS} lines`),
    ),
  },
  NOT_A_MAP,
);

const resultsSchema = v.strictObject(
  {
    format: v.literal(RESULTS_FORMAT, `format must be ${RESULTS_FORMAT}`),
    /** The moment. */
    released: instantSchema,
    /** Version of the program that marked. */
    engine: text(60),
    points: amount,
    possible: amount,
    /** Whose they are, where the class calls them otherwise than the sitting does. */
    name: v.optional(text(2000)),
    results: v.pipe(
      v.array(resultSchema, 'must be a list'),
      v.maxLength(MOST_QUESTIONS, `holds more than ${MOST_QUESTIONS} questions`),
    ),
    handout: v.string('must be a text'),
    sitting: sittingSchema,
    seal: v.optional(v.string('must be a text')),
  },
  NOT_A_MAP,
);

/** The result of one question, in words. */
export type ReleasedResult = v.InferOutput<typeof resultSchema>;

/** What a result file holds. */
export interface Released {
  /** As the class has it, else as it was typed. */
  readonly name: string;
  readonly released: string;
  readonly engine: string;
  readonly points: number;
  readonly possible: number;
  readonly results: readonly ReleasedResult[];
  readonly handout: Handout;
  readonly sitting: Sitting;
  /** Whether the file is as the teacher wrote it; undefined: the handout has no secret to seal it with. */
  readonly isSound: boolean | undefined;
}

function resultOf({ handout, grader }: ClassResult, { marks }: Student, index: number): ReleasedResult {
  const { drill, points: possible } = handout.questions[index] as Handout['questions'][number];
  const { state, answer, mark, points } = marks[index] as Student['marks'][number];
  const kind = kindOf(handout.studio, drill);
  const best = kind.best(drill);
  const given = state === 'answered' ? answer : undefined;
  return {
    title: cleanText(drill.title),
    ask: cleanText(drill.ask),
    ...(given === undefined ? {} : { yours: kind.label(drill, given) }),
    mark,
    points,
    possible,
    best: kind.label(drill, best),
    // Of an open question the best answer is explained.
    why: sayAll(grader.grade(index, given ?? best).told, WRITTEN).slice(0, MOST_REASONS),
  };
}

const sealOf = (secret: string, body: object): string =>
  hmacSha256(secret, `results\n${canonicalJson(body)}`);

/**
 * The text of a student's result file.
 * @param handoutText the handout as its file holds it
 * @param made version that marks, and the moment
 */
export function resultsText(
  result: ClassResult,
  student: Student,
  handoutText: string,
  made: { readonly engine: string; readonly released: string },
): string {
  const { secret, questions } = result.handout;
  const body = {
    format: RESULTS_FORMAT,
    ...made,
    points: student.points,
    possible: student.possible,
    ...(student.name === student.sitting.name ? {} : { name: student.name }),
    results: questions.map((_, index) => resultOf(result, student, index)),
    handout: handoutText,
    sitting: sittingData(student.sitting, secret),
  };
  const sealed = secret === undefined ? body : { ...body, seal: sealOf(secret, body) };
  return `${JSON.stringify(sealed, null, 1)}\n`;
}

/**
 * Reads a result file.
 * @param name what to call the file in a message
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseResults(studio: Studio, source: string, name: string): Released {
  // The seal goes over the file as it stands, before anything in it is cleaned.
  const { keeping, rawNow } = asItStands(resultsSchema);
  const { handout: text, seal, format: _format, ...rest } = parseJson(source, keeping, name, MOST_RESULTS);
  let handout: Handout;
  try {
    handout = parseHandout(studio, text, 'its handout');
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    throw new DataError(`${name}: ${error.message}`, { cause: error });
  }
  if (rest.sitting.handoutDigest !== handout.digest)
    throw new DataError(
      `${name}: the answers in it belong to another handout; ask your teacher for it again`,
    );
  const { seal: _seal, ...body } = rawNow() as { seal?: unknown };
  const isSound = handout.secret === undefined ? undefined : seal === sealOf(handout.secret, body);
  return { ...rest, name: rest.name ?? rest.sitting.name, handout, isSound };
}

/** What a JSON file of a quiz is, by the keys that only one of them has; undefined: neither, perhaps a handout. */
export function jsonKind(source: string): 'results' | 'answers' | undefined {
  if (!source.trimStart().startsWith('{')) return undefined;
  const data = membersOf(jsonOf(source)) ?? {};
  if (Object.hasOwn(data, 'released')) return 'results';
  return Object.hasOwn(data, 'handoutDigest') ? 'answers' : undefined;
}
