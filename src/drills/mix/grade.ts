/** Grades an answer to a mix drill. */
import { evidenceOf } from '../../pigments/index.js';
import type { Answer, Grade, LaidPart, Verdict } from '../types.js';
import { type Outcome, outcomeOf, pigmentOf, recipeReflectance } from './candidates.js';
import { choiceLabel, explain, NEUTRAL_PAINT_CHROMA, secondAlone, wheelAngle } from './explain.js';
import { answerOf, choiceOf } from './fields.js';
import type { MixDrill } from './schema.js';
import { judgeChroma, judgeHue, judgeValue } from './score.js';
import { isNewPaint, type Solved, scoreOutcome, solved } from './search.js';

/** The mistaken idea behind a poor answer: the colour's fault first, since it names the choice of paint, then value's. */
function ideaOf(
  drill: MixDrill,
  outcome: Outcome,
  known: Solved,
  verdicts: { value: Verdict; chroma: Verdict; hue: Verdict },
): string | undefined {
  const { start } = known;
  const { choice, colour } = outcome;
  const second = secondAlone(choice, drill.start.strength);
  const angle = wheelAngle(start, second);
  if (verdicts.chroma !== 'good') {
    const asked = drill.goal.chroma;
    const tooDull = asked === 'bright' || colour.chroma < asked[0];
    if (tooDull) {
      if (second.chroma < NEUTRAL_PAINT_CHROMA && !(choice.second in drill.start.paints))
        return 'took-a-neutral';
      if (angle !== undefined && Math.abs(angle) > 90) return 'went-across';
      return verdicts.value === 'good'
        ? 'too-much'
        : colour.step < drill.goal.value[0]
          ? 'too-light'
          : 'too-dark';
    }
    if (angle !== undefined && Math.abs(angle) < 90) return 'stayed-near';
    return choice.ratio < known.best.outcome.choice.ratio ? 'too-little' : 'too-much';
  }
  if (verdicts.hue !== 'good') return 'hue-slipped';
  if (verdicts.value !== 'good') return colour.step < drill.goal.value[0] ? 'too-light' : 'too-dark';
  return isNewPaint(drill, choice.second) ? 'brought-a-new-paint' : undefined;
}

function overall(mark: number): Verdict {
  return mark >= 85 ? 'good' : mark >= 55 ? 'fair' : 'off';
}

/** @throws RangeError when the answer does not fit the drill's fields */
export function gradeMix(drill: MixDrill, answer: Answer): Grade {
  const known = solved(drill);
  const outcome = outcomeOf(drill.start, choiceOf(drill, answer));
  const evidence = evidenceOf(outcome.loads);
  const value = judgeValue(known.start, outcome.colour, drill, evidence).result;
  const chroma = judgeChroma(known.start, outcome.colour, drill, evidence, known.reach).result;
  const hue = judgeHue(known.start, outcome.colour, drill)?.result;
  const { mark } = scoreOutcome(drill, known.start, outcome, known.reach);
  const idea = ideaOf(drill, outcome, known, {
    value: value.verdict,
    chroma: chroma.verdict,
    hue: hue?.verdict ?? 'good',
  });
  const { best } = known;
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
    laid: laidParts(drill, outcome),
    evidence,
  };
}

function laidParts(drill: MixDrill, { choice, loads }: Outcome): LaidPart[] {
  const total = Object.values(drill.start.paints).reduce((sum, parts) => sum + parts, 0);
  return loads.map(({ pigment, load }, index) => {
    const first = (drill.start.paints[pigment.id] ?? 0) / total;
    const isSecond =
      choice.way === 'glaze' ? index === loads.length - 1 : pigment.id === pigmentOf(choice.second).id;
    const fromStart = choice.way === 'glaze' && index === loads.length - 1 ? 0 : first;
    return { pigment: pigment.id, parts: fromStart + (isSecond ? choice.ratio : 0), load };
  });
}
