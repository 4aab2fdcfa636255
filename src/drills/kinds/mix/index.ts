/** The mix kind: see schema.ts. */

import { hueName } from '../../../colour/hue.js';
import { type Aim, COHESION_COST, chromaAsked, hueAsked } from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import { plainly } from '../../../words/tell.js';
import type { Answer, Kind, PlanePoint, PlaneView } from '../../types.js';
import { answerOf, choiceOf, howsOf, howWords, mixFields } from './choice.js';
import { gradeMix, markMix } from './grade.js';
import { temptingChoices } from './idea.js';
import { choiceLabel, firstWords, fixedWords } from './label.js';
import { lessonFaults } from './lesson.js';
import { type MixDrill, USUAL_TOUCHES } from './schema.js';
import { challenge, type Outcome, outcomeOf, type Solved, solved, startOf } from './solve.js';
import { mixWhy } from './why.js';

/** What each aim asks, in a painter's words. */
const AIM_WORDS: Readonly<Record<Aim, string>> = {
  shade: 'a shade',
  rich: 'darker and rich',
  dull: 'duller',
  distance: 'farther off',
  neutral: 'a grey',
  lean: 'a grey that leans',
};

function chromaGoal({ start, goal }: Solved): string {
  const from = start.chroma.toFixed(0);
  if (goal.chroma !== undefined && goal.chroma[0] === 0)
    return `chroma: from ${from} to ${goal.chroma[1]} at most`;
  if (goal.chroma !== undefined)
    return `chroma: from ${from} to between ${goal.chroma[0]} and ${goal.chroma[1]}`;
  return goal.aim === 'shade'
    ? `chroma: from ${from}, what the light leaves and no more`
    : `chroma: keep as much as you can of ${from}`;
}

function hueGoal(judged: Solved): string | undefined {
  const asked = hueAsked(judged);
  if (asked === undefined) return undefined;
  const isStart = judged.goal.hue === undefined || judged.goal.hue.near === 'start';
  return isStart
    ? `hue: stays ${hueName(judged.start.hue)}, within ${asked.within}°`
    : `hue: towards ${hueName(asked.near)}, within ${asked.within}°`;
}

function goalLines(studio: Studio, drill: MixDrill): string[] {
  const known = solved(studio, drill);
  const [light, dark] = drill.goal.value;
  const hue = hueGoal(known);
  const lines = [
    `${firstWords(studio, drill)}; wanted: ${AIM_WORDS[drill.goal.aim]}`,
    `value: from step ${known.start.step.toFixed(1)} to between ${light} and ${dark}`,
    chromaGoal(known),
    ...(hue === undefined ? [] : [hue]),
  ];
  if (drill.painting !== undefined) {
    const names = drill.painting.map((id) => paintOf(studio, id).name).join(', ');
    lines.push(`painting: has ${names}; any other paint costs ${COHESION_COST} marks`);
  }
  const fixed = fixedWords(studio, drill);
  if (fixed !== '') lines.push(`fixed: ${fixed}`);
  return lines;
}

/** Chroma at which an open-ended goal ends on the plane. */
const MOST_SHOWN = 120;

function point({ seen }: Outcome, label: string): PlanePoint {
  return { step: seen.colour.step, chroma: seen.colour.chroma, label };
}

function plane(studio: Studio, drill: MixDrill, answer: Answer): PlaneView {
  const choice = choiceOf(studio, drill, answer);
  const known = solved(studio, drill);
  const along = howsOf(drill).filter(
    ({ way, strength }) => way === choice.how.way && strength === choice.how.strength,
  );
  const path =
    along.length > 1 || choice.how.way !== 'puddle'
      ? along
      : howsOf({ ...drill, amounts: USUAL_TOUCHES, glazes: [], strokes: [] });
  const [least, most] = chromaAsked(known, known.best.seen.colour);
  return {
    start: { step: known.start.step, chroma: known.start.chroma, label: 'start' },
    path: path.map((how) => point(outcomeOf(studio, drill, { ...choice, how }), howWords(how))),
    yours: point(outcomeOf(studio, drill, choice), 'yours'),
    best: point(known.best, 'best'),
    goal: { step: drill.goal.value, chroma: [least, Math.min(most, MOST_SHOWN)] },
  };
}

export const mixKind = (studio: Studio): Kind<MixDrill> => ({
  kind: 'mix',
  fields: (drill) => mixFields(studio, drill),
  given: (drill) => [{ label: 'start', reflectance: startOf(studio, drill).reflectance }],
  goalLines: (drill) => plainly(goalLines(studio, drill)),
  grade: (drill, answer) => gradeMix(studio, drill, answer),
  mark: (drill, answer) => markMix(studio, drill, answer),
  best: (drill) => answerOf(studio, drill, solved(studio, drill).best.choice),
  tempting: (drill) => temptingChoices(studio, drill).map((choice) => answerOf(studio, drill, choice)),
  label: (drill, answer) => choiceLabel(studio, drill, choiceOf(studio, drill, answer)),
  why: (drill, answer) => mixWhy(studio, drill, answer),
  plane: (drill, answer) => plane(studio, drill, answer),
  faults: (drill) => lessonFaults(studio, drill),
  challenge: (drill, draw, tries) => challenge(studio, drill, draw, tries),
});
