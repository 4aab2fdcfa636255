/** The value-chroma plane: chroma grows to the right, value goes down to the dark. */
import { VALUE_SCALES, type ValueScaleId, valueFromStep } from '../../colour/index.js';
import type { PlanePoint, PlaneView } from '../../drills/types.js';
import type { Run } from '../kit/canvas.js';
import { Canvas } from '../kit/canvas.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Role } from '../kit/theme.js';

const LIGHTEST = 0.5;
const DARKEST = 10.5;
/** Columns of the value numbers at the left. */
const AXIS = 3;

/** Chroma at the right edge: a round number beyond everything shown. */
function widest(view: PlaneView): number {
  const known = [view.start, view.yours, view.best, ...view.path].map(({ chroma }) => chroma);
  const low = view.goal.chroma[0];
  return Math.max(40, Math.ceil((Math.max(...known, low) + 8) / 20) * 20);
}

/**
 * Lines of the plane: start S, yours Y, best B, dots for the mixture as its amount grows, a box for the goal.
 */
export function planePicture(
  view: PlaneView,
  options: { columns: number; rows: number; glyphs: Glyphs; scale: ValueScaleId },
): Run<Role>[][] {
  const { columns, rows, glyphs, scale } = options;
  const most = widest(view);
  const canvas = new Canvas<Role>(columns - AXIS, rows - 1, { braille: glyphs.braille, role: 'plain' });
  const x = (chroma: number): number => Math.min(1, chroma / most);
  const y = (step: number): number => (step - LIGHTEST) / (DARKEST - LIGHTEST);
  const place = ({ step, chroma }: PlanePoint): [number, number] => [x(chroma), y(step)];

  drawBox(canvas, view, x, y, glyphs);
  // From the start on: no second paint yet.
  let from = place(view.start);
  for (const point of view.path) {
    const to = place(point);
    canvas.line(...from, ...to, 'muted');
    from = to;
  }
  for (const point of view.path) {
    const [column, row] = canvas.cellAt(...place(point));
    canvas.write(column, row, glyphs.open, 'muted');
  }
  const letters: [PlanePoint, string][] = [
    [view.start, 'S'],
    [view.best, 'B'],
    [view.yours, 'Y'],
  ];
  const taken = new Set<string>();
  for (const [point, letter] of letters) {
    const [column, row] = canvas.cellAt(...place(point));
    // Two points in one cell stand side by side rather than hide each other.
    const at = taken.has(`${column},${row}`) ? column + 1 : column;
    taken.add(`${at},${row}`);
    canvas.write(at, row, letter, 'here');
  }
  const marked = new Set<string>();
  const lines = canvas.lines().map((runs, row): Run<Role>[] => {
    const step = LIGHTEST + ((row + 0.5) / (rows - 1)) * (DARKEST - LIGHTEST);
    const number = wholeNumber(step, scale);
    const label = marked.has(number) ? '' : number;
    marked.add(number);
    return [{ text: `${label.padStart(2)}${glyphs.vertical}`, role: 'muted' }, ...runs];
  });
  const axis = `${' '.repeat(AXIS)}0 chroma`.padEnd(columns - String(most).length) + String(most);
  return [...lines, [{ text: axis, role: 'muted' }]];
}

/** A painter's step as the nearest whole number of the learner's scale. */
function wholeNumber(step: number, scale: ValueScaleId): string {
  return Math.round(VALUE_SCALES[scale].stepOf(valueFromStep(step))).toFixed(0);
}

function drawBox(
  canvas: Canvas<Role>,
  view: PlaneView,
  x: (chroma: number) => number,
  y: (step: number) => number,
  glyphs: Glyphs,
): void {
  const [[left, top], [right, bottom]] = [
    canvas.cellAt(x(view.goal.chroma[0]), y(view.goal.step[0])),
    canvas.cellAt(x(view.goal.chroma[1]), y(view.goal.step[1])),
  ];
  const [tl, tr, bl, br] = glyphs.corners;
  const inside = Math.max(0, right - left - 1);
  const open = view.goal.chroma[1] >= 120 || !Number.isFinite(view.goal.chroma[1]);
  if (bottom === top) {
    canvas.write(left, top, `[${glyphs.line.repeat(inside)}${open ? glyphs.line : ']'}`, 'goal');
    return;
  }
  canvas.write(left, top, tl + glyphs.line.repeat(inside) + (open ? glyphs.line : tr), 'goal');
  canvas.write(left, bottom, bl + glyphs.line.repeat(inside) + (open ? glyphs.line : br), 'goal');
  for (let row = top + 1; row < bottom; row++) {
    canvas.write(left, row, glyphs.vertical, 'goal');
    if (!open) canvas.write(right, row, glyphs.vertical, 'goal');
  }
}
