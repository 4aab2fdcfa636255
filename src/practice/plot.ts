/** A plot of columns in characters: no colour, and the figures stand under it. A taller column is better. */
import type { FigureKind, ShownFigure } from './figure-rows.js';

export interface PlotColumn {
  /** Undefined where there is nothing to draw. */
  readonly figure: ShownFigure | undefined;
  /** At most five characters. */
  readonly label: string;
}

export interface PlotOptions {
  readonly kind: Pick<FigureKind, 'title' | 'ends'>;
  readonly columns: readonly PlotColumn[];
  /** Characters across, at least 40. */
  readonly width: number;
  /** Lines of the columns themselves. */
  readonly height: number;
  /** Only the characters of ASCII. */
  readonly ascii: boolean;
}

const EIGHTHS = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];
/** Characters of the scale at the left. */
const SCALE = 7;
/** Characters of a column with the blanks beside it: room for a label and a blank, and no wider than reads well. */
const NARROWEST = 6;
const WIDEST = 10;

/** The character of a column in one line: `filled` is how much of the line it fills, 0-1 and beyond. */
function cell(filled: number, ascii: boolean): string {
  if (filled <= 0) return ' ';
  if (ascii) return filled >= 0.5 ? '#' : '_';
  return EIGHTHS[Math.min(7, Math.ceil(filled * 8) - 1)] as string;
}

const centred = (text: string, width: number): string =>
  (' '.repeat(Math.floor((width - text.length) / 2)) + text).padEnd(width);

/** Lines of the plot, each at most `width` characters: of more columns than fit the last ones are drawn. */
export function columnPlot(options: PlotOptions): string[] {
  const { kind, height, ascii } = options;
  const room = options.width - SCALE;
  const columns = options.columns.slice(-Math.floor(room / NARROWEST));
  const [foot, top] = kind.ends;
  const each = Math.min(WIDEST, Math.floor(room / columns.length));
  const bar = each - 2;
  const rows = Array.from({ length: height }, (_, row) => {
    const floor = (height - 1 - row) / height;
    const marks = columns.map(({ figure }) => {
      // A line is filled by what of the column lies above its floor.
      const filled = ((figure?.fill ?? 0) - floor) * height;
      return ` ${cell(filled, ascii).repeat(bar)} `;
    });
    const scale = (row === 0 ? top.number : '').padStart(SCALE - 2);
    return `${scale} ${ascii ? '|' : '┤'}${marks.join('')}`.trimEnd();
  });
  const rule = `${foot.number.padStart(SCALE - 2)} ${ascii ? '+' : '┼'}${(ascii ? '-' : '─').repeat(each * columns.length)}`;
  const under = (texts: readonly string[]): string =>
    `${' '.repeat(SCALE)}${texts.map((t) => centred(t, each)).join('')}`.trimEnd();
  return [
    kind.title,
    ...rows,
    rule,
    under(columns.map(({ figure }) => figure?.number ?? '-')),
    under(columns.map(({ label }) => label)),
  ];
}

/** Blocks of lines next to each other, with a gap. */
export function sideBySide(left: readonly string[], right: readonly string[], leftWidth: number): string[] {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, i) =>
    `${(left[i] ?? '').padEnd(leftWidth)}${right[i] ?? ''}`.trimEnd(),
  );
}
