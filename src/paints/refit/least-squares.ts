/** The least sum of squares, by damped steps (Levenberg, Quart. Appl. Math. 2, 164, 1944; Marquardt, SIAM J. 11, 431, 1963). */
import { solveDamped } from './envelope.js';
import type { Evidence, FitModel } from './model.js';
import { squaresAt } from './squares.js';
import type { Unknowns } from './unknowns.js';

const MOST_ROUNDS = 100;

/** Share of the sum of squares that a step must still gain. */
const SETTLED = 1e-8;

/** Longest step in ln K or ln S. */
const LONGEST_STEP = 1.5;

/** Less than exp of this cannot be told from nothing. */
const LEAST_LOG = -12;

const FIRST_DAMPING = 1e-2;
const LEAST_DAMPING = 1e-9;
const MOST_DAMPING = 1e8;

function moved(x: Unknowns, step: Float64Array): Unknowns {
  return x.map((value, place) => {
    const by = Math.min(Math.max(step[place] as number, -LONGEST_STEP), LONGEST_STEP);
    return Math.max(value + by, LEAST_LOG);
  });
}

/** Brings the sum of squares to its least. @param start unknowns to begin with; not changed */
export function leastSquares(start: Unknowns, evidence: Evidence, model: FitModel): Unknowns {
  let x = start;
  let here = squaresAt(x, evidence, model);
  let damping = FIRST_DAMPING;
  for (let round = 0; round < MOST_ROUNDS && damping < MOST_DAMPING; round++) {
    const step = solveDamped(here.normal, here.right, damping);
    const next = step === undefined ? undefined : moved(x, step);
    const there = next === undefined ? undefined : squaresAt(next, evidence, model);
    if (next === undefined || there === undefined || !(there.sum < here.sum)) {
      damping *= 5;
      continue;
    }
    const gain = 1 - there.sum / here.sum;
    x = next;
    here = there;
    damping = Math.max(damping / 6, LEAST_DAMPING);
    if (gain < SETTLED) break;
  }
  return x;
}
