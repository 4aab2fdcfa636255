/** How the lines of a drill's screen are shared out: texts on top, the colours beside or above the choices. */
import type { Piece } from './components/row.js';
import { showsAs } from './fields.js';
import { frameParts, innerColumns, isAiry, isWide } from './layout.js';
import { notesOf } from './notes.js';
import { sceneTexts } from './scene.js';
import type { DrillScreen, State, World } from './state.js';

export interface DrillLayout {
  readonly wide: boolean;
  /** Message, scene, question and goal, cut to their room. */
  readonly top: Piece[][];
  readonly hint: Piece[][];
  readonly questionColumns: number;
  readonly fieldColumns: number;
  /** Lines of the given colours, without their label. */
  readonly givenRows: number;
  readonly givenLabel: boolean;
  /** Lines of greys; -1 leaves the picture of the goal out. */
  readonly stairRows: number;
  readonly fieldRows: number;
  readonly hasNote: boolean;
}

/** Columns between the colours and the choices. */
export const GAP_COLUMNS = 3;
/** Numbers, marks, chroma bar and legend under the greys. */
const PICTURE_ROWS = 4;
/** Words, value, chroma and hue. */
const FACT_ROWS = 4;
/** What the lower part needs to be of use. */
const LEAST_LOWER = { wide: 11, narrow: 9 };

const BLANK: Piece[] = [];

/** Cuts the scene, never the question or the goal. */
function topLines(
  screen: DrillScreen,
  world: World,
  columns: number,
  room: number,
  airy: boolean,
): Piece[][] {
  const { message, scene, ask, goal } = sceneTexts(screen, world, columns);
  const fixed = message.length + ask.length + goal.length;
  const spare = room - fixed - scene.length;
  const shown = scene.slice(0, Math.max(1, room - fixed));
  if (shown.length < scene.length) shown[shown.length - 1] = cut(shown[shown.length - 1] ?? []);
  const gap = airy && spare >= 2 ? [BLANK] : [];
  return [...message, ...shown, ...gap, ...ask, ...goal, ...(airy && spare >= 1 ? [BLANK] : [])];
}

const cut = (pieces: Piece[]): Piece[] => [...pieces, { text: ' ...' }];

/** Lines that the choices would like. */
function wantedRows(screen: DrillScreen): number {
  return screen.fields.reduce(
    (sum, field) => sum + (showsAs(field) === 'tray' ? field.options.length + 1 : 2),
    0,
  );
}

export function drillLayout(state: State, world: World, screen: DrillScreen): DrillLayout {
  const columns = innerColumns(state.size);
  const wide = isWide(state.size);
  const flat = state.colourLevel === 0;
  const kind = world.kindOf(screen.drill);
  const hasGiven = kind.given(screen.drill).length > 0;
  const hasPicture = kind.plane !== undefined;
  const body = frameParts(state, notesOf(state).length).body;
  const { hint } = sceneTexts(screen, world, columns);
  const least = wide ? LEAST_LOWER.wide : LEAST_LOWER.narrow;
  const top = topLines(screen, world, columns, body - hint.length - least, isAiry(state.size));
  const lower = Math.max(4, body - top.length - hint.length);

  if (!wide) return { wide, top, hint, ...narrow(screen, lower, { columns, flat, hasGiven, hasPicture }) };
  const questionColumns = Math.floor(columns * (hasPicture ? 0.43 : hasGiven ? 0.38 : 0));
  const gapColumns = questionColumns > 0 ? GAP_COLUMNS : 0;
  const label = hasGiven ? 1 : 0;
  const gap = hasGiven && hasPicture ? 1 : 0;
  const spare = lower - label - gap - (hasPicture ? PICTURE_ROWS : 0);
  const givenRows = !hasGiven
    ? 0
    : flat
      ? FACT_ROWS
      : Math.min(8, Math.max(3, Math.ceil(spare * (hasPicture ? 0.5 : 0.7))));
  // Five lines are ten half lines, one for each step.
  const stairs = Math.min(5, spare - givenRows);
  return {
    wide,
    top,
    hint,
    questionColumns: Math.min(50, questionColumns),
    fieldColumns: columns - Math.min(50, questionColumns) - gapColumns,
    givenRows,
    givenLabel: hasGiven,
    stairRows: !hasPicture || stairs < 0 ? -1 : flat ? 0 : stairs,
    fieldRows: lower - 1,
    hasNote: true,
  };
}

interface Narrow {
  readonly columns: number;
  readonly flat: boolean;
  readonly hasGiven: boolean;
  readonly hasPicture: boolean;
}

/** One above the other: the choices come first, since the goal is there in words too. */
function narrow(screen: DrillScreen, lower: number, { columns, flat, hasGiven, hasPicture }: Narrow) {
  const wanted = wantedRows(screen);
  const givenRows = !hasGiven ? 0 : flat ? 2 : 3;
  const left = lower - givenRows;
  const picture = flat ? PICTURE_ROWS : PICTURE_ROWS + 1;
  const shows = hasPicture && left - picture >= Math.min(wanted + 1, 9);
  const fieldRows = left - (shows ? picture : 0);
  const hasNote = fieldRows > Math.min(wanted, 7);
  return {
    questionColumns: columns,
    fieldColumns: columns,
    givenRows,
    givenLabel: false,
    stairRows: shows ? (flat ? 0 : 1) : -1,
    fieldRows: Math.max(3, fieldRows - (hasNote ? 1 : 0)),
    hasNote,
  };
}
