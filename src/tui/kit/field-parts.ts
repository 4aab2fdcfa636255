/** How the lines for the choices of a drill are shared out among its fields: nothing is cut, what has no room folds to what is chosen. */
import type { Field, FieldOption } from '../../drills/types.js';
import { cleanText } from '../../text/sanitize.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { showsAs } from './fields.js';
import { windowOfLines } from './window.js';

/** One field of a drill on the screen. `folded`: only its chosen option. */
export interface FieldPart {
  readonly index: number;
  readonly form: 'tray' | 'line' | 'folded';
  /** Lines it takes, its label included, the blank one before it not. */
  readonly rows: number;
  /** Columns of its label, where the label stands beside what can be chosen; else it stands above. */
  readonly labelColumns?: number;
  /** A blank line stands before it. */
  readonly gap?: boolean;
}

/** The fields that are seen, and how many are not, before them and after. */
export interface FieldParts {
  readonly parts: readonly FieldPart[];
  readonly before: number;
  readonly after: number;
}

/** Columns of the sign before a row; of sign and number before an option; of its colour. */
const ROW_LEAD = 2;
export const OPTION_LEAD = 4;
export const SWATCH = 4;
/** Options of a tray that are seen at the least, the chosen one among them. */
const LEAST_SEEN = 3;
/** Columns of "3 of 6" and its arrows after the label of a tray that is seen in part. */
const PLACE = 13;

export const optionName = ({ label }: FieldOption): string => cleanText(label, 60);

/** The label of an option in lines. */
export const optionLines = (option: FieldOption, columns: number): string[] =>
  wrapText(optionName(option), columns - OPTION_LEAD - (option.swatch === undefined ? 0 : SWATCH));

/** Columns of the options of a line, each between its signs. */
const lineWidth = ({ options }: Field): number =>
  options.reduce((sum, option) => sum + widthOf(optionName(option)) + 3, -1);

/** Whether each option of a line has room, with its signs. */
const fitsIn = ({ options }: Field, columns: number): boolean =>
  options.every((option) => widthOf(optionName(option)) + 2 <= columns);

/** Indexes of the options of a line, broken over several where they have no room on one. */
export function lineBreaks({ options }: Field, columns: number): number[][] {
  const lines: number[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const [index, option] of options.entries()) {
    const width = widthOf(optionName(option)) + 3;
    if (used + width - 1 > columns) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push(index);
    used += width;
  }
  return lines;
}

const labelLines = ({ label }: Field, columns: number): number => wrapText(label, columns).length;

function linePart(field: Field, index: number, columns: number): FieldPart {
  const label = widthOf(field.label);
  const room = columns - ROW_LEAD - label - 1;
  const beside = fitsIn(field, room) ? lineBreaks(field, room).length : Number.POSITIVE_INFINITY;
  const above = labelLines(field, columns) + lineBreaks(field, columns - ROW_LEAD).length;
  // Options on one line under the label read better than beside it on two.
  return beside === 1 || beside < above
    ? { index, form: 'line', rows: beside, labelColumns: label }
    : { index, form: 'line', rows: above };
}

function trayPart(field: Field, index: number, columns: number): FieldPart {
  const options = field.options.reduce((sum, option) => sum + optionLines(option, columns).length, 0);
  return { index, form: 'tray', rows: labelLines(field, columns) + options };
}

const openPart = (field: Field, index: number, columns: number): FieldPart =>
  showsAs(field) === 'line' ? linePart(field, index, columns) : trayPart(field, index, columns);

/** The longest option decides, so that walking through the others moves nothing. */
function foldedPart(field: Field, index: number, columns: number): FieldPart {
  const label = widthOf(field.label);
  const longest = Math.max(...field.options.map((option) => widthOf(optionName(option))));
  const signs = showsAs(field) === 'line' ? 2 : 0;
  if (ROW_LEAD + label + 1 + signs + longest <= columns)
    return { index, form: 'folded', rows: 1, labelColumns: label };
  const chosen = Math.max(
    ...field.options.map((option) => wrapText(optionName(option), columns - OPTION_LEAD).length),
  );
  return { index, form: 'folded', rows: labelLines(field, columns) + chosen };
}

const sum = (parts: readonly FieldPart[]): number =>
  parts.reduce((total, { rows, gap }) => total + rows + (gap === true ? 1 : 0), 0);

/** Trays, and lines after a tray, stand apart; rows of one line each stand together. */
function spaced(parts: readonly FieldPart[]): FieldPart[] {
  return parts.map((part, at) => {
    const before = parts[at - 1];
    const apart = before !== undefined && !(before.rows === 1 && part.rows === 1);
    return apart ? { ...part, gap: true } : part;
  });
}

/** Fewest lines of the focused field: a tray may be seen in part. */
function leastOf(part: FieldPart, field: Field, columns: number): number {
  if (part.form !== 'tray') return part.rows;
  const tallest = Math.max(...field.options.map((option) => optionLines(option, columns).length));
  return Math.min(part.rows, labelLines(field, columns - PLACE) + LEAST_SEEN - 1 + tallest);
}

/** The parts that fold, those that save most first, until the rest has room. */
function foldedUntil(
  open: readonly FieldPart[],
  fields: readonly Field[],
  focus: number,
  columns: number,
  rows: number,
) {
  const parts = [...open];
  const savings = open
    .filter(({ index }) => index !== focus)
    .map((part) => ({ part, folded: foldedPart(fields[part.index] as Field, part.index, columns) }))
    .filter(({ part, folded }) => folded.rows < part.rows)
    .sort((one, other) => other.part.rows - other.folded.rows - (one.part.rows - one.folded.rows));
  for (const { part, folded } of savings) {
    if (sum(parts) <= rows) break;
    parts[part.index] = folded;
  }
  return parts;
}

/** Rows that stay in sight around the focused one where not all have room, that which counts the others among them. */
const FEW = 2;

/** Lines that the fields take: where few are seen, where all else is folded, with all open, and with blank lines between. */
export function fieldRows(fields: readonly Field[], focus: number, columns: number) {
  const open = fields.map((field, index) => openPart(field, index, columns));
  const folded = foldedUntil(open, fields, focus, columns, 0);
  const focused = folded[focus];
  const own = focused === undefined ? 0 : leastOf(focused, fields[focus] as Field, columns);
  const least = sum(folded) - (focused?.rows ?? 0) + own;
  return { fewest: Math.min(least, own + FEW), least, open: sum(open), spaced: sum(spaced(open)) };
}

/** Columns in which no row is broken: with what is said beside the options, and without. */
export function fieldColumns(fields: readonly Field[]): { readonly least: number; readonly most: number } {
  const widths = fields.map((field) => {
    const label = widthOf(field.label);
    if (showsAs(field) === 'line')
      return {
        least: ROW_LEAD + Math.max(label, Math.min(lineWidth(field), 30)),
        most: ROW_LEAD + label + 1 + lineWidth(field),
      };
    const names = field.options.map(
      (option) => widthOf(optionName(option)) + OPTION_LEAD + (option.swatch ? SWATCH : 0),
    );
    const notes = field.options.map(({ swatch, note }) =>
      swatch === undefined ? 0 : widthOf(note ?? '') + 2,
    );
    const least = Math.max(...names);
    return { least, most: Math.max(label, least + Math.max(...notes)) };
  });
  return {
    least: Math.max(0, ...widths.map(({ least }) => least)),
    most: Math.max(0, ...widths.map(({ most }) => most)),
  };
}

/** Labels of one width, where that breaks no row. */
function aligned(parts: readonly FieldPart[], fields: readonly Field[], columns: number): FieldPart[] {
  const widest = Math.max(0, ...parts.map(({ labelColumns = 0 }) => labelColumns));
  return parts.map((part) => {
    const field = fields[part.index] as Field;
    if (part.labelColumns === undefined) return part;
    const room = columns - ROW_LEAD - widest - 1;
    const chosen = Math.max(...field.options.map((option) => widthOf(optionName(option)))) + 2;
    const fits =
      part.form === 'line'
        ? fitsIn(field, room) && lineBreaks(field, room).length <= part.rows
        : chosen <= room;
    return fits ? { ...part, labelColumns: widest } : part;
  });
}

/** Lines that are left go to the first tray that folded, where they show enough of it. */
function seenInPart(parts: readonly FieldPart[], open: readonly FieldPart[], rows: number): FieldPart[] {
  const left = rows - sum(parts);
  const at = parts.findIndex(
    (part, index) =>
      part.form === 'folded' && open[index]?.form === 'tray' && left + part.rows >= 1 + LEAST_SEEN,
  );
  return parts.map((part, index) => (index === at ? { index, form: 'tray', rows: part.rows + left } : part));
}

/**
 * Shares the lines out among the fields. All are open when they have room, apart where there is more; else those out of focus fold to
 * what is chosen, the tray in focus is seen in part, and at last only the fields around the focus are seen.
 */
export function fieldParts(
  fields: readonly Field[],
  focus: number,
  columns: number,
  rows: number,
): FieldParts {
  const all = (parts: readonly FieldPart[]): FieldParts => ({
    parts: aligned(parts, fields, columns),
    before: 0,
    after: 0,
  });
  const open = fields.map((field, index) => openPart(field, index, columns));
  const apart = spaced(open);
  if (sum(apart) <= rows) return all(apart);
  const parts = foldedUntil(open, fields, focus, columns, rows);
  const focused = parts[focus];
  if (focused === undefined || sum(parts) <= rows) return all(seenInPart(parts, open, rows));
  const others = sum(parts) - focused.rows;
  const least = leastOf(focused, fields[focus] as Field, columns);
  if (rows - others >= least) {
    parts[focus] = { ...focused, rows: rows - others };
    return all(parts);
  }
  parts[focus] = { ...focused, rows: Math.max(1, Math.min(least, rows - 1)) };
  // One line says how many are out of sight.
  const heights = parts.map((part) => part.rows);
  const { from, to } = windowOfLines(heights, focus, rows - 1);
  return {
    parts: aligned(parts.slice(from, to), fields, columns),
    before: from,
    after: parts.length - to,
  };
}
