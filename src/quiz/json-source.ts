/** Reading a JSON file that someone may have edited: bounded, no reserved keys, every fault one line. */
import * as v from 'valibot';
import { isReservedKey } from '../drills/yaml-keys.js';
import { DataError } from '../errors.js';
import { didYouMean } from '../text/nearest.js';

/** Largest text that is read, in characters; a long sitting takes a fiftieth of it. */
export const MOST_JSON = 500_000;

/** Deepest nesting; the answers file needs four. */
const MOST_DEPTH = 12;

/** The first reserved key or too deep a place in parsed JSON. */
function trick(root: unknown): string | undefined {
  const waiting: { value: unknown; depth: number }[] = [{ value: root, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, depth } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (depth >= MOST_DEPTH) return `nested deeper than ${MOST_DEPTH} levels`;
    const reserved = Object.keys(value).find(isReservedKey);
    if (reserved !== undefined) return `"${reserved}" is not a known key here`;
    for (const child of Object.values(value)) waiting.push({ value: child, depth: depth + 1 });
  }
  return undefined;
}

function describe(issue: v.BaseIssue<unknown>): string {
  const path = (issue.path ?? []).map((item) => String((item as { key: unknown }).key).slice(0, 60));
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    const known = Object.keys((issue as unknown as { requirement?: object }).requirement ?? {});
    return `"${path.at(-1)}" is not a known key here${didYouMean(String(path.at(-1)), known)}`;
  }
  const where = path.length > 0 ? path.join('.') : 'the file';
  return `${where}: ${issue.message}`;
}

/**
 * Parses and validates.
 * @param name what to call the file in a message
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseJson<S extends v.GenericSchema>(
  text: string,
  schema: S,
  name: string,
): v.InferOutput<S> {
  if (text.length > MOST_JSON)
    throw new DataError(
      `${name}: the file is larger than ${MOST_JSON / 1e6} MB; check that it is the right file`,
    );
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new DataError(`${name}: this is not JSON; check that it is the right file and is whole`, {
      cause: error,
    });
  }
  const fault = trick(raw);
  if (fault !== undefined) throw new DataError(`${name}: ${fault}`);
  const result = v.safeParse(schema, raw, { abortEarly: true });
  if (!result.success) throw new DataError(`${name}: ${describe(result.issues[0])}`);
  return result.output;
}
