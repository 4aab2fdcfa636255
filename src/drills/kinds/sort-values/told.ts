/** What is said of a sorted sheet. */

import { SAME_VALUE } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { SortedArea } from '../../../words/sentences/sort-values.js';
import { type Finding, tell } from '../../../words/tell.js';
import type { Area, SortValuesDrill } from './schema.js';

/** One question, its score 0-1, what is said of it beside the areas, and the idea behind a wrong answer. */
export interface Part {
  readonly score: number;
  readonly area?: SortedArea;
  /** An area taken for another value than it has, by its strong colour. */
  readonly isLoud?: boolean;
  readonly told?: Finding;
  readonly idea?: string;
}

/** All pairs of areas that merge; where none does, the two whose values lie nearest. */
function nearest(studio: Studio, areas: readonly Area[]): Finding {
  const steps = areas
    .map(({ name, laid }) => ({ name, step: seeLaid(studio, laid).colour.step }))
    .sort((a, b) => a.step - b.step);
  const pairs = steps.flatMap((darker, index) =>
    steps
      .slice(0, index)
      .map((lighter) => ({ one: lighter.name, other: darker.name, gap: darker.step - lighter.step })),
  );
  const merged = pairs.filter(({ gap }) => gap < SAME_VALUE);
  return merged.length > 0
    ? tell('sort-merge', { pairs: merged })
    : tell(
        'sort-apart',
        pairs.reduce((a, b) => (b.gap < a.gap ? b : a)),
      );
}

/** The areas in one line, the further questions, the reason, and what to try. */
export function toldOf(
  studio: Studio,
  { areas, asks }: SortValuesDrill,
  all: readonly Part[],
  idea: string | undefined,
): Finding[] {
  const sorted = all.flatMap(({ area, score }) => (area === undefined ? [] : [{ area, score }]));
  const wrong = sorted.filter(({ score }) => score < 1).map(({ area }) => area);
  const close = sorted.flatMap(({ area }) => (area.counts === undefined ? [] : [area.name]));
  const loud = all.flatMap(({ area, isLoud }) => (area !== undefined && isLoud === true ? [area.name] : []));
  // After many questions there is room for what to try alone.
  const isFull = idea !== undefined && asks.length > 1;
  const reason = loud.length > 0 ? tell('sort-strong', { names: loud }) : nearest(studio, areas);
  return [
    tell('sort-areas', { right: sorted.length - wrong.length, of: sorted.length, wrong }),
    ...(close.length === 0 ? [] : [tell('sort-close', { names: close })]),
    ...all.flatMap(({ told }) => (told === undefined ? [] : [told])),
    ...(isFull ? [] : [reason]),
    ...(idea === undefined ? [] : [tell('advice', { idea })]),
  ];
}
