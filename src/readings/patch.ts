/** What a patch is predicted to dry to, with tubes of any strength and water that was not measured well. */
import { type ColourReading, readColour } from '../colour/reading.js';
import { evidenceOf, type Studio } from '../paints/index.js';
import {
  type Load,
  madeUp,
  partsOf,
  puddleReflectance,
  stirIn,
  thinned,
  type Wash,
} from '../washes/index.js';
import { LIGHTNESS_OF_STEP, labNoise, STEP_NOISE } from './table.js';
import type { Dried, Part, Patch, ReadBy, Reading } from './types.js';

/** Logarithms of strengths against the library's, by paint; 0 where none is given. */
export type LogStrengths = ReadonlyMap<string, number>;

/** What is not known of a patch. */
export interface Unknowns {
  readonly strengths: LogStrengths;
  /** Logarithm of how much stronger the wash was made up than its water says. */
  readonly wash: number;
}

const AS_THE_LIBRARY: Unknowns = { strengths: new Map(), wash: 0 };

/** Paints of a patch. */
export const paintsIn = ({ paints, add = {} }: Wash, part: Part): string[] => [
  ...new Set([...Object.keys(paints), ...(part === 'mixed' ? Object.keys(add) : [])]),
];

/** Tube paint of a patch, as it was measured out: a load counts the amount of paint, not what is in it. */
function tubeLoads(
  studio: Studio,
  { paints, strength, add, thin = 1 }: Wash,
  part: Part,
  wash: number,
): Load[] {
  const by = Math.exp(wash);
  const first = madeUp(partsOf(studio, paints), strength).map(({ pigment, load }) => ({
    pigment,
    load: load * by,
  }));
  if (part === 'alone') return first;
  const stirred = add === undefined ? first : stirIn(first, partsOf(studio, add));
  return thin === 1 ? stirred : thinned(stirred, thin);
}

/** The dry patch. A tube of twice the strength brings twice the K and S (Duncan 1940). @throws InputError for an unknown paint */
export function patchColour(
  studio: Studio,
  wash: Wash,
  part: Part,
  { strengths, wash: stronger }: Unknowns = AS_THE_LIBRARY,
): ColourReading {
  const loads = tubeLoads(studio, wash, part, stronger).map(({ pigment, load }) => ({
    pigment,
    load: load * Math.exp(strengths.get(pigment.id) ?? 0),
  }));
  return readColour(puddleReflectance(loads, studio.paper));
}

export const readBy = (dried: Dried): ReadBy => ('step' in dried ? 'value' : 'lab');

/** A colour as the figures that are read: the step, or L*, a* and b*. */
export function figuresOf({ step, lab }: ColourReading, by: ReadBy): readonly number[] {
  return by === 'value' ? [step] : [lab.l, lab.a, lab.b];
}

/** Figures that were read. */
export const figuresRead = (dried: Dried): readonly number[] =>
  'step' in dried ? [dried.step] : [dried.lab.l, dried.lab.a, dried.lab.b];

/** Standard deviation of each figure against the prediction. */
export function noiseOf(studio: Studio, wash: Wash, part: Part, by: ReadBy): readonly number[] {
  if (by === 'value') return [STEP_NOISE];
  const ids = paintsIn(wash, part);
  return labNoise(
    evidenceOf(partsOf(studio, Object.fromEntries(ids.map((id) => [id, 1]))).map((p) => p.pigment)),
  );
}

/** All patches that were read, in order. */
export const patchesOf = (readings: readonly Reading[]): Patch[] =>
  readings.flatMap(({ alone, mixed }, reading) => [
    ...(alone === undefined ? [] : [{ reading, part: 'alone', dried: alone } as const]),
    { reading, part: 'mixed', dried: mixed } as const,
  ]);

/** Half of a factor of e. */
const HALF = 0.5;

/** How far the figures of a patch go when one of its tubes becomes e times as strong, around the strengths given. */
export function moveOf(
  studio: Studio,
  wash: Wash,
  part: Part,
  id: string,
  by: ReadBy,
  around: Unknowns = AS_THE_LIBRARY,
): number[] {
  const at = (by1: number): readonly number[] => {
    const strengths = new Map(around.strengths);
    strengths.set(id, (strengths.get(id) ?? 0) + by1);
    return figuresOf(patchColour(studio, wash, part, { ...around, strengths }), by);
  };
  const [less, more] = [at(-HALF), at(HALF)];
  return more.map((figure, i) => figure - (less[i] as number));
}

/** The size of a move, in steps or in tenths of a colour difference. */
export const sizeOf = (move: readonly number[], by: ReadBy): number =>
  by === 'value' ? Math.abs(move[0] ?? 0) : Math.hypot(...move) / LIGHTNESS_OF_STEP;
