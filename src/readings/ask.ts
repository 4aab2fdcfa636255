/**
 * Which mixtures to paint next: those whose readings will tell most about how strong the tubes are against each other, by the
 * prediction itself. What is known so far is a covariance; a patch that is read takes something off it, however it is read
 * (R. E. Kalman, J. Basic Eng. 82, 35, 1960). The mixture that takes most off all variances together is asked for, and the
 * next is looked for as if that one had been read.
 */
import type { Studio } from '../paints/index.js';
import { roughStudio, strengthOf, type Wash, washLoads, waterStrength } from '../washes/index.js';
import { fitOf } from './fit.js';
import { moveOf, noiseOf, patchesOf, sizeOf } from './patch.js';
import { LEAST_MOVE, OFFSET, TUBE, WATER } from './table.js';
import type { Part, ReadBy, Reading } from './types.js';

/** Waters of the washes, and parts stirred in to one part of the paint that the wash holds. */
const WATERS = ['1:48', '1:24', '1:12'] as const;
const PARTS = [1 / 4, 1 / 2, 1, 2] as const;
/** Of a larger box the paints of which least is known are looked at. */
const MOST_PAINTS = 24;

/** What a patch will say: how its figures go with both tubes, the offset and the water, in units of their noise. */
type Row = readonly [wash: number, added: number, offset: number, water: number];

interface Candidate {
  readonly wash: Wash;
  /** Where its two paints stand in the list. */
  readonly at: readonly [wash: number, added: number];
  readonly rows: readonly Row[];
  /** How far the mixture moves with each of its two tubes. */
  readonly moves: readonly [number, number];
}

/** A mixture that is worth painting. */
export interface Asked {
  readonly wash: Wash;
  /** How far its patches move with the tube that moves them most, in steps for e times the strength; see `TubeStrength.moves`. */
  readonly moves: number;
}

export interface Asking {
  readonly mixtures: readonly Asked[];
  /** Paints that no mixture of the box tells of, read so. */
  readonly silent: readonly string[];
}

function rowsOf(studio: Studio, wash: Wash, ids: readonly [string, string], by: ReadBy) {
  const parts: readonly Part[] = ['alone', 'mixed'];
  const moved = parts.map((part) =>
    ids.map((id, at) => (part === 'alone' && at === 1 ? undefined : moveOf(studio, wash, part, id, by))),
  );
  const rows = parts.flatMap((part, p) =>
    noiseOf(studio, wash, part, by).map((noise, figure): Row => {
      const [first, added] = ids.map((_, at) => (moved[p]?.[at]?.[figure] ?? 0) / noise) as [number, number];
      // More of the wash is more of both of its paints, but for what the paint itself takes of the puddle.
      return [first, added, by === 'value' ? 1 / noise : 0, first + added];
    }),
  );
  const most = (at: number) =>
    Math.max(...moved.map((part) => (part[at] === undefined ? 0 : sizeOf(part[at], by))));
  return { rows, moves: [most(0), most(1)] as const };
}

function candidatesOf(studio: Studio, ids: readonly string[], by: ReadBy): Candidate[] {
  const rough = roughStudio(studio);
  return ids.flatMap((first, one) =>
    ids.flatMap((second, other) =>
      one === other
        ? []
        : WATERS.flatMap((water) =>
            PARTS.flatMap((parts) => {
              const wash = {
                paints: { [first]: 1 },
                strength: waterStrength(water),
                add: { [second]: parts },
              };
              if (strengthOf(washLoads(studio, wash)) > 1) return [];
              return [{ wash, at: [one, other] as const, ...rowsOf(rough, wash, [first, second], by) }];
            }),
          ),
    ),
  );
}

/** What is known before the next reading: covariance of all strengths, then the offset. */
type Known = number[][];

function knownOf(studio: Studio, ids: readonly string[], readings: readonly Reading[]): Known {
  const fit = fitOf(studio, readings, patchesOf(readings));
  const size = ids.length + 1;
  const at = [...ids.map((id) => fit?.ids.indexOf(id) ?? -1), fit === undefined ? -1 : fit.ids.length];
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => {
      const [r, c] = [at[row] as number, at[column] as number];
      if (r >= 0 && c >= 0) return fit?.covariance[r]?.[c] as number;
      return row !== column ? 0 : (row === ids.length ? OFFSET.spread : TUBE.spread) ** 2;
    }),
  );
}

/**
 * Reads the rows of a candidate in thought.
 * @returns what they take off the variances of the strengths against their mean, and how to take it off all that is known
 */
function readInThought(known: Known, { at, rows }: Candidate) {
  const unknowns = [...at, known.length - 1];
  const last = known.length - 1;
  // Covariances of everything with what the candidate depends on; its water is its own.
  const cross = known.map((row) => [...unknowns.map((u) => row[u] as number), 0]);
  const own = [...unknowns.map((u) => cross[u] as number[]), [0, 0, 0, WATER.spread ** 2]].map((row) => [
    ...row,
  ]);
  let gain = 0;
  const taken: { readonly along: readonly number[]; readonly variance: number }[] = [];
  for (const row of rows) {
    const dot = (column: readonly number[]) =>
      row.reduce((sum, slope, i) => sum + slope * (column[i] as number), 0);
    const v = own.map(dot);
    const g = cross.map(dot);
    const variance = dot(v) + 1;
    const mean = g.slice(0, last).reduce((sum, each) => sum + each, 0) / last;
    gain += g.slice(0, last).reduce((sum, each) => sum + (each - mean) ** 2, 0) / variance;
    taken.push({ along: g, variance });
    for (const line of cross.keys())
      for (const i of v.keys())
        (cross[line] as number[])[i] =
          (cross[line]?.[i] as number) - ((g[line] as number) * (v[i] as number)) / variance;
    for (const line of own.keys())
      for (const i of v.keys())
        (own[line] as number[])[i] =
          (own[line]?.[i] as number) - ((v[line] as number) * (v[i] as number)) / variance;
  }
  const take = (): Known =>
    known.map((row, r) =>
      row.map((value, c) =>
        taken.reduce(
          (left, { along, variance }) => left - ((along[r] as number) * (along[c] as number)) / variance,
          value,
        ),
      ),
    );
  return { gain, take };
}

const sameWash = ({ paints, strength, add = {} }: Wash): string =>
  `${Object.keys(paints).join()} ${strength.toFixed(3)} ${Object.entries(add).join()}`;

/** The paints of which least is known, in the order of the box. */
function leastKnown(studio: Studio, ids: readonly string[], readings: readonly Reading[]): readonly string[] {
  if (ids.length <= MOST_PAINTS) return ids;
  const known = knownOf(studio, ids, readings);
  const variance = new Map(ids.map((id, at) => [id, known[at]?.[at] as number]));
  const chosen = ids
    .toSorted((a, b) => (variance.get(b) as number) - (variance.get(a) as number))
    .slice(0, MOST_PAINTS);
  return ids.filter((id) => chosen.includes(id));
}

/**
 * The mixtures to paint next, each a wash and one paint stirred in, of paints that they can tell of.
 * @param box its paints, two at least
 * @param by what the patches will be read by
 * @param readings what was read before
 */
export function mixturesToAsk(
  studio: Studio,
  box: readonly string[],
  by: ReadBy,
  { readings, count }: { readonly readings: readonly Reading[]; readonly count: number },
): Asking {
  const ids = leastKnown(studio, box, readings);
  const all = candidatesOf(studio, ids, by);
  const loud = new Set(
    all.flatMap(({ at, moves }) => at.filter((_, which) => (moves[which] as number) >= LEAST_MOVE)),
  );
  const open = all.filter(
    ({ at, moves }) => at.every((paint) => loud.has(paint)) && Math.max(...moves) >= LEAST_MOVE,
  );
  let known = knownOf(studio, ids, readings);
  const mixtures: Asked[] = [];
  // Never the same mixture again: where the tubes are unlike the library's, other amounts tell more.
  const used = new Set(readings.map(({ wash }) => sameWash(wash)));
  while (mixtures.length < count) {
    let best:
      | { readonly candidate: Candidate; readonly gain: number; readonly take: () => Known }
      | undefined;
    for (const candidate of open) {
      if (used.has(sameWash(candidate.wash))) continue;
      const thought = readInThought(known, candidate);
      if (best === undefined || thought.gain > best.gain) best = { candidate, ...thought };
    }
    if (best === undefined) break;
    known = best.take();
    used.add(sameWash(best.candidate.wash));
    mixtures.push({ wash: best.candidate.wash, moves: Math.max(...best.candidate.moves) });
  }
  return { mixtures, silent: ids.filter((_, at) => !loud.has(at)) };
}
