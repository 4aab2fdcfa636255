/** Fitting text into columns. Widths are terminal columns, so a wide character counts as two. */
import stringWidth from 'string-width';

const SEGMENTER = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Columns that a text takes. */
export const widthOf = (text: string): number => stringWidth(text);

/** The longest beginning of a text that fits, in whole characters. */
function headOf(text: string, columns: number): string {
  let head = '';
  let width = 0;
  for (const { segment } of SEGMENTER.segment(text)) {
    width += stringWidth(segment);
    if (width > columns) break;
    head += segment;
  }
  return head;
}

/** The text, cut to the columns given with a mark at the cut. */
export function fitText(text: string, columns: number, mark = '…'): string {
  if (columns <= 0) return '';
  return stringWidth(text) <= columns ? text : `${headOf(text, columns - 1).trimEnd()}${mark}`;
}

/** The text cut or filled with blanks to exactly the columns given. */
export function padText(text: string, columns: number, side: 'left' | 'right' = 'right'): string {
  const fitted = fitText(text, columns);
  const blanks = ' '.repeat(Math.max(0, columns - stringWidth(fitted)));
  return side === 'right' ? fitted + blanks : blanks + fitted;
}

/** Breaks a text at blanks into lines of at most the columns given; a word longer than a line is cut. */
export function wrapText(text: string, columns: number): string[] {
  const room = Math.max(1, columns);
  const lines: string[] = [];
  let line = '';
  for (let word of text.split(/\s+/).filter(Boolean)) {
    if (line !== '' && stringWidth(line) + 1 + stringWidth(word) <= room) {
      line += ` ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    while (stringWidth(word) > room) {
      const head =
        headOf(word, room) || (SEGMENTER.segment(word)[Symbol.iterator]().next().value?.segment ?? word);
      lines.push(head);
      word = word.slice(head.length);
    }
    line = word;
  }
  if (line !== '') lines.push(line);
  return lines;
}
