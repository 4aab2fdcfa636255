/** Mixtures that are one decision twice: whoever has met the one has answered the other. */
import { hueDifference } from '../colour/lab.js';
import { hueAsked } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import type { FirstWash } from '../washes/index.js';
import type { Drill } from './kinds/index.js';
import type { MixDrill } from './kinds/mix/schema.js';
import { solved } from './kinds/mix/solve.js';

/** Washes as strong as each other, and goals that share so much of their values, are one task. */
const ALIKE = { strength: 0.1, steps: 0.5, hueDeg: 20 } as const;

function shares({ paints }: FirstWash): string {
  const whole = Object.values(paints).reduce((sum, part) => sum + part, 0);
  const each = Object.entries(paints).map(([id, part]) => `${id} ${(part / whole).toFixed(2)}`);
  return each.sort().join(' ');
}

const areAlike = (studio: Studio, one: MixDrill, other: MixDrill): boolean => {
  const [a, b] = [solved(studio, one), solved(studio, other)];
  const [lightest, darkest] = [one.goal.value, other.goal.value].reduce(([al, ad], [bl, bd]) => [
    Math.max(al, bl),
    Math.min(ad, bd),
  ]);
  const [hueA, hueB] = [hueAsked(a), hueAsked(b)];
  return (
    shares(one.start) === shares(other.start) &&
    Math.abs(one.start.strength - other.start.strength) < ALIKE.strength &&
    one.goal.aim === other.goal.aim &&
    darkest - lightest >= ALIKE.steps &&
    (hueA === undefined) === (hueB === undefined) &&
    (hueA === undefined ||
      hueB === undefined ||
      Math.abs(hueDifference(hueA.near, hueB.near)) < ALIKE.hueDeg) &&
    a.best.choice.second === b.best.choice.second &&
    a.best.choice.how.way === b.best.choice.how.way
  );
};

/** The id of the first drill of a list that asks the same as this one, by another id. */
export function twinOf(studio: Studio, drill: Drill, drills: readonly Drill[]): string | undefined {
  if (drill.kind !== 'mix') return undefined;
  return drills.find(
    (other) => other.kind === 'mix' && other.id !== drill.id && areAlike(studio, drill, other),
  )?.id;
}
