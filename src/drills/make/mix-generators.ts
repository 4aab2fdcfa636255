/** Generators of the families that are made of mix drills. */
import { findSubject, type Subject } from '../lexicon.js';
import { planMix } from './mix-plan.js';
import { MIX_RULES, type PlanRules } from './mix-rules.js';
import { mixScene } from './scene.js';
import type { Generator } from './types.js';

function generatorOf(family: string, rules: PlanRules): Generator {
  return (studio, wanted, draw) => {
    const { level, avoid } = wanted;
    const plan = planMix(studio, wanted, family, rules, draw);
    if (plan === undefined) return undefined;
    const words = mixScene(studio, family, plan, findSubject(plan.subject ?? '') as Subject, avoid, draw);
    if (words === undefined) return undefined;
    const { hint, ...scene } = words;
    // The last level is cold: no hint.
    // Of how little is asked only where little is not the answer.
    const ask = family === 'tinting-strength' ? { ask: 'How much of the strong paint does it take?' } : {};
    return { kind: 'mix', ...scene, ...ask, ...(level < 5 ? { hint } : {}), ...plan };
  };
}

export const MIX_GENERATORS: Readonly<Record<string, Generator>> = Object.fromEntries(
  Object.entries(MIX_RULES).map(([family, rules]) => [family, generatorOf(family, rules)]),
);
