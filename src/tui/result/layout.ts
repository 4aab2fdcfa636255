/** What the result says and how its lines are shared out. */
import type { Grade } from '../../drills/types.js';
import { HINT_COST } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { type JudgedRow, judgedRows } from '../../words/judged.js';
import { sayAll } from '../../words/tell.js';
import { inAscii } from '../kit/glyphs.js';
import { innerColumns, isAiry, isWide } from '../kit/layout.js';
import { lookOf, voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import type { Page } from '../kit/page.js';
import { type SheetRoom, sceneOn, sheetRoom } from '../kit/sheet.js';
import { LEAST_SHEET } from '../kit/sheet-picture.js';
import type { Settings, Stage, World } from '../kit/stage.js';
import type { Judged } from './judged.js';

/** Columns before the words of a row: the part, the sign of the verdict and its word. */
export const ROW_HEAD = 14;

/** The rows of value, chroma and hue, the words of each broken to the width of the screen. */
export function verdictRows(
  state: Stage,
  grade: Grade,
): (JudgedRow & { readonly lines: readonly string[] })[] {
  return judgedRows(grade, voiceOf(state.settings)).map((row) => {
    // Signs written out where the terminal has none take more columns than they do here.
    const more = widthOf(inAscii(row.text)) - widthOf(row.text);
    return { ...row, lines: wrapText(row.text, innerColumns(state.size) - ROW_HEAD - more) };
  });
}

/** The explanation, with what hints and tries did to the mark. */
export function resultTexts(screen: Judged, settings: Settings, isColoured = true): string[] {
  const { grade, hints = 0, attempt = 1, kept } = screen.answered;
  const lines = sayAll(grade.told, voiceOf(settings)).map((line) => cleanText(line, 400));
  if (hints > 0 && grade.mark > 0) lines.unshift(`The hint cost ${HINT_COST} marks.`);
  if (screen.first !== undefined) {
    lines.unshift(
      `Try ${attempt} earns half, since you have seen the answer. Your first, ${screen.first.mark} marks, stays in the record.`,
    );
  }
  if (screen.worked === true) {
    lines.unshift(
      'This is how a result reads: what you started from, what you laid, the best there is; then value and chroma, each judged on its own.',
    );
  }
  if (isColoured && grade.swatches.some(({ reflectance }) => !lookOf(reflectance).inScreenGamut)) {
    lines.push('~ marks a colour that no screen of this kind can show; the nearest stands for it.');
  }
  if (kept?.note !== undefined) lines.push(cleanText(kept.note, 200));
  return lines;
}

export interface ResultLayout {
  /** Lines of the swatches beside the plane. */
  readonly topRows: number;
  readonly patchRows: number;
  readonly greyRows: number;
  readonly wordRows: number;
  readonly swatchColumns: number;
  /** 0 where there is no plane or no room. */
  readonly planeColumns: number;
  /** The picture between the swatches and the plane; absent where there is none, or no room for it. */
  readonly sheet?: SheetRoom;
  readonly verdicts: number;
  /** Lines that compare with the last time, none or one. */
  readonly compared: number;
  readonly gap: number;
  readonly textRows: number;
}

const FACT_ROWS = 3;
/** Columns between swatches, picture and plane. */
export const PART_GAP = 3;
/** Columns that a patch needs for its figures, that a plane needs, and that a picture takes at most. */
const LEAST_PATCH = 10;
const LEAST_PLANE = 28;
const MOST_SHEET = 50;

/** How the result's lines are shared out: the text takes what it needs, the picture the rest within its bounds. */
export function resultLayout(state: Stage, world: World, screen: Judged): ResultLayout {
  const { grade, drill } = screen.answered;
  const columns = innerColumns(state.size);
  const body = bodyRows(state);
  const verdicts = verdictRows(state, grade).flatMap(({ lines }) => lines).length;
  const compared = screen.answered.kept?.compared === undefined ? 0 : 1;
  const gap = isAiry(state.size) ? 1 : 0;
  const wide = isWide(state.size);
  const instead = !wide && screen.plane === true;
  const hasPlane = (wide || instead) && world.kindOf(drill).plane !== undefined;
  const flat = state.colourLevel === 0;
  const wanted = resultTexts(screen, state.settings, !flat).reduce(
    (sum, line) => sum + wrapText(line, columns - 2).length,
    0,
  );
  const spare = body - 1 - verdicts - compared - gap;
  const places = resultPlaces(grade, columns, hasPlane);
  const wantsSheet = wide && places !== undefined && sceneOn(world, screen) !== undefined;
  const least = leastTop({ swatches: grade.swatches.length, hasPlane, wantsSheet, flat });
  const most = flat && !hasPlane && !wantsSheet ? 6 : wide ? 17 : 9;
  const topRows = Math.min(Math.max(least, Math.min(most, spare - wanted)), spare - 3);
  const wordRows = flat ? Math.min(3, topRows - FACT_ROWS) : topRows >= 10 ? 2 : 0;
  const greyRows = flat ? 0 : topRows >= 13 ? 3 : topRows >= 11 ? 2 : 1;
  const patchRows = flat ? 0 : Math.max(1, Math.min(8, topRows - FACT_ROWS - wordRows - greyRows));
  const rest = { topRows, patchRows, greyRows, wordRows, verdicts, compared, gap };
  const textRows = Math.max(1, spare - topRows);
  const sheet = wantsSheet ? sheetRoom(state, world, screen, places.sheet, topRows) : undefined;
  if (wantsSheet && sheet !== undefined) {
    const swatchColumns = columns - places.plane - sheet.room - (hasPlane ? 2 : 1) * PART_GAP;
    return { ...rest, textRows, sheet, swatchColumns, planeColumns: places.plane };
  }
  const planeColumns = !hasPlane ? 0 : instead ? columns : Math.min(56, Math.floor(columns * 0.47));
  return {
    ...rest,
    textRows,
    swatchColumns: planeColumns === 0 ? columns : Math.max(0, columns - planeColumns - PART_GAP),
    planeColumns,
  };
}

/** Lines that the upper part needs to be of use: of a picture with its caption, a plane, patches. */
function leastTop(top: { swatches: number; hasPlane: boolean; wantsSheet: boolean; flat: boolean }): number {
  if (top.wantsSheet) return LEAST_SHEET.lines + (top.flat ? 2 : 1);
  if (top.hasPlane) return 8;
  if (top.swatches === 0) return 0;
  return top.flat ? 5 : 6;
}

/** Columns for the plane and the picture where both stand beside the swatches; undefined where they have no room. */
function resultPlaces(
  { swatches }: Grade,
  columns: number,
  hasPlane: boolean,
): { readonly plane: number; readonly sheet: number } | undefined {
  const plane = hasPlane ? Math.max(LEAST_PLANE, Math.floor(columns * 0.29)) : 0;
  const gaps = (hasPlane ? 2 : 1) * PART_GAP;
  const sheet = Math.min(MOST_SHEET, columns - plane - gaps - swatches.length * (LEAST_PATCH + 1) + 1);
  return sheet < LEAST_SHEET.columns ? undefined : { plane, sheet };
}

/** The text of the result, broken to the width of the screen: each point begins at the margin, its further lines are set in. */
export function resultPage(state: Stage, world: World, screen: Judged): Page {
  const columns = innerColumns(state.size);
  const lines = resultTexts(screen, state.settings, state.colourLevel > 0).flatMap((line) =>
    wrapText(line, columns - 2).map((part, index) => (index === 0 ? part : `  ${part}`)),
  );
  return { lines, rows: resultLayout(state, world, screen).textRows };
}
