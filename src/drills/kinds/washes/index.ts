/** The washes kind: see schema.ts. */

import {
  aroundStep,
  MODEL_ERROR,
  overall,
  pickMark,
  togetherMark,
  verdictOf,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { asShown, sentence, stepsWords } from '../../../words/laid.js';
import { plainly } from '../../../words/tell.js';
import { chosen } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade, Kind, ResultSwatch } from '../../types.js';
import type { WashesDrill } from './schema.js';
import {
  type BlockResult,
  bestWashes,
  blockResults,
  CANNOT,
  darkestWater,
  laidAt,
  paintName,
  startStep,
  strongestIndex,
  washesFields,
  watersOf,
} from './score.js';
import { washesWhy } from './why.js';

/** How a target is put: as a step, or as what it is the shadow of. */
function targetWords({ name, step, shadeOf, castOf }: WashesDrill['blocks'][number]): string {
  if (step !== undefined) return `${name}: step ${step.toFixed(1)}`;
  if (shadeOf !== undefined) return `${name}: shaded side of a lit step ${shadeOf.toFixed(1)}`;
  return `${name}: cast shadow on a lit step ${(castOf as number).toFixed(1)}`;
}

function goalLines(studio: Studio, drill: WashesDrill): string[] {
  const below =
    drill.over === undefined
      ? `${paintName(studio, drill)} on white paper`
      : `${paintName(studio, drill)} over a dry wash, step ${startStep(studio, drill).toFixed(1)}`;
  return [below, ...drill.blocks.map(targetWords)];
}

function blockLine({ block, choice, wanted, seen, score, tooCloseToCall, canReach }: BlockResult): string {
  const step = seen.colour.step;
  const asked = `step ${wanted.toFixed(1)} was asked`;
  if (choice === CANNOT) {
    return canReach && !tooCloseToCall
      ? `${block.name}: you gave it up, but the paint reaches step ${step.toFixed(1)}; ${asked}.`
      : `${block.name}: rightly given up; the paint stops at step ${step.toFixed(1)} and ${asked}.`;
  }
  const gives = `${block.name}: ${choice} gives step ${step.toFixed(1)}; ${asked}`;
  if (tooCloseToCall) return `${gives}, a hair outside half a step, too close to call, so it counts.`;
  if (score >= 1) return `${gives}, within half a step.`;
  return `${gives}, so it is ${stepsWords(asShown(step) - asShown(wanted))} too ${step < wanted ? 'light' : 'dark'}.`;
}

/** Why even steps of water are not even steps of value, in this paint's own figures. */
function rangeLines(studio: Studio, drill: WashesDrill): string[] {
  const steps = watersOf(drill).map((water) => laidAt(studio, drill, water).colour.step);
  const moves = steps.slice(1).map((step, index) => step - (steps[index] as number));
  const range = `${sentence(paintName(studio, drill))} runs from step ${Math.min(...steps).toFixed(1)} to ${Math.max(...steps).toFixed(1)} on these washes; range belongs to the paint.`;
  const isUneven = Math.max(...moves) >= Math.max(0.4, 1.5 * Math.min(...moves));
  if (moves.length < 2 || !isUneven) return [range];
  return [
    `${range} From one of these washes to the next it moves ${Math.min(...moves).toFixed(1)} to ${Math.max(...moves).toFixed(1)} steps, so even steps of water are not even steps of value.`,
  ];
}

function strongestPart(
  drill: WashesDrill,
  results: readonly BlockResult[],
  answer: Answer,
): { readonly score: number; readonly lines: string[] } {
  if (!drill.strongest) return { score: 1, lines: [] };
  const named = chosen(washesFields(drill), answer, 'strongest');
  const picked = results.find(({ block }) => block.name === named.label) as BlockResult;
  const best = results[strongestIndex(results)] as BlockResult;
  const { mark } = pickMark(
    picked.seen.colour.chroma,
    results.map(({ seen }) => seen.colour.chroma),
    MODEL_ERROR[picked.seen.evidence].chroma,
  );
  const chromas = results
    .map(({ block, seen }) => `${block.name} ${seen.colour.chroma.toFixed(0)}`)
    .join(', ');
  return {
    score: mark / 100,
    lines: [
      mark === 100
        ? `The strongest colour of your washes is in the ${picked.block.name}, as you said: chroma ${chromas}.`
        : `You named the ${picked.block.name} for the strongest colour; of your washes it is the ${best.block.name}: chroma ${chromas}.`,
    ],
  };
}

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

function grade(studio: Studio, drill: WashesDrill, answer: Answer): Grade {
  const results = blockResults(studio, drill, answer);
  const strongest = strongestPart(drill, results, answer);
  const mark = togetherMark([
    ...results.map(({ score }) => score),
    ...(drill.strongest ? [strongest.score] : []),
  ]);
  const worst = results.reduce((low, next) => (next.score < low.score ? next : low));
  const idea = mark >= 85 ? undefined : ideaOf(results, strongest.score);
  const best = bestWashes(studio, drill);
  const bestResults = blockResults(studio, drill, best);
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const swatches: ResultSwatch[] = [];
  if (drill.over !== undefined) {
    swatches.push({ label: 'dry wash', reflectance: seeLaid(studio, drill.over).reflectance });
  }
  const bestWorst = bestResults[results.indexOf(worst)] as BlockResult;
  swatches.push(
    { label: `yours, ${worst.block.name}`, reflectance: worst.seen.reflectance },
    { label: `best, ${worst.block.name}`, reflectance: bestWorst.seen.reflectance },
  );
  return {
    mark,
    verdict: overall(mark),
    value: {
      before: startStep(studio, drill),
      after: worst.seen.colour.step,
      asked: aroundStep(worst.wanted),
      verdict: verdictOf(worst.score),
      tooCloseToCall: worst.tooCloseToCall,
    },
    told: plainly([
      ...results.map(blockLine),
      ...strongest.lines,
      ...rangeLines(studio, drill),
      mark === 100 ? 'Nothing on this scale does it better.' : `Better: ${label(drill, best)}.`,
      ...(next === undefined ? [] : [next]),
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: best, label: label(drill, best), mark: 100 },
    swatches,
    laid: laidParts(worst.seen),
    evidence: worst.seen.evidence,
  };
}

function label(drill: WashesDrill, answer: Answer): string {
  return washesFields(drill)
    .map((field) => `${field.label} ${chosen([field], answer, field.id).label}`)
    .join(', ');
}

export const washesKind = (studio: Studio): Kind<WashesDrill> => ({
  kind: 'washes',
  fields: (drill) => washesFields(drill),
  given: (drill) => {
    const masstone = laidAt(studio, drill, darkestWater(studio, drill)).reflectance;
    const thick = { label: `${paintName(studio, drill)}, thick`, reflectance: masstone };
    return drill.over === undefined
      ? [thick]
      : [{ label: 'dry wash', reflectance: seeLaid(studio, drill.over).reflectance }, thick];
  },
  goalLines: (drill) => plainly(goalLines(studio, drill)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => bestWashes(studio, drill),
  label: (drill, answer) => label(drill, answer),
  why: (drill, answer) => washesWhy(studio, drill, answer),
});
