/** The mix kind: see schema.ts. */
import { hueName } from '../../colour/hue.js';
import { readColour } from '../../colour/reading.js';
import type { Answer, Kind, PlanePoint, PlaneView } from '../types.js';
import { type Outcome, outcomeOf, pigmentOf, recipeReflectance } from './candidates.js';
import { answerOf, choiceOf, mixFields } from './fields.js';
import { gradeMix } from './grade.js';
import { choiceLabel, firstWords, fixedWords } from './label.js';
import { lessonFaults } from './lesson.js';
import { type MixDrill, TOUCHES, touchRatio } from './schema.js';
import { brightBand, COHESION_COST } from './score.js';
import { challenge, solved } from './search.js';

function goalLines(drill: MixDrill): string[] {
  const start = readColour(recipeReflectance(drill.start));
  const [light, dark] = drill.goal.value;
  const lines = [
    firstWords(drill),
    `value: from step ${start.step.toFixed(1)} to between ${light} and ${dark}`,
  ];
  if (drill.goal.chroma === 'bright')
    lines.push(`chroma: keep as much as you can of ${start.chroma.toFixed(0)}`);
  else
    lines.push(
      `chroma: from ${start.chroma.toFixed(0)} to between ${drill.goal.chroma[0]} and ${drill.goal.chroma[1]}`,
    );
  const { hue } = drill.goal;
  if (hue?.near === 'start') lines.push(`hue: within ${hue.within}° of where it is`);
  else if (hue !== undefined)
    lines.push(`hue: towards ${hueName(hue.near)} (within ${hue.within}° of ${hue.near}°)`);
  if (drill.painting !== undefined) {
    const names = drill.painting.map((id) => pigmentOf(id).name).join(', ');
    lines.push(`painting: has ${names}; any other paint costs ${COHESION_COST} marks`);
  }
  const fixed = fixedWords(drill);
  if (fixed !== '') lines.push(`fixed: ${fixed}`);
  return lines;
}

function point(outcome: Outcome, label: string): PlanePoint {
  return { step: outcome.colour.step, chroma: outcome.colour.chroma, label };
}

function plane(drill: MixDrill, answer: Answer): PlaneView {
  const choice = choiceOf(drill, answer);
  const yours = outcomeOf(drill.start, choice);
  const known = solved(drill);
  // A path of one point shows nothing: where the amount is fixed, all touches.
  const amounts = [...(drill.amounts.length > 1 ? drill.amounts : TOUCHES)].sort(
    (a, b) => touchRatio(a) - touchRatio(b),
  );
  const asked =
    drill.goal.chroma === 'bright'
      ? ([brightBand(known.start, known.best.outcome.colour, known.reach)[0], 120] as const)
      : drill.goal.chroma;
  return {
    start: { step: known.start.step, chroma: known.start.chroma, label: 'start' },
    path: amounts.map((touch) =>
      point(outcomeOf(drill.start, { ...choice, ratio: touchRatio(touch) }), touch),
    ),
    yours: point(yours, 'yours'),
    best: point(known.best.outcome, 'best'),
    goal: { step: drill.goal.value, chroma: asked },
  };
}

export const mixKind: Kind<MixDrill> = {
  kind: 'mix',
  fields: mixFields,
  given: (drill) => [{ label: 'start', reflectance: recipeReflectance(drill.start) }],
  goalLines,
  grade: gradeMix,
  best: (drill) => answerOf(drill, solved(drill).best.outcome.choice),
  label: (drill, answer) => choiceLabel(drill, choiceOf(drill, answer)),
  plane,
  faults: lessonFaults,
  challenge,
};
