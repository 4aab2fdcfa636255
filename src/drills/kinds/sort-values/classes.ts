/** Light, middle and dark, and what a plan of them has to do. */

import { MODEL_ERROR } from '../../../judgement/index.js';
import type { Evidence, Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Area } from './schema.js';

export const CLASSES = ['light', 'middle', 'dark'] as const;
export type ValueClass = (typeof CLASSES)[number];

/**
 * Painter's steps at which light gives way to middle and middle to dark.
 * The range of watercolour from paper (L* 97) to the darkest masstone (L* 20) cut in three even parts: L* 71 and 46,
 * which are steps 3.5 and 6.0. Range: B. MacEvoy, handprint.com, color11.html (value).
 */
export const BOUNDS = [3.5, 6] as const;

/** Least span of a plan from lightest to darkest, L*, of the 77 that paper to black offers. Common practice, no source. */
export const LEAST_SPAN = 60;

/** Class of a step. */
export function classOf(step: number): ValueClass {
  return step < BOUNDS[0] ? 'light' : step < BOUNDS[1] ? 'middle' : 'dark';
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
