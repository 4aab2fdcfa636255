/**
 * Tubes of known strength, painted and read in thought, and asked back. The data are simulated by the program's own model, so this holds the
 * fit to its word and says nothing of whether real films follow the model. What is from outside: the luminance factor of a step (ASTM D1535,
 * tests/colour), the additivity of K and S (Duncan 1940), and how far predicted changes were off on films that no fit saw
 * (src/accuracy/data/blind.json), which the fit adds to the noise of the reading. Tubes 0.4 to 2.5 times as strong and half a step of noise
 * are what the program is asked to bear.
 */
import { mean, median } from 'simple-statistics';
import { type Draw, fraction, seededDraw, seedOf } from '../../src/chance/draw.js';
import {
  type Dried,
  mixturesToAsk,
  moveOf,
  type Part,
  patchColour,
  type ReadBy,
  type Reading,
  sizeOf,
  type Told,
  toldBy,
} from '../../src/readings/index.js';
import type { Wash } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

/** A normal deviate (Box and Muller 1958). */
function normal(draw: Draw): number {
  const u = fraction(draw) + 2 ** -25;
  return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * fraction(draw));
}

/** Strengths as logarithms, evenly between 0.4 and 2.5 times the library's. */
export const anyTubes = (ids: readonly string[], draw: Draw): Map<string, number> =>
  new Map(ids.map((id) => [id, Math.log(0.4) + fraction(draw) * Math.log(2.5 / 0.4)]));

/** What a hand and an eye do: half a step of noise, a scale that is off as a whole, water that is not measured well. */
export interface Hand {
  readonly noise: number;
  readonly offset: number;
  /** Standard deviation of the logarithm of how strong a wash is made up. */
  readonly water: number;
}
export const STEADY: Hand = { noise: 0.5, offset: 0, water: 0 };

/** Readings of washes painted from those tubes. */
export function painted(
  washes: readonly Wash[],
  truth: ReadonlyMap<string, number>,
  { noise, offset, water }: Hand,
  draw: Draw,
  by: ReadBy = 'value',
): Reading[] {
  return washes.map((wash) => {
    const unknowns = { strengths: truth, wash: water * normal(draw) };
    const dried = (part: Part): Dried => {
      const { step, lab } = patchColour(STUDIO, wash, part, unknowns);
      if (by === 'value') return { step: step + offset + noise * normal(draw) };
      const off = () => 2 * normal(draw);
      return { lab: { l: lab.l + off(), a: lab.a + off(), b: lab.b + off() } };
    };
    return { wash, alone: dried('alone'), mixed: dried('mixed') };
  });
}

/** What the program asks for, one round after the other, read as the library has it. */
export function askedFor(ids: readonly string[], rounds: number, by: ReadBy = 'value'): Wash[] {
  const readings: Reading[] = [];
  for (let round = 0; round < rounds; round++) {
    const { mixtures } = mixturesToAsk(STUDIO, ids, by, { readings, count: 3 });
    const washes = mixtures.map(({ wash }) => wash);
    readings.push(...painted(washes, new Map(), { noise: 0, offset: 0, water: 0 }, seededDraw(1), by));
  }
  return readings.map(({ wash }) => wash);
}

/** The most that a patch of these washes moves, in steps, when a tube becomes e times as strong, from its true strength. */
export const movesAt = (washes: readonly Wash[], id: string, truth: ReadonlyMap<string, number>): number =>
  Math.max(
    ...washes.flatMap((wash) => [
      ...(id in wash.paints
        ? [sizeOf(moveOf(STUDIO, wash, 'alone', id, 'value', { strengths: truth, wash: 0 }), 'value')]
        : []),
      sizeOf(moveOf(STUDIO, wash, 'mixed', id, 'value', { strengths: truth, wash: 0 }), 'value'),
    ]),
  );

const isTold = ({ standing }: Told['tubes'][number]): boolean =>
  standing === 'known' || standing === 'unsure';

export interface Recovered {
  /** Found over true, by trial. */
  readonly ratios: number[];
  /** Whether the interval held the truth, by trial. */
  readonly held: boolean[];
}

/**
 * Found against true strengths of each tube that could be told, both with the middle one of the told tubes counting 1; or, where none
 * is like the middle, with all told ones counting 1 together.
 */
export function recovered(
  trials: number,
  seed: string,
  readingsOf: (draw: Draw) => {
    readonly truth: ReadonlyMap<string, number>;
    readonly readings: readonly Reading[];
  },
  counts1: 'middle' | 'together' = 'middle',
): Map<string, Recovered> {
  const all = new Map<string, Recovered>();
  for (let trial = 0; trial < trials; trial++) {
    const { truth, readings } = readingsOf(seededDraw(seedOf('readings', seed, trial)));
    const told = toldBy(STUDIO, readings).tubes.filter(isTold);
    if (told.length === 0) continue;
    const isMiddle = counts1 === 'middle';
    const truths = told.map(({ id }) => truth.get(id) as number);
    const one = isMiddle ? median(truths) : mean(truths);
    // What is told counts from the middle tube already.
    const from = isMiddle ? 0 : mean(told.map(({ factor }) => Math.log(factor)));
    for (const { id, factor, interval } of told) {
      const real = Math.exp((truth.get(id) as number) - one + from);
      const of = all.get(id) ?? { ratios: [], held: [] };
      of.ratios.push(factor / real);
      of.held.push(interval[0] <= real + 1e-9 && real <= interval[1] + 1e-9);
      all.set(id, of);
    }
  }
  return all;
}

export const medianOf = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
export const shareOf = (held: readonly boolean[]): number => held.filter(Boolean).length / held.length;
