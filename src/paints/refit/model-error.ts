/** Error of the change that a second paint makes, by strength of the wash it goes into. */
import { type Ground, puddle } from '../../optics/index.js';
import type { Fold } from './folds.js';
import { type MeasuredFilm, PAINT_IDS, SINGLE_FILMS } from './measurements.js';
import { type FitModel, groundOf } from './model.js';
import { changeOf, filmOf, fullStrengths, type ValueAndChroma } from './predicted.js';
import type { Table } from './unknowns.js';

/** A table with what it assumes of films. */
export interface ModelTable {
  readonly table: Table;
  readonly model: FitModel;
}

/** Squared errors of one change, and the paints that it is of. */
export interface ChangeError {
  readonly first: number;
  readonly second: number;
  readonly squares: ValueAndChroma;
}

/** The film of one paint that a mixture starts from. */
function singleFilm(paint: number, load: number): MeasuredFilm {
  const film = SINGLE_FILMS.find(({ a, loadA }) => a === paint && loadA === load);
  if (film === undefined) throw new RangeError(`no film of ${PAINT_IDS[paint]} with load ${load}`);
  return film;
}

/**
 * Changes that were measured: from the film of one paint to the mixture with as much of it. Mixtures unseen by the fit.
 * @param strengths load of each paint's masstone; starts below masstone are left out
 */
export function measuredChanges(
  folds: readonly Fold[],
  model: FitModel,
  strengths: readonly number[],
): ChangeError[] {
  const on = groundOf(model);
  const errors: ChangeError[] = [];
  for (const { table, unseen } of folds) {
    for (const mixture of unseen) {
      for (const [first, second, load] of [
        [mixture.a, mixture.b, mixture.loadA],
        [mixture.b, mixture.a, mixture.loadB],
      ] as const) {
        if (load < (strengths[first] as number)) continue;
        const start = singleFilm(first, load);
        const found = changeOf(filmOf(table, start, on), filmOf(table, mixture, on));
        const measured = changeOf(start.reflectance, mixture.reflectance);
        const squares = {
          step: (found.step - measured.step) ** 2,
          chroma: (found.chroma - measured.chroma) ** 2,
        };
        errors.push({ first, second, squares });
      }
    }
  }
  return errors;
}

/** Parts of the second paint to one part of the first. */
const RATIOS = [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1] as const;

/**
 * A masstone is one part paint to three of water, so a wash of strength t holds t/4 of paint, and r parts of a second paint
 * thin it by 1 + r·t/4.
 */
const PAINT_IN_MASSTONE = 1 / 4;

/** Changes by stirring each second paint into a wash of each first one, in the order first, second, ratio. */
function stirredChanges({ table, model }: ModelTable, strength: number): ValueAndChroma[] {
  const on: Ground = groundOf(model);
  const full = fullStrengths(table, on);
  return table.flatMap((first, a) => {
    const load = strength * (full[a] as number);
    const start = puddle([{ paint: first, load }], on);
    return table.flatMap((second, b) => {
      if (a === b) return [];
      return RATIOS.map((ratio) => {
        const dilution = 1 / (1 + ratio * strength * PAINT_IN_MASSTONE);
        const mixture = puddle(
          [
            { paint: first, load: load * dilution },
            { paint: second, load: ratio * load * dilution },
          ],
          on,
        );
        return changeOf(start, mixture);
      });
    });
  });
}

/** Sum of squared distances from the mean, over `n - lost`. */
function variance(values: readonly number[], lost: number): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - lost);
}

/**
 * Changes that nobody measured: what leaving out a fold changes (delete-a-group jackknife, Kott, J. Off. Stat. 17, 521, 2001:
 * variance over the folds times their number less one) and what the choice of model changes (variance over the models), added up.
 * @param folds tables of one model, each fitted without one fold
 * @param models tables of different models, each fitted to everything
 */
export function computedChanges(
  folds: readonly ModelTable[],
  models: readonly ModelTable[],
  strengths: readonly number[],
): ChangeError[] {
  return strengths.flatMap((strength) => {
    const byFold = folds.map((table) => stirredChanges(table, strength));
    const byModel = models.map((table) => stirredChanges(table, strength));
    const cases = PAINT_IDS.flatMap((_a, first) =>
      PAINT_IDS.flatMap((_b, second) => (first === second ? [] : RATIOS.map(() => ({ first, second })))),
    );
    return cases.map((paints, index) => {
      const squareOf = (which: keyof ValueAndChroma) => {
        const at = (changes: readonly ValueAndChroma[]) => (changes[index] as ValueAndChroma)[which];
        return variance(byFold.map(at), 0) * (folds.length - 1) + variance(byModel.map(at), 1);
      };
      return { ...paints, squares: { step: squareOf('step'), chroma: squareOf('chroma') } };
    });
  });
}

/** Root mean square over changes. */
export function rootMeanSquare(errors: readonly ChangeError[]): ValueAndChroma {
  const root = (which: keyof ValueAndChroma) =>
    Math.sqrt(errors.reduce((sum, { squares }) => sum + squares[which], 0) / errors.length);
  return { step: root('step'), chroma: root('chroma') };
}
