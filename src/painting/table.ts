/** Bounds by which a painting is judged. Of our own, each with its basis; VALUE_BOUNDS of the judgement stand beside them. */

/** Value: what a watercolour can reach is about step 1 to 9 (paper at V 9.5, the darkest mixtures of the library at L* 14 to 16). */
export const REACH = {
  /** Painter's step by which there is a true light: paper, or a tint of it. */
  light: 2.5,
  /** Step from which a passage counts as a true dark: half a step beyond where dark begins, which a reading can be off. */
  dark: 6.5,
  /** Step from which a dark is deep. */
  deep: 7.5,
  /** Where a passage that is darkened goes: well into the darks, no black hole. */
  darkened: 7.5,
  /** Most steps that one repair goes. */
  most: 3,
  /** Share of the painting that its darks take at least to be seen as darks. */
  darks: 0.02,
} as const;

/** Share of the painting beyond which one third of the scale takes all of it. */
export const MOST_MIDDLE = 0.75;

/** Shares of light, middle and dark that differ less than this are alike: none leads. */
export const LIKE_SHARES = 0.08;

/** A border so near to a side, in shares of it, leads the eye out of the picture. */
export const EDGE = 0.1;

/** A mass of the background competes where its chroma is above this share of the brightest. */
export const COMPETES = 0.9;

/** A mass that a repair is to be tried on: shares of the painting. */
export const REPAIRED = { least: 0.015, most: 0.35 } as const;

/** CIEDE2000 to which the named paints must come to a mass to be taken for those that it was painted with. */
export const MATCHED = 8;

/** Two photographs of one painting. */
export const COMPARED = {
  /** Ratio of their shapes, width to height, within which they are framed alike. */
  shape: 1.12,
  /** Least correlation of their values, at the best of small shifts. */
  alike: 0.5,
  /** Largest shift that is tried, share of a side. */
  shift: 0.04,
  /** What counts as moved: steps, C*. */
  steps: 0.4,
  chroma: 6,
  /** Steps of range that count as wider. */
  wider: 0.5,
} as const;
