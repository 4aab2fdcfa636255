/** The mix kind: see schema.ts. */
import { hueName } from '../../../colour/hue.js';
import { brightBand, COHESION_COST } from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import type { Answer, Kind, PlanePoint, PlaneView } from '../../types.js';
import { answerOf, choiceOf, howsOf, howWords, mixFields } from './choice.js';
import { gradeMix } from './grade.js';
import { choiceLabel, firstWords, fixedWords } from './label.js';
import { lessonFaults } from './lesson.js';
import { type MixDrill, TOUCHES, type Touch } from './schema.js';
import { challenge, type Outcome, outcomeOf, solved, startOf } from './solve.js';

function goalLines(studio: Studio, drill: MixDrill): string[] {
  const start = startOf(studio, drill).colour;
  const [light, dark] = drill.goal.value;
  const lines = [
    firstWords(studio, drill),
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
    const names = drill.painting.map((id) => paintOf(studio, id).name).join(', ');
    lines.push(`painting: has ${names}; any other paint costs ${COHESION_COST} marks`);
  }
  const fixed = fixedWords(studio, drill);
  if (fixed !== '') lines.push(`fixed: ${fixed}`);
  return lines;
}

function point({ seen }: Outcome, label: string): PlanePoint {
  return { step: seen.colour.step, chroma: seen.colour.chroma, label };
}

/** The touches that a path of one amount is drawn through: where the amount is fixed, all of them. */
const ALL_TOUCHES: readonly Touch[] = TOUCHES.slice(0, 6);

function plane(studio: Studio, drill: MixDrill, answer: Answer): PlaneView {
  const choice = choiceOf(studio, drill, answer);
  const known = solved(studio, drill);
  const along = howsOf(drill).filter(
    ({ way, strength }) => way === choice.how.way && strength === choice.how.strength,
  );
  const path =
    along.length > 1 || choice.how.way !== 'puddle'
      ? along
      : howsOf({ ...drill, amounts: ALL_TOUCHES, glazes: [], strokes: [] });
  const asked =
    drill.goal.chroma === 'bright'
      ? ([brightBand(known, known.best.seen.colour)[0], 120] as const)
      : drill.goal.chroma;
  return {
    start: { step: known.start.step, chroma: known.start.chroma, label: 'start' },
    path: path.map((how) => point(outcomeOf(studio, drill, { ...choice, how }), howWords(how))),
    yours: point(outcomeOf(studio, drill, choice), 'yours'),
    best: point(known.best, 'best'),
    goal: { step: drill.goal.value, chroma: asked },
  };
}

export const mixKind = (studio: Studio): Kind<MixDrill> => ({
  kind: 'mix',
  fields: (drill) => mixFields(studio, drill),
  given: (drill) => [{ label: 'start', reflectance: startOf(studio, drill).reflectance }],
  goalLines: (drill) => goalLines(studio, drill),
  grade: (drill, answer) => gradeMix(studio, drill, answer),
  best: (drill) => answerOf(studio, drill, solved(studio, drill).best.choice),
  label: (drill, answer) => choiceLabel(studio, drill, choiceOf(studio, drill, answer)),
  plane: (drill, answer) => plane(studio, drill, answer),
  faults: (drill) => lessonFaults(studio, drill),
  challenge: (drill, draw, tries) => challenge(studio, drill, draw, tries),
});
