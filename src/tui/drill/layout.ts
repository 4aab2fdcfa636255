/** How the lines of a drill's screen are shared out: texts on top, the colours beside or above the choices. */

import type { ResultSwatch } from '../../drills/types.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import type { Voice } from '../../words/voice.js';
import { showsAs } from '../kit/fields.js';
import { innerColumns, isAiry, isWide } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import type { Piece } from '../kit/row.js';
import { type SheetRoom, sheetRoom } from '../kit/sheet.js';
import type { Stage, World } from '../kit/stage.js';
import type { Question } from './question.js';
import { sceneTexts } from './scene.js';

export interface DrillLayout {
  /** The colours stand beside the choices, not above them. */
  readonly beside: boolean;
  /** Message, scene, question and goal, cut to their room. */
  readonly top: Piece[][];
  readonly hint: Piece[][];
  /** The picture over the colours; absent where there is none, or no room for it. */
  readonly sheet?: SheetRoom;
  readonly questionColumns: number;
  readonly fieldColumns: number;
  /** Lines of the given colours, without their label. */
  readonly givenRows: number;
  readonly givenLabel: boolean;
  /** Lines of greys; -1 leaves the picture of the goal out. */
  readonly stairRows: number;
  readonly fieldRows: number;
  /** Lines for a note on what is chosen; from three on the first stays blank. */
  readonly noteRows: number;
}

/** Columns between the colours and the choices. */
export const GAP_COLUMNS = 3;
/** Numbers, marks, chroma bar and legend under the greys. */
const PICTURE_ROWS = 4;
/** Words, value, chroma and hue. */
const FACT_ROWS = 4;
/** What the lower part needs to be of use. */
const LEAST_LOWER = { beside: 11, above: 9 };
/** Share of the columns that the colours take: with the picture of the goal, and without. */
const SHARE = { picture: 0.43, given: 0.38 };
const WIDEST_QUESTION = 50;
/** Columns from which on a picture has its place whatever else is told. */
const ROOMY = 100;
/** Signs before the label of an option: its mark and its number. */
const OPTION_LEAD = 5;

const BLANK: Piece[] = [];

/** Cuts the scene, never the question or the goal. */
function topLines(
  screen: Question,
  world: World,
  columns: number,
  room: number,
  airy: boolean,
  voice: Voice,
): Piece[][] {
  const { message, scene, ask, goal } = sceneTexts(screen, world, columns, voice);
  const fixed = message.length + ask.length + goal.length;
  const spare = room - fixed - scene.length;
  const shown = scene.slice(0, Math.max(1, room - fixed));
  if (shown.length < scene.length) shown[shown.length - 1] = cut(shown[shown.length - 1] ?? [], columns);
  const gap = airy && spare >= 2 ? [BLANK] : [];
  return [...message, ...shown, ...gap, ...ask, ...goal, ...(airy && spare >= 1 ? [BLANK] : [])];
}

/** The last line of a scene that goes on: its words, as many as leave room for the sign. */
function cut(pieces: readonly Piece[], columns: number): Piece[] {
  const sign = ' ...';
  const [line = ''] = wrapText(pieces.map(({ text }) => text).join(''), columns - sign.length);
  return [{ text: `${line}${sign}`, ...(pieces[0]?.role && { role: pieces[0].role }) }];
}

/** Lines that the choices would like. */
function wantedRows(screen: Question): number {
  return screen.fields.reduce(
    (sum, field) => sum + (showsAs(field) === 'tray' ? field.options.length + 1 : 2),
    0,
  );
}

/** Whether every option has room for its label in that many columns; those with a swatch may be cut. */
function labelsFit({ fields }: Question, columns: number): boolean {
  return fields
    .filter((field) => showsAs(field) === 'tray')
    .every(({ options }) =>
      options.every(({ label, swatch }) => swatch !== undefined || widthOf(label) + OPTION_LEAD <= columns),
    );
}

/** Columns in which no word of the names of patches side by side is cut. */
function namesColumns(given: readonly ResultSwatch[]): number {
  const widest = Math.max(0, ...given.flatMap(({ label }) => label.split(' ')).map(widthOf));
  return given.length * (widest + 1);
}

export function drillLayout(state: Stage, world: World, screen: Question): DrillLayout {
  const columns = innerColumns(state.size);
  const flat = state.colourLevel === 0;
  const kind = world.kindOf(screen.drill);
  const given = kind.given(screen.drill);
  const hasGiven = given.length > 0;
  const hasPicture = kind.plane !== undefined;
  const body = bodyRows(state);
  const voice = voiceOf(state.settings);
  const { hint } = sceneTexts(screen, world, columns, voice);
  const share = hasPicture ? SHARE.picture : hasGiven ? SHARE.given : 0;
  const wanted = hasPicture ? 0 : Math.min(Math.floor(columns / 2), namesColumns(given));
  const questionColumns = Math.min(WIDEST_QUESTION, Math.max(Math.floor(columns * share), wanted));
  const fieldColumns = columns - questionColumns - (questionColumns > 0 ? GAP_COLUMNS : 0);
  const beside = isWide(state.size) && (hasPicture || labelsFit(screen, fieldColumns));
  const least = beside ? LEAST_LOWER.beside : LEAST_LOWER.above;
  const top = topLines(screen, world, columns, body - hint.length - least, isAiry(state.size), voice);
  const lower = Math.max(4, body - top.length - hint.length);
  if (!beside) return { beside, top, hint, ...above(screen, lower, { columns, flat, hasGiven, hasPicture }) };

  const noteRows = noteRowsIn(lower - wantedRows(screen));
  const rest = { beside, top, hint, questionColumns, fieldColumns, fieldRows: lower - noteRows, noteRows };
  const withSheet = underSheet(state, world, screen, { questionColumns, lower, hasGiven, hasPicture });
  if (withSheet !== undefined) return { ...rest, ...withSheet };
  const gap = hasGiven && hasPicture ? 1 : 0;
  const spare = lower - (hasGiven ? 1 : 0) - gap - (hasPicture ? PICTURE_ROWS : 0);
  const patchRows = Math.min(8, Math.max(3, Math.ceil(spare * (hasPicture ? 0.5 : 0.7))));
  const givenRows = !hasGiven ? 0 : flat ? FACT_ROWS : patchRows;
  // Five lines are ten half lines, one for each step.
  const stairs = Math.min(5, spare - givenRows);
  return {
    ...rest,
    givenRows,
    givenLabel: hasGiven,
    stairRows: !hasPicture || stairs < 0 ? -1 : flat ? 0 : stairs,
  };
}

const noteRowsIn = (free: number): number => (free >= 5 ? 3 : free >= 3 ? 2 : 1);

interface Under {
  readonly questionColumns: number;
  readonly lower: number;
  readonly hasGiven: boolean;
  readonly hasPicture: boolean;
}

/** The picture over the colours and the goal, which make way for it as far as they stay of use; undefined where that is not enough. */
function underSheet(
  state: Stage,
  world: World,
  screen: Question,
  { questionColumns, lower, hasGiven, hasPicture }: Under,
): Pick<DrillLayout, 'sheet' | 'givenRows' | 'givenLabel' | 'stairRows'> | undefined {
  const flat = state.colourLevel === 0;
  const given = !hasGiven ? 0 : flat ? FACT_ROWS : 3;
  const plans = [
    { givenRows: given, label: hasGiven, stairs: !hasPicture ? -1 : flat ? 0 : 2 },
    { givenRows: given, label: hasGiven, stairs: hasPicture ? 0 : -1 },
    { givenRows: given, label: false, stairs: hasPicture ? 0 : -1 },
    // The start lies in the picture, and the goal says its figures; on a wide screen with long texts the words of the goal are enough.
    ...(hasPicture ? [{ givenRows: 0, label: false, stairs: 0 }] : []),
    ...(hasPicture && state.size.columns >= ROOMY ? [{ givenRows: 0, label: false, stairs: -1 }] : []),
  ];
  for (const { givenRows, label, stairs } of plans) {
    const goal = stairs < 0 ? 0 : PICTURE_ROWS + stairs;
    const gap = givenRows > 0 && goal > 0 ? 1 : 0;
    const left = lower - (label ? 1 : 0) - givenRows - gap - goal;
    const sheet = sheetRoom(state, world, screen, questionColumns, left);
    if (sheet === undefined) continue;
    const spare = left - sheet.lines - sheet.captionRows;
    const more = flat || stairs < 0 ? 0 : Math.min(5 - stairs, spare);
    return {
      sheet,
      givenRows: givenRows === 0 || flat ? givenRows : Math.min(8, givenRows + spare - more),
      givenLabel: label,
      stairRows: stairs + more,
    };
  }
  return undefined;
}

interface Above {
  readonly columns: number;
  readonly flat: boolean;
  readonly hasGiven: boolean;
  readonly hasPicture: boolean;
}

/** The colours above the choices; the choices come first, since the goal is there in words too. */
function above(screen: Question, lower: number, { columns, flat, hasGiven, hasPicture }: Above) {
  const wanted = wantedRows(screen);
  // What can be chosen comes before what is given: the goal says that in words.
  const hasRoom = hasGiven && lower - 3 >= Math.min(wanted, 4);
  const givenRows = !hasRoom ? 0 : flat ? 2 : lower - wanted >= 8 ? 5 : 3;
  const left = lower - givenRows;
  const picture = flat ? PICTURE_ROWS : PICTURE_ROWS + 1;
  const shows = hasPicture && left - picture >= Math.min(wanted + 1, 9);
  const fieldRows = left - (shows ? picture : 0);
  const noteRows = Math.max(0, Math.min(2, fieldRows - Math.min(wanted, 7)));
  return {
    questionColumns: columns,
    fieldColumns: columns,
    givenRows,
    givenLabel: false,
    stairRows: shows ? (flat ? 0 : 1) : -1,
    fieldRows: Math.max(3, fieldRows - noteRows),
    noteRows,
  };
}
