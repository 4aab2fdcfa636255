/**
 * The options of a question in a drawn order. Whoever writes a drill puts the answer where it comes to mind, late more often than not; in
 * a quiz its place must tell nothing. The order is drawn when the handout is written and stands in it, so that screen, paper and room agree.
 */
import { seededDraw, seedOf, shuffled } from '../chance/draw.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import type { Studio } from '../paints/index.js';

/** A drill with its options as a seed draws them; those that stand in an order of their own, as of value, keep it. */
export function inDrawnOrder(studio: Studio, drill: Drill, seed: number): Drill {
  const draw = seededDraw(seedOf(seed, drill.id, 'options'));
  return kindOf(studio, drill).reordered?.(drill, (list) => shuffled(list, draw)) ?? drill;
}
