/** Readings as a least-squares problem: how far what is predicted is from what was read and from what was known before. */
import type { Studio } from '../paints/index.js';
import { figuresOf, figuresRead, noiseOf, paintsIn, patchColour, readBy } from './patch.js';
import { OFFSET, TUBE, WATER } from './table.js';
import type { Patch, Reading } from './types.js';

/** Step of a difference quotient, in the units of the unknown. */
const NUDGE = 0.01;

/** Unknowns: logarithm of the strength of each paint, of how strong each wash was made up, then the offset in steps. */
export interface Problem {
  readonly ids: readonly string[];
  /** Standard deviation of each unknown before anything is read, and its bound either way. */
  readonly spreads: readonly number[];
  readonly most: readonly number[];
  /** Rows of each patch, one a figure; behind them one row for each unknown. */
  readonly rowsOf: readonly (readonly number[])[];
  readonly rowCount: number;
  /** Noise of the first figure of each patch. */
  readonly noises: readonly number[];
  /** Predicted less read, and each unknown itself, in standard deviations. */
  residuals(unknowns: readonly number[]): number[];
  /** How each row goes with each unknown. */
  slopes(unknowns: readonly number[]): number[][];
}

/** The problem of some patches of these readings. */
export function problemOf(studio: Studio, readings: readonly Reading[], patches: readonly Patch[]): Problem {
  const washes = patches.map(({ reading }) => (readings[reading] as Reading).wash);
  const paints = patches.map(({ part }, at) => paintsIn(washes[at] as Reading['wash'], part));
  const ids = [...new Set(paints.flat())];
  const noises = patches.map(({ part, dried }, at) =>
    noiseOf(studio, washes[at] as Reading['wash'], part, readBy(dried)),
  );
  const spreads = [...ids.map(() => TUBE.spread), ...readings.map(() => WATER.spread), OFFSET.spread];
  const most = [...ids.map(() => TUBE.most), ...readings.map(() => WATER.most), OFFSET.most];
  const rows = patches.flatMap(({ dried }, patch) =>
    figuresRead(dried).map((read, figure) => ({ patch, figure, read })),
  );

  /** Figures of a patch as they would be read, in units of their noise. */
  const expected = (at: number, unknowns: readonly number[]): number[] => {
    const { reading, part, dried } = patches[at] as Patch;
    const by = readBy(dried);
    const colour = patchColour(studio, washes[at] as Reading['wash'], part, {
      strengths: new Map(ids.map((id, i) => [id, unknowns[i] as number])),
      wash: unknowns[ids.length + reading] as number,
    });
    const offset = by === 'value' ? (unknowns.at(-1) as number) : 0;
    return figuresOf(colour, by).map((figure, i) => (figure + offset) / (noises[at]?.[i] as number));
  };

  /** By unknown that has a part in it. */
  const patchSlopes = (at: number, unknowns: readonly number[]): Map<number, number[]> => {
    const touched = [
      ...(paints[at] as string[]).map((id) => ids.indexOf(id)),
      ids.length + (patches[at] as Patch).reading,
      unknowns.length - 1,
    ];
    const moved = (which: number, by: number) =>
      expected(
        at,
        unknowns.map((value, i) => (i === which ? value + by : value)),
      );
    return new Map(
      touched.map((which) => {
        const less = moved(which, -NUDGE);
        return [which, moved(which, NUDGE).map((figure, i) => (figure - (less[i] as number)) / (2 * NUDGE))];
      }),
    );
  };

  return {
    ids,
    spreads,
    most,
    rowsOf: patches.map((_, at) => rows.flatMap(({ patch }, row) => (patch === at ? [row] : []))),
    rowCount: rows.length + spreads.length,
    noises: noises.map(([first]) => first as number),
    residuals: (unknowns) => {
      const now = patches.map((_, at) => expected(at, unknowns));
      return [
        ...rows.map(
          ({ patch, figure, read }) =>
            (now[patch]?.[figure] as number) - read / (noises[patch]?.[figure] as number),
        ),
        ...unknowns.map((value, at) => value / (spreads[at] as number)),
      ];
    },
    slopes: (unknowns) => {
      const known = patches.map((_, at) => patchSlopes(at, unknowns));
      return [
        ...rows.map(({ patch, figure }) => unknowns.map((_, at) => known[patch]?.get(at)?.[figure] ?? 0)),
        ...spreads.map((spread, row) => unknowns.map((_, at) => (at === row ? 1 / spread : 0))),
      ];
    },
  };
}
