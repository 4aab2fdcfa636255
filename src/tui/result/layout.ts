/** What the result says and how its lines are shared out. */
import type { Grade } from '../../drills/types.js';
import { type Graded, HINT_COST } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { type JudgedRow, judgedRows } from '../../words/judged.js';
import { lookOf } from '../../words/look.js';
import { sayAll } from '../../words/tell.js';
import { moreInAscii } from '../kit/glyphs.js';
import { innerColumns, isAiry, textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import type { Page } from '../kit/page.js';
import type { Settings, Stage, World } from '../kit/stage.js';
import type { Judged } from './judged.js';
import { leastPatchRows, type ResultPlaces, resultPlaces } from './places.js';

/** Columns before the words of a row: the part, the sign of the verdict and its word. */
export const ROW_HEAD = 14;

/** The rows of value, chroma and hue, the words of each broken to the width of the screen. */
export function verdictRows(
  state: Stage,
  grade: Grade,
): (JudgedRow & { readonly lines: readonly string[] })[] {
  return judgedRows(grade, voiceOf(state.settings)).map((row) => {
    // Signs written out where the terminal has none take more columns than they do here.
    return { ...row, lines: wrapText(row.text, textColumns(state.size) - ROW_HEAD - moreInAscii(row.text)) };
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
    lines.push('* No screen of this kind can show this colour; the nearest stands for it.');
  }
  if (kept?.note !== undefined) lines.push(cleanText(kept.note, 200));
  return lines;
}

export interface ResultLayout extends ResultPlaces {
  /** What was laid, in lines under the mark; none where it stands beside it. */
  readonly labelLines: readonly string[];
  readonly verdicts: number;
  /** Lines that compare with the last time. */
  readonly compared: readonly string[];
  readonly gap: number;
  readonly textRows: number;
}

/** Columns that further lines of a point are set in by, and those of the sign that more follows. */
const TEXT_MARGIN = 4;
/** Lines of the text that are seen at the least. */
const LEAST_TEXT = 3;

/** Cells of the bar of a mark: fewer where the words beside it need the room. */
export const markCells = (columns: number): number => (columns < 70 ? 10 : 20);

/** The mark; where a hint or a try took something off, after what it was: the verdict is on that. */
export const markText = ({ mark, grade }: Graded): string =>
  mark === Math.round(grade.mark) ? `${mark} of 100  ` : `${Math.round(grade.mark)} → ${mark} of 100  `;

/** Columns of the mark with its bar and its verdict. */
const markColumns = (graded: Graded, columns: number): number =>
  widthOf(markText(graded)) + markCells(columns) + 4 + graded.grade.verdict.length;

/** What was laid, in the learner's words. */
export const laidLabel = (world: World, { drill, answer }: Graded, settings: Settings): string =>
  cleanText(world.kindOf(drill).label(drill, answer, voiceOf(settings)), 400);

/** How the result's lines are shared out: the text takes what it needs, the colours and the picture the rest. */
export function resultLayout(state: Stage, world: World, screen: Judged): ResultLayout {
  const { answered: entry } = screen;
  const comparison = entry.kept?.compared ?? '';
  const columns = innerColumns(state.size);
  const forText = textColumns(state.size);
  const body = bodyRows(state);
  const verdicts = verdictRows(state, entry.grade).flatMap(({ lines }) => lines).length;
  const compared = wrapText(cleanText(comparison, 200), forText);
  const label = laidLabel(world, entry, state.settings);
  const more = moreInAscii(label);
  const isBeside = widthOf(label) + more + 3 <= columns - markColumns(entry, columns);
  const labelLines = isBeside ? [] : wrapText(label, forText - 2 - more);
  const gap = isAiry(state.size) ? 1 : 0;
  const wanted = resultTexts(screen, state.settings, state.colourLevel > 0).reduce(
    (sum, line) => sum + wrapText(line, forText - TEXT_MARGIN - moreInAscii(line)).length,
    0,
  );
  const spare = body - 1 - labelLines.length - verdicts - compared.length - gap;
  const flat = state.colourLevel === 0;
  const least = leastPatchRows(entry.grade, flat, 1);
  const rows = Math.max(Math.min(least, spare - LEAST_TEXT), spare - wanted);
  const places = resultPlaces(state, world, screen, columns, rows);
  const textRows = Math.max(1, spare - places.topRows - places.sheetRows);
  return { ...places, labelLines, verdicts, compared, gap, textRows };
}

/** The text of the result, broken to the width of the screen: each point begins at the margin, its further lines are set in. */
export function resultPage(
  state: Stage,
  world: World,
  screen: Judged,
  { textRows }: Pick<ResultLayout, 'textRows'> = resultLayout(state, world, screen),
): Page {
  const columns = textColumns(state.size);
  const lines = resultTexts(screen, state.settings, state.colourLevel > 0).flatMap((line) =>
    wrapText(line, columns - TEXT_MARGIN - moreInAscii(line)).map((part, index) =>
      index === 0 ? part : `  ${part}`,
    ),
  );
  return { lines, rows: textRows };
}
