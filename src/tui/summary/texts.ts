/** What the end of a set says, in order of weight: the warm word, the count, the mistakes, what is next, each skill. */

import type { Mistake, SetSummary } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { wrapText } from '../../text/wrap.js';
import { IDEAS } from '../../words/ideas.js';
import type { SetRun } from '../practice/state.js';

const TIMES = ['', 'Once', 'Twice', 'Three times', 'Four times', 'Five times'];

/** "Twice you went too dark. Use less of the dark paint, or more water." */
function mistakeText({ idea, count }: Mistake): string {
  const known = IDEAS.get(idea);
  // A record may hold an idea that a later version no longer knows.
  if (known === undefined) return `${TIMES[count] ?? `${count} times`}: ${idea}.`;
  return `${TIMES[count] ?? `${count} times`} you ${known.did}. ${known.instead}`;
}

/** How many were good, which skills changed their level, and how the bars are read; their figures stand beside them. */
function countText({ now, families }: SetSummary): string {
  const moved = families.filter(({ levelBefore, levelAfter }) => levelBefore !== levelAfter);
  const levels = moved.map(({ title, levelBefore, levelAfter }) =>
    levelAfter > levelBefore
      ? ` ${title}: up to level ${levelAfter}.`
      : ` ${title}: back to level ${levelAfter}.`,
  );
  return `This set: ${now.good} of ${now.answers} good.${levels.join('')} A fuller bar is better.`;
}

export interface SummaryTexts {
  /** Above the bars. */
  readonly head: readonly string[];
  /** Under them: what to mend, then what is next and how each skill went, the weightiest first. */
  readonly mend: readonly string[];
  readonly more: readonly string[];
}

/**
 * The texts of a set.
 * @param hasBars whether its figures are drawn as bars; else they are said
 */
export function summaryTexts({ answers, summary, choice }: SetRun, hasBars: boolean): SummaryTexts {
  if (answers.length === 0) return { head: ['Nothing was answered.'], mend: [], more: [] };
  if (summary === undefined) return { head: [`${answers.length} answered.`], mend: [], more: [] };
  const { warm, lines, mistakes, next } = summary;
  const isPlacing = choice.placing === true;
  const [whole = '', ...families] = lines;
  const head = [warm, ...(isPlacing ? lines : [hasBars ? countText(summary) : whole])];
  const more = [...next.map((line) => `Next: ${line}`), ...(isPlacing ? [] : families)];
  const clean = (texts: readonly string[]): string[] => texts.map((text) => cleanText(text, 300));
  return { head: clean(head), mend: clean(mistakes.map(mistakeText)), more: clean(more) };
}

/** As many whole texts as fit, broken to the width, further lines set in; none where not even the first fits. */
export function wholeTexts(texts: readonly string[], columns: number, rows: number): string[] {
  const lines: string[] = [];
  for (const text of texts) {
    const more = wrapText(text, columns - 2).map((line, index) => (index === 0 ? line : `  ${line}`));
    if (lines.length + more.length > rows) break;
    lines.push(...more);
  }
  return lines;
}
