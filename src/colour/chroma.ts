/** Chroma in words, and the line along which a colour darkens as a thing in shadow does. */

/** Upper bound in C*ab of each word; a bound belongs to its word. Bands of our own, even to the eye of a painter. */
const CHROMA_WORDS = [
  [5, 'neutral'],
  [12, 'near neutral'],
  [25, 'very dull'],
  [38, 'dull'],
  [52, 'moderate'],
  [66, 'fairly strong'],
  [Number.POSITIVE_INFINITY, 'intense'],
] as const;

/** A chroma in words, from `neutral` to `intense`. */
export type ChromaWord = (typeof CHROMA_WORDS)[number][1];

/** How strong a colour is, in words, from its chroma C*ab. */
export function chromaWord(chroma: number): ChromaWord {
  return CHROMA_WORDS.find(([to]) => chroma <= to)?.[1] ?? 'intense';
}

/**
 * Chroma that a colour would have if it only got darker or lighter, as a surface does when less light falls on it.
 *
 * Scaling all the light by k scales L* + 16, a* and b* by the cube root of k, so chroma goes with L* + 16 and
 * saturation holds. A mixture below this line has been dulled; one on it or above has only been darkened.
 * Holds while all tristimulus ratios stay above 0.0089.
 * @param chroma C*ab at the start
 * @param lFrom L* at the start, 0-100
 * @param lTo L* at the end, 0-100
 * @returns C*ab at the end
 * Worked number: C* 50 at L* 60 becomes 36.8 at L* 40.
 * Source: D. Briggs, The Dimensions of Colour, section 10.1.
 */
export function shadingLine(chroma: number, lFrom: number, lTo: number): number {
  return (chroma * (lTo + 16)) / (lFrom + 16);
}
