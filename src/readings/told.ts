/** What a box's readings tell of its tubes: strengths against each other, with intervals, and which readings disagree. */
import type { Studio } from '../paints/index.js';
import { type Fit, fitOf } from './fit.js';
import { type AgainstMiddle, againstMiddle } from './middle.js';
import { figuresRead, moveOf, paintsIn, patchesOf, readBy, sizeOf } from './patch.js';
import {
  DISAGREES,
  LEAST_MOVE,
  LEAST_READINGS,
  LIGHTNESS_OF_STEP,
  NARROW,
  NINE_IN_TEN,
  READ_ENDS,
  TUBE,
} from './table.js';
import { fitsTogether } from './together.js';
import type { Disagreement, Patch, Reading, Told, TubeStrength } from './types.js';

/** The patch that is furthest from what the others say, if it is too far. */
function worstOf({ apart }: Fit, patches: readonly Patch[]): number | undefined {
  const worst = patches
    .map(({ dried }, at) => ({
      at,
      times: (apart[at] as number) / DISAGREES[readBy(dried) === 'value' ? 'step' : 'lab'],
    }))
    .reduce((most, each) => (each.times > most.times ? each : most));
  return worst.times > 1 ? worst.at : undefined;
}

/** How much darker a patch was read than expected, where what is expected can be read. @param over in its first figure */
function darkerOf({ dried }: Patch, over: number): number {
  const read = figuresRead(dried)[0] as number;
  const [least, most] = READ_ENDS['step' in dried ? 'step' : 'lab'];
  const apart = read - Math.min(most, Math.max(least, read - over));
  return 'step' in dried ? apart : -apart / LIGHTNESS_OF_STEP;
}

/** Fits, leaves out the patch that disagrees most, and fits again, until all agree. */
function agreed(studio: Studio, readings: readonly Reading[]) {
  const all = patchesOf(readings);
  const most = Math.max(1, Math.floor(DISAGREES.mostShare * all.length));
  const disagreements: Disagreement[] = [];
  let patches = all;
  for (;;) {
    const fit = fitOf(studio, readings, patches);
    const worst = fit === undefined || readings.length < LEAST_READINGS ? undefined : worstOf(fit, patches);
    if (fit === undefined || worst === undefined)
      return {
        fit,
        patches,
        disagreements,
        isAtOdds: fit !== undefined && !fitsTogether(studio, readings, patches, fit),
      };
    if (disagreements.length === most) return { fit, patches, disagreements, isAtOdds: true };
    const patch = patches[worst] as Patch;
    disagreements.push({ ...patch, darker: darkerOf(patch, fit.over[worst] as number) });
    patches = patches.filter((_, at) => at !== worst);
  }
}

/** The most that any of the patches moves with a tube, by the library's prediction. */
function movesOf(
  studio: Studio,
  readings: readonly Reading[],
  patches: readonly Patch[],
  id: string,
): number {
  return patches.reduce((most, { reading, part, dried }) => {
    const { wash } = readings[reading] as Reading;
    if (!paintsIn(wash, part).includes(id)) return most;
    const by = readBy(dried);
    return Math.max(most, sizeOf(moveOf(studio, wash, part, id, by), by));
  }, 0);
}

/** How surely a tube stands against the mean of the others: a standard deviation. */
function deviationOf({ ids, covariance }: Fit, id: string, others: readonly string[]): number {
  const weights = ids.map((each) => (each === id ? 1 : others.includes(each) ? -1 / others.length : 0));
  const variance = weights.reduce(
    (sum, weight, at) =>
      sum + weight * weights.reduce((row, other, i) => row + other * (covariance[at]?.[i] as number), 0),
    0,
  );
  return Math.sqrt(Math.max(0, variance));
}

/** A strength against another tube's: each may be at its own bound. */
const between = (log: number): number => Math.exp(Math.min(2 * TUBE.most, Math.max(-2 * TUBE.most, log)));

/**
 * What the readings tell. Only how strong the tubes are against each other can be told well, for the scale that values were read on may be
 * off as a whole: the middle one of those that can be told counts 1. Read again in full each time.
 * @param readings none earlier than any other counts more
 */
export function toldBy(studio: Studio, readings: readonly Reading[]): Told {
  const { fit, patches, disagreements, isAtOdds } = agreed(studio, readings);
  if (fit === undefined) return { tubes: [], disagreements, isAtOdds };
  const moves = new Map(fit.ids.map((id) => [id, movesOf(studio, readings, patches, id)]));
  const told = fit.ids.filter((id) => (moves.get(id) as number) >= LEAST_MOVE);
  const rows = told.map((id) => fit.ids.indexOf(id));
  const middled = againstMiddle(
    rows.map((row) => fit.logStrengths[row] as number),
    rows.map((row) => rows.map((column) => fit.covariance[row]?.[column] as number)),
  );
  const tubes = fit.ids.map((id): TubeStrength => {
    const unknown = {
      id,
      factor: 1,
      interval: [Math.exp(-TUBE.most), Math.exp(TUBE.most)],
      moves: moves.get(id) as number,
    } as const;
    if (!told.includes(id)) return { ...unknown, standing: 'cannot-tell' };
    if (told.length === 1) return { ...unknown, standing: 'no-other' };
    const { log, interval } = middled[told.indexOf(id)] as AgainstMiddle;
    // Against the others, not the middle: the middle tube is not surer than the rest.
    const deviation = deviationOf(
      fit,
      id,
      told.filter((other) => other !== id),
    );
    return {
      ...unknown,
      standing: NINE_IN_TEN * deviation <= NARROW ? 'known' : 'unsure',
      factor: Math.exp(log),
      interval: [between(interval[0]), between(interval[1])],
    };
  });
  const spread = Math.sqrt(fit.covariance.at(-1)?.at(-1) ?? 0);
  return {
    tubes,
    ...(patches.some(({ dried }) => readBy(dried) === 'value')
      ? { offset: { steps: fit.offset, giveOrTake: NINE_IN_TEN * spread } }
      : {}),
    disagreements,
    isAtOdds,
  };
}
