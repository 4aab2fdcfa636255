/** What a choice in a mix drill lays on the paper, and the colour that gives. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import { fuseAreas, type Spectrum } from '../../optics/index.js';
import {
  findPigment,
  type Load,
  loadsFromParts,
  type Part,
  type Pigment,
  predict,
  predictLayers,
  type Way,
} from '../../paints/index.js';
import type { LaidPart, Recipe } from '../types.js';
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
  readonly laid: readonly LaidPart[];
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
export function startParts(recipe: Recipe): Part[] {
  const total = Object.values(recipe.paints).reduce((sum, parts) => sum + parts, 0);
  return Object.entries(recipe.paints).map(([id, parts]) => ({
    pigment: pigmentOf(id),
    parts: parts / total,
  }));
}

/** Volume of the parts counted in masstone strokes: what they share the strength of a puddle by. */
export function volumeOf(parts: readonly Part[]): number {
  return parts.reduce((sum, { pigment, parts: amount }) => sum + amount / pigment.fullStrength, 0);
}

/** Share of the paper that strokes of the second paint take: its share of the paint, by volume. */
export function strokeShare(first: readonly Part[], second: Part): number {
  const own = second.parts / second.pigment.fullStrength;
  return own / (volumeOf(first) + own);
}

/** Colour of a recipe as it lies dry on the paper. */
export function recipeReflectance(recipe: Recipe): Spectrum {
  return predict(loadsFromParts(startParts(recipe), recipe.strength), recipe.way ?? 'puddle');
}

function asLaid(parts: readonly Part[], loads: readonly Load[], share = 1): LaidPart[] {
  return loads.map(({ pigment, load }, index) => ({
    pigment: pigment.id,
    parts: parts[index]?.parts ?? 0,
    load: load * share,
  }));
}

/** One entry for each paint, in the order first met. */
function withSecond(first: readonly Part[], second: Part): Part[] {
  if (!first.some(({ pigment }) => pigment === second.pigment)) return [...first, second];
  return first.map((part) =>
    part.pigment === second.pigment ? { ...part, parts: part.parts + second.parts } : part,
  );
}

/**
 * What a choice gives.
 *
 * - puddle: one mixture of the first colour and the second paint at the chosen strength;
 * - strokes: the first colour and the second paint side by side, each at the chosen strength, sharing the paper as they
 *   share the paint;
 * - glaze: the first wash is dry and stays as it is; the second paint goes over it as a wash of its own, its strength
 *   the chosen strength times its amount, so that 1:1 is a full second wash and 1:32 a breath of colour.
 */
export function outcomeOf(start: Recipe, choice: Choice): Outcome {
  const { ratio, way, strength } = choice;
  const first = startParts(start);
  const second: Part = { pigment: pigmentOf(choice.second), parts: ratio };
  const finish = (laid: LaidPart[], reflectance: Spectrum): Outcome => ({
    choice,
    laid,
    reflectance,
    colour: readColour(reflectance),
  });
  if (way === 'glaze') {
    const below = loadsFromParts(first, start.strength);
    const above = loadsFromParts([second], strength * ratio);
    return finish([...asLaid(first, below), ...asLaid([second], above)], predictLayers([below, above]));
  }
  if (way === 'strokes') {
    const share = strokeShare(first, second);
    const one = loadsFromParts(first, strength);
    const other = loadsFromParts([second], strength);
    return finish(
      [...asLaid(first, one, 1 - share), ...asLaid([second], other, share)],
      fuseAreas([predict(one, 'puddle'), predict(other, 'puddle')], [1 - share, share]),
    );
  }
  const all = withSecond(first, second);
  const loads = loadsFromParts(all, strength);
  return finish(asLaid(all, loads), predict(loads, 'puddle'));
}

/** A second paint, a way and a strength: along it only the amount is left to choose. */
export type Line = Omit<Choice, 'ratio'>;

/** All lines that a drill opens. */
export function linesOf({ tray, ways, strengths }: MixDrill): Line[] {
  return tray.flatMap((second) =>
    ways.flatMap((way) => strengths.map((strength) => ({ second, way, strength }))),
  );
}
