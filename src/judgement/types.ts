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

/** Hue, CIELAB degrees; absent where the goal has none to hold. */
export interface HueResult {
  readonly before: number;
  readonly after: number;
  readonly asked: { readonly near: number; readonly within: number };
  /** Degrees between what was asked for and what came out. */
  readonly turned: number;
  readonly verdict: Verdict;
}

/**
 * What a colour is changed for; never mixed up, since each asks something else of value, chroma and hue:
 * - `shade`: the same surface with less light; chroma goes down the shading line with the value;
 * - `rich`: another colour, deep and strong; as much chroma as can be had;
 * - `dull`: greyer, not another colour; value as asked;
 * - `distance`: lighter, greyer, the hue held or cooler;
 * - `neutral`: to grey;
 * - `lean`: a grey that is to be warm or cool.
 */
export const AIMS = ['shade', 'rich', 'dull', 'distance', 'neutral', 'lean'] as const;
export type Aim = (typeof AIMS)[number];

/** What a mixture has to do. Value in painter's steps (1 paper, 10 dark), chroma as C*, hue in CIELAB degrees. */
export interface Goal {
  readonly aim: Aim;
  readonly value: readonly [number, number];
  /** Asked of dull, distance, neutral and lean; a shade has the shading line, a rich dark what the tray can reach. */
  readonly chroma?: readonly [number, number] | undefined;
  /** The hue asked, where it is not the start's within the usual bound of the aim. */
  readonly hue?: { readonly near: 'start' | number; readonly within: number } | undefined;
}
