/** Spectra drawn with text characters, for a terminal without graphics. */
import { GRID, type Spectrum } from '../optics/index.js';

/** One curve and the character it is drawn with; later curves lie on top. */
export interface PlottedCurve {
  readonly mark: string;
  readonly values: Spectrum;
}

export interface PlotShape {
  readonly columns: number;
  readonly rows: number;
  /** Top of a linear scale; the largest value when left out. */
  readonly most?: number;
  readonly logarithmic?: boolean;
}

const AXIS_COLUMNS = 7;

/** Decades below the top that a logarithmic scale shows. */
const DECADES = 3;

interface Scale {
  /** Where a value lies, 0 bottom - 1 top. */
  readonly place: (value: number) => number;
  readonly label: (height: number) => number;
}

function scaleOf(curves: readonly PlottedCurve[], shape: PlotShape): Scale {
  const largest = Math.max(...curves.map(({ values }) => Math.max(...values)), 1e-6);
  if (shape.logarithmic !== true) {
    const most = shape.most ?? largest;
    return { place: (value) => value / most, label: (height) => height * most };
  }
  const top = Math.ceil(Math.log10(largest));
  return {
    place: (value) => 1 + (Math.log10(Math.max(value, 1e-12)) - top) / DECADES,
    label: (height) => 10 ** (top - DECADES * (1 - height)),
  };
}

function valueAt(values: Spectrum, share: number): number {
  const at = share * (GRID.count - 1);
  const band = Math.min(Math.floor(at), GRID.count - 2);
  const part = at - band;
  return (values[band] as number) * (1 - part) + (values[band + 1] as number) * part;
}

/** The curves over wavelength: rows from the top, then a line of wavelengths. */
export function plotCurve(curves: readonly PlottedCurve[], shape: PlotShape): string[] {
  const width = Math.max(10, shape.columns - AXIS_COLUMNS);
  const scale = scaleOf(curves, shape);
  const cells = Array.from({ length: shape.rows }, () => Array<string>(width).fill(' '));
  for (const { mark, values } of curves) {
    let before: number | undefined;
    for (let column = 0; column < width; column++) {
      const height = Math.min(Math.max(scale.place(valueAt(values, column / (width - 1))), 0), 1);
      const row = Math.round((1 - height) * (shape.rows - 1));
      // a steep edge is drawn through the rows it skips
      const from =
        before === undefined || Math.abs(before - row) <= 1 ? row : before + Math.sign(row - before);
      for (let at = Math.min(from, row); at <= Math.max(from, row); at++)
        (cells[at] as string[])[column] = mark;
      before = row;
    }
  }
  const rows = cells.map((row, index) => {
    const label = Number(scale.label(1 - index / (shape.rows - 1)).toPrecision(2));
    return `${String(label).padStart(AXIS_COLUMNS - 2)} |${row.join('')}`.trimEnd();
  });
  const axis = Array<string>(width + AXIS_COLUMNS).fill(' ');
  for (const nm of [400, 500, 600, 700]) {
    const at =
      AXIS_COLUMNS + Math.round(((nm - GRID.startNm) / (GRID.endNm - GRID.startNm)) * (width - 1)) - 1;
    [...String(nm)].forEach((digit, index) => {
      axis[at + index] = digit;
    });
  }
  return [...rows, `${axis.join('').trimEnd()} nm`];
}
