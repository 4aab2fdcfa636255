/** The line of mixtures between two pigments and its least chromatic point. */
import { chromaOf, hueDifference, hueOf, type Lab, reflectanceToLab } from '../colour/index.js';
import type { Pigment, Studio } from '../paints/index.js';
import { puddleReflectance } from '../washes/index.js';

/** A mixture on the line between two pigments. */
export interface LinePoint {
  /** Share of the second pigment, counted by strength. */
  readonly share: number;
  readonly strength: number;
  readonly lab: Lab;
}

/** Shares tried: even in the middle, finer towards the ends, where a strong chroma falls fast. */
const SHARES: readonly number[] = (() => {
  const tail = [0.004, 0.007, 0.012, 0.02, 0.032, 0.05, 0.07, 0.1];
  const middle = Array.from({ length: 39 }, (_, i) => 0.12 + i * 0.02);
  return [...tail, ...middle, ...tail.map((share) => 1 - share).toReversed()];
})();

/** Strengths at which published complements are looked for. */
const STRENGTHS = [1, 0.5] as const;

/** Mixtures of two pigments in one puddle at one strength, from nearly all `a` to nearly all `b`. */
export function mixingLine(studio: Studio, a: Pigment, b: Pigment, strength: number): LinePoint[] {
  return SHARES.map((share) => {
    const loads = [
      { pigment: a, load: strength * (1 - share) * a.fullStrength },
      { pigment: b, load: strength * share * b.fullStrength },
    ];
    return { share, strength, lab: reflectanceToLab(puddleReflectance(loads, studio.paper), 'D65-2') };
  });
}

/** The least chromatic of some mixtures. */
export function leastOf(points: readonly LinePoint[]): LinePoint {
  return points.reduce((best, point) => (chromaOf(point.lab) < chromaOf(best.lab) ? point : best));
}

/** The least chromatic mixture at full or half strength. */
export function leastChromatic(studio: Studio, a: Pigment, b: Pigment): LinePoint {
  return leastOf(STRENGTHS.flatMap((strength) => mixingLine(studio, a, b, strength)));
}

/**
 * Hue angle of the mixture whose hue is farthest from both paints' own: the side on which the line passes neutral.
 * @param strength 0-1
 */
export function sideOfLine(studio: Studio, a: Pigment, b: Pigment, strength: number): number {
  const line = mixingLine(studio, a, b, strength);
  const first = hueOf((line[0] as LinePoint).lab);
  const last = hueOf((line.at(-1) as LinePoint).lab);
  let best = first;
  let farthest = -1;
  for (const { lab } of line) {
    const hue = hueOf(lab);
    const apart = Math.min(Math.abs(hueDifference(first, hue)), Math.abs(hueDifference(last, hue)));
    if (apart > farthest) {
      farthest = apart;
      best = hue;
    }
  }
  return best;
}
