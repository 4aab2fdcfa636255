/** What is said of a recipe: what to do, what it costs, and why it looks so. */
import { hueName } from '../colour/hue.js';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import { NO_HUE_CHROMA } from '../judgement/index.js';
import { paintOf, type Studio } from '../paints/index.js';
import { consistency, type FirstWash, type Laid, partsToFirst, timesLibrary } from '../washes/index.js';
import { asShown } from '../words/laid.js';
import { reasonFor } from '../words/reasons.js';
import { type Finding, tell } from '../words/tell.js';
import type { Recipe, Recipes } from './types.js';

const nameOf = (studio: Studio, id: string): string => paintOf(studio, id).name;

/** What is brought to a wash that is there: what was laid beyond it. */
function brought(laid: Laid): readonly { readonly id: string; readonly amount: number }[] {
  const alone = (paints: Readonly<Record<string, number>>): string => Object.keys(paints)[0] ?? '';
  if ('layers' in laid)
    return laid.layers.slice(1).map(({ paints, strength }) => ({ id: alone(paints), amount: strength }));
  if ('strokes' in laid)
    return laid.strokes.slice(1).map(({ paints, share }) => ({ id: alone(paints), amount: share }));
  return partsToFirst(laid)
    .slice(Object.keys(laid.paints).length - 1)
    .map(({ id, parts }) => ({ id, amount: parts }));
}

function stepOf(studio: Studio, { laid, way, thin }: Recipe, from: FirstWash): Finding {
  const doses = brought(laid).map(({ id, amount }) => ({
    name: nameOf(studio, id),
    amount,
    isOwn: id in from.paints,
  }));
  const strength = 'strokes' in laid ? (laid.strokes[1]?.strength ?? 0) : 0;
  const base = nameOf(studio, Object.keys(from.paints)[0] ?? '');
  return tell('recipe-step', { way, base, doses, strength, thin });
}

function madeOf(studio: Studio, { laid, way, colour }: Recipe): Finding {
  const first = (paints: Readonly<Record<string, number>>): string =>
    nameOf(studio, Object.keys(paints)[0] ?? '');
  if ('layers' in laid)
    return tell('recipe-made', {
      way,
      doses: laid.layers.map(({ paints, strength }) => ({ name: first(paints), amount: strength })),
      strength: 0,
    });
  if ('strokes' in laid)
    return tell('recipe-made', {
      way,
      doses: laid.strokes.map(({ paints, share }) => ({ name: first(paints), amount: share })),
      strength: laid.strokes[0]?.strength ?? 0,
    });
  const { paints, strength } = laid;
  return tell('recipe-made', {
    way,
    doses: Object.entries(paints).map(([id, amount]) => ({ name: nameOf(studio, id), amount })),
    strength,
    thickness: consistency(strength / timesLibrary(studio, paints), colour.step),
  });
}

function costOf(start: ColourReading, colour: ColourReading): Finding {
  const hasHue = Math.min(start.chroma, colour.chroma) >= NO_HUE_CHROMA;
  return tell('recipe-cost', {
    darker: asShown(colour.step) - asShown(start.step),
    chroma: [start.chroma, colour.chroma],
    turned: hasHue
      ? { byDeg: Math.abs(hueDifference(start.hue, colour.hue)), to: hueName(colour.hue) }
      : undefined,
  });
}

/** Findings of one recipe, in the order they are said. @param from the wash that it starts from */
export function recipeTold(
  studio: Studio,
  { start, target }: Pick<Recipes, 'start' | 'target'>,
  recipe: Recipe,
  from?: FirstWash,
): Finding[] {
  const { colour, deltaE00 } = recipe;
  const unsure = recipe.parts
    .map(({ pigment }) => paintOf(studio, pigment))
    .filter(({ strengthEvidence }) => strengthEvidence === 'assumed')
    .map(({ name }) => name);
  const reason = reasonFor(studio, recipe.laid, start?.chroma);
  return [
    from === undefined ? madeOf(studio, recipe) : stepOf(studio, recipe, from),
    ...(start === undefined ? [] : [costOf(start, colour)]),
    ...(deltaE00 === undefined || target === undefined ? [] : [tell('recipe-near', { deltaE00 })]),
    ...(reason === undefined ? [] : [reason]),
    ...(unsure.length === 0 || recipe.parts.length === 1 ? [] : [tell('recipe-unsure', { names: unsure })]),
  ];
}

/** That nothing reaches what was asked, and how far the nearest comes; undefined where it is in reach. */
export function edgeTold({ edge, recipes }: Recipes): Finding | undefined {
  const [best] = recipes;
  if (edge === undefined || best === undefined) return undefined;
  if (edge.kind === 'goal' && edge.short !== undefined && edge.steps === 0)
    return tell('recipe-not-rich', { chroma: edge.short.brightest, shade: edge.short.shade });
  const { steps, chroma, hueDeg } = edge;
  return tell('recipe-out', { steps, chroma, hueDeg, deltaE00: best.deltaE00 });
}
