/** What a drill shows beside its choices, in so much room: the picture, the colours of the question, the goal as a picture. */
import type { ResultSwatch } from '../../drills/types.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import type { Stage, World } from '../kit/stage.js';
import { LEAST_SHEET } from '../sheet/picture.js';
import { type SheetRoom, sheetRoom } from '../sheet/view.js';
import type { Question } from './question.js';

/** What there is to show. */
export interface Beside {
  readonly given: readonly ResultSwatch[];
  /** Without colours, so patches are words. */
  readonly flat: boolean;
  /** The goal has a picture: stairs of value and a bar of chroma. */
  readonly hasGoal: boolean;
  readonly hasSheet: boolean;
  readonly isNone: boolean;
}

/** How its lines are shared out. */
export interface BesideParts {
  /** The picture over the colours; absent where there is none, or no room for it. */
  readonly sheet?: SheetRoom;
  /** Lines of the given colours, without the label; 0 leaves them out. */
  readonly givenRows: number;
  /** Lines of the label over them, where there is one colour and room for it. */
  readonly labelRows: number;
  /** Lines of greys; -1 leaves the picture of the goal out. */
  readonly stairRows: number;
  /** Lines that all of it takes. */
  readonly questionRows: number;
}

/** Numbers, marks, chroma bar and legend under the greys. */
const GOAL_ROWS = 4;
/** Five lines are ten half lines, one for each step. */
const MOST_STAIRS = 5;
/** Words, value, chroma and hue. */
const FACT_ROWS = 4;
/** A patch with its words under it, in few columns. */
const NARROW = 15;
/** A patch with its words beside it, a goal with its bar. */
const WIDE = { given: 28, goal: 34, sheet: 28 };
const LEAST_GOAL = 24;
const MOST_SHEET = 112;
/** Most lines of a patch. */
const MOST_PATCH = 20;

/** Columns in which no word of the names of patches side by side is cut, in two rows where there are many. */
function namesColumns(given: readonly ResultSwatch[]): number {
  const widest = Math.max(6, ...given.flatMap(({ label }) => label.split(' ')).map(widthOf)) + 2;
  return (given.length > 4 ? Math.ceil(given.length / 2) : given.length) * (widest + 1);
}

/** Columns that the colours need beside the choices, with all that goes with them, and with less; none where they stand above. */
export function besideWidths({ given, hasGoal, hasSheet, flat }: Beside, isWide: boolean): number[] {
  const narrow = given.length === 1 && !flat ? [NARROW] : [];
  if (!isWide) return narrow;
  const full = Math.max(
    given.length > 1 ? namesColumns(given) : given.length === 1 ? WIDE.given : 0,
    hasGoal ? WIDE.goal : 0,
    hasSheet ? WIDE.sheet : 0,
  );
  return [full, ...narrow];
}

/** Columns beyond which they gain nothing. */
export const mostColumns = ({ given, hasGoal, hasSheet }: Beside): number =>
  hasSheet
    ? MOST_SHEET
    : hasGoal
      ? 56
      : given.length === 1
        ? 56
        : Math.max(namesColumns(given), given.length * 20);

/** Fewest lines in which the given colours are seen with their names. */
export function leastRows(
  { given, flat, isNone }: Beside,
  { beside, questionColumns }: { beside: boolean; questionColumns: number },
): number {
  if (isNone || given.length === 0) return 0;
  if (given.length === 1)
    return beside ? (questionColumns < WIDE.given ? FACT_ROWS + 1 : FACT_ROWS) : flat ? 2 : 3;
  return bandsOf(given, questionColumns) * 4;
}

/** Rows of patches: so many that no name is cut and no patch is a sliver. */
export function bandsOf(given: readonly Pick<ResultSwatch, 'label'>[], columns: number): number {
  const least = Math.max(6, ...given.flatMap(({ label }) => label.split(' ')).map(widthOf)) + 2;
  const across = Math.max(1, Math.floor((columns + 1) / (least + 1)));
  return Math.ceil(given.length / across);
}

interface Room {
  readonly columns: number;
  readonly rows: number;
  readonly beside: boolean;
}

/** The picture comes first, as far as the colours and the goal stay of use; without it they share the lines. */
export function besideParts(
  state: Stage,
  world: World,
  screen: Question,
  question: Beside,
  room: Room,
): BesideParts {
  const { given, flat, isNone } = question;
  const { columns, rows, beside } = room;
  const hasGoal = question.hasGoal && columns >= LEAST_GOAL;
  const none: BesideParts = { givenRows: 0, labelRows: 0, stairRows: -1, questionRows: 0 };
  if (isNone) return none;
  const bands = bandsOf(given, columns);
  const least =
    given.length === 0
      ? 0
      : given.length === 1
        ? beside && !flat && columns < WIDE.given
          ? FACT_ROWS + 1
          : beside || !flat
            ? 3
            : 2
        : bands * 3;
  const [only] = given;
  const label = only === undefined || given.length > 1 ? 0 : wrapText(only.label, columns).length;
  const plans = [
    { givenRows: least, label, stairs: hasGoal ? (flat ? 0 : 2) : -1 },
    { givenRows: least, label, stairs: hasGoal ? 0 : -1 },
    { givenRows: least, label, stairs: -1 },
    { givenRows: least, label: 0, stairs: -1 },
  ];
  const takes = ({ givenRows, label, stairs }: (typeof plans)[number]): number =>
    givenRows + label + (stairs < 0 ? 0 : GOAL_ROWS + stairs + (givenRows > 0 ? 1 : 0));
  const grown = (plan: (typeof plans)[number], sheet: SheetRoom | undefined): BesideParts => {
    const sheetRows = sheet === undefined ? 0 : sheet.lines + sheet.captionRows + 1;
    const spare = rows - takes(plan) - sheetRows;
    const more = flat || plan.stairs < 0 ? 0 : Math.max(0, Math.min(MOST_STAIRS - plan.stairs, spare));
    const most = flat ? FACT_ROWS + 1 : MOST_PATCH * (given.length > 1 ? bands : 1);
    const givenRows =
      plan.givenRows === 0
        ? 0
        : Math.min(Math.max(plan.givenRows, most), plan.givenRows + Math.max(0, spare - more));
    const stairRows = plan.stairs + more;
    return {
      ...(sheet && { sheet }),
      givenRows,
      labelRows: plan.label,
      stairRows,
      questionRows: sheetRows + takes({ ...plan, givenRows, stairs: stairRows }),
    };
  };
  if (question.hasSheet && beside && columns >= LEAST_SHEET.columns)
    for (const plan of plans) {
      const sheet = sheetRoom(state, world, screen, columns, rows - takes(plan) - 1);
      if (sheet !== undefined) return grown(plan, sheet);
    }
  const plan = plans.find((one) => takes(one) <= rows) ?? {
    givenRows: Math.min(least, Math.max(0, rows)),
    label: 0,
    stairs: -1,
  };
  return grown(plan, undefined);
}

/** The picture in its columns, the colours and the goal in those of the choices; undefined where they have no room in full. */
export function partsApart(
  state: Stage,
  world: World,
  screen: Question,
  question: Beside,
  forSheet: Room,
  forRest: Room,
): (BesideParts & { readonly below: BesideParts }) | undefined {
  const { given, hasGoal, hasSheet } = question;
  if (!hasSheet || (given.length === 0 && !hasGoal)) return undefined;
  const below = besideParts(state, world, screen, { ...question, hasSheet: false }, forRest);
  const isWhole =
    below.questionRows <= forRest.rows &&
    (given.length !== 1 || below.labelRows > 0) &&
    (!hasGoal || below.stairRows >= (question.flat ? 0 : 2));
  const sheetAlone: Beside = { ...question, given: [], hasGoal: false };
  return isWhole ? { ...besideParts(state, world, screen, sheetAlone, forSheet), below } : undefined;
}
