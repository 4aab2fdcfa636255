/**
 * The strengths under which all readings are likeliest, with the water of each wash and the offset of the reader's grey scale:
 * least squares over what was read and what was known before (normal priors), by Levenberg and Marquardt.
 */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { determinant, inverse, Matrix } from 'ml-matrix';
import type { Studio } from '../paints/index.js';
import { type Problem, problemOf } from './problem.js';
import type { Patch, Reading } from './types.js';

/** Enough for every figure to settle to a thousandth. */
const ITERATIONS = 12;

export interface Fit {
  /** Paints that were read, in the order of the unknowns. */
  readonly ids: readonly string[];
  /** Natural logarithm of each paint's strength against the library's. */
  readonly logStrengths: readonly number[];
  /** Steps that the reader reads darker than predicted. */
  readonly offset: number;
  /** Covariance of the strengths, then the offset. */
  readonly covariance: readonly (readonly number[])[];
  /** Of each patch: how far it is from what the others lead to expect, squared, in units of what may be expected. */
  readonly apart: readonly number[];
  /** Of each patch: what was read less what the others lead to expect, in its first figure. */
  readonly over: readonly number[];
  /** Squares of what is left over, of readings and of what was known before, in variances: chi-squared with `figures` degrees of freedom. */
  readonly square: number;
  /** Figures that were read: whatever is fitted has a row of what was known before, and takes one off. */
  readonly figures: number;
  /** Logarithm of how likely the readings are under the prediction, whatever the tubes (Laplace), less that of hitting each exactly. */
  readonly evidence: number;
}

function solved({ spreads, most, rowCount, residuals, slopes }: Problem): number[] {
  const { parameterValues } = levenbergMarquardt(
    { x: Array.from({ length: rowCount }, (_, row) => row), y: Array<number>(rowCount).fill(0) },
    (unknowns) => {
      const values = residuals(unknowns);
      return (row) => values[row] as number;
    },
    {
      initialValues: spreads.map(() => 0),
      minValues: most.map((value) => -value),
      maxValues: most,
      damping: 0.1,
      maxIterations: ITERATIONS,
      errorTolerance: 1e-9,
      jacobianFunction: (unknowns) => {
        const rows = slopes(unknowns);
        return (row) => rows[row] as number[];
      },
    },
  );
  return parameterValues;
}

/**
 * Fits the patches given, of these readings. Intervals are those of the curvature there.
 * @returns undefined where there are no patches
 */
export function fitOf(
  studio: Studio,
  readings: readonly Reading[],
  patches: readonly Patch[],
): Fit | undefined {
  if (patches.length === 0) return undefined;
  const problem = problemOf(studio, readings, patches);
  const { ids, spreads, rowsOf, noises } = problem;
  const found = solved(problem);
  const slopes = new Matrix(problem.slopes(found));
  const curvature = slopes.transpose().mmul(slopes);
  const covariance = inverse(curvature);
  const residuals = problem.residuals(found);
  // What a patch would be off had it not been fitted: its residual without its own pull.
  const without = rowsOf.map((rows) => {
    const own = slopes.selection([...rows], [...spreads.keys()]);
    const left = Matrix.eye(rows.length).sub(own.mmul(covariance).mmul(own.transpose()));
    const residual = Matrix.columnVector(rows.map((row) => -(residuals[row] as number)));
    const deleted = inverse(left).mmul(residual);
    return { apart: residual.transpose().mmul(deleted).get(0, 0), over: deleted.get(0, 0) };
  });
  const square = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  const narrowed = spreads.reduce(
    (sum, spread) => sum + 2 * Math.log(spread),
    Math.log(determinant(curvature)),
  );
  const kept = [...ids.keys(), spreads.length - 1];
  return {
    ids,
    logStrengths: found.slice(0, ids.length),
    offset: found.at(-1) as number,
    covariance: covariance.selection(kept, kept).to2DArray(),
    apart: without.map(({ apart }) => apart),
    over: without.map(({ over }, at) => over * (noises[at] as number)),
    square,
    figures: problem.rowCount - spreads.length,
    evidence: -(square + narrowed) / 2,
  };
}
