/** The last sets of `mudlark progress` as plots, and in words what their figures did. */
import type { ProgressReport, SetReport } from '../practice/index.js';
import { columnPlot, figureRows, sideBySide } from '../practice/index.js';

/** From this width on the two plots stand side by side. */
const WIDE = 100;
const PLOT_LINES = 5;

const dayOf = ({ started }: SetReport): string => started.slice(5, 10);

/** The figures of the last sets as columns: an error falls as it gets smaller. */
export function plots(sets: readonly SetReport[], columns: number, ascii: boolean): string[] {
  const isWide = columns >= WIDE;
  const width = isWide ? Math.floor(columns / 2) - 2 : columns;
  const common = { width, height: PLOT_LINES, ascii };
  const largest = Math.max(0, ...sets.map(({ valueError }) => valueError ?? 0));
  const most = Math.max(0, ...sets.map(({ chromaKept }) => chromaKept ?? 0));
  const value = columnPlot({
    ...common,
    title: 'Value error, steps (0 is inside the band)',
    columns: sets.map((set) => ({ value: set.valueError, label: dayOf(set) })),
    top: Math.min(5, Math.max(0.5, Math.ceil(largest * 2) / 2)),
    show: (x) => x.toFixed(1),
  });
  const kept = columnPlot({
    ...common,
    title: 'Chroma kept, where it was asked',
    columns: sets.map((set) => ({ value: set.chromaKept, label: dayOf(set) })),
    top: most > 1 ? 1.5 : 1,
    show: (x) => `${Math.round(100 * x)}%`,
  });
  const worst = Math.max(0, ...sets.map(({ dullError }) => dullError ?? 0));
  const dull = columnPlot({
    ...common,
    title: 'Chroma error where dulling was asked, C*',
    columns: sets.map((set) => ({ value: set.dullError, label: dayOf(set) })),
    top: Math.min(60, Math.max(10, Math.ceil(worst / 10) * 10)),
    show: (x) => x.toFixed(0),
  });
  const hasDull = sets.some(({ dullError }) => dullError !== undefined);
  return [
    ...(isWide ? sideBySide(value, kept, width + 4) : [...value, '', ...kept]),
    ...(hasDull ? ['', ...dull] : []),
  ];
}

/** What the figures did over the last sets: an error that gets smaller has fallen. */
export function trendLines({ trend, sets }: ProgressReport): string[] {
  if (trend === undefined) return [];
  const rows = figureRows(trend.later, trend.earlier);
  const said = rows.flatMap(({ label, now, before }) => {
    if (before === undefined) return [];
    if (now.value === before.value) return [`${label} the same (${now.text})`];
    return [`${label} ${now.value < before.value ? 'fell' : 'rose'} from ${before.text} to ${now.text}`];
  });
  return said.length === 0
    ? []
    : [`Later half of these ${sets.length} sets against the earlier: ${said.join('; ')}.`];
}
