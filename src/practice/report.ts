/** Progress as plain data: what the commands print as text, JSON and CSV. */
import { type AtAGlance, atAGlance } from './at-a-glance.js';
import { levelOutlook } from './levels.js';
import type { Reason } from './need.js';
import { familyNeeds } from './need.js';
import { nextSteps, outlookWords } from './next-steps.js';
import type { FamilyRef } from './refs.js';
import { dueAt, isUndated } from './spacing.js';
import type { Standing } from './standing.js';
import type { Figures, Totals } from './totals.js';
import { figuresOf, meansOf, setsOfModel } from './totals.js';
import type { Trend } from './trend.js';
import { trendOf } from './trend.js';

/** Figures of one set. */
export interface SetReport extends Figures {
  readonly set: string;
  /** ISO 8601, UTC. */
  readonly started: string;
}

export interface FamilyReport {
  readonly id: string;
  readonly title: string;
  /** 1-5; 0 when it was never practised. */
  readonly level: number;
  /** First answers in all. */
  readonly answers: number;
  readonly state: Reason;
  /** Chance of recall now, 0-1. */
  readonly recall: number;
  /** When it is due for review, ISO 8601; absent when it was never practised. */
  readonly due?: string;
  /** Good answers still needed for the next level at least. */
  readonly goodAnswersToRise: number;
  readonly outlook: string;
  /** The last sets with this family that the newest model predicted, oldest first; and their means. */
  readonly sets: readonly SetReport[];
  readonly figures?: Figures;
}

export interface ProgressReport {
  /** What is due, what was done last and what rose in it. */
  readonly glance: AtAGlance;
  /** First answers; and later ones to the same drill in the same set, which count in none of the figures. */
  readonly answers: number;
  readonly laterTries: number;
  readonly families: readonly FamilyReport[];
  /** The last sets that the newest model predicted, seven at most, oldest first. */
  readonly sets: readonly SetReport[];
  /** Kept sets of an earlier model: their figures are never beside the others. */
  readonly earlierSets: number;
  /** Their earlier half against their later half; absent for fewer than two. */
  readonly trend?: Trend;
  readonly next: readonly string[];
}

const setReports = (sets: readonly Totals[]): SetReport[] =>
  sets.map((totals) => ({
    set: totals.set,
    started: new Date(totals.startMs).toISOString(),
    ...meansOf(totals),
  }));

/** Puts a standing into a report; families in the order of the curriculum. */
export function progressReport(
  standing: Standing,
  families: readonly FamilyRef[],
  now: Date,
): ProgressReport {
  const model = standing.sets.at(-1)?.model;
  const sets = setsOfModel(standing.sets, model);
  const needs = familyNeeds(standing, families, now.getTime());
  const trend = trendOf(sets);
  return {
    glance: atAGlance(standing, families, now),
    answers: standing.answers,
    laterTries: standing.laterTries,
    families: needs.map(({ family, reason, recall }): FamilyReport => {
      const known = standing.families.get(family.id);
      const own = setsOfModel(known?.sets ?? [], model);
      const figures = figuresOf(own);
      return {
        id: family.id,
        title: family.title,
        level: known?.level.level ?? 0,
        answers: known?.answers ?? 0,
        state: known === undefined ? 'new' : reason,
        recall,
        ...(known && !isUndated(known.memory) && { due: new Date(dueAt(known.memory)).toISOString() }),
        goodAnswersToRise: known ? levelOutlook(known.level).goodAnswers : 3,
        outlook: outlookWords(standing, family.id),
        sets: setReports(own),
        ...(figures && { figures }),
      };
    }),
    sets: setReports(sets),
    earlierSets: standing.sets.length - sets.length,
    ...(trend && { trend }),
    next: nextSteps(standing, families, now),
  };
}
