/** Grades an answer to a mix drill. */
import type { Answer, Grade } from '../types.js';
import { outcomeOf, recipeReflectance } from './candidates.js';
import { explain } from './explain.js';
import { answerOf, choiceOf } from './fields.js';
import { ideaOf } from './idea.js';
import { choiceLabel } from './label.js';
import type { MixDrill } from './schema.js';
import { judgeChroma, judgeHue, judgeValue, overall } from './score.js';
import { evidenceWith, isNewPaint, scoreColour, solved } from './search.js';

/** @throws RangeError when the answer does not fit the drill's fields */
export function gradeMix(drill: MixDrill, answer: Answer): Grade {
  const known = solved(drill);
  const { start, reach, best } = known;
  const outcome = outcomeOf(drill.start, choiceOf(drill, answer));
  const { second } = outcome.choice;
  const evidence = evidenceWith(drill, second);
  const value = judgeValue(start, outcome.colour, drill, evidence).result;
  const chroma = {
    ...judgeChroma(start, outcome.colour, drill, evidence, reach).result,
    best: best.outcome.colour.chroma,
  };
  const hue = judgeHue(start, outcome.colour, drill)?.result;
  const rating = { evidence, isNew: isNewPaint(drill, second) };
  const { mark } = scoreColour(drill, start, outcome.colour, rating, reach);
  const idea = ideaOf(drill, outcome, known, {
    value: value.verdict,
    chroma: chroma.verdict,
    hue: hue?.verdict ?? 'good',
  });
  return {
    mark,
    verdict: overall(mark),
    value,
    chroma,
    ...(hue === undefined ? {} : { hue }),
    explanation: explain({ drill, outcome, solved: known, value, chroma, hue, idea, mark }),
    ...(idea === undefined ? {} : { idea }),
    best: {
      answer: answerOf(drill, best.outcome.choice),
      label: choiceLabel(drill, best.outcome.choice),
      mark: best.mark,
    },
    swatches: [
      { label: 'start', reflectance: recipeReflectance(drill.start) },
      { label: 'yours', reflectance: outcome.reflectance },
      { label: 'best', reflectance: best.outcome.reflectance },
    ],
    laid: outcome.laid,
    evidence,
  };
}
