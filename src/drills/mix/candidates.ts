/** Every answer that a mix drill allows, and what each gives. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import type { Spectrum } from '../../optics/index.js';
import {
  findPigment,
  type Load,
  loadsFromParts,
  type Part,
  type Pigment,
  predict,
  predictLayers,
  type Way,
} from '../../pigments/index.js';
import type { Recipe } from '../types.js';
import type { MixDrill } from './schema.js';

/** A mixture decided on: the second paint, its parts to one of the first, how it is laid and how strong. */
export interface Choice {
  readonly second: string;
  readonly ratio: number;
  readonly way: Way;
  readonly strength: number;
}

/** A choice and the colour it gives. */
export interface Outcome {
  readonly choice: Choice;
  readonly loads: readonly Load[];
  readonly reflectance: Spectrum;
  readonly colour: ColourReading;
}

/** @throws RangeError when there is no such paint */
export function pigmentOf(id: string): Pigment {
  const pigment = findPigment(id);
  if (pigment === undefined) throw new RangeError(`no paint is called "${id}"`);
  return pigment;
}

/** Parts of a recipe, scaled so that they add up to one. */
function startParts(recipe: Recipe): Part[] {
  const total = Object.values(recipe.paints).reduce((sum, parts) => sum + parts, 0);
  return Object.entries(recipe.paints).map(([id, parts]) => ({
    pigment: pigmentOf(id),
    parts: parts / total,
  }));
}

/** Loads of the wash that the drill starts from. */
export function startLoads(recipe: Recipe): Load[] {
  return loadsFromParts(startParts(recipe), recipe.strength);
}

/** Colour of a recipe as it lies dry on the paper. */
export function recipeReflectance(recipe: Recipe): Spectrum {
  return predict(startLoads(recipe), recipe.way ?? 'puddle');
}

/** One load for each paint, in the order first met. */
function merged(loads: readonly Load[]): Load[] {
  const sums = new Map<string, Load>();
  for (const { pigment, load } of loads) {
    sums.set(pigment.id, { pigment, load: (sums.get(pigment.id)?.load ?? 0) + load });
  }
  return [...sums.values()];
}

/**
 * Loads of a choice.
 *
 * Puddle and strokes: one mixture of the first colour and the second paint at the chosen strength.
 * Glaze: the first wash is dry and stays as it is; the second paint goes over it as a wash of its own, its strength
 * the chosen strength times its amount, so that 1:1 is a full second wash and 1:32 a breath of colour.
 */
export function choiceLoads(start: Recipe, { second, ratio, way, strength }: Choice): Load[] {
  const pigment = pigmentOf(second);
  if (way === 'glaze') {
    return [...startLoads(start), ...loadsFromParts([{ pigment, parts: 1 }], strength * ratio)];
  }
  return merged(loadsFromParts([...startParts(start), { pigment, parts: ratio }], strength));
}

/** What a choice gives. */
export function outcomeOf(start: Recipe, choice: Choice): Outcome {
  const loads = choiceLoads(start, choice);
  const reflectance =
    choice.way === 'glaze'
      ? predictLayers([loads.slice(0, -1), loads.slice(-1)])
      : predict(loads, choice.way);
  return { choice, loads, reflectance, colour: readColour(reflectance) };
}

/** All choices on the drill's own scale of amounts. */
export function* allChoices(drill: MixDrill, ratios: readonly number[]): Generator<Choice> {
  for (const second of drill.tray) {
    for (const way of drill.ways) {
      for (const strength of drill.strengths) {
        for (const ratio of ratios) yield { second, ratio, way, strength };
      }
    }
  }
}
