/**
 * The level of a family, 1-5: up after three good answers in a row over at least two sittings, down after two poor
 * ones in a row.
 *
 * From level 2 on a rise also has to be proved against guessing. Three good answers in a row say little where there
 * are two options (one blind row in eight is good) and a learner who goes on long enough meets any row by chance. So
 * each first answer adds the logarithm of a likelihood ratio: "knows four in five and guesses the rest" against
 * "guesses". Under guessing that ratio is a martingale of mean 1, so the chance that it ever reaches 1000 is at most
 * 1 in 1000, however long one guesses (J. Ville 1939; the sequential test of A. Wald 1945). It is held from below at
 * 1/1000, so that a learner who guessed for a month can still turn round. It costs a careful learner 12 good answers
 * where every question has two options, and no more than the three where there are many. Fifteen families are fifteen
 * chances, so whoever looks like guessing everywhere (`doubt`) has to prove twenty times as much.
 */
import type { Verdict } from '../judgement/index.js';

export const TOP_LEVEL = 5;
const GOOD_TO_RISE = 3;
const POOR_TO_FALL = 2;
const SITTINGS_TO_RISE = 2;
/** Natural logarithm of the odds that a rise from level 2 on needs. */
export const PROOF = Math.log(1000);
/** What full doubt adds to it: twenty times the odds. */
const DOUBT_COSTS = Math.log(20);
/** Share that a learner who knows the matter answers without guessing: the success that practice aims at. */
const KNOWN = 0.8;

/** Where a learner stands in a family. */
export interface LevelState {
  readonly level: number;
  /** Good answers in a row at this level. */
  readonly row: number;
  /** Sittings that the row spans, counted to two; and the last of them. */
  readonly sittings: number;
  readonly sitting: string;
  /** Poor answers in a row at this level. */
  readonly poor: number;
  /** Natural logarithm of the odds against guessing, bounded. */
  readonly evidence: number;
}

export const FIRST_LEVEL: LevelState = { level: 1, row: 0, sittings: 0, sitting: '', poor: 0, evidence: 0 };

/** A first answer, as the rule sees it. */
export interface LevelAnswer {
  readonly level: number;
  readonly verdict: Verdict;
  readonly hints: number;
  readonly set: string;
  /** Chance that a blind choice is good, 0-1. */
  readonly guess: number;
  /** How far all answers in all families look like guessing, 0-1. */
  readonly doubt?: number;
}

/** The evidence after an answer, within its bounds. */
export function addEvidence(evidence: number, isGood: boolean, guess: number): number {
  return Math.max(-PROOF, Math.min(PROOF + DOUBT_COSTS, evidence + evidenceOf(isGood, guess)));
}

/** Doubt about a learner, 0-1, from the evidence over all families. */
export function doubtFrom(evidence: number): number {
  return Math.max(0, Math.min(1, -evidence / PROOF));
}

/** What an answer adds to the evidence against guessing. With E[ratio | guessing] = 1 for every guess. */
export function evidenceOf(isGood: boolean, guess: number): number {
  // No single answer may prove it, and one that cannot fail proves nothing.
  const g = Math.max(0.02, Math.min(0.95, guess));
  return isGood ? Math.log((g + KNOWN * (1 - g)) / g) : Math.log(1 - KNOWN);
}

const mayRise = (s: LevelState, doubt: number): boolean =>
  s.level < TOP_LEVEL &&
  s.row >= GOOD_TO_RISE &&
  s.sittings >= SITTINGS_TO_RISE &&
  // A hair of slack: the sum is made of rounded logarithms.
  (s.level < 2 || s.evidence >= PROOF + doubt * DOUBT_COSTS - 1e-9);

/**
 * The state after a first answer. Answers to easier drills do not raise, poor answers to harder ones do not lower;
 * with a hint a good answer counts neither way.
 */
export function stepLevel(before: LevelState, answer: LevelAnswer): LevelState {
  const isGood = answer.verdict === 'good';
  const withHint = answer.hints > 0;
  const evidence = withHint ? before.evidence : addEvidence(before.evidence, isGood, answer.guess);
  if (isGood && (withHint || answer.level < before.level)) return { ...before, evidence };
  if (isGood) {
    const isNewSitting = before.row === 0 || answer.set !== before.sitting;
    const next: LevelState = {
      level: before.level,
      row: before.row + 1,
      sittings: before.row === 0 ? 1 : Math.min(SITTINGS_TO_RISE, before.sittings + (isNewSitting ? 1 : 0)),
      sitting: answer.set,
      poor: 0,
      evidence,
    };
    return mayRise(next, answer.doubt ?? 0) ? { ...FIRST_LEVEL, level: next.level + 1, evidence } : next;
  }
  const counts = answer.verdict === 'off' && answer.level <= before.level;
  const poor = counts ? before.poor + 1 : answer.verdict === 'fair' ? 0 : before.poor;
  if (poor >= POOR_TO_FALL) return { ...FIRST_LEVEL, level: Math.max(1, before.level - 1), evidence };
  return { ...before, row: 0, sittings: 0, sitting: '', poor, evidence };
}

/** What is missing for the next level. */
export interface LevelOutlook {
  readonly atTop: boolean;
  readonly goodAnswers: number;
  readonly anotherSitting: boolean;
  /** Share of the proof against guessing in hand, 0-1; 1 where none is asked. */
  readonly proof: number;
}

/** What a learner still needs to rise. */
export function levelOutlook(state: LevelState): LevelOutlook {
  return {
    atTop: state.level >= TOP_LEVEL,
    goodAnswers: Math.max(0, GOOD_TO_RISE - state.row),
    anotherSitting: state.sittings < SITTINGS_TO_RISE,
    proof: state.level < 2 ? 1 : Math.max(0, Math.min(1, state.evidence / PROOF)),
  };
}
