/**
 * K and S of a paint from the colours it shows.
 *
 * Starts from the curve of the same or a related pigment (or from a level one) and looks for the scale of K, the scale of S and
 * the smoothest correction of log K with which the film shows the colours asked for. Everything published about a paint is weighed:
 * its colours, its hue shift on thinning, its transparency, and how far its curve may leave the source.
 */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { type Coefficients, GRID, type Ground } from '../../optics/index.js';
import { type Aim, aimResiduals } from './aims.js';
import { bends, curve, SPLINES } from './basis.js';
import {
  SCATTER_BY_TRANSPARENCY,
  type StartingShape,
  scatterFromTransparency,
  visibleMean,
} from './medium.js';

/**
 * How far the curve may leave its source: `same` for the same pigment, `kin` for a related or a merely similar one.
 * `bend` weighs second differences of the correction, `leave` its size.
 */
export type Freedom = 'same' | 'kin';

const WEIGHTS: Readonly<Record<Freedom, { readonly bend: number; readonly leave: number }>> = {
  same: { bend: 4, leave: 3 },
  kin: { bend: 2, leave: 0.7 },
};

/** What is known of the paint. */
export interface Known {
  readonly shape: StartingShape;
  readonly aims: readonly Aim[];
  /** Rating 0 (covering) to 4 (clear); a middle one is taken when it is not known. */
  readonly transparency?: number;
  readonly freedom: Freedom;
}

/** The masstone film found. */
export interface Calibrated {
  /** K and S of the masstone film: load 1 is the masstone. */
  readonly film: Coefficients;
  /** Root mean square of the correction of ln K, 420-690 nm, after its mean is taken off: 0.1 is 10 %. */
  readonly departure: number;
  /** Sum of squares that was left, for comparing runs. */
  readonly cost: number;
}

const MIDDLE_TRANSPARENCY = 2.5;

/** Largest exponent let through to exp, far beyond any paint. */
const LARGEST = 12;

function filmOf(shape: StartingShape, [scaleK = 0, scaleS = 0, ...weights]: readonly number[]): Coefficients {
  const correction = curve(weights);
  const K = new Float64Array(GRID.count);
  const S = new Float64Array(GRID.count);
  for (let band = 0; band < GRID.count; band++) {
    const logK = (shape.logK[band] as number) + (correction[band] as number);
    K[band] = Math.exp(Math.min(logK + scaleK, LARGEST));
    S[band] = Math.exp(Math.min((shape.logS[band] as number) + shape.follows * logK, LARGEST));
  }
  const toScale = Math.exp(Math.min(scaleS, LARGEST)) / visibleMean(S);
  return { K, S: S.map((s) => s * toScale) };
}

/** What is to be made small, as a function of the two scales and the spline weights. */
type Residuals = (parameters: readonly number[]) => number[];

function residualsOf(known: Known, on: Ground): Residuals {
  const { bend, leave } = WEIGHTS[known.freedom];
  const logS = Math.log(scatterFromTransparency(known.transparency ?? MIDDLE_TRANSPARENCY));
  return (parameters) => {
    const film = filmOf(known.shape, parameters);
    const weights = parameters.slice(2);
    return [
      ...known.aims.flatMap((aim) => aimResiduals(film, aim, on)),
      ((parameters[1] as number) - logS) / SCATTER_BY_TRANSPARENCY.deviation,
      ...bends(weights).map((value) => bend * value),
      ...weights.map((value) => leave * value),
    ];
  };
}

function leastSquares(residuals: Residuals, start: readonly number[], maxIterations: number) {
  const count = residuals(start).length;
  const x = Array.from({ length: count }, (_, i) => i);
  return levenbergMarquardt(
    { x, y: x.map(() => 0) },
    (parameters) => {
      const values = residuals(parameters);
      return (index) => values[index] as number;
    },
    {
      initialValues: [...start],
      damping: 1,
      centralDifference: true,
      gradientDifference: 1e-4,
      maxIterations,
      errorTolerance: 1e-12,
    },
  );
}

/** First guesses of the mean K of a masstone film: a pale, a middle and a dark paint. */
const MEAN_K_GUESSES = [0.3, 1, 3] as const;

/** Enough for the residuals to settle; 30 and 150 give the same figures within 1e-4. */
const ITERATIONS = 40;

/** Enough to rank curves by. */
const RANKING_ITERATIONS = 20;

/** Starting scales of K and S. */
function startingScales(known: Known, meanK: number): [number, number] {
  const meanShape = Math.log(visibleMean(known.shape.logK.map(Math.exp)));
  const logS = Math.log(scatterFromTransparency(known.transparency ?? MIDDLE_TRANSPARENCY));
  return [Math.log(meanK) - meanShape, logS];
}

const NO_CORRECTION: readonly number[] = Array<number>(SPLINES).fill(0);

/** The two scales that serve a starting curve best without correction, from three guesses. */
function bestScales(known: Known, residuals: Residuals) {
  const scalesOnly: Residuals = (scales) => residuals([...scales, ...NO_CORRECTION]);
  const runs = MEAN_K_GUESSES.map((guess) =>
    leastSquares(scalesOnly, startingScales(known, guess), RANKING_ITERATIONS),
  );
  return runs.reduce((a, b) => (b.parameterError < a.parameterError ? b : a));
}

/**
 * How well a starting curve fits with the two scales alone, without correction: the smaller the nearer.
 * Ranks the curves that a paint without its own spectrum could start from.
 */
export function misfitOfShape(known: Known, on: Ground): number {
  return bestScales(known, residualsOf(known, on)).parameterError;
}

/**
 * Finds the masstone film of a paint.
 * @param on the paper that the colours were seen on
 * @throws RangeError when nothing is asked of the film
 */
export function calibrate(known: Known, on: Ground): Calibrated {
  if (known.aims.length === 0) throw new RangeError('a calibration needs at least one colour to aim at');
  const residuals = residualsOf(known, on);
  const { parameterValues: scales } = bestScales(known, residuals);
  const best = leastSquares(residuals, [...scales, ...NO_CORRECTION], ITERATIONS);
  const correction = curve(best.parameterValues.slice(2));
  const mean = visibleMean(correction);
  return {
    film: filmOf(known.shape, best.parameterValues),
    departure: Math.sqrt(visibleMean(correction.map((value) => (value - mean) ** 2))),
    cost: best.parameterError,
  };
}
