/** What a set came to, this time against before, family by family and in words, and the mistakes to mend. */
import type { HistoryEntry } from './entry.js';
import { figuresInWords } from './figure-rows.js';
import type { Mistake } from './mistakes.js';
import { mistakesOf } from './mistakes.js';
import { nextSteps } from './next-steps.js';
import { placementOf } from './placing.js';
import type { FamilyRef } from './refs.js';
import type { Standing } from './standing.js';
import { addAnswer, copyStanding, levelIn } from './standing.js';
import type { Figures } from './totals.js';
import { addToTotals, figuresOf, meansOf, modelOf, newTotals, setsOfModel } from './totals.js';
import { warmWord } from './warm-word.js';

/** One family's part of a set. */
export interface FamilySummary {
  readonly family: string;
  readonly title: string;
  /** Whether it was met for the first time. */
  readonly isFirst: boolean;
  readonly levelBefore: number;
  readonly levelAfter: number;
  readonly now: Figures;
  /** Over the last sets before this one that the same model predicted; absent the first time. */
  readonly before?: Figures;
}

export interface SetSummary {
  readonly now: Figures;
  readonly before?: Figures;
  readonly families: readonly FamilySummary[];
  /** One warm sentence, true of this set. */
  readonly warm: string;
  /** Sentences: the whole, then each family; one for both where there is one family. */
  readonly lines: readonly string[];
  /** Mistakes gathered by idea, the most frequent first. */
  readonly mistakes: readonly Mistake[];
  /** What to do next. */
  readonly next: readonly string[];
}

function figuresOfEntries(entries: readonly HistoryEntry[]): Figures {
  const totals = newTotals('', '', 0);
  for (const entry of entries) addToTotals(totals, entry);
  return meansOf(totals);
}

function levelWords({ levelBefore, levelAfter }: FamilySummary): string {
  if (levelAfter > levelBefore) return ` Up to level ${levelAfter}.`;
  return levelAfter < levelBefore ? ` Back to level ${levelAfter}.` : '';
}

function linesOf(
  whole: Figures,
  earlier: Figures | undefined,
  parts: readonly FamilySummary[],
): readonly string[] {
  const set = `This set: ${figuresInWords(whole, earlier)}.`;
  if (parts.length === 1) return parts.map((only) => `${set}${levelWords(only)}`);
  return [
    set,
    ...parts.map((part) => `${part.title}: ${figuresInWords(part.now, part.before)}.${levelWords(part)}`),
  ];
}

/** What the placing round found, in two sentences. */
function placingLines(whole: Figures, after: Standing): readonly string[] {
  const { start, nextLevel } = placementOf(after.placing);
  const isOver = nextLevel === undefined;
  const found =
    start === 1
      ? `${isOver ? 'Your' : 'Left before its end: so far your'} skills start at level 1, with worked cases.`
      : `${isOver ? 'Your' : 'Left before its end: so far your'} skills start at level ${start}; those asked about here, by how each decision went.`;
  return [`Placing round: ${whole.good} of ${whole.answers} good.`, found];
}

/**
 * Sums up a set.
 * @param before the standing before its first answer; not changed
 * @param answers the answers of the set, in order; later tries count for nothing here
 * @param families in the order of the curriculum
 */
export function summariseSet(
  before: Standing,
  answers: readonly HistoryEntry[],
  families: readonly FamilyRef[],
  now: Date,
): SetSummary | undefined {
  const entries = answers.filter((entry) => entry.try === 1);
  const [first] = entries;
  if (first === undefined) return undefined;
  const whole = figuresOfEntries(entries);
  const after = copyStanding(before);
  for (const entry of entries) addAnswer(after, entry);
  const model = modelOf(first.engine);
  const isPlacing = first.placing === true;
  const parts = [...new Set(entries.map(({ family }) => family))].map((family): FamilySummary => {
    const known = before.families.get(family);
    const earlier = figuresOf(setsOfModel(known?.sets ?? [], model));
    // A start found by the placing round is no rise.
    const levelAfter = levelIn(after, family);
    return {
      family,
      title: families.find(({ id }) => id === family)?.title ?? family,
      isFirst: known === undefined,
      levelBefore: isPlacing ? levelAfter : levelIn(before, family),
      levelAfter,
      now: figuresOfEntries(entries.filter((entry) => entry.family === family)),
      ...(earlier && { before: earlier }),
    };
  });
  // One skill is held against itself, in the sentences and in the bars alike.
  const earlier = parts.length === 1 ? parts[0]?.before : figuresOf(setsOfModel(before.sets, model));
  const facts = { now: whole, ...(earlier && { before: earlier }), families: parts };
  return {
    ...facts,
    warm: warmWord({ ...facts, entries }),
    lines: isPlacing ? placingLines(whole, after) : linesOf(whole, earlier, parts),
    mistakes: mistakesOf(entries),
    next: nextSteps(after, families, now),
  };
}
