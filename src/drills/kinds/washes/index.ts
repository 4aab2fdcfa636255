/** The washes kind: see schema.ts. */

import { GOOD_MARK, overall, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { fitted } from '../../../words/tell.js';
import { chosen, everyCombination } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade, GradeStep, Kind, ResultSwatch } from '../../types.js';
import type { WashesDrill } from './schema.js';
import {
  alikeIn,
  type BlockResult,
  bestWashes,
  blockChoices,
  blockField,
  blockResults,
  CANNOT,
  darkestWater,
  laidAt,
  paintName,
  startStep,
  washesFields,
  withinOf,
} from './score.js';
import { adviceTold, alikeTold, bestTold, blocksTold, goalLines, rangeTold, strongestPart } from './told.js';
import { washesWhy } from './why.js';

function ideaOf(results: readonly BlockResult[], strongest: number): string | undefined {
  const wrong = results.filter(({ score }) => score < 1);
  if (wrong.some(({ choice, canReach }) => choice === CANNOT && canReach)) return 'gave-up-early';
  if (wrong.some(({ choice, canReach }) => choice !== CANNOT && !canReach)) return 'asked-too-much';
  if (wrong.length > 0) {
    const gap = wrong.reduce((sum, { seen, wanted }) => sum + seen.colour.step - wanted, 0);
    return gap < 0 ? 'too-light' : 'too-dark';
  }
  return strongest < 0.5 ? 'thickest-is-strongest' : undefined;
}

type Alike = ReturnType<typeof alikeIn>;

/** Two blocks that came out alike, in a ladder that can have all its rungs apart. */
const alikeAmong = (results: readonly BlockResult[], best: readonly BlockResult[]): Alike =>
  alikeIn(best) === undefined ? alikeIn(results) : undefined;

/** The mark; a ladder with two rungs alike is not good. */
function markOf(
  { strongest: isAsked }: WashesDrill,
  results: readonly BlockResult[],
  strongest: number,
  alike: Alike,
): number {
  const together = togetherMark([...results.map(({ score }) => score), ...(isAsked ? [strongest] : [])]);
  return alike === undefined ? together : Math.min(together, GOOD_MARK - 1);
}

function grade(studio: Studio, drill: WashesDrill, answer: Answer): Grade {
  const results = blockResults(studio, drill, answer);
  const strongest = strongestPart(studio, drill, results, answer);
  const best = bestWashes(studio, drill);
  const bestResults = blockResults(studio, drill, best);
  const alike = alikeAmong(results, bestResults);
  const mark = markOf(drill, results, strongest.score, alike);
  const wrong = [
    ...results.flatMap(({ score, block }, at) =>
      score < 1 || alike?.some((one) => one.block === block) ? [blockField(at)] : [],
    ),
    ...(strongest.score < 1 ? ['strongest'] : []),
  ];
  // A block given up has no wash to be judged by its value.
  const laid = results.filter(({ choice }) => choice !== CANNOT);
  const worst = (laid.length === 0 ? results : laid).reduce((low, next) =>
    next.score < low.score ? next : low,
  );
  const idea = mark >= GOOD_MARK ? undefined : ideaOf(results, strongest.score);
  const swatches: ResultSwatch[] = [];
  const below = drill.over === undefined ? undefined : seeLaid(studio, drill.over).reflectance;
  if (below !== undefined) swatches.push({ label: 'dry wash', reflectance: below });
  const bestWorst = bestResults[results.indexOf(worst)] as BlockResult;
  swatches.push(
    { label: `yours, ${worst.block.name}`, reflectance: worst.seen.reflectance },
    { label: `best, ${worst.block.name}`, reflectance: bestWorst.seen.reflectance },
  );
  return {
    mark,
    verdict: overall(mark),
    ...(laid.length === 0
      ? {}
      : {
          value: {
            before: startStep(studio, drill),
            after: worst.seen.colour.step,
            asked: worst.band,
            verdict: verdictOf(worst.score),
            tooCloseToCall: worst.tooCloseToCall,
          },
        }),
    told: fitted([
      ...blocksTold(results, withinOf(studio, drill)),
      [1, alike === undefined ? undefined : alikeTold(alike)],
      [1, strongest.finding],
      [3, rangeTold(studio, drill)],
      [0, bestTold(studio, drill, answer, best, mark, wrong)],
      [0, adviceTold(idea, results)],
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: best, label: label(studio, drill, best), mark: 100 },
    swatches,
    steps: results.map(
      (result, at): GradeStep => ({
        name: result.block.name,
        ...(below === undefined ? {} : { before: below }),
        ...laidFilm('yours', result),
        ...laidFilm('best', bestResults[at] as BlockResult),
      }),
    ),
    laid: laidParts(worst.seen),
    evidence: worst.seen.evidence,
  };
}

/** The film of a block that was not given up. */
const laidFilm = (as: 'yours' | 'best', { choice, seen }: BlockResult): Partial<GradeStep> =>
  choice === CANNOT ? {} : { [as]: seen.reflectance };

/** The ideas that cannot be left out beforehand: of all these some answer may be an example. */
function thinkable(byChoice: readonly (readonly BlockResult[])[], { strongest }: WashesDrill): Set<string> {
  const all = byChoice.flat();
  const wrong = all.filter(({ score }) => score < 1);
  const given = wrong.filter(({ choice }) => choice === CANNOT);
  const laid = wrong.filter(({ choice }) => choice !== CANNOT);
  const off = laid.map(({ seen, wanted }) => seen.colour.step - wanted);
  return new Set([
    ...(given.some(({ canReach }) => canReach) ? ['gave-up-early'] : []),
    ...(laid.some(({ canReach }) => !canReach) ? ['asked-too-much'] : []),
    ...(off.some((gap) => gap < 0) ? ['too-light'] : []),
    ...(off.some((gap) => gap >= 0) ? ['too-dark'] : []),
    ...(strongest ? ['thickest-is-strongest'] : []),
  ]);
}

/** What each block gets of each water is worked out once; answers are put together from it until every thinkable idea was met. */
function ideas(studio: Studio, drill: WashesDrill): ReadonlySet<string> {
  const best = blockResults(studio, drill, bestWashes(studio, drill));
  const byChoice = blockChoices(studio, drill);
  const open = thinkable(byChoice, drill);
  const found = new Set<string>();
  for (const results of everyCombination(byChoice)) {
    for (const named of drill.strongest ? results.keys() : [0]) {
      const { score } = strongestPart(studio, drill, results, { strongest: blockField(named) });
      const mark = markOf(drill, results, score, alikeAmong(results, best));
      const idea = mark >= GOOD_MARK ? undefined : ideaOf(results, score);
      if (idea !== undefined) found.add(idea);
    }
    if (found.size === open.size) break;
  }
  return found;
}

function label(studio: Studio, drill: WashesDrill, answer: Answer): string {
  return washesFields(studio, drill)
    .map((field) => `${field.label} ${chosen([field], answer, field.id).label}`)
    .join(', ');
}

export const washesKind = (studio: Studio): Kind<WashesDrill> => ({
  kind: 'washes',
  fields: (drill) => washesFields(studio, drill),
  given: (drill) => {
    const masstone = laidAt(studio, drill, darkestWater(studio, drill)).reflectance;
    const thick = { label: `${paintName(studio, drill)}, thickest`, reflectance: masstone };
    return drill.over === undefined
      ? [thick]
      : [{ label: 'dry wash', reflectance: seeLaid(studio, drill.over).reflectance }, thick];
  },
  goalLines: (drill) => goalLines(studio, drill),
  grade: (drill, answer) => grade(studio, drill, answer),
  ideas: (drill) => ideas(studio, drill),
  best: (drill) => bestWashes(studio, drill),
  label: (drill, answer) => label(studio, drill, answer),
  why: (drill, answer) => washesWhy(studio, drill, answer),
});
