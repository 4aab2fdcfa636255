/** One answer as the record keeps it: the type, its line of JSON, and the strict reading of a line. Pure. */
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
  /** 1 for the first answer to this drill in this set; later tries are kept but never move a level. */
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
    try: answered.attempt,
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

const isText = (x: unknown, most: number): x is string =>
  typeof x === 'string' && x.length > 0 && x.length <= most && !UNSAFE.test(x);
const isNumber = (x: unknown, low: number, high: number): x is number =>
  typeof x === 'number' && x >= low && x <= high;
const isCount = (x: unknown, low: number, high: number): x is number =>
  isNumber(x, low, high) && Number.isInteger(x);
const isPair = (x: unknown, low: number, high: number): boolean =>
  Array.isArray(x) && x.length === 2 && isNumber(x[0], low, high) && isNumber(x[1], low, high);
const isObject = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

function isAnswer(x: unknown): boolean {
  if (!isObject(x)) return false;
  const fields = Object.entries(x);
  return (
    fields.length <= 64 &&
    fields.every(([field, option]) => isText(field, 200) && (option === '' || isText(option, 200)))
  );
}

function isValue(x: unknown): boolean {
  return (
    isObject(x) && isNumber(x['before'], -5, 20) && isNumber(x['after'], -5, 20) && isPair(x['asked'], -5, 20)
  );
}

function isChroma(x: unknown): boolean {
  return (
    isObject(x) &&
    isNumber(x['before'], 0, 300) &&
    isNumber(x['after'], 0, 300) &&
    isNumber(x['kept'], 0, 1e6) &&
    (x['asked'] === undefined || isPair(x['asked'], -1e3, 1e3))
  );
}

function isBox(x: unknown): boolean {
  return isObject(x) && isText(x['id'], 200) && isText(x['revision'], 40);
}

/** Whether something read is an entry; unknown further members are allowed. */
export function isEntry(x: unknown): x is HistoryEntry {
  return (
    isObject(x) &&
    x['v'] === 1 &&
    isText(x['at'], 40) &&
    Number.isFinite(Date.parse(x['at'])) &&
    isText(x['drill'], 200) &&
    isText(x['family'], 100) &&
    isCount(x['level'], 1, 5) &&
    isAnswer(x['answer']) &&
    isNumber(x['mark'], 0, 100) &&
    (x['verdict'] === 'good' || x['verdict'] === 'fair' || x['verdict'] === 'off') &&
    (x['value'] === undefined || isValue(x['value'])) &&
    (x['chroma'] === undefined || isChroma(x['chroma'])) &&
    isCount(x['hints'], 0, 1000) &&
    isCount(x['try'], 1, 1000) &&
    isText(x['set'], 100) &&
    isText(x['engine'], 60) &&
    (x['guess'] === undefined || isNumber(x['guess'], 0, 1)) &&
    (x['aim'] === undefined || AIMS.some((aim) => aim === x['aim'])) &&
    (x['idea'] === undefined || isText(x['idea'], 100)) &&
    (x['placing'] === undefined || x['placing'] === true) &&
    (x['box'] === undefined || isBox(x['box']))
  );
}

/** Whether a line that is no entry here comes from a newer version of the program: it carries a later version of the line. */
export function isNewer(line: string): boolean {
  const version = membersOf(jsonOf(line))?.['v'];
  return isCount(version, 2, Number.MAX_SAFE_INTEGER);
}

/** Reads one line of a record. @returns undefined for a torn or foreign line */
export function parseEntry(line: string): HistoryEntry | undefined {
  const read = jsonOf(line);
  return isEntry(read) ? read : undefined;
}
