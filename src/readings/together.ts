/** Whether the readings, all together, can be what these mixtures dried to. */
import { mean, sum } from 'simple-statistics';
import type { Studio } from '../paints/index.js';
import type { Fit } from './fit.js';
import { patchColour } from './patch.js';
import { ANY_STEP, MISFIT_DEVIATE, STEP_NOISE, VERY_STRONG } from './table.js';
import type { Part, Patch, Reading } from './types.js';

/** Quantile 0.995 of chi-squared (E. B. Wilson and M. M. Hilferty, Proc. Natl. Acad. Sci. 17, 684, 1931). @param freedom 1 at least */
export function mostSquare(freedom: number): number {
  const part = 2 / (9 * freedom);
  return freedom * (1 - part + MISFIT_DEVIATE * Math.sqrt(part)) ** 3;
}

const NEAR = ANY_STEP.spread / STEP_NOISE;

/** Steps of washes, and of mixtures, each against their mean: how many, that mean from any step, and squares about it, in noise. */
function aboutMeans(patches: readonly Patch[], stepOf: (patch: Patch) => number) {
  const parts: readonly Part[] = ['alone', 'mixed'];
  return parts.flatMap((wanted) => {
    const steps = patches.filter(({ part }) => part === wanted).map(stepOf);
    if (steps.length === 0) return [];
    const middle = mean(steps);
    const square = sum(steps.map((step) => ((step - middle) / STEP_NOISE) ** 2));
    return [{ count: steps.length, off: (middle - ANY_STEP.mean) / STEP_NOISE, square }];
  });
}

/**
 * Whether the steps have nothing to do with the mixtures: all washes were read about alike, and all mixtures, where the prediction has
 * them differ; and that is far likelier than the fit.
 */
function areAlike(
  studio: Studio,
  readings: readonly Reading[],
  patches: readonly Patch[],
  { figures, evidence }: Fit,
): boolean {
  const predicted = aboutMeans(
    patches,
    ({ reading, part }) => patchColour(studio, (readings[reading] as Reading).wash, part).step,
  );
  if (sum(predicted.map(({ square }) => square)) < mostSquare(figures)) return false;
  const read = aboutMeans(patches, ({ dried }) => ('step' in dried ? dried.step : ANY_STEP.mean));
  const alike = read.map(({ count, off, square }) => {
    const narrowed = 1 + count * NEAR ** 2;
    return -(square + (count * off ** 2) / narrowed + Math.log(narrowed)) / 2;
  });
  return sum(alike) - evidence > VERY_STRONG;
}

/**
 * Whether readings and prediction go together: what is left over is no more than chance leaves (chi-squared), and the readings follow the
 * mixtures. The noise is generous: steps that hardly change from one mixture to another would pass the first test alone.
 */
export function fitsTogether(
  studio: Studio,
  readings: readonly Reading[],
  patches: readonly Patch[],
  fit: Fit,
): boolean {
  if (fit.square > mostSquare(fit.figures)) return false;
  return !patches.every(({ dried }) => 'step' in dried) || !areAlike(studio, readings, patches, fit);
}
