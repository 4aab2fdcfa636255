/** What practice needs to know of families and drills; the caller makes these from its own lists. */

/** A family, listed in the order of the curriculum. */
export interface FamilyRef {
  readonly id: string;
  readonly title: string;
  /** Families that are easily taken for this one; interleaved with it from level 3 on. */
  readonly lookAlike?: readonly string[];
}

/** A drill that can be set. */
export interface DrillRef {
  readonly id: string;
  readonly family: string;
  readonly level: number;
  /** Chance that a blind choice is good, 0-1; by level when absent. */
  readonly guess?: number;
  /** A worked case: it is solved already, and is to be read. */
  readonly isWorked?: true;
}
