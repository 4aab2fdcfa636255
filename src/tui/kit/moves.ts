/** Steps through lists. */

/** An index moved by one and kept inside a list. */
export function step(index: number, by: number, length: number): number {
  return Math.min(Math.max(0, length - 1), Math.max(0, index + by));
}

/** The place in a list after its up or down key. */
export const stepBy = (command: 'up' | 'down', index: number, length: number): number =>
  step(index, command === 'up' ? -1 : 1, length);

/** `step`, but past the end it starts again at the other one. */
export function turn(index: number, by: number, length: number): number {
  return length === 0 ? 0 : (index + by + length) % length;
}
