/** What charts are asked for. */
import type { Studio } from '../paints/index.js';

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
