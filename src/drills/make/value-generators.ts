/** Generators of the value families: ladders of one paint and three values; see shadow-generators.ts for light and shadow. */

import { type Draw, pick, shuffled } from '../../chance/draw.js';
import { paintOf, type Studio } from '../../paints/index.js';
import { seeAlone, WATERS, type Water, washStrength } from '../../washes/index.js';
import { sentence } from '../../words/laid.js';
import rows from '../data/rows.json' with { type: 'json' };
import type { Block } from '../kinds/washes/schema.js';
import { nameOf, tenth, wash, workedDraft } from './made.js';
import type { DrillDraft, Generator } from './types.js';

const stepAt = (studio: Studio, paint: string, water: Water): number =>
  seeAlone(studio, paint, washStrength(paintOf(studio, paint), water)).colour.step;

/** Lightest and darkest step of a paint on the waters that are offered. */
function reachOf(studio: Studio, paint: string): readonly [number, number] {
  return [stepAt(studio, paint, WATERS[0]), stepAt(studio, paint, WATERS.at(-1) as Water)];
}
/** A ladder wants a paint of some range; its targets lie inside the range and well apart, steps. */
const LEAST_RANGE = 3;
const INSIDE = 0.2;
const APART = 0.8;

/** Blocks at the values of some of the waters, light to dark; with `beyond`, the last one out of the paint's reach. */
function blocksFor(
  studio: Studio,
  paint: string,
  waters: readonly Water[],
  names: readonly string[],
  beyond: boolean,
  draw: Draw,
): Block[] {
  const [lightest, darkest] = reachOf(studio, paint);
  const steps = waters.map((water) => {
    const step = stepAt(studio, paint, water) + (draw(4) - 2) / 10;
    return tenth(Math.max(lightest + INSIDE, Math.min(darkest - INSIDE, step)));
  });
  if (beyond)
    steps.push(tenth(Math.min(10.4, Math.max(...steps, stepAt(studio, paint, '1:3')) + 1.1 + draw(8) / 10)));
  // The names keep their order; of five names for fewer blocks the outer ones stay.
  const used = [...names.slice(0, steps.length - 1), names.at(-1) as string];
  return steps.map((step, index) => ({ name: used[index] as string, step }));
}

const ladder: Generator = (studio, { level, palette, avoid }, draw) => {
  const deep = palette.filter((id) => {
    const [lightest, darkest] = reachOf(studio, id);
    return darkest - lightest >= LEAST_RANGE;
  });
  if (deep.length === 0) return undefined;
  const fit = deep.filter((id) => !avoid.includes(id));
  const paint = pick(fit.length > 0 ? fit : deep, draw);
  const row = pick(rows.rows, draw);
  const name = nameOf(studio, paint);
  if (level === 1) return workedLadder(studio, paint, name, draw);
  if (level === 3 && draw(1) === 0) return strongestOrder(paint, name, draw);
  const count = level === 2 ? 2 : level === 3 ? 3 : level === 4 ? 2 + draw(1) : 4;
  const some = shuffled(WATERS, draw);
  const among = (size: number): Water[] => WATERS.filter((water) => some.slice(0, size).includes(water));
  const waters = among(count);
  const beyond = level >= 4;
  const blocks = blocksFor(studio, paint, waters, row.names, beyond, draw);
  const steps = blocks.map(({ step }) => step as number);
  if ((steps.at(-1) as number) > 10.3) return undefined;
  if (steps.some((step, at) => at > 0 && step - (steps[at - 1] as number) < APART - 1e-9)) return undefined;
  return {
    kind: 'washes',
    picture: row.picture,
    title: row.title,
    scene: `${row.scene} A study in one colour: ${name}, and water to lighten it.`,
    ...(level < 5
      ? { hint: 'Set the lightest and the darkest first; even steps of water are not even steps of value.' }
      : {}),
    paint,
    // More washes than rows, or their order alone would be the answer.
    waters: level <= 3 ? among(count + level - 1) : [...WATERS],
    cannot: level >= 4,
    strongest: level === 5,
    blocks,
  };
};

function workedLadder(studio: Studio, paint: string, name: string, draw: Draw): DrillDraft | undefined {
  const items = [
    { id: 'thin', name: 'thin', laid: wash(paint, pick([0.05, 0.08, 0.1], draw)) },
    { id: 'middle', name: 'middle', laid: wash(paint, pick([0.25, 0.3, 0.4], draw)) },
    { id: 'thick', name: 'thick', laid: wash(paint, 1) },
  ];
  return workedDraft(
    studio,
    {
      title: `${sentence(name)}, three strengths`,
      scene: `A worked case. ${sentence(name)} was laid thin, middling and thick. Look at what the water did to value and to chroma.`,
      ask: 'Which of these does the case show?',
      hint: 'Compare the washes two at a time.',
    },
    items,
    [
      { fact: 'strongest-of-three', of: ['thin', 'middle', 'thick'] },
      { fact: 'strongest-of-three', of: ['middle', 'thin', 'thick'] },
      { fact: 'strongest-of-three', of: ['thick', 'middle', 'thin'] },
      { fact: 'even-steps', of: ['thin', 'middle', 'thick'] },
      { fact: 'same-value', of: ['middle', 'thick'] },
      { fact: 'darker', of: ['middle', 'thick'] },
    ],
    draw,
  );
}

function strongestOrder(paint: string, name: string, draw: Draw): DrillDraft {
  return {
    kind: 'order',
    title: `${sentence(name)}, where it is strongest`,
    scene: `Three washes of ${name}, with much water, some and hardly any. Put them in order of chroma.`,
    ask: 'In what order, by chroma?',
    hint: 'Too thick closes the paper off; too thin lets it whiten the colour.',
    by: 'most-chroma',
    items: shuffled(
      [
        { id: 'thick', name: 'thick', laid: wash(paint, 1) },
        { id: 'middle', name: 'middle', laid: wash(paint, pick([0.25, 0.35, 0.45], draw)) },
        { id: 'thin', name: 'thin', laid: wash(paint, pick([0.05, 0.07, 0.1], draw)) },
      ],
      draw,
    ),
  };
}

export const VALUE_GENERATORS: Readonly<Record<string, Generator>> = {
  'one-paint-ladder': ladder,
};
