/** Value, chroma and hue of a result, each judged on its own and told in one short row: nothing else tells these figures. */
import { hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
import {
  type Aim,
  type ChromaResult,
  type HueResult,
  NEUTRAL_CHROMA,
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

/** What is outside by less than the prediction may be off: by how much, or that it is at the very edge. */
function closeText(gap: number, isUnder: boolean, band: string, digits: 0 | 1, isNamed = false): string {
  const by = gap.toFixed(digits);
  if (Number(by) === 0) return `at the edge of ${band}`;
  // A name, or a band that names its end, is long: the row has to stay one line.
  const why = isNamed || band.length > 12 ? '' : 'within the error, ';
  return `${by} ${isUnder ? 'under' : 'over'} ${band}: ${why}it counts`;
}

/** Steps by which a value may move and still be told as held. */
const HELD_STEPS = 0.3;

/** "4.2 → 5.4, 1.2 darker, as asked"; of one part among several where it is: "near roof 5.4, as asked". */
function valueText(
  { before, after, asked, verdict, tooCloseToCall }: ValueResult,
  part: string | undefined,
  voice: Voice,
): string {
  const at = stepText(after, voice);
  const is = part === undefined ? `${stepText(before, voice)} → ${at}` : `${part} ${at}`;
  const band = bandText(asked, voice);
  const light = after < asked[0];
  // Steps count alike on both scales, so the gap between the written figures does as well.
  const gap = Math.abs(asShown(light ? asked[0] : asked[1]) - asShown(after));
  if (tooCloseToCall)
    return `${is}, ${closeText(gap, light === (voice.scale === 'paper-first'), band, 1, part !== undefined)}`;
  if (verdict !== 'good') return `${is}, ${gap.toFixed(1)} too ${light ? 'light' : 'dark'} for ${band}`;
  if (part !== undefined) return `${is}, as asked`;
  const moved = asShown(asShown(after) - asShown(before));
  const isToHold = before >= asked[0] && before <= asked[1];
  if (moved === 0 || (isToHold && Math.abs(moved) <= HELD_STEPS)) return `${is}, held, as asked`;
  const by = `${Math.abs(moved).toFixed(1)} ${moved > 0 ? 'darker' : 'lighter'}`;
  return `${is}, ${by}${isToHold ? `, still in ${band}` : ', as asked'}`;
}

/** "53 → 38"; of a rise that it is one, never a share kept. */
function chromaMoved({ before, after }: ChromaResult, rise: string): string {
  const [from, to] = [before.toFixed(0), after.toFixed(0)];
  return Number(to) > Number(from) ? `${from} → ${to}${rise}` : `${from} → ${to}`;
}

/** C* under which a shade that lost too much is mud; above it is only too dull. */
const MUD_CHROMA = 20;

/** C* by which a shade may miss what the light leaves and still be told as the same thing. */
const SAME_CHROMA = 4;

/** Told by what the light does: what is over it and no fault is said to be over. */
function shadeText({ after, asked, shadingLine, verdict, tooCloseToCall }: ChromaResult): string {
  const line = `light leaves ${shadingLine.toFixed(0)}`;
  const isOver = after > asked[1];
  if (tooCloseToCall && !isOver) return `as dull as a shade may be; ${line}`;
  if (tooCloseToCall) return `over by ${Math.max(1, Math.round(after - asked[1]))}, it counts; ${line}`;
  if (verdict === 'good' && after > shadingLine + SAME_CHROMA) return `brighter, but no glow yet; ${line}`;
  if (verdict === 'good' && after < shadingLine - SAME_CHROMA) return `a little dull, still a shade; ${line}`;
  if (verdict === 'good') return `the same thing in shade; ${line}`;
  if (isOver) return `the shade glows; ${line}`;
  return `${after < MUD_CHROMA ? 'gone to mud' : 'too dull for a shade'}; ${line}`;
}

/** Told by what the tray can do. */
function richText({ after, asked, shadingLine, verdict, tooCloseToCall }: ChromaResult): string {
  if (tooCloseToCall) return 'rich enough, by a hair';
  if (verdict === 'good') return after >= shadingLine - 0.5 ? 'rich' : 'rich enough';
  const lost = after >= shadingLine - 0.5 ? '' : verdict === 'fair' ? 'dulled a little; ' : 'gone dull; ';
  return `${lost}${Math.max(1, Math.round(asked[0] - after))} short of rich`;
}

/** Told by the band asked. */
function bandedText({ after, asked, verdict, tooCloseToCall }: ChromaResult): string {
  const [low, high] = asked.map((edge) => Number(edge.toFixed(0))) as [number, number];
  const band = low <= 0 ? `at most ${high} asked` : `${low} to ${high} asked`;
  const is = Number(after.toFixed(0));
  const isOver = after > asked[1];
  const gap = isOver ? is - high : low - is;
  if (tooCloseToCall) return closeText(gap, !isOver, low <= 0 ? `${high}` : `${low} to ${high}`, 0);
  if (verdict === 'good') return 'as asked';
  return `${Math.max(1, gap)} too ${isOver ? 'bright' : 'dull'}; ${band}`;
}

function chromaText(chroma: ChromaResult, aim: Aim | undefined): string {
  // A band that ends nowhere asks for as much as can be had.
  const isOpen = !Number.isFinite(chroma.asked[1]) || chroma.asked[1] >= 120;
  if (aim === 'shade' && !isOpen) return `${chromaMoved(chroma, '')}: ${shadeText(chroma)}`;
  // "Over" says by itself that it rose.
  const rise = chroma.tooCloseToCall ? '' : ', more colour';
  return `${chromaMoved(chroma, rise)}, ${isOpen ? richText(chroma) : bandedText(chroma)}`;
}

/** The next hue by name on the way that a colour goes: "yellow green" of a yellow that turns towards green. */
export function hueBeyond(from: number, to: number): string {
  const way = Math.sign(hueDifference(from, to)) || 1;
  let at = to;
  while (hueName(at) === hueName(to)) at += way;
  return hueName(at);
}

/** Degrees under which a hue is told as held, or as the one that was asked. */
const SAME_HUE_DEG = 5;

/** From the start's hue where that had to stay, else from the hue asked: "orange → red, 31° round; 25° is allowed". */
function hueText({ before, after, asked, turned, verdict }: HueResult, { chroma, aim }: Judged): string {
  const by = `${turned.toFixed(0)}°`;
  const within = `${asked.within.toFixed(0)}°`;
  const isPast = turned < asked.within + 1;
  const isGood = verdict === 'good';
  if (chroma !== undefined && chroma.after < NEUTRAL_CHROMA && aim !== 'lean')
    return `nearly grey: ${isGood ? 'no hue to speak of' : 'the hue asked is gone'}`;
  const name = hueName(after);
  const start = chroma !== undefined && chroma.before < NEUTRAL_CHROMA ? 'grey' : hueName(before);
  if (aim === 'lean' || Math.abs(hueDifference(before, asked.near)) >= 0.5) {
    const is = aim === 'lean' ? `leans to ${name}` : name;
    if (isGood) return `${is}, ${by === '0°' ? 'as asked' : `${by} from what was asked`}`;
    return isPast
      ? `${is}, just over ${within} from what was asked`
      : `${is}, ${by} from what was asked; ${within} allowed`;
  }
  const is = start === name ? name : `${start} → ${name}`;
  if (isGood && turned < SAME_HUE_DEG && start === name) return `${is}, held`;
  const way = start === name ? `towards ${hueBeyond(before, after)}` : 'round';
  return `${is}, ${by} ${way}; ${!isGood && isPast ? `just past the ${within} allowed` : `${within} is allowed`}`;
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
