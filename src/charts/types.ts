/** What charts are asked for. */
import type { Studio } from '../paints/index.js';
import type { Seen, Wash } from '../washes/index.js';

/** Told how far the work is. */
export type Progress = (done: number, of: number) => void;

/** The charts that there are. */
export const CHARTS = ['pairs', 'ladders', 'greys', 'values', 'practice'] as const;
export type ChartId = (typeof CHARTS)[number];

/** What a chart is made of. */
export interface ChartRequest {
  readonly studio: Studio;
  /** Ids of the paints. */
  readonly paints: readonly string[];
  /** Those paints in words: "the harbour box". */
  readonly box: string;
  /** Of the practice sheet. */
  readonly seed: number;
  readonly progress: Progress;
}

/** A mixture to paint. */
export interface Exercise {
  readonly family: string;
  readonly title: string;
  /** Made up, stirred into, perhaps thinned. */
  readonly wash: Wash;
  /** The wash before anything came in. */
  readonly start: Seen;
  readonly mixed: Seen;
}
