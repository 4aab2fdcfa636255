/** Making text from files fit to be printed: nothing in it may steer the terminal or reorder what is read. */
import stripAnsi from 'strip-ansi';

/** Line breaks and tabs read as a blank; other control characters vanish. */
const BREAKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;

/** Cc and Cf (bidi overrides and isolates, zero-width joiners, byte-order marks, tags), lone surrogates, private use. */
const INVISIBLE = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu;

/** Most marks kept on one letter; stacks of combining marks spill over the lines above and below. */
const STACKED_MARKS = /(\p{M}{4})\p{M}+/gu;

/** Room for a text when the caller names none, in characters. */
const MOST_CHARACTERS = 2000;

/** Takes out what could steer the terminal; blanks and line breaks stay as they are. For tables of our own making. */
export function printable(text: string): string {
  return text
    .split(/\r?\n/)
    .map((line) => stripAnsi(line).replace(/\t/g, '  ').replace(INVISIBLE, ''))
    .join('\n');
}

/** Line breaks of our own layout stay; what JSON leaves unescaped and a terminal would act on does not. */
const UNESCAPED = /[\u007f-\u009f\u2028\u2029\p{Cf}\p{Co}]/gu;

/** JSON text with every invisible character written as an escape: the same document, safe to print. */
export function escapeInvisible(json: string): string {
  return json.replace(UNESCAPED, (character) =>
    // By UTF-16 unit: JSON writes a character beyond the first plane as two escapes.
    character
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
}

/**
 * One line of printable text: escape sequences, control, format, bidi and private-use characters are taken out,
 * runs of blanks become one.
 * @param text anything, as it came from a file
 * @param most longest result in characters (code points); longer text is cut and ends in "..."
 */
export function cleanText(text: string, most: number = MOST_CHARACTERS): string {
  // Cut before the work too, so that megabytes cost nothing.
  const line = stripAnsi(text.slice(0, most * 8).normalize('NFC'))
    .replace(BREAKS, ' ')
    .replace(INVISIBLE, '')
    .replace(STACKED_MARKS, '$1')
    .replace(/\s+/gu, ' ')
    .trim();
  const characters = [...line];
  if (characters.length <= most) return line;
  return `${characters.slice(0, Math.max(0, most - 3)).join('')}${'...'.slice(0, most)}`;
}
