/** The colour of paints laid on the library's paper. */
import { fuseAreas, type Ground, ground, layers, puddle, type Spectrum, spectrum } from '../optics/index.js';
import paper from './data/paper.json' with { type: 'json' };
import { type Load, strokeAreas } from './loads.js';
import type { Evidence } from './types.js';

/** Ways of applying paints: stirred in one puddle, a glaze over a dry film, strokes side by side. */
export const WAYS = ['puddle', 'glaze', 'strokes'] as const;
export type Way = (typeof WAYS)[number];

/** White watercolour paper as measured with the paints. */
export const PAPER: Ground = ground(spectrum(paper.reflectance, 'paper'));

/**
 * Reflectance of the dry passage as an instrument would read it.
 * @param loads for a glaze in the order they are laid, the first on the paper
 * @param way how they are applied
 * @returns reflectance 0-1 in each band
 */
export function predict(loads: readonly Load[], way: Way, on: Ground = PAPER): Spectrum {
  const paints = loads.map(({ pigment, load }) => ({ paint: pigment, load }));
  if (way === 'glaze')
    return layers(
      paints.map((paint) => [paint]),
      on,
    );
  if (way === 'strokes') {
    const areas = strokeAreas(loads);
    const apart = paints.map(({ paint, load }, index) =>
      puddle([{ paint, load: load / (areas[index] ?? 1) }], on),
    );
    return fuseAreas(apart, areas);
  }
  return puddle(paints, on);
}

/** Reflectance of washes laid one over the other, each a puddle of its own, the first on the paper. */
export function predictLayers(washes: readonly (readonly Load[])[], on: Ground = PAPER): Spectrum {
  return layers(
    washes.map((wash) => wash.map(({ pigment, load }) => ({ paint: pigment, load }))),
    on,
  );
}

const WEAKEST: readonly Evidence[] = ['estimated', 'transferred', 'measured'];

/** The weakest evidence among the paints: a prediction is no better than its least certain part. */
export function evidenceOf(loads: readonly Load[]): Evidence {
  return WEAKEST.find((grade) => loads.some(({ pigment }) => pigment.evidence === grade)) ?? 'measured';
}
