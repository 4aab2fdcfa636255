/** Sums over the first answers of a set, small enough to keep for the last seven sets of every family. */

import { shadingLine } from '../colour/chroma.js';
import { outside } from '../judgement/score.js';
import type { HistoryEntry } from './entry.js';

/** How many sets progress looks back. */
const SETS_KEPT = 7;

/** Sums over first answers; means come from {@link figuresOf}. */
export interface Totals {
  readonly set: string;
  /** The prediction that its figures come from; see {@link modelOf}. */
  readonly model: string;
  /** Time of its first answer, ms. */
  readonly startMs: number;
  answers: number;
  good: number;
  fair: number;
  off: number;
  mark: number;
  /** Levels of the drills, summed. */
  level: number;
  /** Steps outside the value band asked, summed; and the answers that had one. */
  valueError: number;
  valueAnswers: number;
  /** Chroma kept, as a share of the least that was asked, summed; and the answers that asked to keep it. */
  chromaKept: number;
  chromaAnswers: number;
  /** C* outside the band asked where dulling was asked, summed; and the answers that asked it. */
  dullError: number;
  dullAnswers: number;
}

/** Means over answers; absent where nothing was asked. */
export interface Figures {
  readonly answers: number;
  readonly good: number;
  readonly fair: number;
  readonly off: number;
  /** 0-100. */
  readonly mark: number;
  /** Mean level of the drills, 1-5. */
  readonly level: number;
  /** Steps outside the band asked, 0 is inside; and the answers that were asked for a value. */
  readonly valueError?: number;
  readonly valueAnswers?: number;
  /** Where it was to be kept: share of the least chroma asked at the value reached, 0-1; more than asked is no more than all. */
  readonly chromaKept?: number;
  readonly chromaAnswers?: number;
  /** C* outside the band asked where dulling or a grey was asked, 0 is inside. */
  readonly dullError?: number;
  readonly dullAnswers?: number;
}

/**
 * The model of prediction behind an engine's version: its first two numbers. A release that changes a prediction raises one of
 * them, so that figures of two models are told apart; the last number never changes a figure.
 */
export function modelOf(engine: string): string {
  return engine.split('.').slice(0, 2).join('.');
}

/** Those sets whose figures may stand beside figures of that model. */
export function setsOfModel(sets: readonly Totals[], model: string | undefined): readonly Totals[] {
  return sets.filter((totals) => totals.model === model);
}

export function newTotals(set: string, model: string, startMs: number): Totals {
  return {
    set,
    model,
    startMs,
    answers: 0,
    good: 0,
    fair: 0,
    off: 0,
    mark: 0,
    level: 0,
    valueError: 0,
    valueAnswers: 0,
    chromaKept: 0,
    chromaAnswers: 0,
    dullError: 0,
    dullAnswers: 0,
  };
}

/** How far outside its band a value came, in painter's steps; 0 inside. Undefined where no value was asked. */
export function valueErrorOf({ value }: HistoryEntry): number | undefined {
  return value && outside(value.after, value.asked);
}

/** How far outside its band a chroma came, in C*; 0 inside. Undefined where no chroma was asked. */
export function chromaErrorOf({ chroma }: HistoryEntry): number | undefined {
  return chroma?.asked && outside(chroma.after, chroma.asked);
}

/** Share of the chroma that less light would leave, below which a band asks for more than shade: for dulling. */
const DULL_BELOW = 0.8;

/** L* at a painter's step, within 2: ten times the Munsell value is near enough to tell shade from dulling. */
const lightnessAt = (step: number): number => 10 * (10.5 - step);

/**
 * Whether dulling or a grey was asked: the band ends clearly below the shading line, which is what the start would keep
 * in less light at the value asked (at its own where none was).
 */
function asksToDull({ chroma, value }: HistoryEntry): boolean {
  if (chroma?.asked === undefined) return false;
  const line =
    value === undefined
      ? chroma.before
      : shadingLine(
          chroma.before,
          lightnessAt(value.before),
          lightnessAt((value.asked[0] + value.asked[1]) / 2),
        );
  return chroma.asked[1] < DULL_BELOW * line;
}

/** Below this C* a colour is neutral: there is nothing to keep. */
const NOTHING_TO_KEEP = 5;

/**
 * Whether chroma was to be taken away: all aims but a shade and a rich colour ask for it. Records without an aim go by the band.
 */
function wasDulled(entry: HistoryEntry): boolean {
  const { aim } = entry;
  return aim === undefined ? asksToDull(entry) : aim !== 'shade' && aim !== 'rich';
}

/**
 * How much of the chroma asked was kept, 0-1. The band is asked at the value reached, so that a deep dark, which cannot be as
 * strong as a pale wash, is held against what is possible there. Undefined where there was nothing to keep.
 */
function keptOf({ chroma }: HistoryEntry): number | undefined {
  const least = chroma?.asked?.[0] ?? 0;
  if (chroma === undefined || Math.min(chroma.before, least) < NOTHING_TO_KEEP) return undefined;
  return Math.min(1, chroma.after / least);
}

/** Adds a first answer. */
export function addToTotals(totals: Totals, entry: HistoryEntry): void {
  totals.answers += 1;
  totals[entry.verdict] += 1;
  totals.mark += entry.mark;
  totals.level += entry.level;
  const error = valueErrorOf(entry);
  if (error !== undefined) {
    totals.valueError += error;
    totals.valueAnswers += 1;
  }
  const isDulled = wasDulled(entry);
  const kept = isDulled ? undefined : keptOf(entry);
  if (kept !== undefined) {
    totals.chromaKept += kept;
    totals.chromaAnswers += 1;
  }
  const missed = isDulled ? chromaErrorOf(entry) : undefined;
  if (missed !== undefined) {
    totals.dullError += missed;
    totals.dullAnswers += 1;
  }
}

/** Adds an answer to the last seven sets, opening a new one where it belongs to none of them. */
export function addToSets(sets: Totals[], entry: HistoryEntry, atMs: number): void {
  const model = modelOf(entry.engine);
  let totals = sets.findLast((known) => known.set === entry.set && known.model === model);
  if (totals === undefined) {
    totals = newTotals(entry.set, model, atMs);
    sets.push(totals);
    if (sets.length > SETS_KEPT) sets.shift();
  }
  addToTotals(totals, entry);
}

/** Means over one or several sets; undefined for none. */
export function figuresOf(sets: readonly Totals[]): Figures | undefined {
  const sum = newTotals('', '', 0);
  for (const totals of sets) {
    sum.answers += totals.answers;
    sum.good += totals.good;
    sum.fair += totals.fair;
    sum.off += totals.off;
    sum.mark += totals.mark;
    sum.level += totals.level;
    sum.valueError += totals.valueError;
    sum.valueAnswers += totals.valueAnswers;
    sum.chromaKept += totals.chromaKept;
    sum.chromaAnswers += totals.chromaAnswers;
    sum.dullError += totals.dullError;
    sum.dullAnswers += totals.dullAnswers;
  }
  return sum.answers === 0 ? undefined : meansOf(sum);
}

/** Means over sums of one answer or more. */
export function meansOf(sum: Totals): Figures {
  return {
    answers: sum.answers,
    good: sum.good,
    fair: sum.fair,
    off: sum.off,
    mark: sum.mark / sum.answers,
    level: sum.level / sum.answers,
    ...(sum.valueAnswers > 0 && {
      valueError: sum.valueError / sum.valueAnswers,
      valueAnswers: sum.valueAnswers,
    }),
    ...(sum.chromaAnswers > 0 && {
      chromaKept: sum.chromaKept / sum.chromaAnswers,
      chromaAnswers: sum.chromaAnswers,
    }),
    ...(sum.dullAnswers > 0 && {
      dullError: sum.dullError / sum.dullAnswers,
      dullAnswers: sum.dullAnswers,
    }),
  };
}
