/**
 * The one search over what is left open: which further paints, one or two of them, how much, in which way, in what order,
 * with how much water. Drills search the amounts of one further paint (`bestOnScale`); `bestBetween` is for any two.
 */
import type { ColourReading } from '../colour/reading.js';
import type { Studio } from '../paints/index.js';
import { climb } from './climb.js';
import type { FirstWash, Mixture } from './mixture.js';
import { type Line, type Trial, trialOf } from './trial.js';

/** Strokes of a further paint: their share of the paper and their strength. */
export interface StrokeAmount {
  readonly share: number;
  readonly strength: number;
}

/** What is left open. A way without amounts is closed. */
export interface Open {
  readonly first: FirstWash;
  /** Ids of the further paints to choose from. */
  readonly tray: readonly string[];
  /** Most further paints in one mixture. */
  readonly most: 1 | 2;
  /** Stirred in: parts to one part of the paint of the first wash. */
  readonly ratios: readonly number[];
  /** Strengths of a glaze. */
  readonly glazes: readonly number[];
  readonly strokes: readonly StrokeAmount[];
  /** Water after stirring, one part in so many. */
  readonly thins: readonly number[];
}

/** A mixture, its colour, and how good it is. */
export interface Found {
  readonly mixture: Mixture;
  readonly colour: ColourReading;
  readonly merit: number;
}

/** How good a colour is that these paints gave: the higher the better. */
export type Merit = (colour: ColourReading, line: Line) => number;

/** Sets of one or two paints of the tray; both orders of two where order matters. */
function paintSets(tray: readonly string[], most: 1 | 2, ordered: boolean): string[][] {
  const singles = tray.map((id) => [id]);
  if (most === 1) return singles;
  const pairs = tray.flatMap((a, i) => tray.filter((_, j) => (ordered ? i !== j : i < j)).map((b) => [a, b]));
  return [...singles, ...pairs];
}

/** All lines of what is open: what remains to be chosen along each is the amounts. */
export function linesOf({ tray, most, ratios, glazes, strokes, thins }: Open): Line[] {
  const stirred =
    ratios.length === 0
      ? []
      : paintSets(tray, most, false).flatMap((ids) =>
          thins.map((thin): Line => ({ way: 'puddle', ids, strength: 0, thin })),
        );
  const glazed =
    glazes.length === 0
      ? []
      : paintSets(tray, most, true).map((ids): Line => ({ way: 'glaze', ids, strength: 0, thin: 1 }));
  const strengths = [...new Set(strokes.map(({ strength }) => strength))];
  const stroked = strengths.flatMap((strength) =>
    paintSets(tray, most, false).map((ids): Line => ({ way: 'strokes', ids, strength, thin: 1 })),
  );
  return [...stirred, ...glazed, ...stroked];
}

/** The amounts that are open for each paint of a line, least first. */
export function amountsOf({ ratios, glazes, strokes }: Open, { way, strength }: Line): number[] {
  const open =
    way === 'puddle'
      ? ratios
      : way === 'glaze'
        ? glazes
        : strokes.filter((stroke) => stroke.strength === strength).map(({ share }) => share);
  return [...open].sort((a, b) => a - b);
}

/** Every choice of one amount for each paint; strokes that would cover more than the paper are left out. */
function combinations({ way, ids }: Line, amounts: readonly number[]): number[][] {
  const all = ids.reduce<number[][]>(
    (sets, _) => sets.flatMap((set) => amounts.map((amount) => [...set, amount])),
    [[]],
  );
  return way === 'strokes' ? all.filter((set) => set.reduce((sum, share) => sum + share, 0) < 1) : all;
}

/** A line with amounts, as a mixture. */
function mixtureOf({ ids, ...rest }: Line, amounts: readonly number[]): Mixture {
  return { ...rest, added: ids.map((id, at) => ({ id, amount: amounts[at] as number })) };
}

/** Every mixture on the scales of what is open, with its colour, line by line. */
export function* everyMixture(
  studio: Studio,
  open: Open,
): Generator<{
  readonly line: Line;
  readonly amounts: number[];
  readonly colour: ColourReading;
  readonly trial: Trial;
}> {
  for (const line of linesOf(open)) {
    const trial = trialOf(studio, open.first, line);
    for (const amounts of combinations(line, amountsOf(open, line))) {
      yield { line, amounts, colour: trial(amounts), trial };
    }
  }
}

/** The best mixture on the scales themselves; of equals the first. @returns undefined when nothing is open */
export function bestOnScale(studio: Studio, open: Open, merit: Merit): Found | undefined {
  let best: { line: Line; amounts: number[]; colour: ColourReading; merit: number } | undefined;
  for (const { line, amounts, colour } of everyMixture(studio, open)) {
    const of = merit(colour, line);
    if (best === undefined || of > best.merit + 1e-9) best = { line, amounts, colour, merit: of };
  }
  return best === undefined
    ? undefined
    : { mixture: mixtureOf(best.line, best.amounts), colour: best.colour, merit: best.merit };
}

/** Peaks of the scale that are climbed from, for each line at most, and over all. */
const PEAKS_OF_LINE = 2;
const PEAKS = 48;

/**
 * The best mixtures with any amounts between the least and the most that are open, best first, one for each line at most
 * `count` of them. The scales find the hills, each of the best is then climbed to a ten-thousandth of a doubling.
 */
export function bestBetween(studio: Studio, open: Open, merit: Merit, count = 1): Found[] {
  const starts: { line: Line; amounts: number[]; merit: number; trial: Trial }[] = [];
  for (const line of linesOf(open)) {
    const trial = trialOf(studio, open.first, line);
    const tried = combinations(line, amountsOf(open, line)).map((amounts) => ({
      line,
      amounts,
      trial,
      merit: merit(trial(amounts), line),
    }));
    tried.sort((a, b) => b.merit - a.merit);
    starts.push(...tried.slice(0, PEAKS_OF_LINE));
  }
  starts.sort((a, b) => b.merit - a.merit);
  const found = new Map<string, Found>();
  for (const { line, amounts, trial } of starts.slice(0, Math.max(PEAKS, PEAKS_OF_LINE * count))) {
    const scale = amountsOf(open, line);
    const range = [scale[0] as number, scale.at(-1) as number] as const;
    const top = climb((at) => merit(trial(at), line), amounts, range, line.way === 'strokes');
    const key = `${line.way} ${line.ids.join(' ')} ${line.strength} ${line.thin}`;
    const known = found.get(key);
    if (known !== undefined && known.merit >= top.height) continue;
    found.set(key, { mixture: mixtureOf(line, top.at), colour: trial(top.at), merit: top.height });
  }
  return [...found.values()].sort((a, b) => b.merit - a.merit).slice(0, count);
}
