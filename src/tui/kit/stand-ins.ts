/**
 * Lines of many colours, kept from Ink and put in where it has written: Ink reads every escape of every line anew for each frame,
 * and a picture has a thousand. Ink lays out a sign without meaning for each column instead; a line with other colours has another
 * sign, so that a frame that looks different is different.
 */
import chalk from 'chalk';
import type { Piece } from './row.js';
import { styleOf } from './theme.js';

/**
 * What stands in is plain ASCII, which Ink measures at once: a mark, the number of the line, and a tail as long as the line is. Numbers
 * run in two halves, so that those of the frame before stay known. A text that happened to hold such a mark would be drawn as that line.
 */
const HALF = 3000;
const MARK = /~\|([0-9a-z]{3})\|_*/g;
/** Columns of the mark: a shorter line is left to Ink. */
const LEAST = 6;

interface Line {
  readonly pieces: readonly Piece[];
  readonly columns: number;
}

let half = 0;
const known = new Map<number, Line>();
const codes = new Map<string, number>();

/** Starts on the other half, whose signs are no longer on any screen. */
function turnOver(): void {
  half = 1 - half;
  const from = half * HALF;
  for (const [key, code] of codes) {
    if (code < from || code >= from + HALF) continue;
    codes.delete(key);
    known.delete(code);
  }
}

let used = 0;

function codeOf(key: string, line: Line): number {
  const there = codes.get(key);
  if (there !== undefined) return there;
  if (used === HALF) {
    turnOver();
    used = 0;
  }
  const code = half * HALF + used++;
  codes.set(key, code);
  known.set(code, line);
  return code;
}

/**
 * Text of as many columns as a line of pieces, to be filled in once it is written.
 * @param pieces all their signs one column wide
 * @returns undefined for a line that is too short
 */
export function standIn(pieces: readonly Piece[]): string | undefined {
  const columns = pieces.reduce((sum, { text }) => sum + text.length, 0);
  if (columns < LEAST) return undefined;
  const key = pieces.map(({ text, role, style }) => `${role}|${JSON.stringify(style)}|${text}`).join('\n');
  const code = codeOf(key, { pieces, columns }).toString(36).padStart(3, '0');
  return `~|${code}|`.padEnd(columns, '_');
}

function coloured({ text, role = 'plain', style = styleOf(role) }: Piece): string {
  const { color: ink, backgroundColor: ground, bold, dimColor, inverse } = style;
  let out = text;
  if (ground !== undefined) out = chalk.bgHex(ground)(out);
  if (ink !== undefined) out = chalk.hex(ink)(out);
  if (bold === true) out = chalk.bold(out);
  if (dimColor === true) out = chalk.dim(out);
  return inverse === true ? chalk.inverse(out) : out;
}

/** The pieces of a line up to a column; a piece at the end of it is cut. */
function upTo({ pieces, columns }: Line, end: number): readonly Piece[] {
  if (end >= columns) return pieces;
  let left = end;
  return pieces.flatMap((piece) => {
    const text = piece.text.slice(0, left);
    left -= text.length;
    return text === '' ? [] : [{ ...piece, text }];
  });
}

/** What is written to the terminal, with the lines in place of what stands in for them. */
export const filledIn = (chunk: string): string =>
  chunk.replace(MARK, (mark: string, code: string) => {
    const line = known.get(Number.parseInt(code, 36));
    return line === undefined ? mark : upTo(line, mark.length).map(coloured).join('');
  });
