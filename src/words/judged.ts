/** Value, chroma and hue of a result, each judged on its own and told in one short row: nothing else tells these figures. */
import { hueName } from '../colour/hue.js';
import {
  type Aim,
  type ChromaResult,
  type HueResult,
  NO_HUE_CHROMA,
  type ValueResult,
  type Verdict,
} from '../judgement/index.js';
import { asShown } from './laid.js';
import { bandText, stepText, toVoice, type Voice } from './voice.js';

/** The judged parts of a result, as far as it has them. */
export interface Judged {
  readonly value?: ValueResult;
  readonly chroma?: ChromaResult;
  readonly hue?: HueResult;
  readonly aim?: Aim;
}

export interface JudgedRow {
  readonly part: 'value' | 'chroma' | 'hue';
  readonly verdict: Verdict;
  readonly text: string;
}

/** "4.2 → 5.4, 1.2 darker, as asked". */
function valueText({ before, after, asked, verdict, tooCloseToCall }: ValueResult, voice: Voice): string {
  const is = `${stepText(before, voice)} → ${stepText(after, voice)}`;
  const band = bandText(asked, voice);
  if (tooCloseToCall) return `${is}, at the edge of ${band}: too close to call`;
  const moved = asShown(after) - asShown(before);
  if (verdict !== 'good') {
    const light = after < asked[0];
    // Steps count alike on both scales, so the gap between the written figures does as well.
    const edge = asShown(light ? asked[0] : asked[1]);
    return `${is}, ${Math.abs(edge - asShown(after)).toFixed(1)} too ${light ? 'light' : 'dark'} for ${band}`;
  }
  if (Math.abs(moved) < 0.05) return `${is}, held, as asked`;
  return `${is}, ${Math.abs(moved).toFixed(1)} ${moved > 0 ? 'darker' : 'lighter'}, as asked`;
}

/** "53 → 38", "22 → 30, brighter than before". */
function chromaMoved({ before, after }: ChromaResult): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  return Number(to) > Number(from) ? `${from} → ${to}, brighter than before` : `${from} → ${to}`;
}

/** Told by what the light does. */
function shadeText({ after, asked, shadingLine, verdict, tooCloseToCall }: ChromaResult): string {
  const line = `the light alone leaves ${shadingLine.toFixed(0)}`;
  if (tooCloseToCall) return `too close to call; ${line}`;
  if (verdict === 'good') return `the same thing in shade; ${line}`;
  return after > asked[1] ? `the shade glows; ${line}` : `gone to mud; ${line}`;
}

/** Told by what the tray can do. */
function richText({ after, asked, shadingLine, verdict, tooCloseToCall }: ChromaResult): string {
  const from = `rich from ${asked[0].toFixed(0)}`;
  if (tooCloseToCall) return `too close to call; ${from}`;
  if (verdict === 'good') return after >= shadingLine - 0.5 ? 'rich' : 'still a colour';
  if (after >= shadingLine - 0.5) return `none lost, yet more could be had; ${from}`;
  return `${verdict === 'fair' ? 'dulled a little' : 'gone dull'}; ${from}`;
}

/** Told by the band asked. */
function bandedText({ after, asked, verdict, tooCloseToCall }: ChromaResult): string {
  const [low, high] = asked.map((edge) => Number(edge.toFixed(0))) as [number, number];
  const band = low <= 0 ? `at most ${high}` : `${low} to ${high}`;
  if (tooCloseToCall) return `at the edge of ${band}: too close to call`;
  if (verdict === 'good') return 'as asked';
  const is = Number(after.toFixed(0));
  return after > asked[1]
    ? `${Math.max(1, is - high)} too bright for ${band}`
    : `${Math.max(1, low - is)} too dull for ${band}`;
}

function chromaText(chroma: ChromaResult, aim: Aim | undefined): string {
  // A band that ends nowhere asks for as much as can be had.
  const isOpen = !Number.isFinite(chroma.asked[1]) || chroma.asked[1] >= 120;
  const text = isOpen ? richText(chroma) : aim === 'shade' ? shadeText(chroma) : bandedText(chroma);
  return `${chromaMoved(chroma)}${aim === 'shade' && !isOpen ? ': ' : ', '}${text}`;
}

/** By names first: "orange → red, 31° round; 25° is allowed". */
function hueText({ before, after, asked, turned, verdict }: HueResult, { chroma, aim }: Judged): string {
  if (chroma !== undefined && chroma.after < NO_HUE_CHROMA && aim !== 'lean')
    return 'nearly grey: no hue to speak of';
  const name = hueName(after);
  const wanted = hueName(asked.near);
  const wasGrey = chroma !== undefined && chroma.before < NO_HUE_CHROMA;
  const isHeld = Math.abs(asked.near - before) < 0.5;
  const from = wasGrey || hueName(before) === name ? '' : `${hueName(before)} → `;
  const is = aim === 'lean' ? `leans to ${name}` : `${from}${name}`;
  const away = isHeld
    ? `${turned.toFixed(0)}° round`
    : name === wanted
      ? `${turned.toFixed(0)}° from the middle of it`
      : `${turned.toFixed(0)}° from the ${wanted} asked`;
  if (verdict === 'good') {
    if (turned < 5) return `${is}, ${isHeld ? 'held' : 'as asked'}`;
    return isHeld && from !== '' ? `${is}, ${away}, as allowed` : `${is}, as asked`;
  }
  if (turned < asked.within + 1) return `${is}, just past the ${asked.within.toFixed(0)}° allowed`;
  return `${is}, ${away}; ${asked.within.toFixed(0)}° is allowed`;
}

/** One row for each part that was judged. @param arrow sign between before and after, where the terminal has no → */
export function judgedRows(judged: Judged, voice: Voice, arrow = '→'): JudgedRow[] {
  const { value, chroma, hue, aim } = judged;
  const said = (text: string): string => toVoice(text, voice).replaceAll('→', arrow);
  return [
    ...(value === undefined
      ? []
      : [{ part: 'value', verdict: value.verdict, text: said(valueText(value, voice)) } as const]),
    ...(chroma === undefined
      ? []
      : [{ part: 'chroma', verdict: chroma.verdict, text: said(chromaText(chroma, aim)) } as const]),
    ...(hue === undefined
      ? []
      : [{ part: 'hue', verdict: hue.verdict, text: said(hueText(hue, judged)) } as const]),
  ];
}

/** A row as a line: "value good: 4.2 → 5.4, 1.2 darker, as asked". */
export const rowLine = ({ part, verdict, text }: JudgedRow): string => `${part} ${verdict}: ${text}`;
