/** Which part of the light paints swallow or leave, in words. */

import { GRID, type Spectrum, WAVELENGTHS_NM } from '../optics/index.js';
import { listWords } from '../text/list-words.js';

/** Usual names of the spectrum's parts; bounds in nm differ a little from book to book (common practice, no source). */
const PARTS: readonly { readonly name: string; readonly toNm: number }[] = [
  { name: 'violet', toNm: 430 },
  { name: 'blue', toNm: 490 },
  { name: 'green', toNm: 560 },
  { name: 'yellow', toNm: 590 },
  { name: 'orange', toNm: 630 },
  { name: 'red', toNm: Number.POSITIVE_INFINITY },
];

/** A run of the spectrum. */
export interface Run {
  readonly fromNm: number;
  readonly toNm: number;
}

/** Runs of bands in which `holds` is true. */
export function runsWhere(holds: (band: number) => boolean): Run[] {
  const runs: Run[] = [];
  let from: number | undefined;
  for (let band = 0; band <= GRID.count; band++) {
    const inside = band < GRID.count && holds(band);
    if (inside && from === undefined) from = band;
    if (!inside && from !== undefined) {
      runs.push({ fromNm: WAVELENGTHS_NM[from] as number, toNm: WAVELENGTHS_NM[band - 1] as number });
      from = undefined;
    }
  }
  return runs;
}

function partOf(nm: number): string {
  return (PARTS.find(({ toNm }) => nm < toNm) ?? PARTS[PARTS.length - 1])?.name ?? '';
}

/** "violet to green". */
export function runWords({ fromNm, toNm }: Run): string {
  const first = partOf(fromNm);
  const last = partOf(toNm);
  return first === last ? first : `${first} to ${last}`;
}

/** The eye makes next to nothing of what lies outside 400-700 nm. */
const isSeen = (band: number): boolean => {
  const nm = WAVELENGTHS_NM[band] as number;
  return nm >= 400 && nm <= 700;
};

/** Parts of the visible light that every one of the films takes at least half of, compared with the paper. */
export function swallowedByAll(films: readonly Spectrum[], paper: Spectrum): Run[] {
  return runsWhere(
    (band) => isSeen(band) && films.every((film) => (film[band] as number) < 0.5 * (paper[band] as number)),
  );
}

/** Visible parts that a film still sends back: at least seven tenths of its own brightest band, and not nearly nothing. */
export function leftBy(film: Spectrum): Run[] {
  const most = Math.max(...film.filter((_, band) => isSeen(band)));
  return runsWhere(
    (band) => isSeen(band) && (film[band] as number) >= 0.7 * most && (film[band] as number) > 0.05,
  );
}

/** What is left of runs without the bands of others. */
export function without(runs: readonly Run[], others: readonly Run[]): Run[] {
  const isIn = (list: readonly Run[], nm: number): boolean =>
    list.some(({ fromNm, toNm }) => nm >= fromNm && nm <= toNm);
  return runsWhere((band) => {
    const nm = WAVELENGTHS_NM[band] as number;
    return isIn(runs, nm) && !isIn(others, nm);
  });
}

/** Joins runs into words: "violet to green and red"; short runs are left out. */
export function runsWords(runs: readonly Run[]): string {
  const wide = runs.filter(({ fromNm, toNm }) => toNm - fromNm >= 20);
  return listWords(wide.map(runWords));
}
