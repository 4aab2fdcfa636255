/** Colour errors of predictions for films that the fit never saw. */
import { mean, quantile } from 'simple-statistics';
import { deltaE00 } from '../../colour/difference.js';
import { chromaOf } from '../../colour/index.js';
import { fitTable } from './fit.js';
import type { Fold } from './folds.js';
import { type MeasuredFilm, PAINT_IDS } from './measurements.js';
import { ALL_EVIDENCE, type FitModel, groundOf } from './model.js';
import { filmOf, labOf } from './predicted.js';
import type { Table } from './unknowns.js';

/** CIEDE2000 of each film, D65 and 2 degrees. */
export function differences(table: Table, films: readonly MeasuredFilm[], model: FitModel): number[] {
  const on = groundOf(model);
  return films.map((film) => deltaE00(labOf(filmOf(table, film, on)), labOf(film.reflectance)));
}

/** Spread of the errors of all folds together. */
export function blindSpread(folds: readonly Fold[], model: FitModel) {
  const errors = folds.flatMap(({ table, unseen }) => differences(table, unseen, model));
  return {
    n: errors.length,
    mean: mean(errors),
    median: quantile(errors, 0.5),
    p90: quantile(errors, 0.9),
    max: Math.max(...errors),
  };
}

/** Lighter or duller than this a film's chroma says nothing of a bias. */
const CHROMATIC = { mostLightness: 90, leastChroma: 20 } as const;

const isThinnest = ({ loadA, loadB }: MeasuredFilm) => loadA === 1 && loadB === 0;

/**
 * The thinnest film of every paint, predicted by one fit that saw none of them, neither reflectance nor transmittance.
 * Mixtures with as little paint stay in.
 */
export function thinnestFilms(model: FitModel) {
  const thinnest = ALL_EVIDENCE.films.filter(isThinnest);
  const table = fitTable(
    {
      films: ALL_EVIDENCE.films.filter((film) => !isThinnest(film)),
      transmittances: ALL_EVIDENCE.transmittances.filter(({ load }) => load > 1),
    },
    model,
  );
  const on = groundOf(model);
  return thinnest.map((film) => {
    const [found, measured] = [labOf(filmOf(table, film, on)), labOf(film.reflectance)];
    return {
      id: PAINT_IDS[film.a] as string,
      deltaE00: deltaE00(found, measured),
      chromaError: chromaOf(found) - chromaOf(measured),
      chromatic: measured.l < CHROMATIC.mostLightness && chromaOf(measured) > CHROMATIC.leastChroma,
    };
  });
}
