/** Value, chroma and hue of a result, each judged on its own and told in one short row: nothing else tells these figures. */
import { hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
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
  /** The answer's own swatch says of which part it is, behind a comma: "yours, near roof". */
  readonly swatches?: readonly { readonly label: string }[];
}

export interface JudgedRow {
  readonly part: 'value' | 'chroma' | 'hue';
  readonly verdict: Verdict;
  readonly text: string;
}

/** "4.2 → 5.4, 1.2 darker, as asked"; of one part among several where it is: "near roof 5.4, as asked". */
function valueText(
  { before, after, asked, verdict, tooCloseToCall }: ValueResult,
  part: string | undefined,
  voice: Voice,
): string {
  const at = stepText(after, voice);
  const is = part === undefined ? `${stepText(before, voice)} → ${at}` : `${part} ${at}`;
  const band = bandText(asked, voice);
  if (tooCloseToCall) return `${is}, just off ${band}: too close to call`;
  const moved = asShown(after) - asShown(before);
  if (verdict !== 'good') {
    const light = after < asked[0];
    // Steps count alike on both scales, so the gap between the written figures does as well.
    const edge = asShown(light ? asked[0] : asked[1]);
    return `${is}, ${Math.abs(edge - asShown(after)).toFixed(1)} too ${light ? 'light' : 'dark'} for ${band}`;
  }
  if (part !== undefined) return `${is}, as asked`;
  if (Math.abs(moved) < 0.05) return `${is}, held, as asked`;
  return `${is}, ${Math.abs(moved).toFixed(1)} ${moved > 0 ? 'darker' : 'lighter'}, as asked`;
}

/** "53 → 38"; of a rise that it is one, never a share kept. */
function chromaMoved({ before, after }: ChromaResult, rise: string): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  return Number(to) > Number(from) ? `${from} → ${to}, ${rise}` : `${from} → ${to}`;
}

/** Told by what the light does. */
function shadeText({ after, asked, shadingLine, verdict, tooCloseToCall }: ChromaResult): string {
  const line = `light leaves ${shadingLine.toFixed(0)}`;
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
  const band = low <= 0 ? `at most ${high} asked` : `${low} to ${high} asked`;
  if (tooCloseToCall) return `just off ${low <= 0 ? high : `${low} to ${high}`}: too close to call`;
  if (verdict === 'good') return 'as asked';
  const is = Number(after.toFixed(0));
  return after > asked[1]
    ? `${Math.max(1, is - high)} too bright; ${band}`
    : `${Math.max(1, low - is)} too dull; ${band}`;
}

function chromaText(chroma: ChromaResult, aim: Aim | undefined): string {
  // A band that ends nowhere asks for as much as can be had.
  const isOpen = !Number.isFinite(chroma.asked[1]) || chroma.asked[1] >= 120;
  if (aim === 'shade' && !isOpen) return `${chromaMoved(chroma, 'brighter')}: ${shadeText(chroma)}`;
  const rise = chroma.tooCloseToCall ? 'brighter' : 'brighter than before';
  return `${chromaMoved(chroma, rise)}, ${isOpen ? richText(chroma) : bandedText(chroma)}`;
}

/** The next hue by name on the way that a colour has gone: "yellow green" of a yellow that went towards green. */
function hueBeyond(from: number, to: number): string {
  const way = Math.sign(hueDifference(from, to)) || 1;
  let at = to;
  while (hueName(at) === hueName(to)) at += way;
  return hueName(at);
}

/** By names first: "orange → red, 31° round; 25° is allowed". */
function hueText({ before, after, asked, turned, verdict }: HueResult, { chroma, aim }: Judged): string {
  if (chroma !== undefined && chroma.after < NO_HUE_CHROMA && aim !== 'lean')
    return 'nearly grey: no hue to speak of';
  const name = hueName(after);
  const wanted = hueName(asked.near);
  const start = chroma !== undefined && chroma.before < NO_HUE_CHROMA ? 'grey' : hueName(before);
  // From where it came is said where it had to stay there.
  const from = start === name || start !== wanted ? '' : `${start} → `;
  const is = aim === 'lean' ? `leans to ${name}` : `${from}${name}`;
  if (verdict === 'good' && (turned < 5 || name === wanted))
    return `${is}, ${start === wanted && from === '' ? 'held' : 'as asked'}`;
  const allowed = `${asked.within.toFixed(0)}° is allowed`;
  if (verdict !== 'good' && turned < asked.within + 1)
    return `${is}, just past the ${asked.within.toFixed(0)}° allowed`;
  const by = `${turned.toFixed(0)}°`;
  if (name === wanted) return `${is}, ${by} towards ${hueBeyond(asked.near, after)}; ${allowed}`;
  if (start === wanted && aim !== 'lean') return `${is}, ${by} round; ${allowed}`;
  return verdict === 'good'
    ? `${is}, ${by} off ${wanted}; ${allowed}`
    : `${is}, not ${wanted}: ${by} off, ${allowed}`;
}

/** One row for each part that was judged. */
export function judgedRows(judged: Judged, voice: Voice): JudgedRow[] {
  const { value, chroma, hue, aim, swatches } = judged;
  const part = swatches
    ?.map(({ label }) => /^yours, (.*)$/.exec(label)?.[1])
    .find((name) => name !== undefined);
  const said = (text: string): string => toVoice(text, voice);
  return [
    ...(value === undefined
      ? []
      : [{ part: 'value', verdict: value.verdict, text: said(valueText(value, part, voice)) } as const]),
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
