/** The base of everything that predicts: the raw arithmetic of one film, and what a multiple of it means. */
import type { Pigment } from '../../src/paints/index.js';

/** The arithmetic that one film of two paints needs, 38 bands, nothing else. */
export function bareLoop(
  a: Pigment,
  b: Pigment,
  la: number,
  lb: number,
  ground: number,
  out: Float64Array,
): void {
  for (let band = 0; band < 38; band++) {
    const k = la * (a.K[band] as number) + lb * (b.K[band] as number);
    const s = la * (a.S[band] as number) + lb * (b.S[band] as number);
    const g = Math.sqrt(k * (k + 2 * s));
    const e = Math.exp(-2 * g);
    const c = (g * (1 + e)) / (1 - e);
    const r = (s - ground * (s + k - c)) / (s + k - ground * s + c);
    out[band] = 0.01 + (0.99 * 0.4 * r) / (1 - 0.6 * r);
  }
}

/**
 * The machine that a figure in ms equivalent speaks of runs the bare loop of one film so often in a millisecond; "x ms equivalent"
 * is x ms there, whatever machine the ratio was measured on.
 */
export const LOOPS_PER_MS = 1220;

/** A multiple of the bare loop in the unit of that machine. */
export const msEquivalent = (ratio: number): string => `${(ratio / LOOPS_PER_MS).toFixed(1)} ms equivalent`;
