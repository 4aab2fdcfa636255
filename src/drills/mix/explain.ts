/** What happened and why, in words, computed from the prediction. */
import { hueName } from '../../colour/hue.js';
import { hueDifference } from '../../colour/lab.js';
import { colourInWords } from '../../colour/words.js';
import { IDEAS } from '../ideas.js';
import { asShown } from '../laid/words.js';
import type { ChromaResult, HueResult, ValueResult } from '../types.js';
import { type Outcome, pigmentOf } from './candidates.js';
import { capitalised, choiceLabel } from './label.js';
import { lightLine, wheelLine } from './reason.js';
import type { MixDrill } from './schema.js';
import { COHESION_COST, NO_HUE_CHROMA } from './score.js';
import { isNewPaint, type Solved } from './search.js';

/** What grading found, for the words. */
export interface Findings {
  readonly drill: MixDrill;
  readonly outcome: Outcome;
  readonly solved: Solved;
  readonly value: ValueResult;
  readonly chroma: ChromaResult;
  readonly hue: HueResult | undefined;
  readonly idea: string | undefined;
  readonly mark: number;
}

/** "1 step", "0.4 steps". */
function steps(gap: number): string {
  const shown = gap.toFixed(1);
  return shown === '1.0' ? '1 step' : `${shown} steps`;
}

function valueLine({ before, after, asked, verdict, tooCloseToCall }: ValueResult): string {
  const moved = Math.abs(asShown(after) - asShown(before));
  const change =
    moved < 0.05
      ? `Value stays at step ${after.toFixed(1)}`
      : `Value: ${steps(moved)} ${after > before ? 'darker' : 'lighter'}, to step ${after.toFixed(1)}`;
  const band = `${asked[0]} to ${asked[1]}`;
  if (tooCloseToCall) return `${change}, at the edge of ${band}: too close to call, so it counts.`;
  if (verdict === 'good') return `${change}, within the ${band} asked.`;
  return after < asked[0]
    ? `${change}: ${steps(asked[0] - asShown(after))} too light for the ${band} asked.`
    : `${change}: ${steps(asShown(after) - asked[1])} too dark for the ${band} asked.`;
}

function chromaChange({ before, after, kept }: ChromaResult): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  if (from === to) return `Chroma stays at ${to}`;
  if (after > before) return `Chroma rises from ${from} to ${to}`;
  return before < NO_HUE_CHROMA
    ? `Chroma: ${from} to ${to}`
    : `Chroma: ${from} to ${to}, ${Math.round(100 * kept)} % kept`;
}

function bandLine(chroma: ChromaResult): string {
  const { after, asked, verdict, tooCloseToCall } = chroma;
  const band = asked[0] === 0 ? `${asked[1]} at most` : `${asked[0]} to ${asked[1]}`;
  const change = chromaChange(chroma);
  if (tooCloseToCall)
    return `${change}, at the edge of what was asked (${band}): too close to call, so it counts.`;
  if (verdict === 'good') return `${change}, as asked (${band}).`;
  return after > asked[1]
    ? `${change}: ${Math.max(1, Math.round(after - asked[1]))} too bright (${band} was asked).`
    : `${change}: ${Math.max(1, Math.round(asked[0] - after))} too dull (${band} was asked).`;
}

function brightLine(chroma: ChromaResult): string {
  const { shadingLine: line, best, dullest, verdict, tooCloseToCall } = chroma;
  const measure = `a plain shade of the same colour would have ${line.toFixed(0)} here`;
  const tray =
    dullest === undefined || best - dullest < 5
      ? ''
      : ` At the value asked this tray runs from ${dullest.toFixed(0)} to ${best.toFixed(0)}.`;
  const change = `${chromaChange(chroma)}; ${measure}`;
  if (tooCloseToCall) return `${change}. Whether that is bright enough is too close to call, so it counts.`;
  const onLine = chroma.after >= line - 0.5;
  if (verdict === 'good')
    return onLine ? `${change}, so nothing was lost.` : `${change}, so it still reads as bright.`;
  if (onLine) return `${change}, so nothing was lost, but far more could be had.${tray}`;
  return verdict === 'fair'
    ? `${change}, so it has dulled a little.${tray}`
    : `${change}, so it has gone dull.${tray}`;
}

function hueLine({ after, asked, verdict }: HueResult, chroma: ChromaResult): string | undefined {
  if (verdict === 'good') return undefined;
  const turned = Math.abs(hueDifference(asked.near, after)).toFixed(0);
  const reads = chroma.after < NO_HUE_CHROMA ? 'leans to' : 'reads as';
  return `The hue ${reads} ${hueName(after)}, ${turned}° from what was asked; ${asked.within}° is allowed.`;
}

function bestLine({ drill, outcome, solved, mark }: Findings): string {
  const { best } = solved;
  const label = choiceLabel(drill, best.outcome.choice);
  if (choiceLabel(drill, outcome.choice) === label) return 'Nothing on this tray does it better.';
  if (mark >= best.mark) return `Just as good by the mark: ${label}.`;
  const { step, chroma } = best.outcome.colour;
  const end = `${capitalised(label)} does it best: step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}.`;
  return isNewPaint(drill, outcome.choice.second) && !isNewPaint(drill, best.outcome.choice.second)
    ? `${end} The painting has that paint already.`
    : end;
}

/** In the order: what it gives, value, chroma, hue, which way round, which light, cohesion, the best, what to try next. */
export function explain(findings: Findings): string[] {
  const { drill, outcome, value, chroma, hue, idea } = findings;
  const { choice } = outcome;
  const lines: (string | undefined)[] = [
    `${capitalised(choiceLabel(drill, choice))} gives ${colourInWords(outcome.colour.lab)}.`,
    valueLine(value),
    drill.goal.chroma === 'bright' ? brightLine(chroma) : bandLine(chroma),
    hue === undefined ? undefined : hueLine(hue, chroma),
    wheelLine(drill, outcome, findings.solved.start),
    lightLine(drill, outcome),
  ];
  if (isNewPaint(drill, choice.second)) {
    const name = capitalised(pigmentOf(choice.second).name);
    lines.push(
      `${name} is nowhere else in this painting, so it will stand apart: that costs up to ${COHESION_COST} marks.`,
    );
  }
  lines.push(bestLine(findings));
  if (idea !== undefined) lines.push(IDEAS.get(idea)?.instead);
  return lines.filter((line) => line !== undefined);
}
