/** Where the colours, the picture and the plane of a result stand: beside each other, the picture under them where there is room for two, or one at a time. */
import type { Grade } from '../../drills/types.js';
import { widthOf } from '../../text/wrap.js';
import { isWide } from '../kit/layout.js';
import type { Stage, World } from '../kit/stage.js';
import { LEAST_SHEET } from '../sheet/picture.js';
import { type SheetRoom, sceneOn, sheetRoom } from '../sheet/view.js';
import type { Judged } from './judged.js';

export interface ResultPlaces {
  /** Lines of the swatches and of what stands beside them. */
  readonly topRows: number;
  readonly swatchColumns: number;
  /** Columns of each patch, and rows of patches. */
  readonly each: number;
  readonly bands: number;
  /** 0 where there is no plane or no room. */
  readonly planeColumns: number;
  /** The picture beside the swatches, or under them; absent where there is none, or no room for it. */
  readonly sheet?: SheetRoom;
  /** The picture stands under the swatches twice: with yours in it, and beside it with the best. */
  readonly isPair: boolean;
  /** Lines of the picture under the swatches with its caption, the blank one over it among them. */
  readonly sheetRows: number;
}

/** Columns between swatches, picture and plane. */
export const PART_GAP = 3;
/** Columns before the patches of a ladder: "yours", "best". */
export const LADDER_HEAD = 7;
/** Columns that a patch needs for its figures and takes at most, that a plane needs and takes at most. */
const PATCH = { least: 11, most: 26 };
const PLANE = { least: 28, most: 60 };
/** Lines of swatches over a picture, and of a plane; of patches without one. */
const OVER_SHEET = 12;
/** A row for each step, and two for the legend and the axis. */
const LEAST_PLANE_ROWS = 12;
const MOST_PATCH_ROWS = 22;
/** Columns from which on two pictures stand side by side. */
const PAIR = 110;

/** What names stand over the patches, and how many columns these need side by side. */
function namesOf({ steps, swatches }: Grade): { readonly names: string[]; readonly head: number } {
  if (steps !== undefined && steps.length > 1)
    return { names: steps.map(({ name }) => name), head: LADDER_HEAD };
  return { names: swatches.map(({ label }) => label), head: 0 };
}

const wordColumns = (names: readonly string[]): number =>
  Math.max(PATCH.least, ...names.flatMap((name) => name.split(' ')).map((word) => widthOf(word) + 2));

/** Patches in so many columns: one row of them, or two where they would be slivers. */
function patchesIn(grade: Grade, columns: number): Pick<ResultPlaces, 'each' | 'bands' | 'swatchColumns'> {
  const { names, head } = namesOf(grade);
  const room = columns - head + 1;
  const across = Math.max(1, Math.floor(room / (wordColumns(names) + 1)));
  // A ladder stays one.
  const bands = head > 0 || names.length === 0 ? 1 : Math.ceil(names.length / across);
  const each = Math.min(PATCH.most, Math.floor(room / Math.max(1, Math.ceil(names.length / bands))) - 1);
  return { each, bands, swatchColumns: columns };
}

/** Fewest lines of the patches of a result. */
export function leastPatchRows(grade: Grade, flat: boolean, bands: number): number {
  const { names, head } = namesOf(grade);
  if (names.length === 0) return 0;
  if (head > 0) return 2 + 2 * ((grade.steps?.some(({ before }) => before !== undefined) ? 1 : 0) + 2);
  return (flat ? 5 : 6) * bands;
}

/** The places of a result in so many columns and lines. */
export function resultPlaces(
  state: Stage,
  world: World,
  screen: Judged,
  columns: number,
  rows: number,
): ResultPlaces {
  const { grade, drill } = screen.answered;
  const flat = state.colourLevel === 0;
  const wide = isWide(state.size);
  // In fewer rows two steps would share one.
  const hasPlane =
    world.kindOf(drill).plane !== undefined && (wide ? rows >= LEAST_PLANE_ROWS : screen.plane === true);
  const none = { isPair: false, sheetRows: 0 };
  if (hasPlane && !wide) {
    const topRows = Math.min(rows, 12);
    return { ...none, topRows, swatchColumns: 0, each: 0, bands: 1, planeColumns: columns };
  }
  const wordsColumns =
    namesOf(grade).names.length * (wordColumns(namesOf(grade).names) + 1) + namesOf(grade).head;
  const plane = hasPlane ? Math.min(PLANE.most, Math.max(PLANE.least, Math.floor(columns * 0.32))) : 0;
  const beside = columns - (plane === 0 ? 0 : plane + PART_GAP);
  const scene = wide ? sceneOn(world, screen) : undefined;
  const least = Math.max(hasPlane ? LEAST_PLANE_ROWS : 0, leastPatchRows(grade, flat, 1));
  if (scene !== undefined) {
    const hasPair = columns >= PAIR && scene.passage !== undefined;
    const half = hasPair ? Math.floor((columns - PART_GAP) / 2) : columns;
    const over = Math.max(least, Math.min(OVER_SHEET, rows - LEAST_SHEET.lines - 3));
    const under = hasPair ? sheetRoom(state, world, screen, half, rows - over - 1) : undefined;
    if (under !== undefined) {
      const sheetRows = under.lines + under.captionRows + 1;
      const topRows = Math.min(rows - sheetRows, MOST_PATCH_ROWS);
      return {
        ...none,
        ...patchesIn(grade, beside),
        topRows,
        planeColumns: plane,
        sheet: under,
        isPair: true,
        sheetRows,
      };
    }
    const room = Math.min(96, beside - PART_GAP - wordsColumns);
    const sheet = room < LEAST_SHEET.columns ? undefined : sheetRoom(state, world, screen, room, rows);
    if (sheet !== undefined) {
      const left = beside - PART_GAP - sheet.columns;
      const topRows = Math.min(rows, Math.max(sheet.lines + sheet.captionRows, least));
      return {
        ...none,
        ...patchesIn(grade, left),
        topRows,
        planeColumns: plane,
        sheet: { ...sheet, room: sheet.columns },
      };
    }
  }
  const patches = patchesIn(grade, beside);
  const most = flat && !hasPlane ? 7 * patches.bands : wide ? MOST_PATCH_ROWS : 9 * patches.bands;
  const topRows = Math.min(rows, Math.max(most, leastPatchRows(grade, flat, patches.bands)));
  return {
    ...none,
    ...patches,
    topRows: namesOf(grade).names.length === 0 && !hasPlane ? 0 : topRows,
    planeColumns: plane,
  };
}
