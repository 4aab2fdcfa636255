/** Cross-validation by pair: each pair of paints is predicted by a fit that saw no mixture of the two. */
import { seededDraw, shuffled } from '../../chance/draw.js';
import { fitTable } from './fit.js';
import { type MeasuredFilm, MIXTURE_FILMS, PAINT_IDS } from './measurements.js';
import { ALL_EVIDENCE, type FitModel } from './model.js';
import type { Table } from './unknowns.js';

const FOLDS = 8;
export const FOLD_SEED = 620;

/** A pair of paint ids, as listed in the data. */
export type PairOfPaints = readonly [string, string];

function pairOf({ a, b }: MeasuredFilm): PairOfPaints {
  return [PAINT_IDS[a] as string, PAINT_IDS[b] as string];
}

function keyOf(pair: PairOfPaints): string {
  return pair.toSorted().join(' ');
}

/** All measured pairs dealt out to the folds, shuffled from the seed. */
export function foldPairs(seed = FOLD_SEED): PairOfPaints[][] {
  const known = new Map(MIXTURE_FILMS.map((film) => [keyOf(pairOf(film)), pairOf(film)]));
  const pairs = shuffled([...known.values()], seededDraw(seed));
  return Array.from({ length: FOLDS }, (_, fold) => pairs.filter((_pair, index) => index % FOLDS === fold));
}

/** The fit of one fold and the mixtures that it never saw. */
export interface Fold {
  readonly table: Table;
  readonly unseen: readonly MeasuredFilm[];
}

/** Fits without the mixtures of these pairs; single films stay. */
export function fitWithout(pairs: readonly PairOfPaints[], model: FitModel): Fold {
  const left = new Set(pairs.map(keyOf));
  const isUnseen = (film: MeasuredFilm) => film.loadB > 0 && left.has(keyOf(pairOf(film)));
  const films = ALL_EVIDENCE.films.filter((film) => !isUnseen(film));
  return {
    table: fitTable({ ...ALL_EVIDENCE, films }, model),
    unseen: ALL_EVIDENCE.films.filter(isUnseen),
  };
}
