/** One warm sentence at the end of a set. Every one of them is computed: the first that is true is said. */
import { listWords } from '../text/list-words.js';
import type { HistoryEntry } from './entry.js';
import { type FigureRow, figureRows } from './figure-rows.js';
import type { FamilySummary } from './summary.js';
import type { Figures } from './totals.js';

/** Marks by which the mean has to rise before it is said. */
const MARKS_WORTH_SAYING = 5;

/** What the sentence is found in. */
export interface SetFacts {
  readonly now: Figures;
  /** Of the sets before, of the same model. */
  readonly before?: Figures;
  readonly families: readonly FamilySummary[];
  /** First answers, in order. */
  readonly entries: readonly HistoryEntry[];
}

function risen({ families }: SetFacts): string | undefined {
  const up = families.filter(({ levelBefore, levelAfter }) => levelAfter > levelBefore);
  const [first] = up;
  if (first === undefined) return undefined;
  if (up.length === 1) return `Well done: ${first.title} rose to level ${first.levelAfter}.`;
  return `Well done: ${up.length} skills rose a level, ${listWords(up.slice(0, 2).map(({ title }) => title))}${up.length > 2 ? ' among them' : ''}.`;
}

/** A figure with its unit. */
const GAINS: Readonly<Record<FigureRow['id'], (figure: string) => string>> = {
  value: (figure) => `Your values came nearer: ${figure} off`,
  kept: (figure) => `You kept more colour: ${figure} of what was asked`,
  dull: (figure) => `You dulled nearer to what was asked: ${figure} beside it`,
};

function nearer({ now, before }: SetFacts): string | undefined {
  const gained = figureRows(now, before).find(({ change }) => change === 'better');
  return gained?.before && `${GAINS[gained.id](gained.now.text)}, after ${gained.before.number} before.`;
}

function better({ now, before }: SetFacts): string | undefined {
  if (before === undefined || Math.round(now.mark) - Math.round(before.mark) < MARKS_WORTH_SAYING)
    return undefined;
  return `Your mean mark rose to ${Math.round(now.mark)}, from ${Math.round(before.mark)} before.`;
}

function row({ entries }: SetFacts): string | undefined {
  let longest = 0;
  let now = 0;
  for (const { verdict } of entries) {
    now = verdict === 'good' ? now + 1 : 0;
    longest = Math.max(longest, now);
  }
  if (longest === entries.length && longest > 1) return `Well done: all ${longest} of them good.`;
  return longest >= 3 ? `Well done: ${longest} good answers in a row.` : undefined;
}

function mended({ families }: SetFacts): string | undefined {
  const right = families.find(({ now, before }) => now.good > 0 && before?.good === 0);
  if (right?.before === undefined) return undefined;
  const missed = right.before.answers;
  return `${right.title} came right, after ${missed === 1 ? 'one' : missed} that did not.`;
}

function best({ entries, families }: SetFacts): string | undefined {
  const top = entries.reduce<HistoryEntry | undefined>(
    (most, entry) => (most === undefined || entry.mark > most.mark ? entry : most),
    undefined,
  );
  if (top === undefined || top.verdict === 'off') return undefined;
  const title = families.find(({ family }) => family === top.family)?.title ?? top.family;
  return `Your best was ${title}, ${top.mark} of 100${top.verdict === 'good' ? ': well done' : ''}.`;
}

function begun({ families }: SetFacts): string | undefined {
  const fresh = families.filter(({ isFirst }) => isFirst).length;
  return fresh === 0
    ? undefined
    : `You met ${fresh === 1 ? 'one skill' : `${fresh} skills`} for the first time.`;
}

const SENTENCES = [risen, nearer, mended, row, better, best, begun] as const;

/** The sentence of a set. */
export function warmWord(facts: SetFacts): string {
  for (const say of SENTENCES) {
    const said = say(facts);
    if (said !== undefined) return said;
  }
  const { answers } = facts.now;
  return answers === 1
    ? 'One decision made before the brush touched the paper; the next one has it to build on.'
    : `${answers} decisions made before the brush touched the paper; each miss below names one thing to change.`;
}
