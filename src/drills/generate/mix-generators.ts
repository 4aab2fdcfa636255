/** Generators of the families that are made of mix drills. */
import { readColour } from '../../colour/reading.js';
import { recipeReflectance } from '../mix/candidates.js';
import { MIX_RULES, planMix } from './mix-plan.js';
import { SCENES } from './scene.js';
import type { Generator } from './types.js';

function generatorOf(family: string): Generator {
  const rules = MIX_RULES[family];
  const scene = SCENES[family];
  if (rules === undefined || scene === undefined) throw new RangeError(`no rules for ${family}`);
  return ({ level, palette, avoid }, draw) => {
    const plan = planMix(palette, level, rules, draw);
    if (plan === undefined || Object.keys(plan.start.paints).every((id) => avoid.includes(id)))
      return undefined;
    const { hint, ...words } = scene(readColour(recipeReflectance(plan.start)), plan, draw);
    // The last level is cold: no hint.
    return { kind: 'mix', ...words, ...(level < 5 ? { hint } : {}), ...plan };
  };
}

export const MIX_GENERATORS: Readonly<Record<string, Generator>> = Object.fromEntries(
  Object.keys(MIX_RULES).map((family) => [family, generatorOf(family)]),
);
