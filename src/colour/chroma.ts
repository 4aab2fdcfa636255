/** The line along which a colour darkens as a thing in shadow does. */

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
