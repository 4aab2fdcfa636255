/**
 * Spaced review by FSRS-6 (ts-fsrs): how well a family or a drill is remembered, and when it is due.
 * Time is an argument and nothing is drawn at random (fuzz off).
 * Source: FSRS-6 published default parameters and algorithm description (open-spaced-repetition project, MIT).
 */
import { fsrs, Rating } from 'ts-fsrs';
import type { Verdict } from '../judgement/index.js';

const DAY_MS = 86_400_000;

/** Recall at which something is due. */
export const WANTED_RECALL = 0.9;

const model = fsrs({ enable_fuzz: false, request_retention: WANTED_RECALL });

/** What is remembered: FSRS stability (days until recall is 0.9), difficulty (1-10), time of the last answer (ms). */
export interface Memory {
  readonly stability: number;
  readonly difficulty: number;
  readonly lastMs: number;
}

/** Memory of what was answered at a time that cannot be believed only: due at once, and the next answer begins it. */
export const UNDATED: Memory = { stability: 1, difficulty: 5, lastMs: 0 };

export const isUndated = ({ lastMs }: Memory): boolean => lastMs === UNDATED.lastMs;

const GRADE = { good: Rating.Good, fair: Rating.Hard, off: Rating.Again } as const;

// Calendar days in UTC, as ts-fsrs counts them: answers of one day use the same-day formula.
const dayOf = (ms: number): number => Math.floor(ms / DAY_MS);

/**
 * Memory after an answer: good counts as "good", fair as "hard", off as "again". "Easy" is never given: nothing we
 * measure tells easy from good. A time before the last answer counts as the same day.
 */
export function remember(known: Memory | undefined, verdict: Verdict, atMs: number): Memory {
  const before = known === undefined || isUndated(known) ? undefined : known;
  const days = before ? Math.max(0, dayOf(atMs) - dayOf(before.lastMs)) : 0;
  const next = model.next_state(before ?? null, days, GRADE[verdict]);
  return {
    stability: next.stability,
    difficulty: next.difficulty,
    lastMs: Math.max(atMs, before?.lastMs ?? atMs),
  };
}

/** Chance of recall at a time, 0-1; 1 straight after an answer. */
export function recallAt(memory: Memory, nowMs: number): number {
  const days = Math.max(0, nowMs - memory.lastMs) / DAY_MS;
  return model.forgetting_curve(days, memory.stability);
}

/** When recall falls to `WANTED_RECALL`, ms. */
export function dueAt(memory: Memory): number {
  return memory.lastMs + model.next_interval(memory.stability, 0) * DAY_MS;
}
