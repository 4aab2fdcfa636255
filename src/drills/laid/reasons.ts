/** Why laid paint looks as it does: one sentence, computed. */
import { hueName } from '../../colour/hue.js';
import { hueDifference } from '../../colour/lab.js';
import { readColour } from '../../colour/reading.js';
import { PAPER } from '../../paints/index.js';
import { runsWords, swallowedByAll } from '../spectrum-words.js';
import { laidReflectance, seeLaid } from './predict.js';
import type { Laid, Wash } from './types.js';
import { namesOf, sentence, stepsWords } from './words.js';

/** Chroma below which a paint counts as a black, a grey or a near-neutral earth. */
export const NEUTRAL_CHROMA = 12;
/** Hue angles between neighbours, and between paints that lie across the wheel from one another, degrees. */
export const NEAR_DEG = 60;
export const ACROSS_DEG = 110;

/** Degrees between two paints on the CIELAB wheel, both alone at the strength given; undefined when one is a neutral. */
export function angleBetween(first: string, second: string, strength: number): number | undefined {
  const alone = (id: string) => seeLaid({ paints: { [id]: 1 }, strength }).colour;
  const a = alone(first);
  const b = alone(second);
  return a.chroma < NEUTRAL_CHROMA || b.chroma < NEUTRAL_CHROMA ? undefined : hueDifference(a.hue, b.hue);
}

/** How the last paint of a puddle stands to the rest of it: around, across, or one of them neutral. */
export function pairReason(wash: Wash): string | undefined {
  const entries = Object.entries(wash.paints);
  const last = entries.at(-1);
  if (entries.length < 2 || last === undefined) return undefined;
  const { strength } = wash;
  const rest: Wash = { paints: Object.fromEntries(entries.slice(0, -1)), strength };
  const second: Wash = { paints: { [last[0]]: 1 }, strength };
  const names = [namesOf(rest), namesOf(second)] as const;
  const [a, b] = [seeLaid(rest), seeLaid(second)];
  if (a.colour.chroma < NEUTRAL_CHROMA || b.colour.chroma < NEUTRAL_CHROMA) {
    const neutral = b.colour.chroma < NEUTRAL_CHROMA ? names[1] : names[0];
    return `${sentence(neutral)} is close to neutral: it swallows all parts of the light alike and takes chroma with the value.`;
  }
  const angle = Math.abs(hueDifference(a.colour.hue, b.colour.hue));
  const both = runsWords(swallowedByAll([a.reflectance, b.reflectance], PAPER.reflectance));
  const light = both === '' ? '' : ` Both swallow ${both}.`;
  const left = Math.round((200 * seeLaid(wash).colour.chroma) / (a.colour.chroma + b.colour.chroma));
  const where = `${sentence(names[0])} and ${names[1]} stand ${angle.toFixed(0)}° apart on the wheel`;
  const end = `${left} % of their mean chroma is left.${light}`;
  if (angle <= NEAR_DEG) {
    return `${where}, neighbours: what one sends back the other lets pass, and ${end}`;
  }
  if (angle < ACROSS_DEG) return `${where}, neither neighbours nor opposites: ${end}`;
  return `${where}, opposites: each swallows what the other sends back, and ${end}`;
}

function layersReason(layers: readonly Wash[]): string {
  const below = seeLaid({ layers: layers.slice(0, -1) as Wash[] }).colour;
  const all = seeLaid({ layers }).colour;
  const top = layers.at(-1) as Wash;
  const moved = all.step - below.step;
  const paint = namesOf(top);
  if (moved < -0.1) {
    return `The last layer, ${paint}, covers: it sends back light of its own, so the passage gets ${stepsWords(moved)} lighter over what lies below.`;
  }
  const chroma = all.chroma - below.chroma;
  const change =
    Math.abs(chroma) < 2
      ? 'leaves the chroma'
      : `${chroma > 0 ? 'adds' : 'takes'} ${Math.abs(chroma).toFixed(0)} chroma`;
  return `The last layer, ${paint}, filters what comes back from below: ${stepsWords(moved)} darker, and it ${change}.`;
}

function strokesReason(laid: Laid): string {
  const { chroma, hue } = readColour(laidReflectance(laid));
  return chroma < NEUTRAL_CHROMA
    ? 'The eye averages the light of the strokes, and the hues cancel to nearly grey.'
    : `The eye averages the light of the strokes: lighter than stirred, and no stronger than the two between them; it reads as ${hueName(hue)}.`;
}

/** One sentence on why it looks so, or undefined for one paint alone in one wash. */
export function reasonFor(laid: Laid): string | undefined {
  if ('layers' in laid) return layersReason(laid.layers);
  if ('strokes' in laid) return strokesReason(laid);
  if (Object.keys(laid.paints).length < 2) return undefined;
  if (laid.way === 'strokes') return strokesReason(laid);
  if (laid.way === 'glaze') {
    const puddle = seeLaid({ paints: laid.paints, strength: laid.strength }).colour;
    const glazed = seeLaid(laid).colour;
    return `As a glaze the light goes down through both paints and up again: ${stepsWords(glazed.step - puddle.step)} ${glazed.step >= puddle.step ? 'darker' : 'lighter'} than the same paint stirred.`;
  }
  return pairReason(laid);
}
