/** Where things go, as pure functions of the terminal's size. Every frame keeps to rows - 1 lines: at full height Ink 6 clears the scrollback. */
import type { Size, Stage } from './stage.js';

export const SMALLEST: Size = { columns: 60, rows: 18 };

export const isTooSmall = ({ columns, rows }: Size): boolean =>
  columns < SMALLEST.columns || rows < SMALLEST.rows;

/** The widest and the tallest frame, and the widest text that is still read easily. */
const WIDEST = 200;
const TALLEST = 62;
const WIDEST_TEXT = 118;

/** Columns of the frame, without the margin of one column at each side. */
export const innerColumns = ({ columns }: Size): number => Math.min(WIDEST, columns) - 2;
/** Columns of a text that is read line by line. */
export const textColumns = (size: Size): number => Math.min(WIDEST_TEXT, innerColumns(size));
/** Of a text to scroll through, less two for the sign that more follows. */
export const pageColumns = (size: Size): number => textColumns(size) - 2;
export const frameRows = ({ rows }: Size): number => Math.min(TALLEST, rows) - 1;

/** One column below 80 columns, two from there on. */
export const isWide = ({ columns }: Size): boolean => columns >= 80;
/** Room for blank lines between parts. */
export const isAiry = ({ rows }: Size): boolean => rows >= 24;

export interface FrameRows {
  /** Title, and a blank line under it where there is room. */
  readonly header: number;
  readonly body: number;
  /** Notes about saving and colour, a notice, and the help line. */
  readonly footer: number;
}

/** How the lines of a frame are shared out. */
export function frameParts(state: Pick<Stage, 'size' | 'notice'>, notes: number): FrameRows {
  const header = isAiry(state.size) ? 2 : 1;
  const footer = 1 + (isAiry(state.size) ? 1 : 0) + notes + (state.notice === undefined ? 0 : 1);
  return { header, footer, body: Math.max(1, frameRows(state.size) - header - footer) };
}
