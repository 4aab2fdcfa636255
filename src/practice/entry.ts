/** One answer as the record keeps it: the type, its line of JSON, and the strict reading of a line. Pure. */
import * as v from 'valibot';
import type { Answer } from '../drills/types.js';
import { StoreError } from '../errors.js';
import { AIMS, type Aim, type Verdict } from '../judgement/types.js';
import { jsonOf, membersOf } from '../text/json.js';
import type { Answered } from './answered.js';

/** Longest line of a record, bytes of UTF-8 with its newline. A longer line is foreign. */
export const MAX_LINE_BYTES = 16_384;

/** An answer to a drill, with what was predicted for it. */
export interface HistoryEntry {
  /** Version of the line. */
  readonly v: 1;
  /** When it was given, ISO 8601 in UTC. */
  readonly at: string;
  readonly drill: string;
  readonly family: string;
  /** Level of the drill, 1-5. */
  readonly level: number;
  readonly answer: Answer;
  /** 0-100, after what hints and tries cost. */
  readonly mark: number;
  readonly verdict: Verdict;
  /** Predicted value in painter's steps, 1 paper white - 10 darkest. */
  readonly value?: {
    readonly before: number;
    readonly after: number;
    readonly asked: readonly [number, number];
  };
  /** Predicted chroma, CIELAB C*; `kept` is after / before. */
  readonly chroma?: {
    readonly before: number;
    readonly after: number;
    readonly kept: number;
    readonly asked?: readonly [number, number];
  };
  /** Hints opened before answering. */
  readonly hints: number;
  /**
   * 1 for the first answer to this drill in this set, also where the set shows it again: later ones were given with the answer known.
   * They are kept, and counted apart from the first answers that all levels, dates and figures stand on.
   */
  readonly try: number;
  /** The set (sitting) it belongs to. */
  readonly set: string;
  /** Version of the prediction. */
  readonly engine: string;
  /** Chance that a blind choice is good, 0-1; by level when absent. */
  readonly guess?: number;
  /** What the colour was changed for: chroma counts as kept for a shade or a rich dark, as dulled for the rest. */
  readonly aim?: Aim;
  /** The mistaken idea that the answer shows. */
  readonly idea?: string;
  /** Given in the placing round. */
  readonly placing?: true;
  /** The box of paints in use, and what tells its contents from those of another day; absent in older records. */
  readonly box?: { readonly id: string; readonly revision: string };
}

/** What the record knows about an answer beside it. */
export interface Circumstance {
  readonly set: string;
  readonly engine: string;
  /** See {@link HistoryEntry.try}. */
  readonly try: number;
  readonly guess?: number;
  readonly placing?: boolean;
  readonly box?: NonNullable<HistoryEntry['box']>;
}

const round3 = (x: number): number => Math.round(x * 1000) / 1000;
/** A band without an upper end is written as one that ends beyond every colour: JSON knows no infinity. */
const MOST = 1000;
const pair = (p: readonly [number, number]): [number, number] => [round3(p[0]), round3(Math.min(MOST, p[1]))];

/** The entry of an answer; numbers are kept to three decimals. */
export function entryOf(answered: Answered, told: Circumstance): HistoryEntry {
  const { drill, grade } = answered;
  const { value, chroma } = grade;
  return {
    v: 1,
    at: new Date(answered.answeredAt).toISOString(),
    drill: drill.id,
    family: drill.family,
    level: drill.level,
    answer: { ...answered.answer },
    mark: answered.mark,
    verdict: grade.verdict,
    ...(value && {
      value: { before: round3(value.before), after: round3(value.after), asked: pair(value.asked) },
    }),
    ...(chroma && {
      chroma: {
        before: round3(chroma.before),
        after: round3(chroma.after),
        kept: round3(chroma.kept),
        asked: pair(chroma.asked),
      },
    }),
    hints: answered.hints,
    try: told.try,
    set: told.set,
    engine: told.engine,
    ...(told.guess !== undefined && { guess: round3(told.guess) }),
    ...(grade.aim !== undefined && { aim: grade.aim }),
    ...(grade.idea !== undefined && { idea: grade.idea }),
    ...(told.placing === true && { placing: true as const }),
    ...(told.box !== undefined && { box: told.box }),
  };
}

/**
 * The line of an entry, ending in a newline.
 * @throws StoreError when it could not be read back: a member out of range, or more than `MAX_LINE_BYTES`
 */
export function entryLine(entry: HistoryEntry): string {
  if (!isEntry(entry))
    throw new StoreError(`the answer to ${String((entry as HistoryEntry).drill)} does not fit the record`);
  const line = `${JSON.stringify(entry)}\n`;
  if (line.length > MAX_LINE_BYTES / 3 && new TextEncoder().encode(line).length > MAX_LINE_BYTES)
    throw new StoreError(
      `answer to ${entry.drill} is too long for the record: at most ${MAX_LINE_BYTES} bytes`,
    );
  return line;
}

// Control, bidi and zero-width characters: ids are printed, and the record may come from somebody else.
const UNSAFE = /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/;

// One check for each: a long record is read from its start, line by line.
const text = (most: number, least = 1) =>
  v.pipe(
    v.string(),
    v.check((given) => given.length >= least && given.length <= most && !UNSAFE.test(given)),
  );
const number = (low: number, high: number) =>
  v.pipe(
    v.number(),
    v.check((given) => given >= low && given <= high),
  );
const count = (low: number, high: number) => v.pipe(number(low, high), v.integer());
const band = (low: number, high: number) => v.strictTuple([number(low, high), number(low, high)]);
/** Members, further ones allowed. To valibot a list is an object as well; here it is none. */
const members = <E extends v.ObjectEntries>(entries: E) =>
  v.pipe(
    v.custom<v.InferInput<v.ObjectSchema<E, undefined>>>((x) => !Array.isArray(x)),
    v.object(entries),
  );

/** As pairs: valibot's record passes over a field called `__proto__`, with whatever it holds. */
const choices = v.pipe(v.array(v.strictTuple([text(200), text(200, 0)])), v.maxLength(64));
const answer = v.custom<Answer>(
  (x) => membersOf(x) !== undefined && v.is(choices, Object.entries(x as object)),
);

const ENTRY = members({
  v: v.literal(1),
  at: v.pipe(
    text(40),
    v.check((at) => Number.isFinite(Date.parse(at))),
  ),
  drill: text(200),
  family: text(100),
  level: count(1, 5),
  answer,
  mark: number(0, 100),
  verdict: v.picklist(['good', 'fair', 'off']),
  value: v.exactOptional(members({ before: number(-5, 20), after: number(-5, 20), asked: band(-5, 20) })),
  chroma: v.exactOptional(
    members({
      before: number(0, 300),
      after: number(0, 300),
      kept: number(0, 1e6),
      asked: v.exactOptional(band(-1e3, 1e3)),
    }),
  ),
  hints: count(0, 1000),
  try: count(1, 1000),
  set: text(100),
  engine: text(60),
  guess: v.exactOptional(number(0, 1)),
  aim: v.exactOptional(v.picklist(AIMS)),
  idea: v.exactOptional(text(100)),
  placing: v.exactOptional(v.literal(true)),
  box: v.exactOptional(members({ id: text(200), revision: text(40) })),
}) satisfies v.GenericSchema<unknown, HistoryEntry>;

/** Whether something read is an entry; unknown further members are allowed. */
export const isEntry = (x: unknown): x is HistoryEntry => v.is(ENTRY, x);

const LATER = v.object({ v: count(2, Number.MAX_SAFE_INTEGER) });

/** Whether a line that is no entry here comes from a newer version of the program: it carries a later version of the line. */
export function isNewer(line: string): boolean {
  return v.is(LATER, jsonOf(line));
}

/** Reads one line of a record. @returns undefined for a torn or foreign line */
export function parseEntry(line: string): HistoryEntry | undefined {
  const read = jsonOf(line);
  return isEntry(read) ? read : undefined;
}
