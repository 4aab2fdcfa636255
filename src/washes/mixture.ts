/** A mixture decided on: further paints brought to a first wash, how much, in which way, and how much water. */
import type { Laid, Wash, Way } from './types.js';

/** The wash that lies there or stands in the well, one puddle made up to a strength. */
export type FirstWash = Pick<Wash, 'paints' | 'strength'>;

/** A further paint. */
export interface Added {
  readonly id: string;
  /**
   * Stirred in: parts to one part of the paint of the first wash. Glazed: strength of the glaze. Strokes: share of the paper.
   */
  readonly amount: number;
}

export interface Mixture {
  readonly way: Way;
  /** One or two further paints; glazes in the order they are laid. */
  readonly added: readonly Added[];
  /** Strength of the strokes; of no account in the other ways. */
  readonly strength: number;
  /** Water after stirring: one part in so many, 1 for none. */
  readonly thin: number;
}

/** One paint alone at a strength. */
function alone(id: string, strength: number): Wash {
  return { paints: { [id]: 1 }, strength };
}

/** What a mixture lays on the paper. */
export function layMixture(first: FirstWash, { way, added, strength, thin }: Mixture): Laid {
  const { paints, strength: firstStrength } = first;
  const wash: Wash = { paints, strength: firstStrength };
  if (way === 'glaze') return { layers: [wash, ...added.map(({ id, amount }) => alone(id, amount))] };
  if (way === 'strokes') {
    const rest = added.reduce((left, { amount }) => left - amount, 1);
    const strokes = added.map(({ id, amount }) => ({ ...alone(id, strength), share: amount }));
    return { strokes: [{ ...wash, share: rest }, ...strokes] };
  }
  const add: Record<string, number> = {};
  for (const { id, amount } of added) add[id] = (add[id] ?? 0) + amount;
  return { ...wash, add, ...(thin === 1 ? {} : { thin }) };
}
