/** The last sets of `mudlark progress` as plots, and in words what their figures did. */
import type { ProgressReport, SetReport } from '../practice/index.js';
import { changeWord, columnPlot, FIGURE_KINDS, figureRows, sideBySide } from '../practice/index.js';

/** From this width on plots stand side by side. */
const WIDE = 100;
const PLOT_LINES = 5;

const dayOf = ({ started }: SetReport): string => started.slice(5, 10);

/** The figures of the last sets as columns, each kind that was asked in its own plot. */
export function plots(sets: readonly SetReport[], columns: number, ascii: boolean): string[] {
  const isWide = columns >= WIDE;
  const width = isWide ? Math.floor(columns / 2) - 1 : columns;
  const drawn = FIGURE_KINDS.flatMap((kind) => {
    const figures = sets.map((set) => ({ figure: kind.shown(set), label: dayOf(set) }));
    if (figures.every(({ figure }) => figure === undefined)) return [];
    return [columnPlot({ kind, columns: figures, width, height: PLOT_LINES, ascii })];
  });
  const rows = isWide ? [sideBySide(drawn[0] ?? [], drawn[1] ?? [], width + 2), ...drawn.slice(2)] : drawn;
  return ['A taller column is better.', ...rows.flatMap((lines) => ['', ...lines])];
}

/** What the figures did over the last sets: an error that gets smaller has fallen, and is nearer. */
export function trendLines({ trend, sets }: ProgressReport): string[] {
  if (trend === undefined) return [];
  const said = figureRows(trend.later, trend.earlier).flatMap((row) => {
    const { label, now, before } = row;
    if (before === undefined) return [];
    if (row.change === 'same') return [`${label} the same (${now.text})`];
    return [
      `${label} ${now.value < before.value ? 'fell' : 'rose'} from ${before.text} to ${now.text}: ${changeWord(row)}`,
    ];
  });
  return said.length === 0
    ? []
    : [`Later half of these ${sets.length} sets against the earlier: ${said.join('; ')}.`];
}
