/** How the lines of a drill's screen are shared out: texts on top, the colours beside or above the choices. */
import type { ResultSwatch } from '../../drills/types.js';
import type { Voice } from '../../words/voice.js';
import { fieldColumns, fieldRows } from '../kit/field-parts.js';
import { innerColumns, isAiry, isWide, textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import type { Piece } from '../kit/row.js';
import type { Size, Stage, World } from '../kit/stage.js';
import { sceneOn } from '../sheet/view.js';
import {
  type Beside,
  type BesideParts,
  besideParts,
  besideWidths,
  leastRows,
  mostColumns,
  partsApart,
} from './beside.js';
import { noteLines } from './fields.js';
import type { Question } from './question.js';
import { isToldOf, sceneTexts } from './scene.js';

export interface DrillLayout extends BesideParts {
  /** The colours stand beside the choices, not above them. */
  readonly beside: boolean;
  /** Message, as much of the scene as has room, question and goal; at the tightest the question and some of the goal. */
  readonly top: Piece[][];
  /** Line of `top` that the text is cut at; absent where all of it is there. */
  readonly cutAt?: number;
  readonly hint: Piece[][];
  /** The colours and the goal stand under the choices, and the picture has its columns for itself. */
  readonly below?: BesideParts;
  readonly questionColumns: number;
  readonly fieldColumns: number;
  readonly fieldRows: number;
  /** Lines for a note on what is chosen; `noteGap`: a blank one stands before them. */
  readonly noteRows: number;
  readonly noteGap: boolean;
}

/** Columns between the colours and the choices. */
export const GAP_COLUMNS = 3;
/** Most columns that a row of choices is given before the colours grow. */
const MOST_FIELDS = 64;

const BLANK: Piece[] = [];

/** Where the colours can stand, and what has to be told around them. */
interface Place {
  readonly beside: boolean;
  readonly questionColumns: number;
  readonly fieldColumns: number;
}

/** Beside the choices where both have room, the choices in full before the colours; else above them. */
function placeOf(size: Size, screen: Question, question: Beside, isTold: boolean): Place {
  const columns = innerColumns(size);
  const above: Place = { beside: false, questionColumns: columns, fieldColumns: textColumns(size) };
  if (question.isNone) return above;
  const { least, most } = fieldColumns(screen.fields);
  const room = columns - GAP_COLUMNS;
  const widths = besideWidths(question, isWide(size)).filter((width) => room - width >= least);
  const needed = widths.find((width) => room - width >= Math.min(MOST_FIELDS, most)) ?? widths.at(-1);
  // Several colours that the goal speaks of can stand in its lines.
  if (needed === undefined || (isTold && room - needed < Math.min(MOST_FIELDS, most))) return above;
  const wanted = Math.min(MOST_FIELDS, Math.max(most, Math.floor(room * 0.4)));
  const questionColumns = Math.min(mostColumns(question), Math.max(needed, room - Math.max(least, wanted)));
  return { beside: true, questionColumns, fieldColumns: room - questionColumns };
}

interface Lines {
  readonly message: Piece[][];
  readonly scene: Piece[][];
  readonly ask: Piece[][];
  readonly goal: Piece[][];
  readonly hint: Piece[][];
}

/**
 * The upper part: as much of the scene as has room; then as much of the message; where not even the goal has room, the question and as
 * much of the goal.
 */
function topOf({ message, scene, ask, goal }: Lines, room: number): Pick<DrillLayout, 'top' | 'cutAt'> {
  const rest = [...ask, ...goal];
  const sceneRows = room - message.length - rest.length;
  if (sceneRows >= scene.length) return { top: [...message, ...scene, ...rest] };
  if (sceneRows > 0) {
    const top = [...message, ...scene.slice(0, sceneRows), ...rest];
    return { top, cutAt: message.length + sceneRows - 1 };
  }
  const messageRows = room - rest.length;
  if (messageRows > 0) return { top: [...message.slice(0, messageRows), ...rest], cutAt: messageRows - 1 };
  const top = rest.slice(0, Math.max(ask.length, room));
  return { top, cutAt: top.length - 1 };
}

/** Blank lines before the question and after the goal, where there are so many lines to spare. */
function aired({ message, scene }: Lines, top: readonly Piece[][], spare: number): Piece[][] {
  const at = message.length + scene.length;
  return [
    ...top.slice(0, at),
    ...(spare >= 2 ? [BLANK] : []),
    ...top.slice(at),
    ...(spare >= 1 ? [BLANK] : []),
  ];
}

export function drillLayout(state: Stage, world: World, screen: Question): DrillLayout {
  const flat = state.colourLevel === 0;
  const kind = world.kindOf(screen.drill);
  const given = kind.given(screen.drill);
  const question: Beside = {
    given,
    flat,
    hasGoal: kind.plane !== undefined,
    hasSheet: sceneOn(world, screen) !== undefined,
    isNone: given.length === 0 && kind.plane === undefined && sceneOn(world, screen) === undefined,
  };
  const voice = voiceOf(state.settings);
  const isTold = given.length > 1 && isToldOf(world, screen, given, voice);
  const place = placeOf(state.size, screen, question, isTold);
  const laid = lowerLayout(state, world, screen, question, place, []);
  // A picture that had no room leaves its columns to the choices.
  if (place.beside && laid.questionRows === 0) {
    const none: Beside = { ...question, isNone: true };
    return lowerLayout(state, world, screen, none, placeOf(state.size, screen, none, false), []);
  }
  const { open } = fieldRows(screen.fields, screen.focus, place.fieldColumns);
  if (place.beside || !isTold || (laid.cutAt === undefined && laid.fieldRows >= open)) return laid;
  // Where the scene or the choices would make way, the colours stand in the lines of the goal that speak of them.
  return lowerLayout(state, world, screen, question, place, given);
}

function lowerLayout(
  state: Stage,
  world: World,
  screen: Question,
  question: Beside,
  place: Place,
  inline: readonly ResultSwatch[],
): DrillLayout {
  const body = bodyRows(state);
  const voice: Voice = voiceOf(state.settings);
  const lines = sceneTexts(screen, world, textColumns(state.size), voice, {
    given: inline,
    flat: question.flat,
  });
  const { hint } = lines;
  const { fields, focus } = screen;
  const wanted = fieldRows(fields, focus, place.fieldColumns);
  const noteRows = noteLines(fields[focus], place.fieldColumns, voice);
  const room = body - hint.length;
  const shown: Beside =
    inline.length === 0 ? question : { ...question, given: [], hasGoal: false, isNone: true };
  const colours = leastRows(shown, place);
  const withColours = (rows: number): number =>
    place.beside ? Math.max(rows + noteRows, colours) : rows + noteRows + colours;
  const least = withColours(wanted.least);
  const isTight = room - least < lines.ask.length + lines.goal.length + 1;
  const needed = isTight ? withColours(wanted.fewest) : least;
  // At the tightest one line of the scene, or of the message, is enough: s opens it, and rows out of sight cost more.
  const most = isTight ? lines.ask.length + lines.goal.length + 1 : room;
  const { top: told, cutAt } = topOf(lines, Math.min(most, room - needed));
  // Whatever is left goes to rows that would fold, then to lines between the parts, then to the colours.
  const choicesRows = wanted.spaced + noteRows + 1;
  const full = withColours(wanted.spaced + 1);
  const isAired = cutAt === undefined && isAiry(state.size);
  const top = isAired ? aired(lines, told, room - told.length - full) : told;
  const lower = Math.max(1, body - top.length - hint.length);
  const cut = cutAt === undefined ? {} : { cutAt };
  const rest = { ...place, top, ...cut, hint, noteRows };
  if (place.beside) {
    const noteGap = lower - noteRows - 1 >= wanted.spaced;
    const inColumns = { columns: place.questionColumns, rows: lower, beside: true };
    const parts = besideParts(state, world, screen, shown, inColumns);
    const left = { columns: place.fieldColumns, rows: lower - choicesRows - 1, beside: true };
    const apart = partsApart(state, world, screen, shown, inColumns, left);
    const isLarger = (apart?.sheet?.lines ?? 0) > (parts.sheet?.lines ?? 0);
    return {
      ...rest,
      ...(isLarger && apart !== undefined ? apart : parts),
      noteGap,
      fieldRows: isLarger ? wanted.spaced : Math.max(1, lower - noteRows - (noteGap ? 1 : 0)),
    };
  }
  // Above the choices the colours take what these leave.
  const left = lower - noteRows;
  const forFields = Math.max(1, Math.min(left - colours, wanted.spaced));
  const parts = besideParts(state, world, screen, shown, {
    columns: place.questionColumns,
    rows: left - forFields - 1,
    beside: false,
  });
  const used = parts.questionRows;
  const noteGap = left - used - wanted.spaced >= 1;
  return { ...rest, ...parts, noteGap, fieldRows: Math.max(1, left - used - (noteGap ? 1 : 0)) };
}
