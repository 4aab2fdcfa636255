/** Student names: what is shown, what counts as the same student, and what may stand in a file name. */
import { createHash } from 'node:crypto';
import { cleanText } from '../text/sanitize.js';

/** Longest name that a file may hold, in characters. */
export const MOST_NAME = 400;

/** Longest part of a file name made from a name, in bytes; file systems take 255 for the whole. */
const MOST_PART_BYTES = 60;

/** A name as it is shown: one line, nothing invisible in it; empty when nothing is left. */
export function shownName(name: string): string {
  return cleanText(name, MOST_NAME);
}

/** What two spellings of one student's name share: "Ann Lee" and "ann  lee" are one student. */
export function nameKey(name: string): string {
  return shownName(name).toLowerCase();
}

const PLAIN = /^[\p{L}\p{M}\p{N}]+(?: [\p{L}\p{M}\p{N}]+)*$/u;

function cutToBytes(text: string, most: number): string {
  let cut = '';
  let bytes = 0;
  for (const character of text) {
    bytes += Buffer.byteLength(character);
    if (bytes > most) break;
    cut += character;
  }
  return cut;
}

const wordsOf = (key: string): string =>
  key.replace(/[^\p{L}\p{M}\p{N}]+/gu, '-').replace(/^[-\p{M}]+|-+$/gu, '');

/** A title as a part of a file name: "week-3" of "Week 3!". */
export function titlePart(title: string): string {
  return cutToBytes(wordsOf(nameKey(title)), MOST_PART_BYTES).replace(/-+$/, '') || 'quiz';
}

/**
 * A name as a part of a file name: letters, digits and hyphens, lower case, at most 60 bytes and a mark.
 * Names of letters and single blanks keep their spelling; any other (slashes, dots, emoji, very long) gets eight digits of its
 * SHA-256 after an underscore, so that two names that look alike after cleaning still get two files.
 */
export function fileNamePart(name: string): string {
  const key = nameKey(name);
  const plain = PLAIN.test(key) && Buffer.byteLength(key) <= MOST_PART_BYTES;
  const words = wordsOf(key);
  if (plain && words !== '') return words;
  const mark = createHash('sha256').update(key).digest('hex').slice(0, 8);
  return `${cutToBytes(words, MOST_PART_BYTES).replace(/-+$/, '') || 'student'}_${mark}`;
}

/** Orders texts by code point, the same on every machine. */
export function byCodePoint(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Orders names as the people of a place do: "Åsa" after "Zoe" in Swedish, before "Ben" in English; "Sam 2" before "Sam 10". Names that
 * count as equal there go by code point.
 * @param locale a BCP 47 tag
 */
export function inNameOrder(locale: string): (a: string, b: string) => number {
  const { compare } = new Intl.Collator(locale, { numeric: true });
  return (a, b) => compare(nameKey(a), nameKey(b)) || byCodePoint(nameKey(a), nameKey(b));
}
