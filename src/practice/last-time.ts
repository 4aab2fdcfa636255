/** One line after an answer: how it compares with the learner's last time at that family, and well done when it was. */

import type { Verdict } from '../judgement/index.js';
import type { HistoryEntry } from './entry.js';
import { inSteps } from './figure-rows.js';
import { chromaErrorOf, modelOf, valueErrorOf } from './totals.js';

/** The last first answer in a family, as far as the next one is compared with it. */
export interface LastTime {
  /** The prediction that its figures come from: only those of one model are compared. */
  readonly model: string;
  readonly level: number;
  readonly verdict: Verdict;
  /** Steps outside the band asked; absent where no value was asked. */
  readonly valueError?: number;
  /** C* outside the band asked; absent where no chroma was asked. */
  readonly chromaError?: number;
}

/** What the next answer in the family is to be compared with. */
export function lastTimeOf(entry: HistoryEntry): LastTime {
  const valueError = valueErrorOf(entry);
  const chromaError = chromaErrorOf(entry);
  return {
    model: modelOf(entry.engine),
    level: entry.level,
    verdict: entry.verdict,
    ...(valueError !== undefined && { valueError }),
    ...(chromaError !== undefined && { chromaError }),
  };
}

interface Unit {
  readonly name: 'value' | 'chroma';
  readonly write: (x: number) => string;
}

const VALUE: Unit = { name: 'value', write: (x) => x.toFixed(1) };
const CHROMA: Unit = { name: 'chroma', write: (x) => x.toFixed(0) };

const stepsOrNot = ({ name }: Unit, text: string): string =>
  `${name === 'value' ? inSteps(Number(text)) : text} off`;

/** A figure now and last time; undefined where both are inside, or one is not known. */
function figureWords(now: number | undefined, last: number | undefined, unit: Unit): string | undefined {
  if (now === undefined || last === undefined) return undefined;
  // What is compared is what is shown: the rounded figures.
  const [is, was] = [unit.write(now), unit.write(last)];
  const inside = unit.write(0);
  if (is === inside)
    return was === inside ? undefined : `${unit.name} inside now, ${stepsOrNot(unit, was)} last time`;
  const off = `${unit.name} ${stepsOrNot(unit, is)} now`;
  if (was === inside) return `${off}; last time it was inside`;
  if (is === was) return `${off}, as last time`;
  return Number(is) < Number(was)
    ? `${off}, nearer than last time (${was})`
    : `${off}; last time it was ${was}`;
}

const ORDER: Readonly<Record<Verdict, number>> = { off: 0, fair: 1, good: 2 };

function verdictWords(now: Verdict, last: Verdict): string {
  if (now !== last) return `${now} now, ${last} last time`;
  return now === 'good' ? 'good again, as last time' : `${now}, as last time`;
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/**
 * The line for a first answer; about 60 characters at most.
 * @param last the answer before it in the family; undefined where it is the first
 * @returns undefined for a later try, and where there is nothing to compare with and nothing to praise
 */
export function comparedWithLast(last: LastTime | undefined, entry: HistoryEntry): string | undefined {
  if (entry.try > 1) return undefined;
  const now = lastTimeOf(entry);
  const isGood = now.verdict === 'good';
  if (last === undefined) return isGood ? 'Well done: good, the first time you met this.' : undefined;
  if (last.model !== now.model) return isGood ? 'Well done: good.' : undefined;
  const isBetter = ORDER[now.verdict] > ORDER[last.verdict];
  if (isGood && last.verdict === 'good' && now.level > last.level)
    return 'Well done: good again, and a level harder than last time.';
  const figures =
    figureWords(now.valueError, last.valueError, VALUE) ??
    figureWords(now.chromaError, last.chromaError, CHROMA);
  const words = figures ?? verdictWords(now.verdict, last.verdict);
  return isGood && isBetter ? `Well done: ${words}.` : sentence(words);
}
