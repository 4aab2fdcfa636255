/** Grades an answer to a mix drill. */

import {
  judgeChroma,
  judgeHue,
  judgeValue,
  NO_HUE_CHROMA,
  overall,
  scoreColour,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade } from '../../types.js';
import { bestChange } from './change.js';
import { answerOf, choiceOf } from './choice.js';
import { mistakeOf } from './idea.js';
import { choiceLabel } from './label.js';
import type { MixDrill } from './schema.js';
import { outcomeOf, ratingOf, solved, startOf } from './solve.js';
import { mixTold } from './told.js';

/** The mark alone. @throws InputError when the answer does not fit the drill's fields */
export function markMix(studio: Studio, drill: MixDrill, answer: Answer): number {
  const { choice, seen } = outcomeOf(studio, drill, choiceOf(studio, drill, answer));
  return scoreColour(solved(studio, drill), seen.colour, ratingOf(studio, drill, choice.second)).mark;
}

/** @throws InputError when the answer does not fit the drill's fields */
export function gradeMix(studio: Studio, drill: MixDrill, answer: Answer): Grade {
  const known = solved(studio, drill);
  const { best } = known;
  const outcome = outcomeOf(studio, drill, choiceOf(studio, drill, answer));
  const { colour, reflectance } = outcome.seen;
  const rating = ratingOf(studio, drill, outcome.choice.second);
  const value = judgeValue(known, colour, rating.evidence).result;
  const chroma = {
    ...judgeChroma(known, colour, rating.evidence).result,
    best: best.seen.colour.chroma,
  };
  // A colour that is nearly grey has no hue to report, unless its lean is the point.
  const isGrey = colour.chroma < NO_HUE_CHROMA && drill.goal.aim !== 'lean';
  const hue = isGrey ? undefined : judgeHue(known, colour)?.result;
  const { mark } = scoreColour(known, colour, rating);
  const verdicts = { value: value.verdict, chroma: chroma.verdict, hue: hue?.verdict ?? 'good' };
  const idea = mistakeOf(studio, drill, outcome, known, verdicts);
  const change =
    idea === undefined || idea === 'brought-a-new-paint'
      ? undefined
      : bestChange(studio, drill, outcome, mark, { verdicts, chroma: chroma.asked });
  return {
    mark,
    verdict: overall(mark),
    value,
    chroma,
    ...(hue === undefined ? {} : { hue }),
    told: mixTold(studio, { drill, outcome, solved: known, idea, change, mark }),
    aim: drill.goal.aim,
    ...(idea === undefined ? {} : { idea }),
    best: {
      answer: answerOf(studio, drill, best.choice),
      label: choiceLabel(studio, drill, best.choice),
      mark: best.mark,
    },
    swatches: [
      { label: 'start', reflectance: startOf(studio, drill).reflectance },
      { label: 'yours', reflectance },
      { label: 'best', reflectance: best.seen.reflectance },
    ],
    laid: laidParts(outcome.seen),
    evidence: rating.evidence,
  };
}
