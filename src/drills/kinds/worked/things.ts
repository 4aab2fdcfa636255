/** The things that a statement is about, and what a kind of statement is. */
import type { Studio } from '../../../paints/index.js';
import type { Seen } from '../../../washes/index.js';
import type { Proof } from '../../../words/sentences/worked.js';

/** One thing of the case, seen, and what it is called. */
export interface Named {
  readonly studio: Studio;
  readonly name: string;
  readonly seen: Seen;
}

/** A kind of statement. */
export interface Fact {
  /** How many things it is about. */
  readonly takes: 1 | 2 | 3;
  /** A few words for a line of choices. */
  readonly short: (things: readonly Named[]) => string;
  /** The whole statement. */
  readonly text: (things: readonly Named[]) => string;
  /** How far it is from turning false, in units of `unit`; above 0 it is true. */
  readonly margin: (things: readonly Named[]) => number;
  readonly unit: 'step' | 'chroma' | 'degree' | 'percent';
  /** The figures that decide, for the explanation. */
  readonly figures: (things: readonly Named[]) => Proof;
}

export const at = (things: readonly Named[], index: number): Named => {
  const thing = things[index];
  if (thing === undefined) throw new RangeError('a statement lacks one of its things');
  return thing;
};
export const step = (things: readonly Named[], index: number): number => at(things, index).seen.colour.step;
export const chroma = (things: readonly Named[], index: number): number =>
  at(things, index).seen.colour.chroma;
export const name = (things: readonly Named[], index: number): string => at(things, index).name;

export const steps = (things: readonly Named[]): Proof => ({
  by: 'steps',
  of: things.map((thing) => ({ name: thing.name, step: thing.seen.colour.step })),
});
export const chromas = (things: readonly Named[]): Proof => ({
  by: 'chromas',
  of: things.map((thing) => ({ name: thing.name, chroma: thing.seen.colour.chroma })),
});
