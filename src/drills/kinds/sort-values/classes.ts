/** Light, middle and dark, and what a plan of them has to do. */

import { MODEL_ERROR, VALUE_BOUNDS } from '../../../judgement/index.js';
import type { Evidence, Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Area } from './schema.js';

export const CLASSES = ['light', 'middle', 'dark'] as const;
export type ValueClass = (typeof CLASSES)[number];

/** Class of a step. */
export function classOf(step: number): ValueClass {
  return step < VALUE_BOUNDS[0] ? 'light' : step < VALUE_BOUNDS[1] ? 'middle' : 'dark';
}

/** True when the class is right, or the value lies so near to a boundary that the model cannot tell. */
export function classFits(step: number, said: ValueClass, evidence: Evidence): boolean {
  const room = MODEL_ERROR[evidence].step;
  return classOf(step) === said || classOf(step - room) === said || classOf(step + room) === said;
}

/** Share of the sheet in each class. */
export function sharesOf(studio: Studio, areas: readonly Area[]): Readonly<Record<ValueClass, number>> {
  const shares = { light: 0, middle: 0, dark: 0 };
  for (const { laid, share } of areas) shares[classOf(seeLaid(studio, laid).colour.step)] += share;
  return shares;
}

/** L* from the darkest area to the lightest. */
export function spanOf(studio: Studio, areas: readonly Area[]): number {
  const lights = areas.map(({ laid }) => seeLaid(studio, laid).colour.lab.l);
  return Math.max(...lights) - Math.min(...lights);
}
