/**
 * Elo for education: the skill of the learner and the difficulty of a drill on one logit scale.
 * Source: R. Pelánek, Applications of the Elo rating system in adaptive educational systems, Computers & Education
 * 98 (2016): logistic expectation with a floor for guessing, and the shrinking step U(n) = a / (1 + b n).
 */

/** Step before any answer, and how fast it shrinks (Pelánek's form; a = 1 and b = 0.05 are usual, not canonical). */
const STEP_A = 1;
const STEP_B = 0.05;

/** A place on the logit scale and how many answers it rests on. */
export interface Rating {
  readonly at: number;
  readonly answers: number;
}

export const UNRATED: Rating = { at: 0, answers: 0 };

/** Beyond this the expectation is flat; keeps an unbroken row of good answers from running off. */
const LIMIT = 8;

const clamp = (x: number): number => Math.max(-LIMIT, Math.min(LIMIT, x));

/** Chance of knowing: 1 / (1 + e^-(skill - difficulty)), 0-1. */
export function chanceOfKnowing(skill: number, difficulty: number): number {
  return 1 / (1 + Math.exp(difficulty - skill));
}

/**
 * Chance of a good answer, 0-1.
 * @param skill logits
 * @param difficulty logits
 * @param guess chance that a blind choice is good, 0-1 (1/4 for one of four)
 */
export function expectedScore(skill: number, difficulty: number, guess = 0): number {
  return guess + (1 - guess) * chanceOfKnowing(skill, difficulty);
}

/** Size of the step after n answers: U(n) = a / (1 + b n). */
export function stepSize(answers: number): number {
  return STEP_A / (1 + STEP_B * answers);
}

/** Moves a rating by `step` times the surprise: up for a skill, down (`step` negative) for a difficulty. */
export function moved(rating: Rating, surprise: number, step: number): Rating {
  return { at: clamp(rating.at + step * surprise), answers: rating.answers + 1 };
}

/** The ratings that one answer touches. */
export interface Ratings {
  /** Of the learner in everything. */
  readonly overall: Rating;
  /** What the family adds to or takes from it. */
  readonly family: Rating;
  /** Difficulty of the drill. */
  readonly drill: Rating;
}

/**
 * One answer. The skill in a family is `overall + family` (Pelánek 2016, a global skill with local deviations).
 * @param score 1 good, 0.5 fair, 0 off
 */
export function rate(before: Ratings, score: number, guess: number): Ratings {
  const surprise = score - expectedScore(before.overall.at + before.family.at, before.drill.at, guess);
  return {
    overall: moved(before.overall, surprise, stepSize(before.overall.answers)),
    family: moved(before.family, surprise, stepSize(before.family.answers)),
    drill: moved(before.drill, surprise, -stepSize(before.drill.answers)),
  };
}

/**
 * Where a drill starts, in logits: one logit a level, level 3 at 0. The spacing is ours; answers correct it.
 * @param level 1-5
 */
export function priorDifficulty(level: number): number {
  return level - 3;
}

/** Chance of a good answer by blind choice where a drill does not say: two options at levels 1 and 2, four at 3. */
export function usualGuess(level: number): number {
  return [0.5, 0.5, 0.25, 0.1, 0.05][level - 1] ?? 0.05;
}
