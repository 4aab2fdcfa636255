/** How far paints can be trusted together. */
import type { Evidence, Pigment } from './types.js';

const WEAKEST: readonly Evidence[] = ['estimated', 'transferred', 'measured'];

/** The weakest evidence among the paints: a prediction is no better than its least certain part. */
export function evidenceOf(paints: Iterable<Pick<Pigment, 'evidence'>>): Evidence {
  const grades = new Set([...paints].map(({ evidence }) => evidence));
  return WEAKEST.find((grade) => grades.has(grade)) ?? 'measured';
}
