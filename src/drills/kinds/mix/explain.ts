/** What happened and why, in words, computed from the prediction. */
import { hueName } from '../../../colour/hue.js';
import { colourInWords } from '../../../colour/words.js';
import {
  type ChromaResult,
  COHESION_COST,
  type HueResult,
  NO_HUE_CHROMA,
  type ValueResult,
} from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import { asShown, sentence, stepsWords } from '../../../words/laid.js';
import { IDEAS } from '../../ideas.js';
import { choiceLabel } from './label.js';
import { mixReason } from './reason.js';
import type { MixDrill } from './schema.js';
import { isNewPaint, type Outcome, type Solved } from './solve.js';

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

function valueLine({ before, after, asked, verdict, tooCloseToCall }: ValueResult): string {
  const moved = Math.abs(asShown(after) - asShown(before));
  const change =
    moved < 0.05
      ? `Value stays at step ${after.toFixed(1)}`
      : `Value: ${stepsWords(moved)} ${after > before ? 'darker' : 'lighter'}, to step ${after.toFixed(1)}`;
  const band = `${asked[0]} to ${asked[1]}`;
  if (tooCloseToCall) return `${change}, at the edge of ${band}: too close to call, so it counts.`;
  if (verdict === 'good') return `${change}, within the ${band} asked.`;
  return after < asked[0]
    ? `${change}: ${stepsWords(asked[0] - asShown(after))} too light for the ${band} asked.`
    : `${change}: ${stepsWords(asShown(after) - asked[1])} too dark for the ${band} asked.`;
}

function chromaChange({ before, after, kept }: ChromaResult): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  if (from === to) return `Chroma stays at ${to}`;
  if (after > before) return `Chroma rises from ${from} to ${to}, brighter than before`;
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

/** A shade is told by what light does, a rich dark by what the tray can do, the rest by the band asked. */
function chromaLine({ goal }: MixDrill, chroma: ChromaResult): string {
  if (goal.chroma !== undefined) return bandLine(chroma);
  return goal.aim === 'shade' ? shadeLine(chroma) : brightLine(chroma);
}

function shadeLine(chroma: ChromaResult): string {
  const { after, asked, shadingLine: line, verdict, tooCloseToCall } = chroma;
  const change = `${chromaChange(chroma)}; less light alone would leave ${line.toFixed(0)}`;
  if (tooCloseToCall) return `${change}: too close to call, so it counts.`;
  if (verdict === 'good') return `${change}, so it reads as the same thing in shade.`;
  return after > asked[1] ? `${change}, so the shade glows.` : `${change}, so it has gone to mud.`;
}

function hueLine({ after, asked, turned: by, verdict }: HueResult, chroma: ChromaResult): string | undefined {
  if (chroma.after < NO_HUE_CHROMA && verdict === 'good') return undefined;
  const turned = by.toFixed(0);
  if (verdict === 'good') return `Hue: ${hueName(after)}, ${turned}° from what was asked.`;
  const reads = chroma.after < NO_HUE_CHROMA ? 'leans to' : 'reads as';
  return `The hue ${reads} ${hueName(after)}, ${turned}° from what was asked; ${asked.within}° is allowed.`;
}

function bestLine(studio: Studio, { drill, outcome, solved, mark }: Findings): string {
  const { best } = solved;
  const label = choiceLabel(studio, drill, best.choice);
  if (choiceLabel(studio, drill, outcome.choice) === label) return 'Nothing on this tray does it better.';
  if (mark >= best.mark) return `Just as good by the mark: ${label}.`;
  const { step, chroma } = best.seen.colour;
  const end = `${sentence(label)} does it best: step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}.`;
  return isNewPaint(drill, outcome.choice.second) && !isNewPaint(drill, best.choice.second)
    ? `${end} The painting has that paint already.`
    : end;
}

/** In the order: what it gives, value, chroma, hue, why, cohesion, the best, what to try next. */
export function explain(studio: Studio, findings: Findings): string[] {
  const { drill, outcome, value, chroma, hue, idea } = findings;
  const { choice, seen } = outcome;
  const lines: (string | undefined)[] = [
    `${sentence(choiceLabel(studio, drill, choice))} gives ${colourInWords(seen.colour.lab)}.`,
    valueLine(value),
    chromaLine(drill, chroma),
    hue === undefined ? undefined : hueLine(hue, chroma),
    mixReason(studio, drill, outcome),
  ];
  if (isNewPaint(drill, choice.second)) {
    const name = sentence(paintOf(studio, choice.second).name);
    lines.push(
      `${name} is nowhere else in this painting, so it will stand apart: that costs up to ${COHESION_COST} marks.`,
    );
  }
  lines.push(bestLine(studio, findings));
  if (idea !== undefined) lines.push(IDEAS.get(idea)?.instead);
  return lines.filter((line) => line !== undefined);
}
