/** Generators of the value families: ladders of one paint and three values; see shadow-generators.ts for light and shadow. */

import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { Studio } from '../../paints/index.js';
import { listWords } from '../../text/list-words.js';
import { seeAlone, WATERS, type Wash, type Water, waterStrength } from '../../washes/index.js';
import { sentence } from '../../words/laid.js';
import rows from '../data/rows.json' with { type: 'json' };
import { classOf } from '../kinds/sort-values/classes.js';
import type { Area } from '../kinds/sort-values/schema.js';
import type { Block } from '../kinds/washes/schema.js';
import type { Subject } from '../lexicon.js';
import { colourOf, LONGEST, nameOf, tenth, wash, workedDraft } from './made.js';
import { bare } from './sentences.js';
import { SUBJECT_PLACES, someSubject } from './subjects.js';
import type { DrillDraft, Generator } from './types.js';

const stepAt = (studio: Studio, paint: string, water: Water): number =>
  seeAlone(studio, paint, waterStrength(water)).colour.step;

/** Blocks at the values of some of the waters, light to dark; with `beyond`, the last one out of the paint's reach. */
function blocksFor(
  studio: Studio,
  paint: string,
  waters: readonly Water[],
  names: readonly string[],
  beyond: boolean,
  draw: Draw,
): Block[] {
  const steps = waters.map((water) => tenth(stepAt(studio, paint, water) + (draw(4) - 2) / 10));
  if (beyond)
    steps.push(tenth(Math.min(10.4, Math.max(...steps, stepAt(studio, paint, '1:3')) + 1.1 + draw(8) / 10)));
  // The names keep their order; of five names for fewer blocks the outer ones stay.
  const used = [...names.slice(0, steps.length - 1), names.at(-1) as string];
  return steps.map((step, index) => ({ name: used[index] as string, step }));
}

const ladder: Generator = (studio, { level, palette, avoid }, draw) => {
  const fit = palette.filter((id) => !avoid.includes(id));
  const paint = pick(fit.length > 0 ? fit : palette, draw);
  const row = pick(rows.rows, draw);
  const name = nameOf(studio, paint);
  if (level === 1) return workedLadder(studio, paint, name, draw);
  if (level === 3 && draw(1) === 0) return strongestOrder(paint, name, draw);
  const count = level === 2 ? 2 : level === 3 ? 3 : level === 4 ? 2 + draw(1) : 4;
  const some = shuffled(WATERS, draw).slice(0, count);
  const waters = WATERS.filter((water) => some.includes(water));
  const steps = waters.map((water) => stepAt(studio, paint, water));
  // A pale paint has fewer values than blocks: not a ladder.
  if (steps.some((step, index) => index > 0 && step - (steps[index - 1] as number) < 0.55)) return undefined;
  const beyond = level >= 4;
  const blocks = blocksFor(studio, paint, waters, row.names, beyond, draw);
  if ((blocks.at(-1)?.step ?? 0) > 10.3) return undefined;
  return {
    kind: 'washes',
    picture: row.picture,
    title: row.title,
    scene: `${row.scene} ${sentence(name)} alone, parted by nothing but water.`,
    ...(level < 5
      ? { hint: 'Set the lightest and the darkest first; even steps of water are not even steps of value.' }
      : {}),
    paint,
    waters: level <= 3 ? waters : [...WATERS],
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
      scene: `A worked case. ${sentence(name)} was laid thin, middling and thick. See what the water did to value and to chroma.`,
      ask: 'Which of these does the case show?',
      hint: 'Compare the figures two at a time.',
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

/** Draws of a wash before a place is held to have nothing of such colours. */
const MOST_WASHES = 12;

/** A wash of the palette with something at a place that has its colour. */
function areaAt(
  studio: Studio,
  palette: readonly string[],
  place: string,
  avoid: readonly string[],
  draw: Draw,
): { readonly name: string; readonly laid: Wash; readonly subject: Subject } | undefined {
  for (let tries = 0; tries < MOST_WASHES; tries++) {
    const laid = wash(pick(palette, draw), pick([0.03, 0.06, 0.12, 0.25, 0.5, 0.8, 1], draw));
    const subject = someSubject(colourOf(studio, laid), avoid, draw, place);
    if (subject !== undefined && bare(subject).length <= LONGEST)
      return { name: bare(subject), laid, subject };
  }
  return undefined;
}

/** Washes of the palette with things that have their colours, no thing twice. */
function areasFrom(
  studio: Studio,
  palette: readonly string[],
  count: number,
  avoid: readonly string[],
  draw: Draw,
): { readonly areas: Area[]; readonly picture: string } | undefined {
  const weights = Array.from({ length: count }, () => 1);
  for (let left = 20 - count; left > 0; left--) {
    const at = draw(count - 1);
    weights[at] = (weights[at] ?? 0) + 1;
  }
  const place = pick(SUBJECT_PLACES, draw);
  const areas: Area[] = [];
  const pictures: string[] = [];
  const shown: string[] = [];
  for (const weight of weights) {
    const area = areaAt(studio, palette, place, [...avoid, ...shown], draw);
    if (area === undefined || areas.some(({ name }) => name === area.name)) return undefined;
    areas.push({ name: area.name, laid: area.laid, share: weight / 20 });
    pictures.push(area.subject.picture);
    shown.push(area.subject.id);
  }
  return { areas, picture: pictures[0] as string };
}

const threeValues: Generator = (studio, { level, palette, avoid }, draw) => {
  const sheet = areasFrom(studio, palette, [2, 2, 4, 5, 6][level - 1] as number, avoid, draw);
  if (sheet === undefined) return undefined;
  const { areas, picture } = sheet;
  // A sheet of one value has no plan to find.
  const classes = new Set(areas.map(({ laid }) => classOf(colourOf(studio, laid).step))).size;
  if (classes < (level >= 4 ? 3 : level === 3 ? 2 : 1)) return undefined;
  const names = areas.map(({ name }) => name);
  const scene = `On the sheet are ${listWords(names.map((name) => `the ${name}`))}.`;
  const title = `${sentence(names[0] as string)} and ${level <= 2 ? names[1] : 'the rest'}`.slice(0, 60);
  if (level === 1) {
    const items = areas.map(({ laid }, index) => ({
      id: `area-${index + 1}`,
      name: ['first', 'second'][index] as string,
      laid,
    }));
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. First the ${names[0]}, second the ${names[1]}. Squint at the two, then read the numbers.`,
        ask: 'Which of these does the case show?',
        hint: 'Strong colour fools the eye; only the step counts here.',
        picture,
      },
      items,
      [
        { fact: 'same-value', of: ['area-1', 'area-2'] },
        { fact: 'darker', of: ['area-1', 'area-2'] },
        { fact: 'darker', of: ['area-2', 'area-1'] },
        { fact: 'stronger', of: ['area-1', 'area-2'] },
        { fact: 'stronger', of: ['area-2', 'area-1'] },
      ],
      draw,
    );
  }
  const hint = 'Squint until the colour goes; then find the lightest and the darkest.';
  if (level === 2 || (level === 3 && draw(1) === 0)) {
    const by = pick(['darkest', 'lightest'] as const, draw);
    return {
      kind: 'choose',
      picture,
      title,
      scene,
      ask: `Which is ${level === 2 ? by.replace('est', 'er') : by}?`,
      hint,
      by,
      show: true,
      options: areas.map(({ name, laid }, index) => ({ id: `area-${index + 1}`, label: name, laid })),
    };
  }
  return {
    kind: 'sort-values',
    picture,
    title,
    scene,
    ...(level < 5 ? { hint } : {}),
    areas,
    asks: level === 3 ? [] : level === 4 ? ['darkest', 'most'] : ['darkest', 'most', 'span'],
  };
};

export const VALUE_GENERATORS: Readonly<Record<string, Generator>> = {
  'one-paint-ladder': ladder,
  'three-values': threeValues,
};
