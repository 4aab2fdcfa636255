/** What a set came to, this time against before, family by family and in words. */
import type { HistoryEntry } from './entry.js';
import { nextSteps } from './next-steps.js';
import type { FamilyRef } from './refs.js';
import type { Standing } from './standing.js';
import { addAnswer, copyStanding, levelIn } from './standing.js';
import type { Figures } from './totals.js';
import { addToTotals, figuresOf, modelOf, newTotals, setsOfModel } from './totals.js';

/** One family's part of a set. */
export interface FamilySummary {
  readonly family: string;
  readonly title: string;
  readonly levelBefore: number;
  readonly levelAfter: number;
  readonly now: Figures;
  /** Over the last sets before this one that the same model predicted; absent the first time. */
  readonly before?: Figures;
}

export interface SetSummary {
  readonly now: Figures;
  readonly before?: Figures;
  readonly families: readonly FamilySummary[];
  /** Sentences: the whole, then each family; one for both where there is one family. */
  readonly lines: readonly string[];
  /** What to do next. */
  readonly next: readonly string[];
}

function figuresOfEntries(entries: readonly HistoryEntry[]): Figures | undefined {
  const totals = newTotals('', '', 0);
  for (const entry of entries) if (entry.try === 1) addToTotals(totals, entry);
  return figuresOf([totals]);
}

const steps = (x: number): string => `${x.toFixed(1)} step${x.toFixed(1) === '1.0' ? '' : 's'}`;
const percent = (x: number): string => `${Math.round(100 * x)} %`;

function valueWords(now: number, before: number | undefined): string {
  const is = now < 0.05 ? 'value inside the band every time' : `value off by ${steps(now)} on average`;
  if (before === undefined) return is;
  const change = before - now;
  if (Math.abs(change) < 0.05) return `${is}, as before`;
  return `${is}, ${change > 0 ? 'closer' : 'further off'} than before (${steps(before)})`;
}

function chromaWords(now: number, before: number | undefined): string {
  const is = `chroma kept ${percent(now)}`;
  if (before === undefined) return is;
  if (Math.abs(now - before) < 0.02) return `${is}, as before`;
  return `${is}, ${now > before ? 'more' : 'less'} than before (${percent(before)})`;
}

/** Figures as words: "3 of 4 good; value off by 0.4 steps ...; chroma kept 71 %, more than before (60 %)". */
export function figuresInWords(now: Figures, before?: Figures): string {
  return [
    `${now.good} of ${now.answers} good`,
    ...(now.valueError === undefined ? [] : [valueWords(now.valueError, before?.valueError)]),
    ...(now.chromaKept === undefined ? [] : [chromaWords(now.chromaKept, before?.chromaKept)]),
  ].join('; ');
}

function levelWords({ levelBefore, levelAfter }: FamilySummary): string {
  if (levelAfter > levelBefore) return ` Up to level ${levelAfter}.`;
  return levelAfter < levelBefore ? ` Back to level ${levelAfter}.` : '';
}

function linesOf(
  whole: Figures,
  earlier: Figures | undefined,
  parts: readonly FamilySummary[],
): readonly string[] {
  const [only] = parts;
  if (only !== undefined && parts.length === 1)
    return [`This set: ${figuresInWords(only.now, only.before)}.${levelWords(only)}`];
  return [
    `This set: ${figuresInWords(whole, earlier)}.`,
    ...parts.map((part) => `${part.title}: ${figuresInWords(part.now, part.before)}.${levelWords(part)}`),
  ];
}

/**
 * Sums up a set.
 * @param before the standing before its first answer; not changed
 * @param entries the answers of the set, in order; later tries count for nothing here
 * @param families in the order of the curriculum
 */
export function summariseSet(
  before: Standing,
  entries: readonly HistoryEntry[],
  families: readonly FamilyRef[],
  now: Date,
): SetSummary | undefined {
  const whole = figuresOfEntries(entries);
  if (whole === undefined) return undefined;
  const after = copyStanding(before);
  for (const entry of entries) addAnswer(after, entry);
  const engine = entries[0]?.engine;
  const model = engine === undefined ? undefined : modelOf(engine);
  const met = [...new Set(entries.map(({ family }) => family))];
  const parts = met.flatMap((family): FamilySummary[] => {
    const figures = figuresOfEntries(entries.filter((entry) => entry.family === family));
    if (figures === undefined) return [];
    const earlier = figuresOf(setsOfModel(before.families.get(family)?.sets ?? [], model));
    return [
      {
        family,
        title: families.find(({ id }) => id === family)?.title ?? family,
        levelBefore: levelIn(before, family),
        levelAfter: levelIn(after, family),
        now: figures,
        ...(earlier && { before: earlier }),
      },
    ];
  });
  const earlier = figuresOf(setsOfModel(before.sets, model));
  return {
    now: whole,
    ...(earlier && { before: earlier }),
    families: parts,
    lines: linesOf(whole, earlier, parts),
    next: nextSteps(after, families, now),
  };
}
