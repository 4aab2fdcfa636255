/** The hands of a room, as their file holds them: for each question the whole answers that were offered, and who voted for each. */
import * as v from 'valibot';
import type { Answer } from '../drills/types.js';
import { DataError } from '../errors.js';
import { canonicalJson } from '../text/canonical-json.js';
import { jsonOf, membersOf } from '../text/json.js';
import { parseJson } from '../text/json-source.js';
import { choicesSchema, word } from './answers.js';
import { DIGEST_SHAPE } from './digest.js';
import { MOST_QUESTIONS, NOT_A_MAP } from './handout.js';
import { instantSchema } from './instant.js';

/** Version of the file format; a file with another is refused. */
const ROOM_FORMAT = 1;

/** Largest file, in characters. */
export const MOST_ROOM = 500_000;

/** Most whole answers offered for one question; the screen letters six. */
const MOST_OFFERED = 12;

/** Largest count that is taken for one answer. */
export const MOST_HANDS = 999;

/** Hands for one answer: in the first vote and, where there was one, in the second after the room had talked. */
export interface Hands {
  readonly first: number;
  readonly second?: number | undefined;
}

/** A whole answer and its hands. */
export interface OfferedAnswer extends Hands {
  readonly answer: Answer;
}

/** One question as the room answered it. */
export interface RoomQuestion {
  /** Id of the drill. */
  readonly drill: string;
  /** In the order of their letters. */
  readonly offered: readonly OfferedAnswer[];
  /** Hands for none of them. */
  readonly none?: Hands | undefined;
}

/** A quiz held in a room. */
export interface RoomCounts {
  readonly handoutDigest: string;
  /** When it began. */
  readonly held: string;
  /** Those that were voted on. */
  readonly questions: readonly RoomQuestion[];
}

const HANDS = `must be a whole number of hands, 0 to ${MOST_HANDS}`;
const hands = v.pipe(v.number(HANDS), v.integer(HANDS), v.minValue(0, HANDS), v.maxValue(MOST_HANDS, HANDS));
const handsEntries = { first: hands, second: v.optional(hands) };

const questionSchema = v.strictObject(
  {
    drill: word(64),
    offered: v.pipe(
      v.array(v.strictObject({ answer: choicesSchema, ...handsEntries }, NOT_A_MAP), 'must be a list'),
      v.minLength(1, 'must hold an answer'),
      v.maxLength(MOST_OFFERED, `holds more than ${MOST_OFFERED} answers`),
    ),
    none: v.optional(v.strictObject(handsEntries, NOT_A_MAP)),
  },
  NOT_A_MAP,
);

const roomSchema = v.strictObject(
  {
    format: v.literal(ROOM_FORMAT, `format must be ${ROOM_FORMAT}`),
    handoutDigest: v.pipe(
      v.string('must be a text'),
      v.regex(DIGEST_SHAPE, 'must be the digest of a handout'),
    ),
    held: instantSchema,
    questions: v.pipe(
      v.array(questionSchema, 'must be a list'),
      v.maxLength(MOST_QUESTIONS, `holds more than ${MOST_QUESTIONS} questions`),
    ),
  },
  NOT_A_MAP,
);

/**
 * Reads the counts of a room.
 * @param name what to call the file in a message
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseRoomCounts(text: string, name: string): RoomCounts {
  const { format: _format, ...counts } = parseJson(text, roomSchema, name, MOST_ROOM);
  const seen = new Set<string>();
  for (const { drill, offered, none } of counts.questions) {
    if (seen.has(drill)) throw new DataError(`${name}: the question "${drill}" is counted twice`);
    seen.add(drill);
    if (new Set(offered.map(({ answer }) => canonicalJson(answer))).size < offered.length)
      throw new DataError(`${name}: the question "${drill}" offers one answer twice`);
    const votes = [...offered, ...(none === undefined ? [] : [none])];
    if (new Set(votes.map(({ second }) => second === undefined)).size > 1)
      throw new DataError(
        `${name}: the question "${drill}" has a second vote for some of its answers only; give all of them one, or none`,
      );
  }
  return counts;
}

/** The text of a counts file. */
export function roomCountsText(counts: RoomCounts): string {
  return `${JSON.stringify({ format: ROOM_FORMAT, ...counts }, null, 2)}\n`;
}

/** Whether a text is meant to hold the counts of a room, not the answers of a student. */
export function isRoomCounts(text: string): boolean {
  if (!text.includes('"questions"')) return false;
  return Object.hasOwn(membersOf(jsonOf(text)) ?? {}, 'questions');
}
