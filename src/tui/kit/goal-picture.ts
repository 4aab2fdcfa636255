/** The goal as a picture: a staircase of ten greys and a bar of chroma, as lines of pieces. */
import type { ValueScaleId } from '../../colour/index.js';
import { greyOfValue } from '../../colour/screen.js';
import type { Glyphs } from './glyphs.js';
import type { Piece } from './row.js';
import { patchStyle } from './theme.js';

const STEPS = 10;
/** Chroma that the bar ends at. */
const STRONGEST = 100;

/** What the picture shows; steps are painter's steps. */
export interface GoalPicture {
  readonly start: { readonly step: number; readonly chroma: number };
  readonly goal: { readonly step: readonly [number, number]; readonly chroma: readonly [number, number] };
}

const clamp = (x: number, low: number, high: number): number => Math.min(high, Math.max(low, x));

/** Value and number of each cell, light first. */
function cells(scale: ValueScaleId): { value: number; name: string; step: number }[] {
  return Array.from({ length: STEPS }, (_, index) => {
    // The other scale has its own whole numbers: ten cells from 10 (white) to 1.
    const value = scale === 'paper-first' ? 9.5 - index : 10 - index;
    return { value, name: String(scale === 'paper-first' ? index + 1 : 10 - index), step: 10.5 - value };
  });
}

/** Column, counted from the left edge, of a painter's step. */
function columnOf(step: number, cell: number, scale: ValueScaleId): number {
  const first = scale === 'paper-first' ? 1 : 0.5;
  return clamp(Math.round((step - first) * cell + (cell - 1) / 2), 0, STEPS * cell - 1);
}

/** Marks on a line: a band and a point over it. */
function marks(
  columns: number,
  band: readonly [number, number],
  point: number,
  glyphs: Glyphs,
  ground: string,
): Piece[] {
  return Array.from({ length: columns }, (_, at): Piece => {
    if (at === point) return { text: glyphs.upMark, role: 'here' };
    if (at >= band[0] && at <= band[1]) return { text: glyphs.band, role: 'goal' };
    return { text: ground, role: 'muted' };
  });
}

/**
 * Stairs from paper down to the darkest dark.
 * @param columns room; each step takes an equal share, at most five
 * @param rows lines of greys; one or two give a flat strip, none the numbers alone
 */
export function staircase(
  picture: GoalPicture,
  options: { columns: number; rows: number; scale: ValueScaleId; glyphs: Glyphs },
): Piece[][] {
  const { columns, rows, scale, glyphs } = options;
  const cell = clamp(Math.floor(columns / STEPS), 2, 5);
  const all = cells(scale);
  const greys = Array.from({ length: Math.max(0, rows) }, (_, row): Piece[] =>
    all.map(({ value }, index) => stair(greyOfValue(value), index, row, rows, cell)),
  );
  const numbers: Piece[] = all.map(({ name }) => {
    const left = Math.floor((cell - name.length) / 2);
    return { text: `${' '.repeat(Math.max(0, left))}${name}`.padEnd(cell).slice(0, cell), role: 'muted' };
  });
  const band: [number, number] = [
    columnOf(picture.goal.step[0], cell, scale),
    columnOf(picture.goal.step[1], cell, scale),
  ];
  return [
    ...greys,
    numbers,
    marks(STEPS * cell, band, columnOf(picture.start.step, cell, scale), glyphs, ' '),
  ];
}

function stair(grey: string, index: number, row: number, rows: number, cell: number): Piece {
  if (rows < 3) return { text: ' '.repeat(cell), style: patchStyle(grey) };
  // Heights in half lines, the first step the highest.
  const height = Math.max(1, Math.round((2 * rows * (STEPS - index)) / STEPS));
  const top = 2 * rows - height;
  if (row * 2 >= top) return { text: ' '.repeat(cell), style: patchStyle(grey) };
  if (row * 2 + 1 === top) return { text: '▄'.repeat(cell), style: { color: grey } };
  return { text: ' '.repeat(cell) };
}

/** A bar of chroma from none to the strongest, the goal as a band and the start as a point. */
export function chromaBar(picture: GoalPicture, options: { columns: number; glyphs: Glyphs }): Piece[] {
  const { columns, glyphs } = options;
  const room = Math.max(10, columns - 13);
  const at = (chroma: number): number => clamp(Math.round((chroma / STRONGEST) * (room - 1)), 0, room - 1);
  const band: [number, number] = [
    at(picture.goal.chroma[0]),
    at(Math.min(STRONGEST, picture.goal.chroma[1])),
  ];
  return [
    { text: 'chroma 0 ', role: 'muted' },
    ...marks(room, band, at(picture.start.chroma), glyphs, glyphs.line),
    { text: ` ${STRONGEST}`, role: 'muted' },
  ];
}

/** What the marks mean, and where there is room which end of the value scale is light. */
export function legend(glyphs: Glyphs, scale: ValueScaleId, columns: number): Piece[] {
  const ends = scale === 'paper-first' ? '1 paper, 10 dark' : '10 white, 0 black';
  const marks: Piece[] = [
    { text: glyphs.upMark, role: 'here' },
    { text: ' now  ', role: 'muted' },
    { text: glyphs.band.repeat(2), role: 'goal' },
    { text: ' goal', role: 'muted' },
  ];
  const whole: Piece[] = [...marks, { text: `  ${ends}`, role: 'muted' }];
  return whole.reduce((sum, { text }) => sum + text.length, 0) <= columns ? whole : marks;
}

/** Greys of a strip, light first: the welcome's ramp. */
export function greyRamp(columns: number, glyphs: Glyphs, level: number): Piece[] {
  const cell = clamp(Math.floor(columns / STEPS), 2, 6);
  return cells('paper-first').map(({ value }) =>
    level === 0
      ? { text: glyphs.empty.repeat(cell) }
      : { text: ' '.repeat(cell), style: patchStyle(greyOfValue(value)) },
  );
}
