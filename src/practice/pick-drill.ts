/** Which drill of a family: at a level, near the success aimed at, not one that was done a short while ago. */
import { expectedScore, priorDifficulty, usualGuess } from './rating.js';
import type { DrillRef } from './refs.js';
import { recallAt, WANTED_RECALL } from './spacing.js';
import type { Standing } from './standing.js';
import { skillIn } from './standing.js';

/** Success aimed at: hard enough to learn from, easy enough to go on (75-85 %). */
const TARGET_SUCCESS = 0.8;
/** A drill does not come again within so long, nor within so many sets, while others are left. */
const APART_MS = 24 * 3_600_000;
const APART_SETS = 3;

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
  const difficulty = standing.drills.get(drill.id)?.rating.at ?? priorDifficulty(drill.level);
  return expectedScore(skillIn(standing, drill.family), difficulty, drill.guess ?? usualGuess(drill.level));
}

/** Drills at the wanted level; where there are none, at the nearest below, then the nearest above. */
export function atLevel(drills: readonly DrillRef[], level: number): DrillRef[] {
  const levels = [...new Set(drills.map((drill) => drill.level))];
  const below = Math.max(...levels.filter((l) => l <= level));
  const chosen = Number.isFinite(below) ? below : Math.min(...levels);
  return drills.filter((drill) => drill.level === chosen);
}

/** Whether a drill was met within a day or within three sets, the one being chosen included. */
function isRecent({ id }: DrillRef, { standing, nowMs, used }: PickState): boolean {
  if (used.has(id)) return true;
  const known = standing.drills.get(id);
  if (known === undefined) return false;
  return nowMs - known.memory.lastMs < APART_MS || standing.setCount + 1 - known.setNumber < APART_SETS;
}

/** Whether a drill would be more than recalled: not met lately, and not done well unless it is fading. */
export function isFresh(drill: DrillRef, state: PickState): boolean {
  if (isRecent(drill, state)) return false;
  const { standing, nowMs } = state;
  const known = standing.drills.get(drill.id);
  return known === undefined || !known.wasGood || recallAt(known.memory, nowMs) < WANTED_RECALL;
}

function scoreOf(drill: DrillRef, state: PickState, noise: number): number {
  const known = state.standing.drills.get(drill.id);
  const offTarget = Math.abs(chanceOfGood(state.standing, drill) - TARGET_SUCCESS);
  const novelty =
    known === undefined ? 0.4 : isFresh(drill, state) ? 0.3 : -0.5 * recallAt(known.memory, state.nowMs);
  const soon = isRecent(drill, state) ? 5 : 0;
  return novelty - soon - 2 * offTarget - 3 * (state.used.get(drill.id) ?? 0) + 0.2 * noise;
}

/**
 * The best drill, or undefined when there is none but the one just done.
 * @param candidates of one family
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
