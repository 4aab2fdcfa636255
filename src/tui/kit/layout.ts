/** Where things go, as pure functions of the terminal's size. Every frame keeps to rows - 1 lines: at full height Ink 6 clears the scrollback. */
import type { Field } from '../../drills/types.js';
import { showsAs } from './fields.js';
import type { Size, Stage } from './stage.js';

export const SMALLEST: Size = { columns: 60, rows: 18 };

export const isTooSmall = ({ columns, rows }: Size): boolean =>
  columns < SMALLEST.columns || rows < SMALLEST.rows;

/** Widest text that is still read easily, and the widest frame. */
const WIDEST = 120;
const TALLEST = 44;

/** Columns of the frame, without the margin of one column at each side. */
export const innerColumns = ({ columns }: Size): number => Math.min(WIDEST, columns) - 2;
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

/** One field of a drill on the screen. `folded`: only its chosen option, on one line. */
export interface FieldPart {
  readonly index: number;
  readonly form: 'tray' | 'line' | 'folded';
  /** Lines it takes, its label included. */
  readonly rows: number;
  /** A blank line stands before it. */
  readonly gap?: boolean;
}

/** Longest label that stands beside its options even where they have to be cut. */
const SHORT_LABEL = 14;

/** Lines of a field whose options stand on one line: one when the label is short or all fits beside it. */
function lineRows(field: Field, columns: number): number {
  if (field.label.length <= SHORT_LABEL) return 1;
  const options = field.options.reduce((sum, { label }) => sum + label.length + 3, 0);
  return field.label.length + 2 + options <= columns ? 1 : 2;
}

/**
 * Shares the lines out among the fields of a drill. All are shown in full when they fit; else trays out of focus
 * fold to one line, and the tray in focus becomes a window; else only the fields around the focus are shown.
 */
export function fieldParts(
  fields: readonly Field[],
  focus: number,
  columns: number,
  rows: number,
): FieldPart[] {
  const full = fields.map((field, index): FieldPart => {
    if (showsAs(field) === 'line') return { index, form: 'line', rows: lineRows(field, columns) };
    return { index, form: 'tray', rows: 1 + field.options.length };
  });
  const sum = (parts: readonly FieldPart[]): number => parts.reduce((total, part) => total + part.rows, 0);
  const groups = full.filter((_, at) => startsGroup(full, at)).length;
  if (sum(full) + groups <= rows) {
    return full.map((part, at) => (startsGroup(full, at) ? { ...part, gap: true } : part));
  }
  if (sum(full) <= rows) return full;
  // The focused tray, or the first where none is focused, stays open as long as it has three lines to show.
  const open = full[focus]?.form === 'tray' ? focus : full.findIndex(({ form }) => form === 'tray');
  const folded = full.map(
    (part): FieldPart =>
      part.form === 'tray' && part.index !== open ? { ...part, form: 'folded', rows: 1 } : part,
  );
  const others = sum(folded.filter(({ index }) => index !== open));
  const left = rows - others;
  if (open >= 0 && left >= 4) {
    return folded.map((part) => (part.index === open ? { ...part, rows: Math.min(part.rows, left) } : part));
  }
  const tight = folded.map(
    (part): FieldPart => (part.form === 'tray' ? { ...part, form: 'folded', rows: 1 } : part),
  );
  return aroundFocus(tight, focus, rows);
}

/** Trays, and lines after a tray, stand apart; lines on one row each stand together. */
function startsGroup(parts: readonly FieldPart[], at: number): boolean {
  const [before, part] = [parts[at - 1], parts[at]];
  return before !== undefined && part !== undefined && !(before.rows === 1 && part.rows === 1);
}

function aroundFocus(parts: readonly FieldPart[], focus: number, rows: number): FieldPart[] {
  let from = focus;
  let to = focus + 1;
  let used = parts[focus]?.rows ?? 0;
  for (;;) {
    const after = parts[to];
    const before = parts[from - 1];
    if (after !== undefined && used + after.rows <= rows) {
      used += after.rows;
      to += 1;
    } else if (before !== undefined && used + before.rows <= rows) {
      used += before.rows;
      from -= 1;
    } else {
      return parts.slice(from, to);
    }
  }
}
