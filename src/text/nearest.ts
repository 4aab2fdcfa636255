/** Suggestions for a mistyped name. */
import { distance } from 'fastest-levenshtein';
import { listWords } from './list-words.js';

function spelledUnlike(a: string, b: string): number {
  return distance(a, b) / Math.max(a.length, b.length, 1);
}

/** How unlike the words typed are to their nearest in the candidate, whatever else it holds. */
function wordsUnlike(wanted: string, candidate: string): number {
  const words = candidate.split('-');
  const typed = wanted.split(/[-_ ]+/);
  const sum = typed.reduce(
    (total, word) => total + Math.min(...words.map((each) => spelledUnlike(word, each))),
    0,
  );
  return sum / typed.length;
}

/** How unlike two ids are, 0 same - 1 nothing shared; words that occur in a longer id count as near. */
function unlikeness(wanted: string, candidate: string): number {
  const shared = wanted.length >= 3 && candidate.includes(wanted) ? 0.3 : 1;
  return Math.min(spelledUnlike(wanted, candidate), 0.25 + wordsUnlike(wanted, candidate), shared);
}

interface Near {
  readonly candidate: string;
  readonly far: number;
}

function ranked(wanted: string, candidates: readonly string[]): Near[] {
  const typed = wanted.slice(0, 80).toLowerCase();
  return candidates
    .map((candidate) => ({ candidate, far: unlikeness(typed, candidate.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
}

/** Up to three candidates that someone who typed `wanted` may have meant, nearest first. */
function nearest(wanted: string, candidates: readonly string[], most = 3): string[] {
  return ranked(wanted, candidates)
    .filter(({ far }) => far <= 0.5)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** " Did you mean a, b or c?" or an empty text. */
export function didYouMean(wanted: string, candidates: readonly string[]): string {
  const near = nearest(wanted, candidates);
  return near.length === 0 ? '' : ` Did you mean ${listWords(near, 'or')}?`;
}

/** As {@link didYouMean}; where nothing is near, the names that come nearest all the same. */
export function nearestNames(wanted: string, candidates: readonly string[]): string {
  const least = ranked(wanted, candidates)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
  return (
    didYouMean(wanted, candidates) || (least.length === 0 ? '' : ` Nearest: ${listWords(least, 'and')}.`)
  );
}
