/** Generator of the family of three values: areas of a sheet to be sorted into light, middle and dark. */

import { type Draw, pick } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import { VALUE_BOUNDS } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import { listWords } from '../../text/list-words.js';
import { sentence } from '../../words/laid.js';
import { classOf } from '../kinds/sort-values/classes.js';
import type { Area } from '../kinds/sort-values/schema.js';
import { colourOf, workedDraft } from './made.js';
import { bare } from './sentences.js';
import { SUBJECT_PLACES, someSubject } from './subjects.js';
import { thingAt } from './things.js';
import type { Generator } from './types.js';

/** Strengths of an area's wash. */
const STRENGTHS = [0.03, 0.06, 0.12, 0.25, 0.5, 0.8, 1];
/** How far a value lies from where light ends and dark begins, steps. */
const CLEAR = 0.6;
const isClear = ({ step }: ColourReading): boolean =>
  VALUE_BOUNDS.every((bound) => Math.abs(step - bound) >= CLEAR);

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
  let picture: string | undefined;
  const shown: string[] = [];
  for (const weight of weights) {
    const area = thingAt(studio, palette, STRENGTHS, draw, (colour) =>
      isClear(colour) ? someSubject(colour, [...avoid, ...shown], draw, place) : undefined,
    );
    if (area === undefined || areas.some(({ name }) => name === bare(area.subject))) return undefined;
    // Two things in the very same wash are one shape.
    const key = JSON.stringify(area.laid);
    if (areas.some(({ laid }) => JSON.stringify(laid) === key)) return undefined;
    areas.push({ name: bare(area.subject), laid: area.laid, share: weight / 20 });
    picture ??= area.subject.picture;
    shown.push(area.subject.id);
  }
  return { areas, picture: picture as string };
}

const threeValues: Generator = (studio, { level, palette, avoid }, draw) => {
  const sheet = areasFrom(studio, palette, [2, 2, 4, 5, 6][level - 1] as number, avoid, draw);
  if (sheet === undefined) return undefined;
  const { areas, picture } = sheet;
  // A sheet of one value has no plan to find.
  const classes = new Set(areas.map(({ laid }) => classOf(colourOf(studio, laid).step)));
  if (level >= 3 && !(classes.has('light') && classes.has('dark'))) return undefined;
  if (level >= 4 && classes.size < 3) return undefined;
  const names = areas.map(({ name }) => name);
  const scene = `On the sheet are ${listWords(names.map((name) => `the ${name}`))}.`;
  const title = `${sentence(names[0] as string)} and ${names[1]}`.slice(0, 60);
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
        scene: `A worked case. First the ${names[0]}, second the ${names[1]}. Squint at the two, then look again at the colour.`,
        ask: 'Which of these does the case show?',
        hint: 'Strong colour fools the eye. Value and chroma are two questions.',
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

export const THREE_VALUES_GENERATORS: Readonly<Record<string, Generator>> = { 'three-values': threeValues };
