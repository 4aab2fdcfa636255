/** Which drill of a family: at the learner's level, near the success aimed at, not one that was just done. */
import { expectedScore, priorDifficulty, usualGuess, wantedDifficulty } from './rating.js';
import type { DrillRef } from './refs.js';
import { recallAt, WANTED_RECALL } from './spacing.js';
import type { Standing } from './standing.js';
import { skillIn } from './standing.js';

/** Success aimed at: hard enough to learn from, easy enough to go on (75-85 %). */
const TARGET_SUCCESS = 0.8;

/** What has been picked so far, and when. */
export interface PickState {
  readonly standing: Standing;
  readonly nowMs: number;
  /** Id of the drill before this one; '' for none. */
  readonly last: string;
  /** How often each drill stands in this set already. */
  readonly used: ReadonlyMap<string, number>;
}

/** Chance of a good answer to a drill, 0-1. */
function chanceOfGood(standing: Standing, drill: DrillRef): number {
  const difficulty =
    standing.drills.get(drill.id)?.rating.at ?? priorDifficulty(drill.level, drill.difficulty);
  return expectedScore(skillIn(standing, drill.family), difficulty, drill.guess ?? usualGuess(drill.level));
}

/** Drills at the wanted level; where there are none, at the nearest below, then the nearest above. */
export function atLevel(drills: readonly DrillRef[], level: number): DrillRef[] {
  const levels = [...new Set(drills.map((drill) => drill.level))];
  const below = Math.max(...levels.filter((l) => l <= level));
  const chosen = Number.isFinite(below) ? below : Math.min(...levels);
  return drills.filter((drill) => drill.level === chosen);
}

/** Whether a drill would only be recalled: done well and not yet fading, or already in this set. */
export function isFresh(drill: DrillRef, { standing, nowMs, used }: PickState): boolean {
  if ((used.get(drill.id) ?? 0) > 0) return false;
  const known = standing.drills.get(drill.id);
  return known === undefined || !known.wasGood || recallAt(known.memory, nowMs) < WANTED_RECALL;
}

function scoreOf(drill: DrillRef, state: PickState, noise: number): number {
  const known = state.standing.drills.get(drill.id);
  const offTarget = Math.abs(chanceOfGood(state.standing, drill) - TARGET_SUCCESS);
  const novelty =
    known === undefined ? 0.4 : isFresh(drill, state) ? 0.3 : -0.5 * recallAt(known.memory, state.nowMs);
  return novelty - 2 * offTarget - 3 * (state.used.get(drill.id) ?? 0) + 0.2 * noise;
}

/**
 * The best drill, or undefined when the only one left is the one just done.
 * @param candidates of one family, at least one
 * @param noise 0-1 for each candidate, so that equals do not always come in the same order
 */
export function pickDrill(
  candidates: readonly DrillRef[],
  state: PickState,
  noise: () => number,
): DrillRef | undefined {
  const rated = candidates.map((drill) => ({ drill, score: scoreOf(drill, state, noise()) }));
  const free = rated.filter(({ drill }) => drill.id !== state.last);
  if (free.length === 0) return undefined;
  return free.reduce((a, b) => (b.score > a.score ? b : a)).drill;
}

/** How hard a generated drill should be, 0-1 within the level. */
export function difficultyFor(standing: Standing, family: string, level: number): number {
  const guess = usualGuess(level);
  // The share that has to be known for `TARGET_SUCCESS` with the blind ones on top.
  const target = Math.max(0.5, (TARGET_SUCCESS - guess) / (1 - guess));
  return wantedDifficulty(skillIn(standing, family), level, target);
}
