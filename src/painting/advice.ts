/** What to do next about a painting. */
import type { Palette, Studio } from '../paints/index.js';
import type { Recipe } from '../recipes/index.js';
import type { Finding } from '../words/tell.js';
import type { PaintingReading } from './types.js';

/** One next step. */
export interface Advice {
  readonly id: string;
  readonly finding: Finding;
  /** Family of drills that trains it. */
  readonly family: string;
  readonly recipe?: Recipe;
}

/** What advice keeps to. */
export interface AdviceMeans {
  /** Ids of the paints that the painting was made with, or of the box. */
  readonly paints: readonly string[];
  readonly box?: Palette;
}

/** At most three next steps, the most urgent first. */
export function adviceOf(_studio: Studio, _reading: PaintingReading, _means: AdviceMeans): readonly Advice[] {
  return [];
}
