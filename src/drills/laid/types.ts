/** Paint laid on paper, as the drill kinds beside `mix` describe it. */
import type { Recipe } from '../types.js';

/** One puddle, laid at a strength from 0 (water) to 1 (masstone). */
export interface Wash {
  /** Parts by pigment id. */
  readonly paints: Readonly<Record<string, number>>;
  readonly strength: number;
}

/** A wash that covers a share of the passage, 0-1. */
export interface Stroke extends Wash {
  readonly share: number;
}

/**
 * What lies on the paper: a recipe (one puddle, or the same paint glazed or as strokes by its `way`), washes one over the
 * other with the first on the paper, or strokes of unlike washes side by side.
 */
export type Laid = Recipe | { readonly layers: readonly Wash[] } | { readonly strokes: readonly Stroke[] };
