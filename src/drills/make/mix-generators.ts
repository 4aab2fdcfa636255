/** Generators of the families that are made of mix drills. */
import { seeLaid } from '../../washes/index.js';
import { MIX_RULES, planMix } from './mix-plan.js';
import { SCENES } from './scene.js';
import type { Generator } from './types.js';

function generatorOf(family: string): Generator {
  const rules = MIX_RULES[family];
  const scene = SCENES[family];
  if (rules === undefined || scene === undefined) throw new RangeError(`no rules for ${family}`);
  return (studio, { level, palette, avoid }, draw) => {
    const plan = planMix(studio, palette, level, rules, draw);
    if (plan === undefined || Object.keys(plan.start.paints).every((id) => avoid.includes(id)))
      return undefined;
    const { hint, ...words } = scene(studio, seeLaid(studio, plan.start).colour, plan, draw);
    // The last level is cold: no hint.
    return { kind: 'mix', ...words, ...(level < 5 ? { hint } : {}), ...plan };
  };
}

export const MIX_GENERATORS: Readonly<Record<string, Generator>> = Object.fromEntries(
  Object.keys(MIX_RULES).map((family) => [family, generatorOf(family)]),
);
