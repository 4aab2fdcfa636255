/** Where the pictures stand, and how large: one with words under or beside it, or before and after where there is room for two. Pure. */
import type { PaintingReading } from '../../painting/index.js';
import { innerColumns, isWide } from '../kit/layout.js';
import { bodyRows } from '../kit/notes.js';
import { type PhotographState, type PhotographWorld, paintingIn } from './state.js';

/** Columns of what is said beside a picture, and between what stands side by side. */
const SIDE = 36;
export const GAP = 2;
/** Columns from which before and after are shown together. */
const ROOM_FOR_TWO = 116;
/** Lines that are left for words under a picture. */
const LINES_UNDER = 5;
/** A cell is about twice as high as wide. */
export const CELL = 2;

export interface Cells {
  readonly columns: number;
  readonly lines: number;
}

/** Cells that a picture takes of its room, in its own shape. */
function cellsFor({ likeness: { width, height } }: Pick<PaintingReading, 'likeness'>, room: Cells): Cells {
  const across = Math.max(8, Math.min(room.columns, Math.round((room.lines * CELL * width) / height)));
  return {
    columns: across,
    lines: Math.max(4, Math.min(room.lines, Math.round((across * height) / (CELL * width)))),
  };
}

/** A picture in its place. */
export interface Placed {
  /** Which of the photographs. */
  readonly index: number;
  readonly reading: PaintingReading;
  readonly cells: Cells;
}

export interface Layout {
  /** Whether words stand beside the pictures, or under them. */
  readonly isBeside: boolean;
  /** Whether before stands over after, and not at its left. */
  readonly isStacked: boolean;
  readonly pictures: readonly Placed[];
  /** Columns and lines for words. */
  readonly words: Cells;
}

/** Lays out the screen. */
export function layoutOf(world: PhotographWorld, state: PhotographState): Layout {
  const [columns, rows] = [innerColumns(state.size), bodyRows(state)];
  const isBeside = isWide(state.size);
  const room: Cells = isBeside
    ? { columns: columns - SIDE - GAP, lines: rows }
    : { columns, lines: rows - LINES_UNDER };
  const place = (indices: readonly number[], each: Cells): Placed[] =>
    indices.map((index) => {
      const { reading } = paintingIn(world, { ...state, painting: index });
      return { index, reading, cells: cellsFor(reading, each) };
    });
  const all = world.paintings.map((_, index) => index);
  const isTwo = all.length > 1 && columns >= ROOM_FOR_TWO;
  // Each of two has its name over it.
  const beside = place(all, { columns: Math.floor((room.columns - GAP) / 2), lines: room.lines - 1 });
  const stacked = place(all, { columns: room.columns, lines: Math.floor(room.lines / 2) - 1 });
  const isStacked = isTwo && (stacked[0]?.cells.columns ?? 0) > (beside[0]?.cells.columns ?? 0);
  const pictures = !isTwo ? place([state.painting], room) : isStacked ? stacked : beside;
  const widths = pictures.map(({ cells }) => cells.columns + GAP);
  const taken = isStacked ? Math.max(...widths) : widths.reduce((sum, width) => sum + width, 0);
  return {
    isBeside,
    isStacked,
    pictures,
    words: isBeside ? { columns: columns - taken, lines: rows } : { columns, lines: LINES_UNDER },
  };
}
