/**
 * The one search over what is left open: which further paints, one or two of them, how much, in which way, in what order,
 * with how much water. Drills search the amounts of one further paint on their scales (`bestOnScale`); what lies between the
 * amounts is in between.ts.
 */
import type { ColourReading } from '../colour/reading.js';
import { paintOf, type Studio } from '../paints/index.js';
import { type FirstWash, layMixture, type Mixture } from './mixture.js';
import { madeUp, paintIn, partsOf } from './puddle.js';
import { type Line, type Trial, trialOf } from './trial.js';
import type { Laid } from './types.js';

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
  readonly most: 0 | 1 | 2;
  /** Most of them that the first wash does not hold; as many as `most` where it is left out. */
  readonly mostNew?: number;
  /** Stirred in: parts to one part of the paint of the first wash. */
  readonly ratios: readonly number[];
  /** Strengths of a glaze. */
  readonly glazes: readonly number[];
  readonly strokes: readonly StrokeAmount[];
  /** Water after stirring, one part in so many. */
  readonly thins: readonly number[];
  /** Water after stirring where any amount between the least and the most is open; `thins` is of no account then. */
  readonly waters?: readonly number[];
  /**
   * Set where the first wash is not made up yet: its strength is open between the least and the most of these. In a puddle all
   * paints are then made up together, and `ratios` count in strengths: 1 is as much as would be a wash as strong by itself.
   */
  readonly strengths?: readonly number[];
}

/** A mixture, its colour, and how good it is. */
export interface Found {
  readonly first: FirstWash;
  readonly line: Line;
  readonly amounts: readonly number[];
  readonly mixture: Mixture;
  readonly colour: ColourReading;
  readonly merit: number;
}

/** How good a colour is that these paints gave: the higher the better. */
export type Merit = (colour: ColourReading, line: Line, amounts: readonly number[]) => number;

/** Sets of one or two paints of the tray; both orders of two where order matters. */
function paintSets(tray: readonly string[], most: 0 | 1 | 2, ordered: boolean): string[][] {
  if (most === 0) return [];
  const singles = tray.map((id) => [id]);
  if (most === 1) return singles;
  const pairs = tray.flatMap((a, i) => tray.filter((_, j) => (ordered ? i !== j : i < j)).map((b) => [a, b]));
  return [...singles, ...pairs];
}

/** All lines of what is open: what remains to be chosen along each is the amounts. */
export function linesOf(open: Open): Line[] {
  const { first, tray, most, mostNew = most, ratios, glazes, strokes, thins, waters, strengths } = open;
  const sets = (ordered: boolean): string[][] =>
    paintSets(tray, most, ordered).filter(
      (ids) => ids.filter((id) => !(id in first.paints)).length <= mostNew,
    );
  const last = strengths !== undefined ? 'strength' : waters !== undefined ? 'water' : undefined;
  const more: Pick<Line, 'last'> = last === undefined ? {} : { last };
  // Where water or strength is open, the first wash by itself is an answer too.
  const alone = last === undefined ? [] : [[]];
  const stirred =
    ratios.length === 0
      ? []
      : [...alone, ...sets(false)].flatMap((ids) =>
          (last === undefined ? thins : [1]).map(
            (thin): Line => ({ way: 'puddle', ids, strength: 0, thin, ...more }),
          ),
        );
  const made = strengths === undefined ? {} : more;
  const glazed =
    glazes.length === 0
      ? []
      : sets(true).map((ids): Line => ({ way: 'glaze', ids, strength: 0, thin: 1, ...made }));
  const sorts = strengths === undefined ? [...new Set(strokes.map(({ strength }) => strength))] : [0];
  const stroked =
    strokes.length === 0
      ? []
      : sorts.flatMap((strength) =>
          sets(false).map((ids): Line => ({ way: 'strokes', ids, strength, thin: 1, ...made })),
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
        : strokes
            .filter((stroke) => strength === 0 || stroke.strength === strength)
            .map(({ share }) => share);
  return [...new Set(open)].sort((a, b) => a - b);
}

/** The scale of every amount along a line, least first: of each further paint, then of the water or the strength where it is open. */
export function scalesOf(open: Open, line: Line): number[][] {
  const scale = amountsOf(open, line);
  const paints = line.ids.map(() => scale);
  if (line.last === undefined) return paints;
  const last = line.last === 'water' ? open.waters : open.strengths;
  return [...paints, [...(last ?? [])].sort((a, b) => a - b)];
}

/**
 * Every choice of one amount from each scale, the last amount changing most seldom; strokes that would cover more than the paper are
 * left out.
 */
export function combinations({ way, ids }: Line, scales: readonly (readonly number[])[]): number[][] {
  const all = scales.reduce<number[][]>(
    (sets, scale) => scale.flatMap((amount) => sets.map((set) => [...set, amount])),
    [[]],
  );
  const covered = (set: readonly number[]): number =>
    set.slice(0, ids.length).reduce((sum, share) => sum + share, 0);
  return way === 'strokes' ? all.filter((set) => covered(set) < 1) : all;
}

/** A line with amounts, as a mixture. */
export function mixtureOf({ way, ids, strength, thin, last }: Line, amounts: readonly number[]): Mixture {
  const added = ids.map((id, at) => ({ id, amount: amounts[at] as number }));
  const more = last === undefined ? undefined : (amounts[ids.length] as number);
  return {
    way,
    added,
    strength: last === 'strength' && more !== undefined ? more : strength,
    thin: last === 'water' && more !== undefined ? more : thin,
  };
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
    for (const amounts of combinations(line, scalesOf(open, line))) {
      yield { line, amounts, colour: trial(amounts), trial };
    }
  }
}

/** The best mixture on the scales themselves; of equals the first. @returns undefined when nothing is open */
export function bestOnScale(studio: Studio, open: Open, merit: Merit): Found | undefined {
  let best: { line: Line; amounts: number[]; colour: ColourReading; merit: number } | undefined;
  for (const { line, amounts, colour } of everyMixture(studio, open)) {
    const of = merit(colour, line, amounts);
    if (best === undefined || of > best.merit + 1e-9) best = { line, amounts, colour, merit: of };
  }
  return best === undefined
    ? undefined
    : {
        first: open.first,
        line: best.line,
        amounts: best.amounts,
        mixture: mixtureOf(best.line, best.amounts),
        colour: best.colour,
        merit: best.merit,
      };
}

/** What a line lays with such amounts. @throws RangeError for unknown paints */
export function layAmounts(studio: Studio, first: FirstWash, line: Line, amounts: readonly number[]): Laid {
  const mixture = mixtureOf(line, amounts);
  if (line.last !== 'strength') return layMixture(first, mixture);
  const { strength, added } = mixture;
  if (line.way !== 'puddle') return layMixture({ ...first, strength }, mixture);
  // Counted in strengths along the line, in parts in a puddle.
  const loads = madeUp(partsOf(studio, first.paints), 1);
  const paints: Record<string, number> = {};
  for (const { pigment, load } of loads) paints[pigment.id] = load;
  for (const { id, amount } of added)
    paints[id] = (paints[id] ?? 0) + amount * paintOf(studio, id).fullStrength;
  const whole = paintIn(loads);
  for (const id of Object.keys(paints)) paints[id] = (paints[id] as number) / whole;
  return { paints, strength };
}
