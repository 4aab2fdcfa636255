/** What the result says and how its lines are shared out. */
import type { Grade } from '../../drills/types.js';
import type { Verdict } from '../../judgement/index.js';
import { HINT_COST } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { wrapText } from '../../text/wrap.js';
import type { Settings } from '../kit/deps.js';
import { frameParts, innerColumns, isAiry, isWide } from '../kit/layout.js';
import { bandText, lookOf, scaleUnit, stepText } from '../kit/look.js';
import { notesOf } from '../kit/notes.js';
import type { Page } from '../kit/page.js';
import type { ResultScreen, State, World } from '../kit/state.js';

export interface VerdictLine {
  readonly label: string;
  readonly verdict: Verdict;
  readonly text: string;
}

const between = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);

function askedChroma([low, high]: readonly [number, number]): string {
  // "As much as you can" was asked; what counts as that depends on the value reached.
  if (!Number.isFinite(high) || high >= 120) return `good from ${low.toFixed(0)}`;
  return `asked ${low <= 0 ? `at most ${high.toFixed(0)}` : between(low.toFixed(0), high.toFixed(0))}`;
}

/** Value, chroma and hue, each judged on its own. */
export function verdictLines(
  { value, chroma, hue }: Grade,
  scale: Settings['valueScale'],
  arrow: string,
): VerdictLine[] {
  const lines: VerdictLine[] = [];
  const step = (at: number): string => stepText(at, scale);
  if (value !== undefined) {
    const close = value.tooCloseToCall ? '; too close to call' : '';
    // The learner's numbers beside sentences that count in steps: they carry their unit.
    const unit = scale === 'paper-first' ? '' : `${scaleUnit(scale)} `;
    const text = `${unit}${step(value.before)} ${arrow} ${step(value.after)}, asked ${bandText(value.asked, scale)}${close}`;
    lines.push({ label: 'value', verdict: value.verdict, text });
  }
  if (chroma !== undefined) {
    const close = chroma.tooCloseToCall ? '; too close to call' : '';
    // Of a colour that got brighter nothing was there to keep.
    const kept = chroma.before > 0 && chroma.kept <= 1 ? ` (${Math.round(chroma.kept * 100)} % kept)` : '';
    const text = `${chroma.before.toFixed(0)} ${arrow} ${chroma.after.toFixed(0)}${kept}, ${askedChroma(chroma.asked)}${close}`;
    lines.push({ label: 'chroma', verdict: chroma.verdict, text });
  }
  if (hue !== undefined) {
    const text = `${hue.before.toFixed(0)}° ${arrow} ${hue.after.toFixed(0)}°, asked ${hue.asked.near.toFixed(0)}° give or take ${hue.asked.within.toFixed(0)}°`;
    lines.push({ label: 'hue', verdict: hue.verdict, text });
  }
  return lines;
}

/** The explanation, with what hints and tries did to the mark. */
export function resultTexts(screen: ResultScreen, isColoured = true): string[] {
  const { entry, note } = screen.attempt;
  const lines = entry.grade.explanation.map((line) => cleanText(line, 400));
  if (entry.hints > 0 && entry.grade.mark > 0) lines.unshift(`The hint cost ${HINT_COST} marks.`);
  if (screen.first !== undefined) {
    lines.unshift(
      `Try ${entry.attempt} earns half, since you have seen the answer. Your first, ${screen.first.entry.mark} marks, stays in the record.`,
    );
  }
  if (screen.worked) {
    lines.unshift(
      'This is how a result reads: what you started from, what you laid, the best there is; then value and chroma, each judged on its own.',
    );
  }
  if (isColoured && entry.grade.swatches.some(({ reflectance }) => !lookOf(reflectance).inScreenGamut)) {
    lines.push('~ marks a colour that no screen of this kind can show; the nearest stands for it.');
  }
  if (note !== undefined) lines.push(cleanText(note, 200));
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
  readonly verdicts: number;
  /** Lines that compare with the last time, none or one. */
  readonly compared: number;
  readonly gap: number;
  readonly textRows: number;
}

const FACT_ROWS = 3;

/** How the result's lines are shared out: the text takes what it needs, the picture the rest within its bounds. */
export function resultLayout(state: State, world: World, screen: ResultScreen): ResultLayout {
  const { grade, drill } = screen.attempt.entry;
  const columns = innerColumns(state.size);
  const body = frameParts(state, notesOf(state).length).body;
  const verdicts = verdictLines(grade, 'paper-first', '>').length;
  const compared = screen.attempt.compared === undefined ? 0 : 1;
  const gap = isAiry(state.size) ? 1 : 0;
  const wide = isWide(state.size);
  const instead = !wide && screen.plane === true;
  const hasPlane = (wide || instead) && world.kindOf(drill).plane !== undefined;
  const flat = state.colourLevel === 0;
  const wanted = resultTexts(screen, !flat).reduce(
    (sum, line) => sum + wrapText(line, columns - 2).length,
    0,
  );
  const spare = body - 1 - verdicts - compared - gap;
  const least = grade.swatches.length === 0 && !hasPlane ? 0 : hasPlane ? 8 : flat ? 5 : 6;
  const most = flat && !hasPlane ? 6 : wide ? 17 : 9;
  const topRows = Math.min(Math.max(least, Math.min(most, spare - wanted)), spare - 3);
  const wordRows = flat ? Math.min(3, topRows - FACT_ROWS) : topRows >= 10 ? 2 : 0;
  const greyRows = flat ? 0 : topRows >= 13 ? 3 : topRows >= 11 ? 2 : 1;
  const patchRows = flat ? 0 : Math.max(1, Math.min(8, topRows - FACT_ROWS - wordRows - greyRows));
  const planeColumns = !hasPlane ? 0 : instead ? columns : Math.min(56, Math.floor(columns * 0.47));
  return {
    topRows,
    patchRows,
    greyRows,
    wordRows,
    swatchColumns: planeColumns === 0 ? columns : Math.max(0, columns - planeColumns - 3),
    planeColumns,
    verdicts,
    compared,
    gap,
    textRows: Math.max(1, spare - topRows),
  };
}

/** The text of the result, broken to the width of the screen: each point begins at the margin, its further lines are set in. */
export function resultPage(state: State, world: World, screen: ResultScreen): Page {
  const columns = innerColumns(state.size);
  const lines = resultTexts(screen, state.colourLevel > 0).flatMap((line) =>
    wrapText(line, columns - 2).map((part, index) => (index === 0 ? part : `  ${part}`)),
  );
  return { lines, rows: resultLayout(state, world, screen).textRows };
}
