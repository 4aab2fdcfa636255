/** Reading a JSON file that someone may have edited: bounded, no reserved keys, every fault one line. */
import * as v from 'valibot';
import { DataError } from '../errors.js';
import { isReservedKey } from './json.js';
import { didYouMean } from './nearest.js';
import { cleanText } from './sanitize.js';

/** Deepest nesting; a result file needs six. */
const MOST_DEPTH = 12;

/** Longest list and most keys of one thing: a schema looks at all of them before it says a word. */
const MOST_ITEMS = 2000;
const MOST_KEYS = 40;

/** The first reserved key, too long a list or too deep a place in parsed JSON. */
function trick(root: unknown): string | undefined {
  const waiting: { value: unknown; depth: number }[] = [{ value: root, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, depth } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (depth >= MOST_DEPTH) return `nested deeper than ${MOST_DEPTH} levels`;
    const keys = Object.keys(value);
    if (keys.length > (Array.isArray(value) ? MOST_ITEMS : MOST_KEYS))
      return `${keys.length} things stand in one place; check that it is the right file`;
    const reserved = Array.isArray(value) ? undefined : keys.find(isReservedKey);
    if (reserved !== undefined) return `"${reserved}" is not a known key here`;
    for (const child of Object.values(value)) waiting.push({ value: child, depth: depth + 1 });
  }
  return undefined;
}

type Issue = v.BaseIssue<unknown>;

const isUnknownKey = ({ type, expected }: Issue): boolean => type === 'strict_object' && expected === 'never';
const isMissingKey = ({ type, received, expected }: Issue): boolean =>
  type === 'strict_object' && received === 'undefined' && expected !== 'never';

function pathOf(issue: Issue): string[] {
  return (issue.path ?? []).map((item) => String((item as { key: unknown }).key).slice(0, 60));
}

/** A mistyped key shows up twice, as unknown and as missing: the unknown one is the one to name. */
function describe(issues: readonly Issue[]): string {
  const issue = issues.find(isUnknownKey) ?? (issues[0] as Issue);
  const path = pathOf(issue);
  const key = path.at(-1) ?? '';
  if (isUnknownKey(issue)) {
    const missing = issues.filter(isMissingKey).map((other) => pathOf(other).at(-1) ?? '');
    return `"${key}" is not a known key here.${didYouMean(key, missing)}`;
  }
  if (isMissingKey(issue)) return `${path.join('.')} is missing`;
  return `${path.length > 0 ? path.join('.') : 'the file'}: ${issue.message}`;
}

/**
 * Parses and validates.
 * @param name what to call the file in a message
 * @param most largest text that is read, in characters
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseJson<S extends v.GenericSchema>(
  text: string,
  schema: S,
  name: string,
  most: number,
): v.InferOutput<S> {
  if (text.length > most)
    throw new DataError(`${name}: the file is larger than ${most / 1e6} MB; check that it is the right file`);
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new DataError(`${name}: this is not JSON; check that it is the right file and is whole`, {
      cause: error,
    });
  }
  const fault = trick(raw);
  if (fault !== undefined) throw new DataError(`${name}: ${fault}`);
  const result = v.safeParse(schema, raw);
  if (!result.success) throw new DataError(`${name}: ${cleanText(describe(result.issues), 400)}`);
  return result.output;
}
