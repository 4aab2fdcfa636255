/** The value-chroma plane: chroma grows to the right, value goes down to the dark. */
import { VALUE_SCALES, type ValueScaleId, valueFromStep } from '../../colour/index.js';
import type { PlanePoint, PlaneView } from '../../drills/types.js';
import { Canvas, type Run } from './canvas.js';
import type { Glyphs } from './glyphs.js';
import type { Role } from './theme.js';

type Point = Pick<PlanePoint, 'step' | 'chroma'>;

/** What is drawn on the plane. */
export interface Plane {
  /** From the first to the last, joined. */
  readonly path: readonly Point[];
  /** Points with the letters that they are told by, the last over the others. */
  readonly letters: readonly (readonly [point: Point, letter: string])[];
  readonly goal?: PlaneView['goal'];
}

const LIGHTEST = 0.5;
const DARKEST = 10.5;
/** Columns of the value numbers at the left. */
const AXIS = 3;

/** What a drill shows on it: start S, yours Y, best B, from the start along the amounts of the second paint. */
export const drillPlane = ({ start, best, yours, path, goal }: PlaneView): Plane => ({
  path: [start, ...path],
  letters: [
    [start, 'S'],
    [best, 'B'],
    [yours, 'Y'],
  ],
  goal,
});

/** Chroma at the right edge: a round number beyond everything shown. */
function widest({ path, letters, goal }: Plane): number {
  const known = [...path, ...letters.map(([point]) => point)].map(({ chroma }) => chroma);
  return Math.max(40, Math.ceil((Math.max(...known, goal?.chroma[0] ?? 0) + 8) / 20) * 20);
}

/**
 * Lines of the plane: letters for points, dots for a mixture as its amount grows, a box for the goal.
 */
export function planePicture(
  view: Plane,
  options: { columns: number; rows: number; glyphs: Glyphs; scale: ValueScaleId },
): Run<Role>[][] {
  const { columns, rows, glyphs, scale } = options;
  const most = widest(view);
  const canvas = new Canvas<Role>(columns - AXIS, rows - 1, { braille: glyphs.braille, role: 'plain' });
  const x = (chroma: number): number => Math.min(1, chroma / most);
  const y = (step: number): number => (step - LIGHTEST) / (DARKEST - LIGHTEST);
  const place = ({ step, chroma }: Point): [number, number] => [x(chroma), y(step)];

  if (view.goal !== undefined) drawBox(canvas, view.goal, x, y, glyphs);
  for (const [at, point] of view.path.slice(1).entries())
    canvas.line(...place(view.path[at] as Point), ...place(point), 'muted');
  for (const point of view.path) {
    const [column, row] = canvas.cellAt(...place(point));
    canvas.write(column, row, glyphs.open, 'muted');
  }
  const taken = new Set<string>();
  for (const [point, letter] of view.letters) {
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
  goal: PlaneView['goal'],
  x: (chroma: number) => number,
  y: (step: number) => number,
  glyphs: Glyphs,
): void {
  const [[left, top], [right, bottom]] = [
    canvas.cellAt(x(goal.chroma[0]), y(goal.step[0])),
    canvas.cellAt(x(goal.chroma[1]), y(goal.step[1])),
  ];
  const [tl, tr, bl, br] = glyphs.corners;
  const inside = Math.max(0, right - left - 1);
  const open = goal.chroma[1] >= 120 || !Number.isFinite(goal.chroma[1]);
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
