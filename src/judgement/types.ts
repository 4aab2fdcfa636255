/** What judging finds. Plain data. */

export type Verdict = 'good' | 'fair' | 'off';

/** Value in painter's steps: 1 paper white, 10 darkest dark. */
export interface ValueResult {
  readonly before: number;
  readonly after: number;
  /** Lightest and darkest step that count as reached. */
  readonly asked: readonly [number, number];
  readonly verdict: Verdict;
  readonly tooCloseToCall: boolean;
}

/** Chroma, CIELAB C*. */
export interface ChromaResult {
  readonly before: number;
  readonly after: number;
  readonly asked: readonly [number, number];
  readonly verdict: Verdict;
  /** after / before; 1 when there was none to keep. */
  readonly kept: number;
  /** Chroma that keeps saturation at the value reached: C·(L + 16)/(L0 + 16). */
  readonly shadingLine: number;
  /** Chroma of the best answer. */
  readonly best: number;
  /** Least chroma that the drill's mixtures have within the asked value; only where a search found it. */
  readonly dullest?: number;
  readonly tooCloseToCall: boolean;
}

/** Hue, CIELAB degrees; only where it is asked for. */
export interface HueResult {
  readonly before: number;
  readonly after: number;
  readonly asked: { readonly near: number; readonly within: number };
  readonly verdict: Verdict;
}

/** What a mixture has to do. Value in painter's steps (1 paper, 10 dark); chroma as C*, or `bright`: as much as can be kept. */
export interface Goal {
  readonly value: readonly [number, number];
  readonly chroma: 'bright' | readonly [number, number];
  readonly hue?: { readonly near: 'start' | number; readonly within: number } | undefined;
}
