/** A ladder of one paint glazed over a dry wash. */
import { type Draw, pick, shuffled } from '../../chance/draw.js';
import { paintOf, type Studio } from '../../paints/index.js';
import { WATERS, washStrength } from '../../washes/index.js';
import { colourOf, nameOf, tenth, wash } from './made.js';
import { twoColours } from './things.js';
import type { DrillDraft } from './types.js';

/** A washes drill over a dry wash: one glaze for each block. */
export function glazeLadder(
  studio: Studio,
  palette: readonly string[],
  level: number,
  draw: Draw,
): DrillDraft | undefined {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [below, paint] = two;
  const over = wash(below, pick([0.05, 0.1, 0.2], draw));
  const stepAt = (water: string): number =>
    colourOf(studio, { layers: [over, wash(paint, washStrength(paintOf(studio, paint), water))] }).step;
  const some = shuffled(WATERS, draw).slice(0, 3);
  const steps = WATERS.filter((water) => some.includes(water)).map(stepAt);
  if (steps.some((step, index) => index > 0 && step - (steps[index - 1] as number) < 0.8)) return undefined;
  return {
    kind: 'washes',
    title: `Glazes of ${nameOf(studio, paint)}`.slice(0, 60),
    scene: `A passage lies dry in ${nameOf(studio, below)}. One glaze of ${nameOf(studio, paint)} goes over each part of it.`,
    ask: 'How strong must each glaze be?',
    ...(level < 5
      ? { hint: 'A glaze adds to what lies there. Start from that value, not from white paper.' }
      : {}),
    paint,
    over,
    waters: [...WATERS],
    cannot: level === 5,
    strongest: level === 5,
    blocks: steps.map((step, index) => ({
      name: ['light part', 'middle part', 'dark part'][index] as string,
      step: tenth(step),
    })),
  };
}
