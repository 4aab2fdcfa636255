/** Lines of a record that cannot be read: copied once to a file beside it. The record itself is never rewritten. */
import { readUsable } from '../files/read.js';
import { appendLines, PRIVATE } from '../files/write.js';
import { jsonOf, membersOf } from '../text/json.js';
import type { RawLine } from './record-lines.js';

/** Most that is looked through for copies made before. */
const MOST_BYTES = 64_000_000;

/** A line that could not be read. */
export interface ForeignLine {
  /** Where it begins in the record, bytes. */
  readonly offset: number;
  /** `torn`: the write was cut off; `too-long`: more than 16 KB, only its beginning is copied; `foreign`: the rest. */
  readonly why: 'torn' | 'too-long' | 'foreign';
  readonly text: string;
  /** The bytes, where they are not UTF-8. */
  readonly base64?: string;
}

export function foreignLine({ bytes, offset, isTooLong, isWhole }: RawLine): ForeignLine {
  const text = bytes.toString('utf8');
  const isTorn = !isWhole || (text.startsWith('{"v":1,') && !text.endsWith('}'));
  return {
    offset,
    why: isTooLong ? 'too-long' : isTorn ? 'torn' : 'foreign',
    text,
    ...(!Buffer.from(text, 'utf8').equals(bytes) && { base64: bytes.toString('base64') }),
  };
}

const keyOf = ({ text, base64 }: ForeignLine): string => base64 ?? text;

function copiedBefore(path: string): Set<string> {
  const lines = (readUsable(path, MOST_BYTES) ?? '').split('\n').map((line) => membersOf(jsonOf(line)));
  return new Set(
    lines.flatMap((line) => (line === undefined ? [] : [keyOf(line as unknown as ForeignLine)])),
  );
}

/**
 * Copies lines that were not copied before.
 * @returns how many are new
 * @throws the fault of the file system
 */
export function setAside(path: string, lines: readonly ForeignLine[]): number {
  if (lines.length === 0) return 0;
  const seen = copiedBefore(path);
  const fresh = lines.filter((line) => {
    const key = keyOf(line);
    return seen.has(key) ? false : seen.add(key);
  });
  if (fresh.length > 0) appendLines(path, fresh.map((line) => `${JSON.stringify(line)}\n`).join(''), PRIVATE);
  return fresh.length;
}
