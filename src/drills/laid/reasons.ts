/** Why laid paint looks as it does: one sentence, computed. */
import { hueName } from '../../colour/hue.js';
import { hueDifference } from '../../colour/lab.js';
import { readColour } from '../../colour/reading.js';
import { PAPER } from '../../pigments/index.js';
import { runsWords, swallowedByAll } from '../spectrum-words.js';
import { laidReflectance, paintOf, seeLaid } from './predict.js';
import type { Laid, Wash } from './types.js';
import { sentence, stepsWords } from './words.js';

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

function strongestTwo({ paints }: Wash): readonly [string, string] | undefined {
  const shares = Object.entries(paints)
    .map(([id, parts]) => ({ id, share: parts / paintOf(id).fullStrength }))
    .sort((a, b) => b.share - a.share);
  const [first, second] = shares;
  return first === undefined || second === undefined ? undefined : [first.id, second.id];
}

/** How two paints in one puddle stand to one another: around, across, or one of them neutral. */
export function pairReason(wash: Wash): string | undefined {
  const pair = strongestTwo(wash);
  if (pair === undefined) return undefined;
  const [first, second] = pair;
  const names = [paintOf(first).name, paintOf(second).name] as const;
  const angle = angleBetween(first, second, wash.strength);
  if (angle === undefined) {
    const neutral = pair.find(
      (id) => seeLaid({ paints: { [id]: 1 }, strength: wash.strength }).colour.chroma < NEUTRAL_CHROMA,
    );
    return `${sentence(paintOf(neutral ?? second).name)} is close to neutral: it swallows all parts of the light alike and takes chroma with the value.`;
  }
  const degrees = `${Math.abs(angle).toFixed(0)}°`;
  const films = pair.map((id) => laidReflectance({ paints: { [id]: 1 }, strength: wash.strength }));
  const both = runsWords(swallowedByAll(films, PAPER.reflectance));
  const light = both === '' ? '' : ` Both swallow ${both}.`;
  if (Math.abs(angle) <= NEAR_DEG) {
    return `${sentence(names[0])} and ${names[1]} stand ${degrees} apart on the wheel, neighbours: what one sends back the other lets pass.${light}`;
  }
  if (Math.abs(angle) < ACROSS_DEG) {
    return `${sentence(names[0])} and ${names[1]} stand ${degrees} apart on the wheel, about a quarter turn: some colour goes.${light}`;
  }
  return `${sentence(names[0])} and ${names[1]} stand ${degrees} apart, across the wheel: each swallows what the other sends back.${light}`;
}

function layersReason(layers: readonly Wash[]): string {
  const below = seeLaid({ layers: layers.slice(0, -1) as Wash[] }).colour;
  const all = seeLaid({ layers }).colour;
  const top = layers.at(-1) as Wash;
  const moved = all.step - below.step;
  const paint = paintOf(Object.keys(top.paints)[0] as string).name;
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
