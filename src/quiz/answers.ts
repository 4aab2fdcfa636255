/** The answers of one sitting, as their file holds them. Marks are never in it: they are computed again each time. */
import * as v from 'valibot';
import type { Answer } from '../drills/types.js';
import { DataError } from '../errors.js';
import { DIGEST_SHAPE } from './digest.js';
import { MOST_QUESTIONS, NOT_A_MAP } from './handout.js';
import { instantSchema } from './instant.js';
import { parseJson } from './json-source.js';
import { MOST_NAME, shownName } from './names.js';

/** Version of the file format; a file with another is refused. */
const ANSWERS_FORMAT = 2;

/** What was chosen for one question. */
export interface GivenAnswer {
  /** Id of the drill. */
  readonly drill: string;
  /** When the question was first shown. */
  readonly shown: string;
  /** Choices made so far, by field; a row still open is missing. */
  readonly answer: Answer;
  /** When the last of them was made; absent: none yet. */
  readonly at?: string | undefined;
  /** Handed in for good: its result was shown or its time ran out. */
  readonly closed?: boolean | undefined;
}

/** A sitting, whole or under way. */
export interface Sitting {
  readonly handoutDigest: string;
  readonly name: string;
  readonly started: string;
  readonly answers: readonly GivenAnswer[];
  readonly finished?: string | undefined;
  /** `paper`: typed in by the teacher from a sheet of paper; its times are those of the typing. Absent: sat on a screen. */
  readonly source?: 'paper' | undefined;
}

const word = (most: number) =>
  v.pipe(
    v.string('must be a text'),
    v.minLength(1, 'must not be empty'),
    v.maxLength(most, `must be at most ${most} characters`),
  );

const choicesSchema = v.pipe(
  v.record(word(64), word(120), 'must be a map of choices'),
  v.check((choices) => Object.keys(choices).length <= 20, 'holds more than 20 choices'),
);

/** Answers of the first format chose among amounts that are no longer offered. */
function formatFault(format: unknown): string {
  return format === 1
    ? 'format 1 is of an earlier model of mixing; let the student sit the quiz again, with a handout written by this version'
    : `format must be ${ANSWERS_FORMAT}`;
}

const answersSchema = v.strictObject(
  {
    format: v.literal(ANSWERS_FORMAT, ({ input }) => formatFault(input)),
    handoutDigest: v.pipe(
      v.string('must be a text'),
      v.regex(DIGEST_SHAPE, 'must be the digest of a handout'),
    ),
    name: v.pipe(
      word(MOST_NAME * 4),
      v.transform(shownName),
      v.check((name) => name !== '', 'holds nothing that can be shown'),
    ),
    started: instantSchema,
    answers: v.pipe(
      v.array(
        v.strictObject(
          {
            drill: word(64),
            shown: instantSchema,
            answer: choicesSchema,
            at: v.optional(instantSchema),
            closed: v.optional(v.boolean('must be true or false')),
          },
          NOT_A_MAP,
        ),
        'must be a list',
      ),
      v.maxLength(MOST_QUESTIONS, `holds more than ${MOST_QUESTIONS} answers`),
    ),
    finished: v.optional(instantSchema),
    source: v.optional(v.literal('paper', 'must be paper, or left out')),
  },
  NOT_A_MAP,
);

/**
 * Reads a sitting.
 * @param name what to call the file in a message
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseSitting(text: string, name: string): Sitting {
  const { format: _format, ...sitting } = parseJson(text, answersSchema, name);
  const seen = new Set<string>();
  for (const { drill } of sitting.answers) {
    if (seen.has(drill)) throw new DataError(`${name}: the question "${drill}" is answered twice`);
    seen.add(drill);
  }
  return sitting;
}

/** The text of an answers file. */
export function sittingText(sitting: Sitting): string {
  return `${JSON.stringify({ format: ANSWERS_FORMAT, ...sitting }, null, 2)}\n`;
}
