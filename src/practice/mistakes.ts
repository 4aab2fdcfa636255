/** The mistakes of a set, gathered by the idea that they show. */
import type { HistoryEntry } from './entry.js';

/** Mistakes offered for mending at most. */
const MOST_MISTAKES = 3;

/** An idea that answers of a set showed, and where it is to be mended. */
export interface Mistake {
  /** Id of an idea; `src/drills/ideas.ts` has its words. */
  readonly idea: string;
  /** How many first answers showed it. */
  readonly count: number;
  /** The family that showed it most, and the lowest level at which it did. */
  readonly family: string;
  readonly level: number;
}

/** The ideas of the first answers that were not good, the most frequent first; equals as they came. */
export function mistakesOf(entries: readonly HistoryEntry[]): Mistake[] {
  const byIdea = new Map<string, HistoryEntry[]>();
  for (const entry of entries)
    if (entry.idea !== undefined && entry.verdict !== 'good' && entry.try === 1)
      byIdea.set(entry.idea, [...(byIdea.get(entry.idea) ?? []), entry]);
  const mistakes = [...byIdea].map(([idea, shown]): Mistake => {
    const inFamily = (id: string): HistoryEntry[] => shown.filter(({ family }) => family === id);
    const family = shown
      .map((entry) => entry.family)
      .reduce((most, other) => (inFamily(other).length > inFamily(most).length ? other : most));
    return {
      idea,
      count: shown.length,
      family,
      level: Math.min(...inFamily(family).map(({ level }) => level)),
    };
  });
  return mistakes.sort((one, other) => other.count - one.count).slice(0, MOST_MISTAKES);
}
