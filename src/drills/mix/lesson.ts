/** Whether a drill teaches what its family is for: the checker's questions about mix drills. */
import { readColour } from '../../colour/reading.js';
import { linesOf, outcomeOf, recipeReflectance } from './candidates.js';
import { type MixDrill, touchRatio } from './schema.js';
import { FAIR_MARK, GOOD_MARK, MODEL_ERROR } from './score.js';
import { evidenceWith, isNewPaint, scoreColour, solved } from './search.js';
import { trialOf } from './trial.js';
import { type Place, seatOf } from './wheel.js';

/** L* 25, where a dark is deep, as a painter's step. */
const DEEP_STEP = 7.95;
/** C* of the greyest mixture that still counts as a grey. */
const GREY_CHROMA = 12;

/** The marks that each second paint can get, over all amounts, ways and strengths. */
function marksOf(drill: MixDrill, second: string): number[] {
  const { start, reach } = solved(drill);
  const rating = { evidence: evidenceWith(drill, second), isNew: isNewPaint(drill, second) };
  return linesOf({ ...drill, tray: [second] }).flatMap((line) => {
    const trial = trialOf(drill.start, line);
    return drill.amounts.map(
      (touch) => scoreColour(drill, start, trial(touchRatio(touch)), rating, reach).mark,
    );
  });
}

interface TrayPaint {
  readonly id: string;
  readonly place: Place;
  readonly chroma: number;
  readonly best: number;
  readonly worst: number;
}

function trayPaints(drill: MixDrill): TrayPaint[] {
  return drill.tray.map((id) => {
    const marks = marksOf(drill, id);
    const { place, alone } = seatOf(drill, id);
    return { id, place, chroma: alone.chroma, best: Math.max(...marks), worst: Math.min(...marks) };
  });
}

const list = (paints: readonly TrayPaint[]): string => paints.map(({ id }) => id).join(', ');

function brightFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const traps = paints.filter(({ place }) => place === 'across' || place === 'black');
  const open = traps.filter((paint) => paint.best >= GOOD_MARK);
  return [
    drill.goal.chroma === 'bright' ? '' : 'the goal’s chroma is not `bright`',
    best.place === 'neighbour' || best.place === 'own'
      ? ''
      : `the best second paint, ${best.id}, is no neighbour of the start (${best.place})`,
    traps.length > 0 ? '' : 'no paint from across the wheel and no black tempts',
    open.length === 0 ? '' : `a paint that should dull marks well: ${list(open)}`,
  ];
}

function dullFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const near = paints.filter(({ place }) => place === 'neighbour' || place === 'own');
  const open = near.filter((paint) => paint.best >= GOOD_MARK);
  return [
    drill.goal.chroma === 'bright' ? 'the goal’s chroma is `bright`' : '',
    best.place === 'across' || best.place === 'quarter'
      ? ''
      : `the best second paint, ${best.id}, does not lie across the wheel (${best.place})`,
    near.length > 0 ? '' : 'no neighbour tempts',
    open.length === 0 ? '' : `a neighbour marks well: ${list(open)}`,
  ];
}

function greyFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const { chroma } = drill.goal;
  const traps = paints.filter((paint) => paint.id !== best.id && paint.best < FAIR_MARK);
  return [
    chroma !== 'bright' && chroma[1] <= GREY_CHROMA
      ? ''
      : `the goal’s chroma must end at ${GREY_CHROMA} or below`,
    best.place === 'black' || best.place === 'white'
      ? `the best second paint, ${best.id}, is neutral itself`
      : '',
    traps.length > 0 ? '' : 'every partner goes grey: none is a trap',
  ];
}

function leanFaults(drill: MixDrill): string[] {
  const { chroma, hue } = drill.goal;
  return [
    chroma !== 'bright' && chroma[1] <= 20 ? '' : 'a lean needs a chroma band that ends at 20 or below',
    hue === undefined || hue.near === 'start' ? 'a lean needs a hue, near an angle' : '',
  ];
}

function darkFaults(drill: MixDrill, best: TrayPaint): string[] {
  const { step } = solved(drill).best.outcome.colour;
  return [
    step >= DEEP_STEP ? '' : `the best answer stops at step ${step.toFixed(1)}, lighter than L* 25`,
    best.place === 'black' ? 'the best answer is a black' : '',
  ];
}

/** The best touch is small, or the paint so weak that it is large; equal blobs must not do. */
function strengthFaults(drill: MixDrill): string[] {
  const { best } = solved(drill);
  const { choice } = best.outcome;
  if (drill.amounts.length < 2) return ['the amount must be open'];
  const equal = drill.amounts.includes('1:1') && choice.ratio !== 1;
  if (!equal) return ['equal parts must be open, and must not be the best'];
  const { start, reach } = solved(drill);
  const rating = { evidence: evidenceWith(drill, choice.second), isNew: isNewPaint(drill, choice.second) };
  const colour = outcomeOf(drill.start, { ...choice, ratio: 1 }).colour;
  const { mark } = scoreColour(drill, start, colour, rating, reach);
  return [mark < FAIR_MARK ? '' : `equal parts mark ${mark}: the paint is not strong enough to matter`];
}

/** Bands that the model cannot tell apart, and goals that mean nothing for the start. */
function bandFaults(drill: MixDrill): string[] {
  const start = readColour(recipeReflectance(drill.start));
  const { value, chroma, hue } = drill.goal;
  const error = MODEL_ERROR[evidenceWith(drill, solved(drill).best.outcome.choice.second)];
  return [
    value[1] - value[0] >= 2 * error.step ? '' : 'the value band is tighter than the model’s error',
    chroma === 'bright' || chroma[1] - chroma[0] >= 2 * error.chroma
      ? ''
      : 'the chroma band is tighter than the model’s error',
    chroma === 'bright' && start.chroma < 20 ? 'bright is asked of a start that has little chroma' : '',
    hue?.near === 'start' && start.chroma < 20 ? 'the start has too little chroma to hold a hue' : '',
  ];
}

/** What is wrong with a mix drill as a lesson of its family. */
export function lessonFaults(drill: MixDrill): string[] {
  const paints = trayPaints(drill);
  const best = paints.find(({ id }) => id === solved(drill).best.outcome.choice.second) as TrayPaint;
  const byFamily: Readonly<Record<string, () => string[]>> = {
    'darken-bright': () => brightFaults(drill, paints, best),
    'dull-on-purpose': () => dullFaults(drill, paints, best),
    neutraliser: () => greyFaults(drill, paints, best),
    'grey-lean': () => leanFaults(drill),
    'deep-dark': () => darkFaults(drill, best),
    'tinting-strength': () => strengthFaults(drill),
  };
  return [...bandFaults(drill), ...(byFamily[drill.family]?.() ?? [])].filter((fault) => fault !== '');
}
