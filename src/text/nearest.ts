/** Suggestions for a mistyped name. */
import { distance } from 'fastest-levenshtein';

/** How unlike two ids are, 0 same - 1 nothing shared; a word that occurs whole in the other counts as near. */
function unlikeness(wanted: string, candidate: string): number {
  const spelled = distance(wanted, candidate) / Math.max(wanted.length, candidate.length, 1);
  const shared = wanted.length >= 3 && candidate.includes(wanted) ? 0.3 : 1;
  return Math.min(spelled, shared);
}

/** Up to three candidates that someone who typed `wanted` may have meant, nearest first. */
export function nearest(wanted: string, candidates: readonly string[], most = 3): string[] {
  const typed = wanted.slice(0, 80).toLowerCase();
  return candidates
    .map((candidate) => ({ candidate, far: unlikeness(typed, candidate.toLowerCase()) }))
    .filter(({ far }) => far <= 0.5)
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** " Did you mean a, b or c?" or an empty text. */
export function didYouMean(wanted: string, candidates: readonly string[]): string {
  const near = nearest(wanted, candidates);
  if (near.length === 0) return '';
  const last = near.at(-1) as string;
  return ` Did you mean ${near.length === 1 ? last : `${near.slice(0, -1).join(', ')} or ${last}`}?`;
}
