/** Climbing to the top of a hill along amounts that matter by their doublings, and finding the edges of a stretch. */

/** Halvings: a quarter of a doubling down to a ten-thousandth of one. */
const ROUNDS = 13;
/** Samples in each doubling. */
const STEPS_PER_DOUBLING = 4;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** A height over some amounts. */
export type Hill = (amounts: readonly number[]) => number;

export interface Top {
  readonly at: readonly number[];
  readonly height: number;
}

/** Where a climb may go, and how. */
export interface Climb {
  /** Least and most of each amount. */
  readonly ranges: readonly (readonly [number, number])[];
  /** So many amounts, the first ones, are shares that must together stay below 1. */
  readonly shares?: number;
  /** First and last length of a step, in doublings. */
  readonly steps?: readonly [number, number];
  /** Less than this is no gain. */
  readonly gain?: number;
}

const FINEST = 2 ** -(ROUNDS + 1);

/** Directions of a climb over so many amounts: along each, and along both diagonals of every two. */
function movesOf(count: number): number[][] {
  const move = (at: number, other = -1, sign = 0): number[] =>
    Array.from({ length: count }, (_, i) => (i === at ? 1 : i === other ? sign : 0));
  const moves: number[][] = [];
  for (let at = 0; at < count; at++) moves.push(move(at));
  for (let at = 0; at < count; at++)
    for (let other = at + 1; other < count; other++) moves.push(move(at, other, 1), move(at, other, -1));
  return moves;
}

/**
 * The top near a start, by pattern search over the logarithms of the amounts: each step is tried both ways in every
 * amount and along both diagonals of every two, and halved when nothing is higher. Where all of these together led, as far
 * again is tried as well: so a ridge is followed in strides.
 */
export function climb(
  hill: Hill,
  start: readonly number[],
  { ranges, shares = 0, steps: [longest, finest] = [0.5, FINEST], gain = 1e-12 }: Climb,
): Top {
  let at: readonly number[] = [...start];
  let height = hill(at);
  // Where it has been once it never goes again: no place there is higher. Rounded, as a step there and back may end beside the start.
  const been = new Set<string>();
  const isNew = (place: readonly number[]): boolean =>
    been.size < been.add(place.map(Math.fround).join()).size;
  isNew(at);
  if (ranges.every(([least, most]) => most <= least)) return { at, height };
  const moves = movesOf(start.length);
  const fits = (next: readonly number[]): boolean =>
    shares === 0 || next.slice(0, shares).reduce((sum, share) => sum + share, 0) < 1;
  /** Goes there if it is higher. @param doublings of each amount from here */
  const go = (doublings: (index: number) => number): boolean => {
    const next = at.map((amount, i) => {
      const [least, most] = ranges[i] as readonly [number, number];
      return Math.min(most, Math.max(least, amount * 2 ** doublings(i)));
    });
    if (!fits(next) || !isNew(next)) return false;
    const there = hill(next);
    if (!(there > height + gain)) return false;
    [at, height] = [next, there];
    return true;
  };
  for (let step = longest; step >= finest; step /= 2) {
    for (let moved = true; moved; ) {
      moved = false;
      const from = at;
      for (const move of moves) {
        const way = (sign: number) => (i: number) => sign * step * (move[i] as number);
        if (go(way(1)) || go(way(-1))) moved = true;
      }
      if (!moved) break;
      const led = at.map((amount, i) => Math.log2(amount / (from[i] as number)));
      for (let stride = 1; go((i) => stride * (led[i] as number)); ) stride *= 2;
    }
  }
  return { at, height };
}

/** A sampled amount (its logarithm) and the height there. */
interface Sample {
  readonly log: number;
  readonly height: number;
}

type Profile = (log: number) => number;

function sampled(profile: Profile, low: number, high: number): Sample[] {
  const count = Math.round((high - low) * STEPS_PER_DOUBLING);
  return Array.from({ length: count + 1 }, (_, i) => {
    const log = count === 0 ? low : low + ((high - low) * i) / count;
    return { log, height: profile(log) };
  });
}

/** The last amount inside between one that is inside and one that is not. */
function edge(profile: Profile, inside: number, beyond: number): Sample {
  let within = inside;
  let without = beyond;
  for (let round = 0; round < ROUNDS; round++) {
    const middle = (within + without) / 2;
    if (profile(middle) >= 0) within = middle;
    else without = middle;
  }
  return { log: within, height: profile(within) };
}

/** The stretches inside, each from edge to edge. */
function stretches(profile: Profile, samples: readonly Sample[]): Sample[][] {
  const found: Sample[][] = [];
  samples.forEach((here, i) => {
    if (here.height < 0) return;
    const before = samples[i - 1];
    const after = samples[i + 1];
    if (before === undefined) found.push([here]);
    else if (before.height < 0) found.push([edge(profile, here.log, before.log), here]);
    else found.at(-1)?.push(here);
    if (after !== undefined && after.height < 0) found.at(-1)?.push(edge(profile, here.log, after.log));
  });
  return found;
}

/** The greatest height between two amounts that bracket one peak: golden section. */
function peak(profile: Profile, from: number, to: number): number {
  let low = from;
  let high = to;
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let atLeft = profile(left);
  let atRight = profile(right);
  for (let round = 0; round < ROUNDS; round++) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = profile(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = profile(right);
    }
  }
  return Math.max(atLeft, atRight);
}

function topOf(profile: Profile, stretch: readonly Sample[]): number {
  return stretch.reduce((top, here, i) => {
    const before = stretch[i - 1] ?? here;
    const after = stretch[i + 1] ?? here;
    const isPeak = here.height >= before.height && here.height >= after.height && before !== after;
    return Math.max(top, here.height, isPeak ? peak(profile, before.log, after.log) : -1);
  }, -1);
}

/** The highest and the lowest height along one amount where it is 0 or more. */
export interface Extremes {
  readonly most: number;
  readonly least: number;
}

/**
 * What a height reaches along one amount, from `least` to `most`, where it counts: a height below 0 does not.
 * @returns undefined where it never counts
 */
export function extremesAlong(
  height: (amount: number) => number,
  [least, most]: readonly [number, number],
): Extremes | undefined {
  const profile: Profile = (log) => height(2 ** log);
  let top = -1;
  let bottom = Number.POSITIVE_INFINITY;
  for (const stretch of stretches(profile, sampled(profile, Math.log2(least), Math.log2(most)))) {
    top = Math.max(top, topOf(profile, stretch));
    bottom = stretch.reduce((low, sample) => Math.min(low, sample.height), bottom);
  }
  return top < 0 ? undefined : { most: top, least: bottom };
}
