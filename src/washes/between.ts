/** The best between the amounts: the scales of what is open find the hills, the best of them are climbed. */
import type { ColourReading } from '../colour/reading.js';
import { perStudio, type Studio } from '../paints/index.js';
import { type Climb, climb } from './climb.js';
import type { FirstWash } from './mixture.js';
import { combinations, type Found, linesOf, type Merit, mixtureOf, type Open, scalesOf } from './search.js';
import { type Line, type Trial, trialOf } from './trial.js';

/** Thickness of a film at two halves of the area, with the mean and the spread of the paper's tooth: near enough to find hills by. */
const ROUGH_TOOTH = [0.42, 1.58] as const;

/** The studio with paper of two thicknesses, for what looks at very many mixtures. */
export const roughStudio = perStudio((studio) => ({
  ...studio,
  paper: { ...studio.paper, tooth: studio.paper.tooth.length > 2 ? ROUGH_TOOTH : studio.paper.tooth },
}));

/** Lines of one way and one number of paints. */
const sortOf = ({ way, ids }: Line): string => `${way} ${ids.length}`;

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

/** Scales and the choices on them, made once for all lines of a sort. */
function scaled(open: Open): (line: Line) => { readonly scales: number[][]; readonly choices: number[][] } {
  const known = new Map<string, { scales: number[][]; choices: number[][] }>();
  return (line) => {
    const sort = `${sortOf(line)} ${line.strength}`;
    let found = known.get(sort);
    if (found === undefined) {
      const scales = scalesOf(open, line);
      found = { scales, choices: combinations(line, scales) };
      known.set(sort, found);
    }
    return found;
  };
}

/** Lays every mixture on the scales of what is open, roughly. */
export function survey(studio: Studio, opens: readonly Open[]): Survey {
  return opens.flatMap((open) => {
    const on = scaled(open);
    return linesOf(open).map((line): Surveyed => {
      const { scales, choices } = on(line);
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
        samples: choices.map((amounts) => ({ amounts, colour: rough(amounts) })),
      };
    });
  });
}

/** Peaks of the scale that are climbed from, of each line. */
const PEAKS_OF_LINE = 2;
/** Tops that are climbed to the end, of each number of paints in each way; so many times as many are climbed on rough paper. */
const TOPS_OF_SORT = 6;
const ROUGH_TIMES = 2;
/** On rough paper a top may lie so many times as far below the best as it may in the end: it is seen there to a part of that only. */
const ROUGH_WORSE = 2;
/** A climb: its steps in doublings and its least gain in merit. On rough paper, then to where no one sees more, then to the end. */
const ROUGH = { steps: [0.5, 1 / 16], gain: 0.02 } as const;
const NEAR = { steps: [1 / 8, 2 ** -8], gain: 1e-3 } as const;
const END = { steps: [2 ** -6, 2 ** -14], gain: 1e-9 } as const;

interface Peak {
  readonly at: Surveyed;
  readonly amounts: readonly number[];
  readonly merit: number;
}

/** The best samples of a line. */
function peaksOf(at: Surveyed, merit: Merit): Peak[] {
  const best: Peak[] = [];
  for (const { amounts, colour } of at.samples) {
    const of = merit(colour, at.line, amounts);
    if (best.length === PEAKS_OF_LINE && of <= (best.at(-1) as Peak).merit) continue;
    best.push({ at, amounts, merit: of });
    best.sort((a, b) => b.merit - a.merit);
    best.length = Math.min(best.length, PEAKS_OF_LINE);
  }
  return best;
}

/** The best of each number of paints in each way: a simple mixture is not crowded out by many of three paints. */
function bestOfSorts(peaks: readonly Peak[], most: number): Peak[] {
  const sorts = new Map<string, Peak[]>();
  for (const peak of peaks) {
    const sort = sortOf(peak.at.line);
    const known = sorts.get(sort);
    if (known === undefined) sorts.set(sort, [peak]);
    else known.push(peak);
  }
  return [...sorts.values()].flatMap((sort) => sort.sort((a, b) => b.merit - a.merit).slice(0, most));
}

function climbed(peak: Peak, trial: Trial, merit: Merit, how: Pick<Climb, 'steps' | 'gain'>): Peak {
  const { at, amounts } = peak;
  const { line, ranges } = at;
  const top = climb((there) => merit(trial(there), line, there), amounts, {
    ranges,
    shares: line.way === 'strokes' ? line.ids.length : 0,
    ...how,
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

/** Those that are worse than the best by no more than so much. */
function atMostWorse(peaks: readonly Peak[], worse: number): Peak[] {
  const most = peaks.reduce((best, peak) => Math.max(best, peak.merit), Number.NEGATIVE_INFINITY);
  return peaks.filter(({ merit }) => merit >= most - worse);
}

/** How many are climbed to, and how far. */
interface Wanted {
  /** So many of the best are found to a ten-thousandth of a doubling, the others to a hundredth. */
  readonly finest?: number;
  /** Tops of each number of paints in each way. */
  readonly ofSort?: number;
  /** By how much one may be worse than the best, in merit. */
  readonly worse?: number;
}

/**
 * The best mixtures of a survey with any amounts between the least and the most, best first, one for each line at most, and of
 * each number of paints in each way some.
 */
export function bestOf(
  known: Survey,
  merit: Merit,
  { finest = 1, ofSort = TOPS_OF_SORT, worse = Number.POSITIVE_INFINITY }: Wanted = {},
): Found[] {
  const peaks = bestOfSorts(
    known.flatMap((at) => peaksOf(at, merit)),
    ROUGH_TIMES * ofSort,
  );
  const rough = bestOfLines(peaks.map((peak) => climbed(peak, peak.at.rough, merit, ROUGH)));
  const near = bestOfSorts(atMostWorse(rough, ROUGH_WORSE * worse), ofSort)
    .map((peak) => climbed(peak, peak.at.exact(), merit, NEAR))
    .sort((a, b) => b.merit - a.merit);
  const ends = near.slice(0, finest).map((peak) => climbed(peak, peak.at.exact(), merit, END));
  return atMostWorse([...ends, ...near.slice(finest)], worse)
    .sort((a, b) => b.merit - a.merit)
    .map(({ at: { first, line, exact }, amounts, merit: height }) => ({
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
  return bestOf(survey(studio, [open]), merit, {
    finest: count,
    ofSort: Math.max(TOPS_OF_SORT, count),
  }).slice(0, count);
}
