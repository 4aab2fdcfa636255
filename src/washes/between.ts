/** The best between the amounts: the scales of what is open find the hills, the best of them are climbed. */
import type { ColourReading } from '../colour/reading.js';
import { perStudio, type Studio } from '../paints/index.js';
import { climb } from './climb.js';
import type { FirstWash } from './mixture.js';
import { combinations, type Found, linesOf, type Merit, mixtureOf, type Open, scalesOf } from './search.js';
import { type Line, type Trial, trialOf } from './trial.js';

/** Thickness of a film at two halves of the area, with the mean and the spread of the paper's tooth: near enough to find hills by. */
const ROUGH_TOOTH = [0.42, 1.58] as const;

const roughStudio = perStudio((studio) => ({
  ...studio,
  paper: { ...studio.paper, tooth: studio.paper.tooth.length > 2 ? ROUGH_TOOTH : studio.paper.tooth },
}));

/** A line with the colours on its scales. */
interface Surveyed {
  readonly first: FirstWash;
  readonly line: Line;
  readonly ranges: readonly (readonly [number, number])[];
  readonly rough: Trial;
  /** Made ready when the line is climbed. */
  readonly exact: () => Trial;
  readonly samples: readonly { readonly amounts: readonly number[]; readonly colour: ColourReading }[];
}

/** What is open with its colours, roughly: several merits can be searched on one survey. */
export type Survey = readonly Surveyed[];

/** Lays every mixture on the scales of what is open, roughly. */
export function survey(studio: Studio, opens: readonly Open[]): Survey {
  return opens.flatMap((open) =>
    linesOf(open).map((line): Surveyed => {
      const scales = scalesOf(open, line);
      const rough = trialOf(roughStudio(studio), open.first, line);
      let exact: Trial | undefined;
      return {
        first: open.first,
        line,
        ranges: scales.map((scale) => [scale[0] as number, scale.at(-1) as number]),
        rough,
        exact: () => {
          exact ??= trialOf(studio, open.first, line);
          return exact;
        },
        samples: combinations(line, scales).map((amounts) => ({ amounts, colour: rough(amounts) })),
      };
    }),
  );
}

/** Peaks of the scale that are climbed from: for each line, and for each number of paints in each way. */
const PEAKS = { ofLine: 2, ofSort: 24 } as const;
/** Of these the tops that are climbed to the end, for each number of paints in each way. */
const TOPS_OF_SORT = 8;
/** First and last step of the climb on rough paper, and of the one to the end, in doublings. */
const ROUGH_STEPS = [0.5, 1 / 16] as const;
const LAST_STEPS = [1 / 8, 2 ** -10] as const;
const FINEST_STEPS = [2 ** -10, 2 ** -14] as const;

interface Peak {
  readonly at: Surveyed;
  readonly amounts: readonly number[];
  readonly merit: number;
}

/** The best samples of a line. */
function peaksOf(at: Surveyed, merit: Merit): Peak[] {
  const best: Peak[] = [];
  for (const { amounts, colour } of at.samples) {
    const of = merit(colour, at.line);
    if (best.length === PEAKS.ofLine && of <= (best.at(-1) as Peak).merit) continue;
    best.push({ at, amounts, merit: of });
    best.sort((a, b) => b.merit - a.merit);
    best.length = Math.min(best.length, PEAKS.ofLine);
  }
  return best;
}

/** The best of each number of paints in each way: a simple mixture is not crowded out by many of three paints. */
function bestOfSorts(peaks: readonly Peak[], most: number): Peak[] {
  const sorts = new Map<string, Peak[]>();
  for (const peak of peaks) {
    const { way, ids } = peak.at.line;
    const sort = `${way} ${ids.length}`;
    const known = sorts.get(sort);
    if (known === undefined) sorts.set(sort, [peak]);
    else known.push(peak);
  }
  return [...sorts.values()].flatMap((sort) => sort.sort((a, b) => b.merit - a.merit).slice(0, most));
}

function climbed(peak: Peak, trial: Trial, merit: Merit, steps: readonly [number, number]): Peak {
  const { at, amounts } = peak;
  const { line, ranges } = at;
  const top = climb((there) => merit(trial(there), line), amounts, {
    ranges,
    shares: line.way === 'strokes' ? line.ids.length : 0,
    steps,
  });
  return { at, amounts: top.at, merit: top.height };
}

/** The better of two peaks of one line. */
function bestOfLines(peaks: readonly Peak[]): Peak[] {
  const lines = new Map<Surveyed, Peak>();
  for (const peak of peaks) {
    const known = lines.get(peak.at);
    if (known === undefined || peak.merit > known.merit) lines.set(peak.at, peak);
  }
  return [...lines.values()];
}

/** The best mixtures of a survey with any amounts between the least and the most, best first, one for each line at most. */
export function bestOf(known: Survey, merit: Merit, count = 1): Found[] {
  const peaks = bestOfSorts(
    known.flatMap((at) => peaksOf(at, merit)),
    Math.max(PEAKS.ofSort, PEAKS.ofLine * count),
  );
  const rough = bestOfLines(peaks.map((peak) => climbed(peak, peak.at.rough, merit, ROUGH_STEPS)));
  const tops = bestOfSorts(rough, Math.max(TOPS_OF_SORT, count))
    .map((peak) => climbed(peak, peak.at.exact(), merit, LAST_STEPS))
    .sort((a, b) => b.merit - a.merit)
    .slice(0, count)
    .map((peak) => climbed(peak, peak.at.exact(), merit, FINEST_STEPS))
    .sort((a, b) => b.merit - a.merit);
  return tops.map(({ at: { first, line, exact }, amounts, merit: height }) => ({
    first,
    line,
    amounts,
    mixture: mixtureOf(line, amounts),
    colour: exact()(amounts),
    merit: height,
  }));
}

/**
 * The best mixtures with any amounts between the least and the most that are open, best first, one for each line at most
 * `count` of them; climbed to a ten-thousandth of a doubling.
 */
export function bestBetween(studio: Studio, open: Open, merit: Merit, count = 1): Found[] {
  return bestOf(survey(studio, [open]), merit, count);
}
