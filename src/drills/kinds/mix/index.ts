/** The mix kind: see schema.ts. */

import { chromaAsked } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { Answer, Kind, PlanePoint, PlaneView } from '../../types.js';
import { answerOf, choiceOf, howsOf, howWords, laidBy, mixFields } from './choice.js';
import { gradeMix, markMix } from './grade.js';
import { temptingChoices } from './idea.js';
import { choiceLabel } from './label.js';
import { lessonFaults } from './lesson.js';
import { type MixDrill, USUAL_TOUCHES } from './schema.js';
import { challenge, type Outcome, outcomeOf, solved, startOf } from './solve.js';
import { mixGoal } from './told.js';
import { mixWhy } from './why.js';

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

/** Most paints of a tray whose places mean nothing. */
const MOST_MIXED = 6;

export const mixKind = (studio: Studio): Kind<MixDrill> => ({
  kind: 'mix',
  fields: (drill) => mixFields(studio, drill),
  given: (drill) => [{ label: 'start', reflectance: startOf(studio, drill).reflectance }],
  goalLines: (drill) => mixGoal(studio, drill),
  grade: (drill, answer) => gradeMix(studio, drill, answer),
  mark: (drill, answer) => markMix(studio, drill, answer),
  best: (drill) => answerOf(studio, drill, solved(studio, drill).best.choice),
  laid: (drill, answer) => laidBy(drill, choiceOf(studio, drill, answer)),
  tempting: (drill) => temptingChoices(studio, drill).map((choice) => answerOf(studio, drill, choice)),
  label: (drill, answer) => choiceLabel(studio, drill, choiceOf(studio, drill, answer)),
  // A longer tray is a palette, whose paints are found by their places.
  reordered: (drill, order) =>
    drill.tray.length > MOST_MIXED ? drill : { ...drill, tray: order(drill.tray) },
  why: (drill, answer) => mixWhy(studio, drill, answer),
  plane: (drill, answer) => plane(studio, drill, answer),
  faults: (drill) => lessonFaults(studio, drill),
  challenge: (drill, draw, tries) => challenge(studio, drill, draw, tries),
});
