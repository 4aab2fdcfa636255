/** The order in which one student meets the questions. */
import { seededDraw, seedOf, shuffled } from '../chance/draw.js';
import type { Handout } from './handout.js';
import { nameKey } from './names.js';

/** Indexes of the handout's questions in the order of one student: by name and seed alone, whatever the machine. */
export function questionOrder({ questions, rules, seed }: Handout, name: string): number[] {
  const order = [...questions.keys()];
  return rules.shuffle ? shuffled(order, seededDraw(seedOf(seed, nameKey(name)))) : order;
}
