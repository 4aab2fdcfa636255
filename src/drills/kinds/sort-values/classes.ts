/** Light, middle and dark, and what a plan of them has to do. */

import { BOUND_ROOM, MODEL_ERROR, SAME_VALUE, VALUE_BOUNDS, WIDE_SPAN } from '../../../judgement/index.js';
import type { Evidence, Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Area, SortValuesDrill } from './schema.js';

export const CLASSES = ['light', 'middle', 'dark'] as const;
export type ValueClass = (typeof CLASSES)[number];

/** Class of a step. */
export function classOf(step: number): ValueClass {
  return step < VALUE_BOUNDS[0] ? 'light' : step < VALUE_BOUNDS[1] ? 'middle' : 'dark';
}

/** The classes that count: its own, and the next where the value lies so near to the bound that neither the eye nor the model can tell. */
export function classesOf(step: number, evidence: Evidence): readonly ValueClass[] {
  const room = Math.max(BOUND_ROOM, MODEL_ERROR[evidence].step);
  const near = [step - room, step, step + room].map(classOf);
  return CLASSES.filter((name) => near.includes(name));
}

/** Share of the sheet in each class. */
export function sharesOf(studio: Studio, areas: readonly Area[]): Readonly<Record<ValueClass, number>> {
  const shares = { light: 0, middle: 0, dark: 0 };
  for (const { laid, share } of areas) shares[classOf(seeLaid(studio, laid).colour.step)] += share;
  return shares;
}

/** Steps from the lightest area to the darkest. */
export function spanOf(studio: Studio, areas: readonly Area[]): number {
  const steps = areas.map(({ laid }) => seeLaid(studio, laid).colour.step);
  return Math.max(...steps) - Math.min(...steps);
}

/** Share of the sheet by which one class covers more than the next, or the eye cannot tell. */
const LEAST_LEAD = 0.05;

/** Areas keep away from the bounds, the span from its own, and one class covers most, or there is nothing to be told apart. */
export function sortFaults(studio: Studio, { areas, asks }: SortValuesDrill): string[] {
  const near = areas.filter(({ laid }) => {
    const { colour, evidence } = seeLaid(studio, laid);
    const room = Math.max(SAME_VALUE, MODEL_ERROR[evidence].step);
    return VALUE_BOUNDS.some((bound) => Math.abs(colour.step - bound) < room);
  });
  const isSpanNear = Math.abs(spanOf(studio, areas) - WIDE_SPAN) < SAME_VALUE;
  const [most = 0, next = 0] = Object.values(sharesOf(studio, areas)).sort((a, b) => b - a);
  return [
    ...near.map(({ name }) => `${name} lies within half a step of a bound between light, middle and dark`),
    ...(asks.includes('span') && isSpanNear ? ['the span is neither short nor wide'] : []),
    ...(asks.includes('most') && most - next < LEAST_LEAD - 1e-9
      ? ['two of light, middle and dark cover the sheet alike']
      : []),
  ];
}
