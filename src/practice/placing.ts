/**
 * The placing round: where a newcomer starts, estimated from at most eight decisions over the levels.
 *
 * The skill is the rating of `rating.ts`, begun in the middle (level 3) and moved by each answer; it picks the next
 * level. Nobody is lifted for lucky guesses: a start above level 1 has to be proved by the ratio of `levels.ts`,
 * "knows four in five and guesses the rest" against "guesses". Under guessing its mean is 1, so it reaches 40 in at
 * most one round of forty (J. Ville 1939). A proof once given stands, as in the sequential test of A. Wald (1945).
 */
import type { Verdict } from '../judgement/index.js';
import { evidenceOf, TOP_LEVEL } from './levels.js';
import type { Rating } from './rating.js';
import {
  chanceOfKnowing,
  expectedScore,
  moved,
  priorDifficulty,
  stepSize,
  UNRATED,
  usualGuess,
} from './rating.js';

/** Decisions of a round at most. */
export const PLACING_DECISIONS = 8;
/** Natural logarithm of the odds against guessing that a start above level 1 needs. */
const PROOF_TO_START = Math.log(40);
/** Highest start in a family that the round did not touch, and in one that it did. */
const TOP_START = 3;
const TOP_START_MET = 4;
/** Chance of knowing at which a level is a fair start. */
const KNOWN_AT_START = 0.6;

/** A decision of the round. */
export interface PlacingAnswer {
  readonly family: string;
  /** Level of the drill, 1-5. */
  readonly level: number;
  readonly verdict: Verdict;
  /** Chance that a blind choice is good, 0-1. */
  readonly guess: number;
}

/** What the decisions so far come to. */
export interface Placement {
  readonly skill: Rating;
  /** Whether guessing is ruled out. */
  readonly isProved: boolean;
  /** Level of the next decision; absent when the round is over. */
  readonly nextLevel?: number;
  /** Start in a family that was not met. */
  readonly start: number;
}

/** What a verdict counts in a rating. */
export const SCORE = { good: 1, fair: 0.5, off: 0 } as const;

interface Estimate {
  readonly skill: Rating;
  readonly evidence: number;
  readonly isProved: boolean;
}

const BEFORE: Estimate = { skill: UNRATED, evidence: 0, isProved: false };

function after({ skill, evidence, isProved }: Estimate, { level, verdict, guess }: PlacingAnswer): Estimate {
  const surprise = SCORE[verdict] - expectedScore(skill.at, priorDifficulty(level), guess);
  const sum = evidence + evidenceOf(verdict === 'good', guess);
  return {
    skill: moved(skill, surprise, stepSize(skill.answers)),
    evidence: sum,
    isProved: isProved || sum >= PROOF_TO_START,
  };
}

/** The level whose drills tell most: where the skill lies in the middle. */
const levelFor = ({ at }: Rating): number => Math.max(1, Math.min(TOP_LEVEL, Math.round(3 + at)));

/** Whether good answers to all that is left would still prove something. */
function canBeProved(estimate: Estimate, left: number): boolean {
  let best = estimate;
  for (let n = 0; n < left && !best.isProved; n += 1) {
    const level = levelFor(best.skill);
    best = after(best, { family: '', level, verdict: 'good', guess: usualGuess(level) });
  }
  return best.isProved;
}

function startFrom({ skill, isProved }: Estimate): number {
  if (!isProved) return 1;
  for (let level = TOP_START; level > 1; level -= 1)
    if (chanceOfKnowing(skill.at, priorDifficulty(level)) >= KNOWN_AT_START) return level;
  return 1;
}

/** The placement after some decisions; the round is over when the rest of it could not change the start. */
export function placementOf(answers: readonly PlacingAnswer[]): Placement {
  const estimate = answers.reduce(after, BEFORE);
  const { skill, isProved } = estimate;
  const left = PLACING_DECISIONS - answers.length;
  const level = levelFor(skill);
  // Proved, and the next decision would already be at the top: more of them would not start anybody higher.
  const isSettled = isProved ? level >= TOP_LEVEL : !canBeProved(estimate, left);
  return {
    skill,
    isProved,
    start: startFrom(estimate),
    ...(left > 0 && !isSettled && { nextLevel: level }),
  };
}

/** The level, 1-5, that a family starts at after these decisions. */
export function startLevel(answers: readonly PlacingAnswer[], family: string): number {
  const { start, isProved } = placementOf(answers);
  const own = answers.findLast((answer) => answer.family === family);
  if (!isProved || own === undefined) return start;
  if (own.verdict === 'good') return Math.max(start, Math.min(own.level, TOP_START_MET));
  return own.level <= start ? Math.max(1, own.level - 1) : start;
}
