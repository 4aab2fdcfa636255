/**
 * Where a learner stands: everything that the home screen, today's set and progress need, folded from the record one
 * answer at a time. Bounded in size whatever the length of the record, so that it can be kept beside it.
 */

import { jsonOf, membersOf } from '../text/json.js';
import { noteTime, placesByTime, type Times } from './dated.js';
import type { HistoryEntry } from './entry.js';
import type { LastTime } from './last-time.js';
import { lastTimeOf } from './last-time.js';
import type { LevelState } from './levels.js';
import { addEvidence, doubtFrom, FIRST_LEVEL, stepLevel } from './levels.js';
import type { PlacingAnswer } from './placing.js';
import { PLACING_DECISIONS, placementOf, SCORE, startLevel } from './placing.js';
import type { Rating } from './rating.js';
import { priorDifficulty, rate, UNRATED, usualGuess } from './rating.js';
import type { Memory } from './spacing.js';
import { remember, UNDATED } from './spacing.js';
import type { Totals } from './totals.js';
import { addToSets } from './totals.js';

/** Drills and families remembered one by one, to within a half; of more, those answered longest ago are forgotten. */
const MOST_DRILLS = 1000;
const MOST_FAMILIES = 200;
/** Weight of the newest answer in `recent`. */
const RECENT_WEIGHT = 0.12;
/** `recent` before any answer: a little above weak, so that one miss tells. */
const RECENT_START = 0.55;

export interface FamilyStanding {
  /** First answers. */
  answers: number;
  level: LevelState;
  /** Running share of answers known, guessing taken off: 1 all, 0 no better than blind choice. */
  recent: number;
  rating: Rating;
  memory: Memory;
  sets: Totals[];
  last: LastTime;
  /** The set that it was last answered in, and its level when that set began; a start found by the placing round is no rise. */
  entered: { readonly set: string; readonly level: number };
}

export interface DrillStanding {
  /** First answers. */
  answers: number;
  wasGood: boolean;
  /** Number of the set that it was last answered in, as {@link Standing.setCount} counts. */
  setNumber: number;
  rating: Rating;
  memory: Memory;
}

/** The fold of a record. Changed in place by {@link addAnswer}. */
export interface Standing extends Times {
  /** First answers, as {@link HistoryEntry.try} says; and the others, which count for nothing else. */
  answers: number;
  laterTries: number;
  /** The drill answered last. */
  lastDrill: string;
  /** The set answered last, and how many there have been. */
  lastSet: string;
  setCount: number;
  /** Decisions of the placing round, in order; eight at most. */
  placing: PlacingAnswer[];
  overall: Rating;
  /** Evidence against guessing over all families, as in a level state. */
  evidence: number;
  families: Map<string, FamilyStanding>;
  drills: Map<string, DrillStanding>;
  /** The last seven sets over all families. */
  sets: Totals[];
}

export function emptyStanding(): Standing {
  return {
    answers: 0,
    laterTries: 0,
    lastMs: 0,
    lastDrill: '',
    lastSet: '',
    setCount: 0,
    placing: [],
    isOutOfOrder: false,
    overall: UNRATED,
    evidence: 0,
    families: new Map(),
    drills: new Map(),
    sets: [],
  };
}

/** Forgets what was answered longest ago, a half more than allowed at a time so that it costs little. */
function thin(map: Map<string, { readonly memory: Memory }>, most: number): void {
  if (map.size <= 1.5 * most) return;
  const oldestFirst = [...map].sort(([, a], [, b]) => a.memory.lastMs - b.memory.lastMs);
  for (const [key] of oldestFirst.slice(0, map.size - most)) map.delete(key);
}

/**
 * Adds an answer, in place. Later tries ({@link HistoryEntry.try}) are counted apart and move nothing else: the first is what was known.
 * @param latestMs an answer dated later was given under a wrong clock: it counts, but sets no date for review
 */
export function addAnswer(
  standing: Standing,
  entry: HistoryEntry,
  latestMs = Number.POSITIVE_INFINITY,
): Standing {
  const atMs = Date.parse(entry.at);
  const isAhead = atMs > latestMs;
  const remembered = (memory: Memory | undefined): Memory =>
    isAhead ? (memory ?? UNDATED) : remember(memory, entry.verdict, atMs);
  const isFirst = entry.try === 1;
  standing[isFirst ? 'answers' : 'laterTries'] += 1;
  noteTime(standing, atMs, isAhead);
  standing.lastDrill = entry.drill;
  if (!isFirst) return standing;
  if (entry.set !== standing.lastSet) standing.setCount += 1;
  standing.lastSet = entry.set;

  const guess = Math.min(0.95, entry.guess ?? usualGuess(entry.level));
  const family = standing.families.get(entry.family);
  const drill = standing.drills.get(entry.drill);
  // A hint is worth half an answer to the ratings.
  const score = entry.hints > 0 ? SCORE[entry.verdict] / 2 : SCORE[entry.verdict];
  const rated = rate(
    {
      overall: standing.overall,
      family: family?.rating ?? UNRATED,
      drill: drill?.rating ?? { at: priorDifficulty(entry.level), answers: 0 },
    },
    score,
    guess,
  );
  const known = Math.max(-1, (score - guess) / (1 - guess));
  standing.overall = rated.overall;
  if (entry.hints === 0) standing.evidence = addEvidence(standing.evidence, entry.verdict === 'good', guess);
  const doubt = doubtFrom(standing.evidence);
  const { verdict, level, hints, set, placing = false } = entry;
  const before = family?.level ?? { ...FIRST_LEVEL, level: startLevel(standing.placing, entry.family) };
  const recent = family?.recent ?? RECENT_START;
  const sets = family?.sets ?? [];
  addToSets(sets, entry, atMs);
  addToSets(standing.sets, entry, atMs);
  const nextFamily: FamilyStanding = {
    answers: (family?.answers ?? 0) + 1,
    // The round finds the level; one decision in it, perhaps far above the learner, makes nothing weak.
    level: placing ? before : stepLevel(before, { level, verdict, hints, set, guess, doubt }),
    recent: placing ? recent : (1 - RECENT_WEIGHT) * recent + RECENT_WEIGHT * known,
    rating: rated.family,
    memory: remembered(family?.memory),
    sets,
    last: lastTimeOf(entry),
    entered: family?.entered.set === set ? family.entered : { set, level: before.level },
  };
  standing.families.set(entry.family, nextFamily);
  standing.drills.set(entry.drill, {
    answers: (drill?.answers ?? 0) + 1,
    wasGood: verdict === 'good',
    setNumber: standing.setCount,
    rating: rated.drill,
    memory: remembered(drill?.memory),
  });
  if (placing) place(standing, { family: entry.family, level, verdict, guess });
  thin(standing.families, MOST_FAMILIES);
  thin(standing.drills, MOST_DRILLS);
  return standing;
}

/** Takes a decision of the placing round; families met in nothing else start where the round now puts them. */
function place(standing: Standing, answer: PlacingAnswer): void {
  if (standing.placing.length < PLACING_DECISIONS) standing.placing.push(answer);
  for (const { family } of standing.placing) {
    const known = standing.families.get(family);
    const decisions = standing.placing.filter((one) => one.family === family).length;
    if (known?.answers !== decisions) continue;
    const level = startLevel(standing.placing, family);
    known.level = { ...FIRST_LEVEL, level };
    known.entered = { ...known.entered, level };
  }
}

/** Whether the placing round can be begun or gone on with: it is not over, and nothing else was answered yet. */
export function placingIsOpen(standing: Standing): boolean {
  const answers = [...standing.families.values()].reduce((sum, family) => sum + family.answers, 0);
  return answers === standing.placing.length && placementOf(standing.placing).nextLevel !== undefined;
}

/** The standing after a list of answers, in order of time whatever the order of the list ({@link placesByTime}). */
export function foldSorted(entries: readonly HistoryEntry[], latestMs = Number.POSITIVE_INFINITY): Standing {
  const standing = emptyStanding();
  const times = entries.map(({ at }) => Date.parse(at));
  for (const place of placesByTime(times, latestMs))
    addAnswer(standing, entries[place] as HistoryEntry, latestMs);
  return standing;
}

/** A standing as one line of JSON, and back. */
export function standingToJson(standing: Standing): string {
  return JSON.stringify({ ...standing, families: [...standing.families], drills: [...standing.drills] });
}

/** @returns undefined when it is not one; the caller checks that it wrote it (a checksum) */
export function standingFromJson(text: string): Standing | undefined {
  const read = membersOf(jsonOf(text)) as
    | (Omit<Standing, 'families' | 'drills'> & {
        families: [string, FamilyStanding][];
        drills: [string, DrillStanding][];
      })
    | undefined;
  if (!Array.isArray(read?.families) || !Array.isArray(read.drills)) return undefined;
  return { ...read, families: new Map(read.families), drills: new Map(read.drills) };
}

/** An independent copy: a set summary compares with the standing before the set. */
export function copyStanding(standing: Standing): Standing {
  return structuredClone(standing);
}

/** The skill in a family, logits; what is known of the learner in general where it was never answered. */
export function skillIn(standing: Standing, family: string): number {
  return standing.overall.at + (standing.families.get(family)?.rating.at ?? 0);
}

/** The level in a family, 1-5. */
export function levelIn(standing: Standing, family: string): number {
  return standing.families.get(family)?.level.level ?? startLevel(standing.placing, family);
}
