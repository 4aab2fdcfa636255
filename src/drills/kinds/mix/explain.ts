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
import { IDEAS } from '../../../words/ideas.js';
import { asShown, sentence, stepsWords } from '../../../words/laid.js';
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
  const is = `Value: step ${after.toFixed(1)}`;
  const band = `${asked[0]} to ${asked[1]}`;
  if (tooCloseToCall) return `${is}, at the edge of ${band}: too close to call, so it counts.`;
  if (verdict === 'good')
    return moved < 0.05
      ? `${is}, as before, and as asked.`
      : `${is}, ${stepsWords(moved)} ${after > before ? 'darker' : 'lighter'}, as asked.`;
  const gap = after < asked[0] ? asked[0] - asShown(after) : asShown(after) - asked[1];
  return `${is}, ${stepsWords(gap)} too ${after < asked[0] ? 'light' : 'dark'} for ${band}.`;
}

/** "Chroma: 17, from 53". A rise is brighter than before, never more than all of it. */
function chromaIs({ before, after }: ChromaResult): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  if (from === to) return `Chroma: ${to}, as before`;
  return after > before ? `Chroma: ${to}, brighter than before (${from})` : `Chroma: ${to}, from ${from}`;
}

function bandLine(chroma: ChromaResult): string {
  const { after, asked, verdict, tooCloseToCall } = chroma;
  const is = chromaIs(chroma);
  if (tooCloseToCall) return `${is}, at the edge of what was asked: too close to call, so it counts.`;
  if (verdict === 'good') return `${is}, as asked.`;
  return after > asked[1]
    ? `${is}, ${Math.max(1, Math.round(after - asked[1]))} too bright.`
    : `${is}, ${Math.max(1, Math.round(asked[0] - after))} too dull.`;
}

function brightLine(chroma: ChromaResult): string {
  const { shadingLine: line, verdict, tooCloseToCall } = chroma;
  const is = `${chromaIs(chroma)}; less light alone would leave ${line.toFixed(0)}`;
  if (tooCloseToCall) return `${is}. Whether that is rich enough is too close to call, so it counts.`;
  const onLine = chroma.after >= line - 0.5;
  if (verdict === 'good') return onLine ? `${is}: nothing was lost.` : `${is}: it still reads as a colour.`;
  if (onLine) return `${is}: nothing was lost, but far more could be had.`;
  return verdict === 'fair' ? `${is}: it has dulled a little.` : `${is}: it has gone dull.`;
}

/** A shade is told by what light does, a rich dark by what the tray can do, the rest by the band asked. */
function chromaLine({ goal }: MixDrill, chroma: ChromaResult): string {
  if (goal.chroma !== undefined) return bandLine(chroma);
  return goal.aim === 'shade' ? shadeLine(chroma) : brightLine(chroma);
}

function shadeLine(chroma: ChromaResult): string {
  const { after, asked, shadingLine: line, verdict, tooCloseToCall } = chroma;
  const change = `${chromaIs(chroma)}; less light alone would leave ${line.toFixed(0)}`;
  if (tooCloseToCall) return `${change}: too close to call, so it counts.`;
  if (verdict === 'good') return `${change}: the same thing in shade.`;
  return after > asked[1] ? `${change}: the shade glows.` : `${change}: it has gone to mud.`;
}

function hueLine({ after, asked, turned, verdict }: HueResult, chroma: ChromaResult): string {
  const where = `${turned.toFixed(0)}° from what was asked`;
  if (verdict === 'good') return `Hue: ${hueName(after)}, ${turned < 5 ? 'as asked' : where}.`;
  const name = hueName(after);
  const leans = chroma.after < NO_HUE_CHROMA ? 'leans to' : 'has become';
  const reads = name === hueName(asked.near) ? `is still ${name}, but` : `${leans} ${name},`;
  return turned < asked.within + 1
    ? `Hue: it ${reads} just past the ${asked.within}° allowed.`
    : `Hue: it ${reads} ${where}; ${asked.within}° is allowed.`;
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
