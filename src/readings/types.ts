/** What dried on a painter's own paper, and what it tells of the painter's tubes. Plain data. */
import type { Lab } from '../colour/lab.js';
import type { Wash } from '../washes/index.js';

/** What was read of a dry patch: a painter's step on a grey scale, or CIELAB (D65, 2 degrees) from an instrument. */
export type Dried = { readonly step: number } | { readonly lab: Lab };

/** What patches are read by. */
export type ReadBy = 'value' | 'lab';

/** One puddle painted out. */
export interface Reading {
  /**
   * As it was measured out: parts of tube paint, and water. `strength` is what the library's tubes would give, 4 / (1 + water); what
   * the painter's own give is the question.
   */
  readonly wash: Wash;
  /** The wash before anything was stirred in; where it was not read, the water is less sure. */
  readonly alone?: Dried | undefined;
  /** The whole: with what was stirred in, if anything was. */
  readonly mixed: Dried;
}

/** Which patch of a reading. */
export type Part = 'alone' | 'mixed';

/** A patch of a reading. */
export interface Patch {
  /** Which reading, from 0. */
  readonly reading: number;
  readonly part: Part;
  readonly dried: Dried;
}

/** A patch that cannot be right if the others are. */
export interface Disagreement extends Patch {
  /** How much darker it was read than the others lead to expect, in steps; a tenth of L* where it was measured. */
  readonly darker: number;
}

/**
 * What is known of a tube's strength against the other tubes that were read:
 * - `known`: the interval is narrow enough to go by;
 * - `unsure`: it is not yet;
 * - `cannot-tell`: no patch moves enough with it; where all were read by value, Lab may tell;
 * - `no-other`: there is nothing to compare it with.
 */
export type Standing = 'known' | 'unsure' | 'cannot-tell' | 'no-other';

export interface TubeStrength {
  readonly id: string;
  readonly standing: Standing;
  /** Times as strong as the library's, the middle one (median of the logarithms) of those that can be told counting 1; 1 where nothing can be told. */
  readonly factor: number;
  /** In which it lies nine times in ten. */
  readonly interval: readonly [number, number];
  /** The most that a patch moves when the tube is e times as strong: steps, or tenths of a colour difference in CIELAB. */
  readonly moves: number;
}

/** What all readings together tell. */
export interface Told {
  readonly tubes: readonly TubeStrength[];
  /** By how many steps the reader reads darker than the library predicts, and give or take how much (nine times in ten). */
  readonly offset?: { readonly steps: number; readonly giveOrTake: number };
  readonly disagreements: readonly Disagreement[];
  /** Too many disagree for any to be believed, or all together cannot be what the mixtures dried to. */
  readonly isAtOdds: boolean;
}
