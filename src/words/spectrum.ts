/** Which part of the light paints swallow or leave. */

import { type HueName, hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
import { readColour } from '../colour/reading.js';
import { reflectanceToXyz } from '../colour/xyz.js';
import { NEUTRAL_CHROMA } from '../judgement/index.js';
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
function runsWhere(holds: (band: number) => boolean): Run[] {
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

const partAt = (nm: number): number => PARTS.findIndex(({ toNm }) => nm < toNm);

/** Named parts of the spectrum that a run reaches over at most, and still tells a colour. */
const MOST_PARTS = 3;
const isOfOneColour = ({ fromNm, toNm }: Run): boolean => partAt(toNm) - partAt(fromNm) < MOST_PARTS;

/** Parts of the light that a paint of a hue is known for: it is never told to swallow them (common practice, no source). */
const KNOWN_FOR: Readonly<Record<HueName, readonly string[]>> = {
  red: ['orange', 'red'],
  'red orange': ['orange', 'red'],
  orange: ['orange', 'red'],
  'yellow orange': ['yellow', 'orange'],
  yellow: ['green', 'yellow'],
  'yellow green': ['green', 'yellow'],
  green: ['green'],
  'blue green': ['blue', 'green'],
  blue: ['blue'],
  'violet blue': ['violet', 'blue'],
  violet: ['violet', 'blue'],
  purple: ['violet', 'blue', 'red'],
  magenta: ['violet', 'red'],
};

/** The parts that a film is known for; none for a grey. */
function knownFor(film: Spectrum): readonly string[] {
  const { chroma, hue } = readColour(film);
  return chroma < NEUTRAL_CHROMA ? [] : KNOWN_FOR[hueName(hue)];
}

const isIn = (runs: readonly Run[], nm: number): boolean =>
  runs.some(({ fromNm, toNm }) => nm >= fromNm && nm <= toNm);

/** The eye makes next to nothing of what lies outside 400-700 nm. */
export const isSeen = (band: number): boolean => {
  const nm = WAVELENGTHS_NM[band] as number;
  return nm >= 400 && nm <= 700;
};

/** What the eye makes of each band: the sum of its three weights, as a share of the largest. */
const EYE: readonly number[] = (() => {
  const weights = Array.from({ length: GRID.count }, (_, band) => {
    const { x, y, z } = reflectanceToXyz(
      Float64Array.from({ length: GRID.count }, (_unused, at) => +(at === band)),
    );
    return x + y + z;
  });
  const most = Math.max(...weights);
  return weights.map((weight) => weight / most);
})();

/** Least share of the eye's largest weight that counts. */
const LEAST_OF_EYE = 0.12;

/** Bands that count: beyond them an organic paint sends back a great deal of red that nobody sees. */
const counts = (band: number): boolean => (EYE[band] as number) >= LEAST_OF_EYE;

/** What a film sends back most of, among the bands that the eye makes something of. */
const mostOf = (film: Spectrum): number => Math.max(...film.filter((_, band) => counts(band)));

/**
 * Parts of the visible light that every one of the films swallows: takes at least half of, compared with the paper and with
 * what it sends back most of. A blue, however deep, does not swallow blue.
 */
function swallowedByAll(films: readonly Spectrum[], paper: Spectrum): Run[] {
  const bounds = films.map((film) => 0.5 * mostOf(film));
  return runsWhere(
    (band) =>
      isSeen(band) &&
      films.every(
        (film, at) =>
          (film[band] as number) < 0.5 * (paper[band] as number) &&
          (film[band] as number) < (bounds[at] as number),
      ),
  );
}

/** Parts of which a film sends back at least that share of what it sends back most of. */
function sentBack(film: Spectrum, share: number): Run[] {
  const most = mostOf(film);
  return runsWhere((band) => counts(band) && (film[band] as number) >= share * most);
}

/**
 * What of runs may be named: the bands in parts of which the runs hold more than half, as the eye weighs them. Of two runs
 * that share no band no part is ever named twice.
 */
function nameable(runs: readonly Run[], barred: readonly string[] = []): Run[] {
  const held = PARTS.map(({ name }, part) => {
    const isOf = (band: number): boolean => partAt(WAVELENGTHS_NM[band] as number) === part;
    return !barred.includes(name) && shareIn(runs, (band) => isOf(band) && counts(band)) > 0.5;
  });
  return runsWhere((band) => {
    const nm = WAVELENGTHS_NM[band] as number;
    return isIn(runs, nm) && held[partAt(nm)] === true;
  }).filter(isWide);
}

/** True where runs cover so much of the visible light that naming its parts would say nothing. */
function isNearlyAll(runs: readonly Run[]): boolean {
  return shareIn(runs, isSeen) >= 0.8;
}

/** Share of the bands in question that lie in runs, 0-1. */
function shareIn(runs: readonly Run[], isAsked: (band: number) => boolean): number {
  const bands = WAVELENGTHS_NM.filter((_, band) => isAsked(band));
  return bands.filter((nm) => isIn(runs, nm)).length / bands.length;
}

/** Parts that are so much of the light tell no colour. */
const MOST_OF_IT = 0.65;

/** Degrees by which the light of the runs alone may differ in hue from all of it. */
const SAME_HUE_DEG = 45;

/**
 * The parts of the light that make the colour of a film: those it sends back most of, among the bands that the eye makes
 * something of, where their light alone has the film's own hue; empty where no such parts tell it.
 */
function comingBack(film: Spectrum): Run[] {
  const { hue } = readColour(film);
  for (const share of [0.7, 0.5]) {
    const runs = nameable(sentBack(film, share));
    if (shareIn(runs, counts) > MOST_OF_IT || !runs.every(isOfOneColour)) continue;
    const isItsOwn = KNOWN_FOR[hueName(hue)].some((name) => namesIn(runs).includes(name));
    if (!isItsOwn) continue;
    const alone = film.map((light, band) => (isIn(runs, WAVELENGTHS_NM[band] as number) ? light : 0));
    if (runs.length > 0 && Math.abs(hueDifference(readColour(alone).hue, hue)) <= SAME_HUE_DEG) return runs;
  }
  return [];
}

/** What is left of runs without the bands of others. */
export function without(runs: readonly Run[], others: readonly Run[]): Run[] {
  return runsWhere((band) => {
    const nm = WAVELENGTHS_NM[band] as number;
    return isIn(runs, nm) && !isIn(others, nm);
  });
}

const isWide = ({ fromNm, toNm }: Run): boolean => toNm - fromNm >= 20;

/** What films do to the light together. The line asks it of two sides, the curves of each paint. */
export interface Light {
  /** Parts that every film swallows, without those that any of them or the mixture is known for. */
  readonly both: readonly Run[];
  /** The films swallow so much that its parts are not worth naming. */
  readonly isNearlyAll: boolean;
  /** Parts that make the mixture's colour; empty for a grey, or where no part tells it. They share none with `both`. */
  readonly back: readonly Run[];
}

/** @param films each paint or wash alone, as strong as the mixture */
export function lightOf(films: readonly Spectrum[], mixture: Spectrum, paper: Spectrum): Light {
  const swallowed = swallowedByAll(films, paper);
  const isGrey = readColour(mixture).chroma < NEUTRAL_CHROMA;
  const kept = isGrey ? [] : sentBack(mixture, 0.5);
  return {
    both: nameable(without(swallowed, kept), [...films, mixture].flatMap(knownFor)),
    isNearlyAll: isNearlyAll(swallowed),
    back: isGrey ? [] : comingBack(mixture),
  };
}

/** Parts that one film swallows, without those it is known for. */
export const swallowedBy = (film: Spectrum, paper: Spectrum): Run[] =>
  nameable(swallowedByAll([film], paper), knownFor(film));

/** Joins runs into words: "violet to green and red"; short runs are left out, neighbours become one. */
export function runsWords(runs: readonly Run[]): string {
  return listWords(groups(runs).map(({ words }) => words));
}

/** The same with their bounds: "violet to green (400 to 550 nm)". */
export function runsWithNm(runs: readonly Run[]): string {
  return listWords(groups(runs).map(({ words, fromNm, toNm }) => `${words} (${fromNm} to ${toNm} nm)`));
}

/** "violet to green comes back", "blue and red come back". */
export const comesBack = (runs: readonly Run[]): string =>
  `${runsWords(runs)} ${groups(runs).length > 1 ? 'come' : 'comes'} back`;

/** Names of the parts that runs reach into. */
const namesIn = (runs: readonly Run[]): string[] =>
  PARTS.filter((_, part) =>
    runs.some(({ fromNm, toNm }) => partAt(fromNm) <= part && part <= partAt(toNm)),
  ).map(({ name }) => name);

/** Runs whose named parts touch, as one. */
function groups(runs: readonly Run[]): (Run & { readonly words: string })[] {
  const joined: { fromNm: number; toNm: number }[] = [];
  for (const run of runs.filter(isWide)) {
    const last = joined.at(-1);
    if (last !== undefined && partAt(run.fromNm) - partAt(last.toNm) <= 1) last.toNm = run.toNm;
    else joined.push({ ...run });
  }
  return joined.map(({ fromNm, toNm }) => {
    const [first, last] = [fromNm, toNm].map((nm) => PARTS[partAt(nm)]?.name ?? '');
    return { fromNm, toNm, words: first === last ? `${first}` : `${first} to ${last}` };
  });
}
