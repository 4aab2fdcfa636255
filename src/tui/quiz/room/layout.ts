/** How the lines of the question slide are shared out: texts, the picture, the patches, the lettered answers. Pure. */
import type { ResultSwatch } from '../../../drills/types.js';
import { isToldOf, sceneTexts } from '../../drill/scene.js';
import { innerColumns, textColumns } from '../../kit/layout.js';
import { voiceOf } from '../../kit/look.js';
import { bodyRows } from '../../kit/notes.js';
import type { Piece } from '../../kit/row.js';
import { windowOfLines } from '../../kit/window.js';
import { type SheetRoom, sheetRoom } from '../../sheet/view.js';
import { type AnswerLayout, answersIn, sum } from './answer-room.js';
import type { LetterSize } from './large.js';
import { type Offered, offeredIn } from './offered.js';
import { inLines, leastGiven } from './patches.js';
import { lettersIn, type RoomState, type RoomWorld, secondsLeft, shownQuestion } from './state.js';

export interface SlideLayout extends AnswerLayout {
  readonly top: readonly Piece[][];
  /** Whether the scene is left out: its key is told. */
  readonly isCut: boolean;
  /** Columns of picture and patches beside the answers; 0: the patches stand above them. */
  readonly leftColumns: number;
  readonly sheet?: SheetRoom;
  /** Lines of the patches; 0: there are none, or they stand in the lines of the goal. */
  readonly givenRows: number;
  readonly rows: number;
  /** The answers that are seen, and whether that is all of them. */
  readonly from: number;
  readonly to: number;
  readonly isAll: boolean;
}

const GAP = 3;
/** Parts of the columns that the picture is tried in, and cells where parts are too few. */
const SHARES = [0.6, 0.55, 0.5, 0.45, 0.4, 0.35, 0.3];
const LEAST_LEFT = 24;
const MORE = '  more: s';
const FIRST_WASH = 'first wash';

/** Lines kept for what is being typed. */
const ENTRY_ROWS = 2;

/** Cells of the timer drawn large. */
export const TIMER_ROOM = { columns: 34, rows: 5 } as const;

/** Whether the timer is drawn large. */
export const hasLargeTimer = (room: RoomState): boolean =>
  secondsLeft(room) !== undefined && innerColumns(room.size) >= 100 && bodyRows(room) >= 30;

interface Top {
  readonly lines: Piece[][];
  readonly isCut: boolean;
  readonly given: readonly ResultSwatch[];
}

/** The texts, fullest first: patches may stand in the lines of the goal, and the scene may go. */
function topsOf(world: RoomWorld, room: RoomState): Top[] {
  const columns = Math.min(
    textColumns(room.size),
    innerColumns(room.size) - (hasLargeTimer(room) ? TIMER_ROOM.columns : 0),
  );
  const question = shownQuestion(world, room);
  const voice = voiceOf(room.settings);
  const given = world.world.kindOf(question.drill).given(question.drill);
  const flat = room.colourLevel === 0;
  // The goal of a mixture speaks of its start as of the first wash.
  const laid = given.map((swatch) => (swatch.label === 'start' ? { ...swatch, label: FIRST_WASH } : swatch));
  const told = [given, laid].find((some) => isToldOf(world.world, question, some, voice));
  const texts = (width: number, isInline: boolean) =>
    sceneTexts(question, world.world, width, voice, {
      given: isInline && told !== undefined ? told : [],
      flat,
    });
  const topOf = (isCut: boolean, isInline: boolean): Top => {
    const { scene, ask, goal, hint } = texts(columns, isInline);
    const asked = isCut ? texts(columns - MORE.length, isInline).ask : ask;
    const marked = asked.map((line, at): Piece[] =>
      at === asked.length - 1 ? [...line, { text: MORE, role: 'key' }] : line,
    );
    const lines = isCut ? [...marked, ...goal] : [...scene, ...ask, ...goal, ...hint];
    return { lines, isCut, given: isInline ? [] : given };
  };
  const inline = told === undefined ? [] : [true];
  return [false, true].flatMap((isCut) => [false, ...inline].map((isInline) => topOf(isCut, isInline)));
}

/** Fullest first: the picture before the scene, the texts before large letters, the larger picture before the smaller. */
export function slideLayout(
  world: RoomWorld,
  room: RoomState,
  sizes: readonly LetterSize[] = ['text'],
): SlideLayout {
  const columns = innerColumns(room.size);
  const body = bodyRows(room) - (room.stage.name === 'count' ? ENTRY_ROWS : 0);
  const offered = offeredIn(world, room);
  const hasColour = room.colourLevel > 0;
  const tops = topsOf(world, room);
  const question = shownQuestion(world, room);
  const all = { from: 0, to: offered.length, isAll: true };
  const rowsUnder = ({ lines }: Top): number =>
    body - Math.max(lines.length, hasLargeTimer(room) ? TIMER_ROOM.rows : 0) - 1;

  const beside = (top: Top, size: LetterSize, left: number, withSheet: boolean): SlideLayout | undefined => {
    const rows = rowsUnder(top);
    const answers = answersIn(offered, { size, columns: columns - left - GAP, rows, hasColour });
    if (answers === undefined) return undefined;
    const given = leastGiven(room, top.given, left);
    if (!withSheet)
      return given > 0 && given <= rows
        ? { top: top.lines, isCut: top.isCut, leftColumns: left, givenRows: rows, rows, ...answers, ...all }
        : undefined;
    const sheet = sheetRoom(room, world.world, question, left, rows - (given > 0 ? given + 1 : 0));
    if (sheet === undefined) return undefined;
    const givenRows = given > 0 ? rows - sheet.lines - sheet.captionRows - 1 : 0;
    return {
      top: top.lines,
      isCut: top.isCut,
      leftColumns: left,
      sheet,
      givenRows,
      rows,
      ...answers,
      ...all,
    };
  };
  const above = (top: Top, size: LetterSize, given: number): SlideLayout | undefined => {
    const rows = rowsUnder(top) - (given > 0 ? given + 1 : 0);
    const answers = answersIn(offered, { size, columns, rows, hasColour });
    const base = { top: top.lines, isCut: top.isCut, leftColumns: 0, rows };
    return answers && { ...base, givenRows: given, ...answers, ...all };
  };

  const lefts = [...SHARES.map((share) => Math.floor(columns * share)), LEAST_LEFT].filter(
    (left) => left >= LEAST_LEFT,
  );
  for (const withSheet of [true, false])
    for (const top of tops)
      for (const size of sizes) {
        const fits = lefts.flatMap((left) => beside(top, size, left, withSheet) ?? []);
        // The larger picture; of equal ones the more room for answers; without any their fewest lines, then the larger patches.
        const [first] = fits.sort((a, b) =>
          withSheet
            ? (b.sheet?.lines ?? 0) - (a.sheet?.lines ?? 0) || a.leftColumns - b.leftColumns
            : sum(a.heights) - sum(b.heights) || b.leftColumns - a.leftColumns,
        );
        if (first !== undefined) return first;
        if (withSheet) continue;
        const patches = leastGiven(room, top.given, columns);
        const best = above(top, size, patches) ?? above(top, size, inLines(top.given, patches));
        if (best !== undefined) return best;
      }
  return scrolling(world, room, offered, tops.at(-1) as Top);
}

/** Fewest lines in which answers are scrolled. */
const LEAST_ROWS = 2;

/** Texts in so many lines: the last things of the goal go, each whole, and are read behind the key that tells more. */
function fewerLines(lines: readonly Piece[][], most: number): readonly Piece[][] {
  if (lines.length <= most) return lines;
  const begins = (line: readonly Piece[] | undefined): boolean => line?.[0]?.text.trim() !== '';
  const kept = Array.from({ length: Math.max(0, most) + 1 }, (_, at) => at).findLast((at) =>
    begins(lines[at]),
  );
  return lines.slice(0, kept ?? 0);
}

/** Where not even the answers all fit: those around the one in front. */
function scrolling(world: RoomWorld, room: RoomState, offered: readonly Offered[], top: Top): SlideLayout {
  const columns = innerColumns(room.size);
  const body = bodyRows(room) - (room.stage.name === 'count' ? ENTRY_ROWS : 0);
  const given = inLines(top.given, leastGiven(room, top.given, columns));
  const { stage } = room;
  const at = stage.name === 'question' || stage.name === 'count' ? stage.at : 0;
  const answers = answersIn(offered, {
    size: 'text',
    columns,
    rows: Number.POSITIVE_INFINITY,
    hasColour: room.colourLevel > 0,
  });
  const { heights = [], patchColumns = 0, labelColumns = columns } = answers ?? {};
  // A line tells that there are more answers, a blank one parts them from the texts.
  const under = body - 2 - (given > 0 ? given + 1 : 0);
  const lines = fewerLines(top.lines, under - Math.max(LEAST_ROWS, ...heights));
  const rows = under - lines.length;
  const { from, to } = windowOfLines(heights, Math.min(at, lettersIn(world, room.place).length - 1), rows);
  const { isCut } = top;
  return {
    top: lines,
    isCut,
    leftColumns: 0,
    givenRows: given,
    rows,
    size: 'text',
    patchColumns,
    labelColumns,
    heights,
    gap: 0,
    from,
    to,
    isAll: false,
  };
}
