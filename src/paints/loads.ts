/** From the painter's parts and strength to loads in a film. */
import type { Pigment } from './types.js';

/** A pigment and how many parts of its tube paint go into the mixture. */
export interface Part {
  readonly pigment: Pigment;
  readonly parts: number;
}

/** A pigment and its amount in the film, on the measured scale. */
export interface Load {
  readonly pigment: Pigment;
  readonly load: number;
}

/** Most parts of one paint that still mean something. */
export const MOST_PARTS = 1e6;

function requireAmount(name: string, value: number, most: number): void {
  if (!(value > 0 && value <= most)) {
    throw new RangeError(`${name} must be above 0 and at most ${most}, got ${value}`);
  }
}

/**
 * Loads of a mixture at a given strength: `load = strength · parts / Σ(parts / fullStrength)`.
 * At strength 1 a single paint lies at its masstone; a paint with a small `fullStrength` takes over early, as it does in life.
 * @param parts at least one paint, parts above 0
 * @param strength 0 exclusive (nearly water) to 1 (masstone)
 * @throws RangeError for an empty list or numbers out of range
 */
export function loadsFromParts(parts: readonly Part[], strength: number): Load[] {
  if (parts.length === 0) throw new RangeError('a mixture needs at least one paint');
  requireAmount('strength', strength, 1);
  let volume = 0;
  for (const { pigment, parts: amount } of parts) {
    requireAmount(`parts of ${pigment.id}`, amount, MOST_PARTS);
    volume += amount / pigment.fullStrength;
  }
  return parts.map(({ pigment, parts: amount }) => ({ pigment, load: (strength * amount) / volume }));
}

/** Most load that is computed; hundreds of times any stroke. */
export const MOST_LOAD = 1e4;

/** Checks loads given directly. @throws RangeError for an empty list or numbers out of range */
export function loadsGiven(loads: readonly Load[]): Load[] {
  if (loads.length === 0) throw new RangeError('a mixture needs at least one paint');
  for (const { pigment, load } of loads) requireAmount(`load of ${pigment.id}`, load, MOST_LOAD);
  return [...loads];
}

/**
 * Share of the paper that each paint covers when the same paint is laid as strokes instead of stirred:
 * every stroke at the strength that the puddle would have had.
 * @returns shares adding up to 1
 */
export function strokeAreas(loads: readonly Load[]): number[] {
  const shares = loads.map(({ pigment, load }) => load / pigment.fullStrength);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => share / total);
}

/** Strength of a mixture given by loads: 1 when it is as thick as the masstone of its paints. */
export function strengthOfLoads(loads: readonly Load[]): number {
  return loads.reduce((sum, { pigment, load }) => sum + load / pigment.fullStrength, 0);
}
