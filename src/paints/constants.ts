/**
 * Strength of the wash that a published tint is taken to be: between 0.2 and 0.3 the hue shifts of the measured paints come nearest to
 * the published ones.
 */
export const TINT_STRENGTH = 0.25;
