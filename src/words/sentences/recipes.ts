/** What a recipe does, what it costs, and how far out of reach a wish is. */
import { listWords } from '../../text/list-words.js';
import type { Way } from '../../washes/index.js';
import { percent, ratioWords, sentence, stepsWords, strengthWords, thinWords } from '../laid.js';

/** A paint with how much of it. */
export interface Dose {
  readonly name: string;
  /** Stirred in: parts to one of the first paint of the wash; glazed: strength; strokes: share of the paper. */
  readonly amount: number;
  /** The wash holds it already. */
  readonly isOwn: boolean;
}

/** What to do, to a wash that is there. */
export interface StepFigures {
  readonly way: Way;
  /** The first paint of the wash. */
  readonly base: string;
  readonly doses: readonly Dose[];
  /** Of strokes. */
  readonly strength: number;
  readonly thin: number;
}

const more = ({ name, isOwn }: Dose): string => (isOwn ? `more ${name}` : name);

function stepWords({ way, base, doses, strength, thin }: StepFigures): string {
  if (way === 'puddle') {
    const stir =
      doses.length === 0
        ? []
        : [
            `stir in ${listWords(doses.map((dose) => `${more(dose)} ${ratioWords(dose.amount)}`))} (parts to one of ${base}${doses.some(({ name }) => name === base) ? ' that is there' : ''})`,
          ];
    const water =
      thin === 1 ? [] : [`${stir.length === 0 ? 'water alone' : 'then water'}: ${thinWords(thin)}`];
    return `${sentence([...stir, ...water].join(', '))}.`;
  }
  if (way === 'glaze')
    return `Let it dry, then glaze ${doses.map(({ name, amount }) => `${name} at ${strengthWords(amount)}`).join(', let that dry, then ')}.`;
  return `Beside the wash lay strokes of ${listWords(
    doses.map(({ name, amount }) => `${name} on ${strengthWords(amount)} of the paper`),
  )}, ${strengthWords(strength)} strong.`;
}

/** What to make up from nothing. */
export interface MadeFigures {
  readonly way: Way;
  /** Puddle: parts. Glaze: strength of each film. Strokes: share of the paper. */
  readonly doses: readonly { readonly name: string; readonly amount: number }[];
  readonly strength: number;
  /** "thick as milk"; absent where no such word fits. */
  readonly thickness?: string | undefined;
}

function madeWords({ way, doses, strength, thickness }: MadeFigures): string {
  if (way === 'glaze')
    return `Lay ${doses.map(({ name, amount }) => `${name} at ${strengthWords(amount)}`).join(', let it dry, then glaze ')}.`;
  if (way === 'strokes')
    return `Lay strokes side by side: ${listWords(
      doses.map(({ name, amount }) => `${name} on ${strengthWords(amount)}`),
    )} of the paper, ${strengthWords(strength)} strong.`;
  const [only] = doses;
  const paints =
    doses.length === 1
      ? (only?.name ?? '')
      : listWords(doses.map(({ name, amount }) => `${name} ${Number(amount.toPrecision(2))}`));
  const thick = thickness === undefined ? '' : `, ${thickness}`;
  return `Make up ${paints}${doses.length === 1 ? '' : ' (parts of paint)'}: ${strengthWords(strength)} strong${thick}.`;
}

/** What came of the colour. */
export interface CostFigures {
  /** Steps darker than the start, negative for lighter. */
  readonly darker: number;
  /** C* before and after. */
  readonly chroma: readonly [number, number];
  /** Degrees of hue turned, and towards what; absent of a grey. */
  readonly turned?: { readonly byDeg: number; readonly to: string } | undefined;
}

/** Less than this is no change: steps, a share of the chroma, degrees. */
const NONE = { steps: 0.05, share: 0.03, deg: 5 } as const;

function costWords({ darker, chroma: [before, after], turned }: CostFigures): string {
  const value =
    Math.abs(darker) < NONE.steps
      ? 'as light as before'
      : `${stepsWords(darker)} ${darker > 0 ? 'darker' : 'lighter'}`;
  const share = before > 0.5 ? after / before : 1;
  const figures = `from ${before.toFixed(0)} to ${after.toFixed(0)}`;
  const chroma =
    share > 1 + NONE.share
      ? `chroma gained, ${figures}`
      : share >= 1 - NONE.share
        ? `all of the chroma kept, ${figures}`
        : `${percent(share)} of the chroma kept, ${percent(1 - share)} lost, ${figures}`;
  const hue =
    turned === undefined
      ? ''
      : turned.byDeg < NONE.deg
        ? '; the hue holds'
        : `; the hue turns ${turned.byDeg.toFixed(0)}° to ${turned.to}`;
  return `${sentence(value)}; ${chroma}${hue}.`;
}

/** What is missing, each as what the nearest is: "0.6 steps too light". */
export interface MissFigures {
  /** Steps darker than what was asked, negative for lighter. */
  readonly steps: number;
  /** C* stronger than what was asked. */
  readonly chroma: number;
  /** Degrees off the hue asked. */
  readonly hueDeg: number;
}

function missWords({ steps, chroma, hueDeg }: MissFigures): string {
  const parts = [
    ...(Math.abs(steps) < NONE.steps ? [] : [`${stepsWords(steps)} too ${steps > 0 ? 'dark' : 'light'}`]),
    ...(Math.abs(chroma) < 0.5
      ? []
      : [`${Math.abs(chroma).toFixed(0)} of chroma too ${chroma > 0 ? 'strong' : 'dull'}`]),
    ...(Math.abs(hueDeg) < 0.5 ? [] : [`${Math.abs(hueDeg).toFixed(0)}° off in hue`]),
  ];
  return parts.length === 0 ? 'a little off in all' : listWords(parts);
}

export const RECIPES = {
  'recipe-step': stepWords,
  'recipe-made': madeWords,
  'recipe-cost': costWords,
  'recipe-near': ({ deltaE00 }: { readonly deltaE00: number }): string =>
    `Colour difference ${deltaE00.toFixed(1)} from what was asked: ${
      deltaE00 <= 1
        ? 'by the prediction no difference that is seen'
        : deltaE00 <= 3
          ? 'a near match'
          : 'seen as another colour'
    }.`,
  'recipe-out': (figures: MissFigures & { readonly deltaE00?: number | undefined }): string =>
    `Out of reach. The nearest is ${missWords(figures)}${
      figures.deltaE00 === undefined ? '' : `: a colour difference of ${figures.deltaE00.toFixed(1)}`
    }.`,
  /** At this value even the brightest is duller than less light alone would leave it. */
  'recipe-not-rich': ({ chroma, shade }: { readonly chroma: number; readonly shade: number }): string =>
    `Out of reach. The brightest at that value has chroma ${chroma.toFixed(0)}; a mere shade would have ${shade.toFixed(0)}.`,
  'recipe-unsure': ({ names }: { readonly names: readonly string[] }): string =>
    `How strong a tube of ${listWords(names)} is, is assumed: try the amount first.`,
};
