/** The honest errors of the fit, worked out and written as data: a minute's work, so the program prints what is carried. */
import { mean } from 'simple-statistics';
import { blindSpread, differences, thinnestFilms } from './blind.js';
import { fitTable } from './fit.js';
import { FOLD_SEED, type Fold, fitWithout, foldPairs, type PairOfPaints } from './folds.js';
import { LICENCE, PAINT_IDS, SOURCE } from './measurements.js';
import { ALL_EVIDENCE, groundOf, OTHER_MODELS, SHIPPED_MODEL } from './model.js';
import { type ChangeError, computedChanges, measuredChanges, rootMeanSquare } from './model-error.js';
import { fullStrengths } from './predicted.js';
import type { Table } from './unknowns.js';

/** Strengths at which changes in washes are computed, standing for their range. */
const WASHES = [
  { from: 0, to: 0.3, strengths: [0.05, 0.1, 0.2] },
  { from: 0.3, to: 1, strengths: [0.3, 0.5, 0.8] },
] as const;

function round(value: number, digits = 2): number {
  return Number(value.toFixed(digits));
}

function errorOf(errors: readonly ChangeError[]) {
  const { step, chroma } = rootMeanSquare(errors);
  return { value: round(step), chroma: round(chroma, 1) };
}

function byPaint(errors: readonly ChangeError[], which: 'first' | 'second') {
  return Object.fromEntries(
    PAINT_IDS.map((id, paint) => [id, errorOf(errors.filter((error) => error[which] === paint))]),
  );
}

function errorRow(
  from: number,
  to: number | null,
  how: 'measured' | 'computed',
  errors: readonly ChangeError[],
) {
  return {
    from,
    to,
    how,
    n: errors.length,
    ...errorOf(errors),
    byFirst: byPaint(errors, 'first'),
    bySecond: byPaint(errors, 'second'),
  };
}

function modelError(table: Table, folds: readonly Fold[]) {
  const byFold = folds.map((fold) => ({ table: fold.table, model: SHIPPED_MODEL }));
  const byModel = [
    { table, model: SHIPPED_MODEL },
    ...OTHER_MODELS.map((model) => ({ table: fitTable(ALL_EVIDENCE, model), model })),
  ];
  const washes = WASHES.map(({ from, to, strengths }) =>
    errorRow(from, to, 'computed', computedChanges(byFold, byModel, strengths)),
  );
  const full = fullStrengths(table, groundOf(SHIPPED_MODEL));
  return [...washes, errorRow(1, null, 'measured', measuredChanges(folds, SHIPPED_MODEL, full))];
}

function thinnest() {
  const rows = thinnestFilms(SHIPPED_MODEL);
  const chromatic = rows.filter((row) => row.chromatic);
  return {
    n: rows.length,
    mean: round(mean(rows.map((row) => row.deltaE00))),
    chromaBias: round(mean(chromatic.map((row) => row.chromaError))),
    chromaFilms: chromatic.length,
    rows: rows.map(({ id, deltaE00, chromaError }) => ({
      id,
      deltaE00: round(deltaE00),
      chromaError: round(chromaError, 1),
    })),
  };
}

/** Mean CIEDE2000 of the mixtures of these pairs under a fit that saw none of them. */
export function foldMean(fold: Fold): number {
  return round(mean(differences(fold.table, fold.unseen, SHIPPED_MODEL)));
}

const NOTE = {
  units:
    'colour differences are CIEDE2000, D65 and 2 degrees; value in steps of the painter (10.5 - Munsell value), chroma C*ab',
  blind:
    'cross-validation by pair: the 62 measured pairs are dealt out to eight folds from the seed; the ten mixtures of each pair are predicted by a fit without any mixture of the pairs in its fold, begun from single films only. Single films and transmittances of all paints stay in each fit. All mixtures are thick, at masstone or above',
  thinnest:
    'the films of 0.01 mL of all thirteen paints, reflectance and transmittance, left out of one fit; mixtures that hold 0.01 mL of a paint stay. chromaBias: mean of predicted less measured C* over the films with L* below 90 and C* above 20',
  modelError:
    'root mean square error of the change from a wash to a mixture, by strength of the wash (1 is masstone). measured: predicted less measured change from the single film to the blind mixture with as much of that paint. computed: not measured by anybody; delete-a-group jackknife over the eight folds and spread over five models (uneven film with and without transmittance, level film with and without, variation 0.8), in quadrature, over stirring each second measured paint at 1:16, 1:8, 1:4, 1:2 and 1:1 into washes of each first one at strengths 0.05, 0.1, 0.2 below 0.3 and 0.3, 0.5, 0.8 above; byFirst and bySecond: the same for one paint as the wash or stirred in',
} as const;

/** All error figures of a fitted table. */
export function errorFigures(table: Table) {
  const pairs: readonly PairOfPaints[][] = foldPairs();
  const folds = pairs.map((left) => fitWithout(left, SHIPPED_MODEL));
  const { n, mean: average, median, p90, max } = blindSpread(folds, SHIPPED_MODEL);
  return {
    blind: {
      pairs: pairs.flat().length,
      n,
      mean: round(average),
      median: round(median),
      p90: round(p90),
      max: round(max),
      seed: FOLD_SEED,
      folds: folds.map((fold, index) => ({
        n: fold.unseen.length,
        mean: foldMean(fold),
        pairs: pairs[index] as readonly PairOfPaints[],
      })),
    },
    thinnest: thinnest(),
    modelError: modelError(table, folds),
  };
}

/** Lists of numbers and pairs stay on one line, objects that hold objects open up. */
function lines(value: unknown, indent: string): string {
  const flat = JSON.stringify(value);
  if (flat.length < 100 || typeof value !== 'object' || value === null) return flat;
  const inner = `${indent} `;
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  const parts = Array.isArray(value)
    ? value.map((part) => lines(part, inner))
    : Object.entries(value).map(([key, part]) => `${JSON.stringify(key)}: ${lines(part, inner)}`);
  return `${open}\n${parts.map((part) => inner + part).join(',\n')}\n${indent}${close}`;
}

/**
 * The text of blind.json.
 * @param date day of the fit, YYYY-MM-DD
 */
export function errorsFile(figures: ReturnType<typeof errorFigures>, date: string): string {
  const head = { source: `computed by npm run pigments:refit from ${SOURCE}`, licence: LICENCE, date };
  return `${lines({ ...head, note: NOTE, ...figures }, '')}\n`;
}
