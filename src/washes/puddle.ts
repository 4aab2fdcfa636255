/** From the painter's parts, strength and water to loads in a film: making up, stirring in, thinning. */
import { InputError } from '../errors.js';
import type { Pigment, Studio } from '../paints/index.js';
import { paintOf } from '../paints/index.js';
import type { Wash } from './types.js';
import { MASSTONE_WATER } from './water.js';

/** A pigment and how many parts of its tube paint are taken. */
export interface Part {
  readonly pigment: Pigment;
  readonly parts: number;
}

/** A pigment and its amount in the film. Load 1 is the film that 0.01 mL of paint made on one patch of the measured set. */
export interface Load {
  readonly pigment: Pigment;
  readonly load: number;
}

/** Most parts of one paint that still mean something. */
export const MOST_PARTS = 1e6;
/** Most load that is computed; hundreds of times any stroke. */
export const MOST_LOAD = 1e4;

function requireAmount(name: string, value: number, most: number): void {
  if (!(value > 0 && value <= most)) {
    throw new InputError(`${name} must be above 0 and at most ${most}, got ${value}`);
  }
}

/**
 * A puddle made up to a strength: `load = strength · parts / Σ(parts / fullStrength)`.
 * At strength 1 a single paint lies at its masstone; a paint with a small `fullStrength` takes over early, as it does in life.
 * @param parts at least one paint, parts above 0
 * @param strength 0 exclusive (nearly water) to 1 (masstone)
 * @throws InputError for an empty list or numbers out of range
 */
export function madeUp(parts: readonly Part[], strength: number): Load[] {
  if (parts.length === 0) throw new InputError('a mixture needs at least one paint');
  requireAmount('strength', strength, 1);
  let volume = 0;
  for (const { pigment, parts: amount } of parts) {
    requireAmount(`parts of ${pigment.id}`, amount, MOST_PARTS);
    volume += amount / pigment.fullStrength;
  }
  return parts.map(({ pigment, parts: amount }) => ({ pigment, load: (strength * amount) / volume }));
}

/**
 * How many times as strong a puddle of so much water is as one of the library's tubes would be: tubes that their owner knows to tint
 * more strongly bring more with the same paint.
 * @param paints parts by id @throws InputError for an unknown paint
 */
export function timesLibrary(studio: Studio, paints: Readonly<Record<string, number>>): number {
  const parts = partsOf(studio, paints);
  const own = parts.reduce((sum, { pigment, parts: amount }) => sum + amount / pigment.fullStrength, 0);
  const plain = parts.reduce(
    (sum, { pigment, parts: amount }) => sum + amount / pigment.fullStrength / (pigment.timesLibrary ?? 1),
    0,
  );
  return own / plain;
}

/** Checks loads given directly. @throws InputError for an empty list or numbers out of range */
export function loadsGiven(loads: readonly Load[]): Load[] {
  if (loads.length === 0) throw new InputError('a mixture needs at least one paint');
  for (const { pigment, load } of loads) requireAmount(`load of ${pigment.id}`, load, MOST_LOAD);
  return [...loads];
}

/** Strength of a film: 1 when it is as thick as the masstone of its paints; more where paint was stirred in thickly. */
export function strengthOf(loads: readonly Load[]): number {
  return loads.reduce((sum, { pigment, load }) => sum + load / pigment.fullStrength, 0);
}

/** Loads of a wash scaled to another strength. */
export function atStrength(loads: readonly Load[], strength: number): Load[] {
  const by = strength / strengthOf(loads);
  return loads.map(({ pigment, load }) => ({ pigment, load: load * by }));
}

/** All the paint of a wash, on the scale of loads: what a ratio counts from. */
export function paintIn(loads: readonly Load[]): number {
  return loads.reduce((sum, { load }) => sum + load, 0);
}

/**
 * What is left of the first wash when so much paint comes in: it is thinned by the volume of that paint alone. With the
 * masstone at one part paint to three of water, paint makes strength / 4 of a puddle.
 * @param strength of the first wash
 * @param ratio all parts stirred in, to one part of the paint of the first wash
 */
export function leftOfFirst(strength: number, ratio: number): number {
  return 1 / (1 + (ratio * strength) / (1 + MASSTONE_WATER));
}

/**
 * Paints stirred into a wash. No water comes in: the first paint stays where it is, but for the volume of the new paint.
 * All parts count from the wash as it was, so that their order cannot matter. A paint that the wash holds already adds up.
 * @param wash loads of the wash
 * @param added parts of tube paint to one part of the paint of the wash
 * @throws InputError for parts out of range
 */
export function stirIn(wash: readonly Load[], added: readonly Part[]): Load[] {
  let ratio = 0;
  for (const { pigment, parts } of added) {
    requireAmount(`parts of ${pigment.id}`, parts, MOST_PARTS);
    ratio += parts;
  }
  const left = leftOfFirst(strengthOf(wash), ratio);
  const one = left * paintIn(wash);
  const loads = new Map(wash.map(({ pigment, load }) => [pigment, left * load]));
  for (const { pigment, parts } of added) loads.set(pigment, (loads.get(pigment) ?? 0) + parts * one);
  return [...loads].map(([pigment, load]) => ({ pigment, load }));
}

/** A wash with more water: one part in `times`. @throws InputError below 1 or beyond 1000 */
export function thinned(wash: readonly Load[], times: number): Load[] {
  if (!(times >= 1 && times <= 1000)) {
    throw new InputError(`thin must be 1 (no water) to 1000, got ${times}`);
  }
  return wash.map(({ pigment, load }) => ({ pigment, load: load / times }));
}

/** Parts by id as parts of paints. @throws InputError for an unknown paint */
export function partsOf(studio: Studio, paints: Readonly<Record<string, number>>): Part[] {
  return Object.entries(paints).map(([id, parts]) => ({ pigment: paintOf(studio, id), parts }));
}

/**
 * The further paints of a puddle with their parts to one part of its first paint: those of the wash, then what is stirred in. So a
 * painter counts who has the first paint in the well; a paint that the wash holds already comes again where more of it comes in.
 */
export function partsToFirst({
  paints,
  add = {},
}: Pick<Wash, 'paints' | 'add'>): readonly { readonly id: string; readonly parts: number }[] {
  const [[, first] = ['', 1], ...others] = Object.entries(paints);
  const all = others.reduce((sum, [, parts]) => sum + parts, first);
  return [
    ...others.map(([id, parts]) => ({ id, parts: parts / first })),
    ...Object.entries(add).map(([id, ratio]) => ({ id, parts: (ratio * all) / first })),
  ];
}

/** Loads of a wash: made up, stirred into, thinned. @throws InputError for unknown paints or amounts out of range */
export function washLoads(studio: Studio, { paints, strength, add, thin = 1 }: Wash): Load[] {
  const first = madeUp(partsOf(studio, paints), strength);
  const stirred = add === undefined ? first : stirIn(first, partsOf(studio, add));
  return thin === 1 ? stirred : thinned(stirred, thin);
}
