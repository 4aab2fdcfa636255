/** The order in which one student meets the questions. */
import { createHash } from 'node:crypto';
import { seededDraw } from '../drills/random-answer.js';
import type { Handout } from './handout.js';
import { nameKey } from './names.js';

/**
 * A random order of `0 … count − 1`, every order equally likely (Fisher-Yates; Knuth, The Art of Computer Programming 2,
 * 3.4.2, algorithm P).
 */
function shuffled(count: number, seed: number): number[] {
  const draw = seededDraw(seed);
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last--) {
    const other = draw(last);
    [order[last], order[other]] = [order[other] as number, order[last] as number];
  }
  return order;
}

/** Indexes of the handout's questions in the order of one student: by name and seed alone, whatever the machine. */
export function questionOrder(handout: Handout, name: string): number[] {
  const count = handout.questions.length;
  if (!handout.rules.shuffle) return Array.from({ length: count }, (_, index) => index);
  const hash = createHash('sha256')
    .update(`${handout.seed}\n${nameKey(name)}`)
    .digest();
  return shuffled(count, hash.readInt32BE(0));
}
