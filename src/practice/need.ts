/** Which families need practice, and why. */

import { TOP_LEVEL } from './levels.js';
import type { FamilyRef } from './refs.js';
import { recallAt, WANTED_RECALL } from './spacing.js';
import type { Standing } from './standing.js';
import { levelIn } from './standing.js';
import { setsOfModel } from './totals.js';
import { isRising } from './trend.js';

/** Below this share of answers known a family is weak. */
export const WEAK_BELOW = 0.5;
/**
 * From this many answers on a family rises or is steady; and is weak as well while they look more like guessing than like
 * knowledge.
 */
const ENOUGH_ANSWERS = 4;
/** A family this many levels below the middle one is weak too. */
const WEAK_LEVELS_BEHIND = 2;

/**
 * `new` not met yet, `weak` often missed or left behind, `due` about to be forgotten; below the top `begun` where the answers are too
 * few to tell, `rising` where the last sets rise and `steady` where they do not; `known` at the top.
 */
export type Reason = 'new' | 'weak' | 'due' | 'begun' | 'rising' | 'steady' | 'known';

export interface FamilyNeed {
  readonly family: FamilyRef;
  readonly reason: Reason;
  readonly level: number;
  /** Chance of recall now, 0-1; 0 for a new family. */
  readonly recall: number;
  /** Running share of answers known, 1 all, 0 no better than blind choice. */
  readonly recent: number;
  readonly answers: number;
}

function middleOf(levels: readonly number[]): number {
  const sorted = levels.toSorted((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? 1;
}

/** The need of each family, in the order given. */
export function familyNeeds(standing: Standing, families: readonly FamilyRef[], nowMs: number): FamilyNeed[] {
  const levels = families.flatMap(({ id }) => standing.families.get(id)?.level.level ?? []);
  const middle = middleOf(levels);
  // The last family left over while all others are met is worked on like a weak one.
  const isLastNew = families.length > 1 && levels.length === families.length - 1;
  return families.map((family) => {
    const known = standing.families.get(family.id);
    if (known === undefined)
      return {
        family,
        reason: isLastNew ? 'weak' : 'new',
        level: levelIn(standing, family.id),
        recall: 0,
        recent: 0,
        answers: 0,
      };
    const level = known.level.level;
    const recall = recallAt(known.memory, nowMs);
    const isEnough = known.answers >= ENOUGH_ANSWERS;
    const looksGuessed = isEnough && known.level.evidence < 0;
    const isWeak = known.recent < WEAK_BELOW || looksGuessed || level <= middle - WEAK_LEVELS_BEHIND;
    const told = isRising(setsOfModel(known.sets, known.last.model)) ? 'rising' : 'steady';
    const below = isEnough ? told : 'begun';
    const reason = isWeak ? 'weak' : recall < WANTED_RECALL ? 'due' : level < TOP_LEVEL ? below : 'known';
    return { family, reason, level, recall, recent: known.recent, answers: known.answers };
  });
}
