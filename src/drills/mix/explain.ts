/** What happened and why, in words, computed from the prediction. */
import { hueName } from '../../colour/hue.js';
import { hueDifference } from '../../colour/lab.js';
import { type ColourReading, readColour } from '../../colour/reading.js';
import { colourInWords } from '../../colour/words.js';
import { loadsFromParts, PAPER, predict } from '../../pigments/index.js';
import { IDEAS } from '../ideas.js';
import { leftBy, runsWords, swallowedByAll } from '../spectrum-words.js';
import type { ChromaResult, HueResult, ValueResult } from '../types.js';
import { type Choice, type Outcome, pigmentOf, recipeReflectance } from './candidates.js';
import { type MixDrill, touchRatio } from './schema.js';
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

const ACROSS_DEG = 110;
const NEAR_DEG = 60;

/** Chroma below which a paint is a black, grey or near-neutral earth rather than a colour. */
export const NEUTRAL_PAINT_CHROMA = 12;

/** The second paint alone, at the strength of the drill's wash. */
export function secondAlone(choice: Choice, strength: number): ColourReading {
  return readColour(
    predict(loadsFromParts([{ pigment: pigmentOf(choice.second), parts: 1 }], strength), 'puddle'),
  );
}

/** Signed degrees from the start to the second paint round the CIELAB wheel; undefined when either is a neutral. */
export function wheelAngle(start: ColourReading, second: ColourReading): number | undefined {
  if (start.chroma < 5 || second.chroma < NEUTRAL_PAINT_CHROMA) return undefined;
  return hueDifference(start.hue, second.hue);
}

/** "1:4", or "a puddle"-less words for a ratio that is not one of the touches. */
function ratioWords(ratio: number, drill: MixDrill): string {
  return drill.amounts.find((touch) => touchRatio(touch) === ratio) ?? `1:${(1 / ratio).toFixed(1)}`;
}

const WAY_WORDS = {
  puddle: 'stirred in',
  glaze: 'glazed over',
  strokes: 'laid as strokes beside it',
} as const;

/** Short words for a choice: "alizarin crimson 1:4, stirred in". */
export function choiceLabel(drill: MixDrill, choice: Choice): string {
  const way = drill.ways.length > 1 ? `, ${WAY_WORDS[choice.way]}` : '';
  const strength = drill.strengths.length > 1 ? `, strength ${choice.strength}` : '';
  return `${pigmentOf(choice.second).name} ${ratioWords(choice.ratio, drill)}${way}${strength}`;
}

function steps(gap: number): string {
  return `${gap.toFixed(1)} step${Math.abs(gap) >= 0.95 && Math.abs(gap) < 1.05 ? '' : 's'}`;
}

function valueLine({ after, before, asked, verdict, tooCloseToCall }: ValueResult): string {
  const moved = after - before;
  const change = `Value went ${steps(Math.abs(moved))} ${moved >= 0 ? 'darker' : 'lighter'}, to step ${after.toFixed(1)}`;
  if (tooCloseToCall)
    return `${change}: a hair outside ${asked[0]}-${asked[1]}, too close to call, so it counts.`;
  if (verdict === 'good') return `${change}: inside the ${asked[0]}-${asked[1]} that was asked.`;
  const gap = after < asked[0] ? asked[0] - after : after - asked[1];
  return `${change}: ${steps(gap)} too ${after < asked[0] ? 'light' : 'dark'} for the ${asked[0]}-${asked[1]} that was asked.`;
}

function chromaLine(
  { before, after, asked, kept, shadingLine, tooCloseToCall, verdict }: ChromaResult,
  bright: boolean,
): string {
  const share = `Chroma went from ${before.toFixed(0)} to ${after.toFixed(0)}: ${Math.round(kept * 100)} % kept`;
  if (tooCloseToCall) return `${share}, on the edge of what was asked; too close to call, so it counts.`;
  if (!bright) {
    if (verdict === 'good') return `${share}, inside the ${asked[0]}-${asked[1]} that was asked.`;
    return after > asked[1]
      ? `${share}; ${asked[1]} at most was asked, so it is still ${(after - asked[1]).toFixed(0)} too bright.`
      : `${share}; at least ${asked[0]} was asked, so it went ${(asked[0] - after).toFixed(0)} too dull.`;
  }
  const line = `a shade of the same colour at this value has ${shadingLine.toFixed(0)}`;
  return verdict === 'good'
    ? `${share}; ${line}, so it still reads as colour.`
    : `${share}; ${line}, so this has gone dull.`;
}

function wheelLine({ drill, outcome, solved: { start } }: Findings): string {
  const { choice } = outcome;
  const second = secondAlone(choice, drill.start.strength);
  const name = pigmentOf(choice.second).name;
  if (choice.second in drill.start.paints)
    return `${name} is the paint you began with: only the strength changed, so the hue stays close.`;
  if (second.chroma < NEUTRAL_PAINT_CHROMA) {
    return `${name} is close to neutral itself (chroma ${second.chroma.toFixed(0)}): it swallows every part of the light alike, and chroma falls with value.`;
  }
  const angle = wheelAngle(start, second);
  if (angle === undefined) return `The start is nearly neutral, so ${name} sets the hue.`;
  const degrees = `${Math.abs(angle).toFixed(0)}°`;
  const towards = hueName(start.hue + Math.sign(angle) * Math.min(60, Math.abs(angle)));
  if (Math.abs(angle) <= NEAR_DEG) {
    return `${name} lies ${degrees} round the wheel towards ${towards}: a neighbour, so the two keep each other’s colour.`;
  }
  if (Math.abs(angle) < ACROSS_DEG)
    return `${name} lies ${degrees} round the wheel, about a quarter turn: some colour is lost.`;
  return `${name} lies ${degrees} away, across the wheel: each swallows what the other sends back, and the colour goes.`;
}

function lightLine({ drill, outcome }: Findings): string | undefined {
  const { choice } = outcome;
  if (choice.second in drill.start.paints) return undefined;
  const first = recipeReflectance(drill.start);
  const second = predict(
    loadsFromParts([{ pigment: pigmentOf(choice.second), parts: 1 }], drill.start.strength),
    'puddle',
  );
  const both = runsWords(swallowedByAll([first, second], PAPER.reflectance));
  const left = runsWords(leftBy(outcome.reflectance));
  if (left === '') return undefined;
  return both === ''
    ? `The two share no part of the light that both swallow; the mixture sends back mostly ${left}.`
    : `Both swallow ${both}; the mixture sends back mostly ${left}.`;
}

function bestLine({ drill, outcome, solved, mark }: Findings): string {
  const { best } = solved;
  const label = choiceLabel(drill, best.outcome.choice);
  const { step, chroma } = best.outcome.colour;
  if (choiceLabel(drill, outcome.choice) === label) return 'Nothing on this tray does it better.';
  const gain = chroma - outcome.colour.chroma;
  const why =
    mark >= 95
      ? 'as good by the mark'
      : drill.goal.chroma === 'bright' && gain > 2
        ? `${gain.toFixed(0)} more chroma`
        : Math.abs(step - outcome.colour.step) > 0.5
          ? `${steps(Math.abs(step - outcome.colour.step))} ${step > outcome.colour.step ? 'darker' : 'lighter'}`
          : 'nearer to what was asked';
  return `Best on this tray: ${label}, step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}: ${why}.`;
}

/** The explanation, in the order: what it gives, value, chroma, hue, which way round, which light, cohesion, the best, what next. */
export function explain(findings: Findings): string[] {
  const { drill, outcome, value, chroma, hue, idea } = findings;
  const lines = [
    `${choiceLabel(drill, outcome.choice)} gives ${colourInWords(outcome.colour.lab)}.`,
    valueLine(value),
    chromaLine(chroma, drill.goal.chroma === 'bright'),
  ];
  if (hue !== undefined && hue.verdict !== 'good') {
    const turned = Math.abs(hueDifference(hue.asked.near, hue.after)).toFixed(0);
    lines.push(
      `The hue stands ${turned}° from where it should be; ${hue.asked.within}° was allowed. It reads as ${hueName(hue.after)}.`,
    );
  }
  lines.push(wheelLine(findings));
  const light = lightLine(findings);
  if (light !== undefined) lines.push(light);
  if (isNewPaint(drill, outcome.choice.second)) {
    lines.push(
      `${pigmentOf(outcome.choice.second).name} is new to this painting: a paint that is nowhere else stands apart, so it costs 8 marks.`,
    );
  }
  lines.push(bestLine(findings));
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  if (next !== undefined) lines.push(next);
  return lines;
}
