/**
 * Fitting text into columns. Widths are terminal columns, so a wide character counts as two. Of our own, since a key has to be
 * drawn at once: wrap-ansi takes sixty times as long for a page, and cli-truncate lets a wide character stand half in.
 */
import stringWidth from 'string-width';
import { isNarrow } from './narrow.js';

// Made at its first use: the tables behind it take as long to load as all the rest of a page.
let segmenter: Intl.Segmenter | undefined;

/** The characters of a text as a reader counts them. */
function* charactersOf(text: string): Generator<string> {
  if (isNarrow(text)) {
    yield* text;
    return;
  }
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  for (const { segment } of segmenter.segment(text)) yield segment;
}

/** Columns that a text takes. */
export const widthOf = (text: string): number => (isNarrow(text) ? text.length : stringWidth(text));

/** The longest beginning of a text that fits, in whole characters. */
function headOf(text: string, room: number, widthOfText = widthOf): string {
  let head = '';
  let width = 0;
  for (const segment of charactersOf(text)) {
    width += widthOfText(segment);
    if (width > room) break;
    head += segment;
  }
  return head;
}

/** The text, cut to the columns given with a mark at the cut. */
export function fitText(text: string, columns: number, mark = '…'): string {
  if (columns <= 0) return '';
  return widthOf(text) <= columns ? text : `${headOf(text, columns - 1).trimEnd()}${mark}`;
}

/** What must not end a text whose last words are gone. */
const DANGLING =
  /(?:[\s,;:.·+]|\s(?:and|or|of|the|to|a|with|in|on|over|under|by|at|from|for|than|step|chroma|hue))+$/;

/** The text shortened to the whole words that fit, no bracket left open; a first word longer than that is cut with a mark. */
export function fitWords(text: string, columns: number, mark = '…'): string {
  if (widthOf(text) <= columns) return text;
  const head = headOf(text, columns);
  const words = text.charAt(head.length) === ' ' ? head : head.slice(0, head.lastIndexOf(' ') + 1);
  const bracket = words.lastIndexOf('(');
  const whole = (bracket > words.lastIndexOf(')') ? words.slice(0, bracket) : words).replace(DANGLING, '');
  return whole === '' ? fitText(text, columns, mark) : whole;
}

/**
 * Names side by side, in lines: broken over several where there are so many, else shortened to whole words, to their last where
 * the first would not tell two apart.
 * @param rows lines for each name
 */
export function nameLines(names: readonly string[], columns: number, rows: number, mark = '…'): string[][] {
  const broken = names.map((name) => wrapText(name, columns));
  if (broken.every((lines, index) => lines.length <= rows && lines.join(' ') === names[index])) return broken;
  const heads = names.map((name) => fitWords(name, columns, mark));
  return names.map((name, index) => {
    const head = heads[index] ?? '';
    const isAlone = heads.every((other, at) => at === index || other !== head);
    return [isAlone ? head : fitWords(name.split(' ').at(-1) ?? '', columns, mark)];
  });
}

/** The text cut or filled with blanks to exactly the columns given. */
export function padText(text: string, columns: number, side: 'left' | 'right' = 'right'): string {
  const fitted = fitText(text, columns);
  const blanks = ' '.repeat(Math.max(0, columns - widthOf(fitted)));
  return side === 'right' ? fitted + blanks : blanks + fitted;
}

/**
 * Breaks a text at blanks into lines of at most the room given; a word longer than a line is cut.
 * @param room terminal columns, or whatever `widthOfText` counts in: points on paper
 */
export function wrapText(text: string, room: number, widthOfText = widthOf): string[] {
  const most = Math.max(1, room);
  const lines: string[] = [];
  let line = '';
  for (let word of text.split(/\s+/).filter(Boolean)) {
    if (line !== '' && widthOfText(`${line} ${word}`) <= most) {
      line += ` ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    while (widthOfText(word) > most) {
      const head = headOf(word, most, widthOfText) || (charactersOf(word).next().value ?? word);
      lines.push(head);
      word = word.slice(head.length);
    }
    line = word;
  }
  if (line !== '') lines.push(line);
  return lines;
}
