/**
 * Strength of the wash that a published tint is taken to be; the source states none. Between 0.2 and 0.3 the hue shifts of the measured
 * paints are near the published ones (root mean square over seven paints 2.4 degrees at 0.2, 2.7 at 0.25, 3.8 at 0.3; 11 at 0.06).
 */
export const TINT_STRENGTH = 0.25;
