/** Generators of the families of the wheel and of shades: around or across, how much colour is left in a shade. */

import { type Draw, pick } from '../../chance/draw.js';
import { hueName } from '../../colour/hue.js';
import { NEUTRAL_CHROMA } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import type { Wash } from '../../washes/index.js';
import { namesOf, sentence } from '../../words/laid.js';
import { shadeOf } from '../kinds/shade-chroma/answers.js';
import type { ShadeChromaDrill } from '../kinds/shade-chroma/schema.js';
import { hasTrait } from '../lexicon.js';
import { colourOf, colours, pair, shortName, tenth, wash, workedDraft } from './made.js';
import { bare, opening, placed } from './sentences.js';
import { litSubject } from './subjects.js';
import { helpersFor } from './things.js';
import type { DrillDraft, Generator } from './types.js';

/** How many mixtures there are, in words. */
const COUNTS = ['no', 'one', 'two', 'three', 'four'];

const PROPORTIONS = [
  [2, 1],
  [3, 1],
  [1, 1],
] as const;

/** A colour to start from and helpers for it, none of them the same paint. */
function startAndHelpers(
  studio: Studio,
  palette: readonly string[],
  avoid: readonly string[],
  count: number,
  draw: Draw,
): { readonly start: string; readonly helpers: string[] } | undefined {
  const fit = colours(studio, palette).filter((id) => !avoid.includes(id));
  if (fit.length === 0) return undefined;
  const start = pick(fit, draw);
  const helpers = helpersFor(studio, palette, start, draw).slice(0, count);
  return helpers.length < count ? undefined : { start, helpers };
}

const aroundAcross: Generator = (studio, { level, palette, avoid }, draw) => {
  const count = level <= 2 ? (level === 1 ? 1 : 2) : level === 3 && draw(1) === 0 ? 4 : 3;
  const found = startAndHelpers(studio, palette, avoid, count, draw);
  if (found === undefined) return undefined;
  const { start, helpers } = found;
  const strength = pick([0.2, 0.3, 0.4, 0.5], draw);
  const parts = pick(PROPORTIONS, draw);
  const name = namesOf(studio, wash(start, 1));
  if (level === 1) return workedWheel(studio, start, helpers[0] as string, strength, parts, draw);
  const thing = litSubject(colourOf(studio, wash(start, strength)), avoid, draw);
  if (thing === undefined) return undefined;
  const { picture } = thing;
  const by = pick(['most-chroma', 'greyest'] as const, draw);
  const scene = `${opening(thing, 'any', avoid, draw)}${sentence(placed(thing))}, in ${name}. ${sentence(COUNTS[count] as string)} mixtures of it lie ready, ${parts.join(' to ')}.`;
  const title = `${sentence(bare(thing))}, ${COUNTS[count]} mixtures`.slice(0, 60);
  const hint =
    'Around the wheel keeps the colour, between costs some and brings a third colour, across takes most.';
  const laid = (helper: string): Wash => pair(start, helper, parts, strength);
  // A mixture is called the greyest only where it is grey.
  const isGreyest = helpers.some((helper) => colourOf(studio, laid(helper)).chroma < NEUTRAL_CHROMA);
  if (count !== 3) {
    return {
      kind: 'choose',
      picture,
      title,
      scene,
      ask:
        by === 'greyest'
          ? isGreyest
            ? 'Which is the greyest?'
            : 'Which has the least chroma?'
          : 'Which keeps the most chroma?',
      hint,
      by,
      options: helpers.map((helper) => ({ id: helper, laid: laid(helper) })),
    };
  }
  const names = helpers.map((id) => shortName(studio, id));
  if (new Set(names).size < 3) return undefined;
  const also =
    level < 4
      ? undefined
      : level === 4
        ? ('darkest' as const)
        : pick(['darkest', 'warmest', 'coolest'] as const, draw);
  return {
    kind: 'order',
    picture,
    title,
    scene,
    ask: `In what order${also === undefined ? '' : `, and which is ${also}`}?`,
    ...(level < 5 ? { hint } : {}),
    by,
    ...(also === undefined ? {} : { also }),
    items: helpers.map((helper, index) => ({ id: helper, name: names[index] as string, laid: laid(helper) })),
  };
};

function workedWheel(
  studio: Studio,
  start: string,
  helper: string,
  strength: number,
  parts: readonly [number, number],
  draw: Draw,
): DrillDraft | undefined {
  const [first, second] = [wash(start, strength), wash(helper, strength)];
  return workedDraft(
    studio,
    {
      title: `${sentence(namesOf(studio, first))} and ${namesOf(studio, second)}`.slice(0, 60),
      scene: `A worked case. ${sentence(namesOf(studio, second))} was stirred into ${namesOf(studio, first)}. Look where the two stand and what became of value and chroma.`,
      ask: 'Which of these does the case show?',
      hint: 'Ask first where the two stand on the wheel.',
    },
    [
      { id: 'first', name: 'first', laid: first },
      { id: 'second', name: 'second', laid: second },
      { id: 'mixture', name: 'mixture', laid: pair(start, helper, parts, strength) },
    ],
    [
      { fact: 'across', of: ['first', 'second'] },
      { fact: 'neighbours', of: ['first', 'second'] },
      { fact: 'neutral', of: ['second'] },
      { fact: 'stronger', of: ['mixture', 'first'] },
      { fact: 'darker-than-both', of: ['mixture', 'first', 'second'] },
    ],
    draw,
  );
}

const shadeChroma: Generator = (studio, { level, palette, avoid }, draw) => {
  const fit = colours(studio, palette).filter((id) => !avoid.includes(id));
  if (fit.length === 0) return undefined;
  const lit = wash(pick(fit, draw), pick([0.12, 0.2, 0.3], draw));
  const colour = colourOf(studio, lit);
  if (colour.chroma < 30 || colour.step > 5) return undefined;
  if (level === 1) return workedShade(studio, lit, palette, draw);
  const shade = tenth(Math.round(2 * (colour.step + pick([1.5, 2, 2.5, 3], draw))) / 2);
  if (shade > 8) return undefined;
  const thing = litSubject(colour, avoid, draw);
  if (thing === undefined || hasTrait(thing, 'level') || hasTrait(thing, 'air')) return undefined;
  const [light, dark] = thing.shaded.step;
  if (shade < light || shade > dark) return undefined;
  const { line } = shadeOf(studio, { lit, shade } as unknown as ShadeChromaDrill);
  const offered = [
    Math.round(line),
    Math.round(line / 3),
    Math.round(Math.max(colour.chroma, 1.4 * line)),
    Math.round(0.6 * line),
  ];
  const chromas =
    level === 2 ? [offered[0] as number, offered[draw(1) + 1] as number] : level === 3 ? offered : undefined;
  const isSwatch = level === 3 && draw(1) === 0;
  return {
    kind: 'shade-chroma',
    picture: thing.picture,
    title: `${sentence(bare(thing))}, in the shade`.slice(0, 60),
    scene: `${opening(thing, 'sun', avoid, draw)}${sentence(placed(thing))}: the lit side is ${hueName(colour.hue)}, the other side is in shade.`,
    ...(isSwatch ? { ask: 'Which swatch is the shade?' } : {}),
    ...(level < 5
      ? {
          hint: 'Each step darker takes about a tenth of the lit chroma, a little more where the lit side is dark already.',
        }
      : {}),
    lit,
    shade,
    ...(chromas === undefined || isSwatch ? {} : { chromas }),
    asks:
      level <= 3
        ? [isSwatch ? 'swatch' : 'chroma']
        : level === 4
          ? ['chroma', 'swatch']
          : ['chroma', 'swatch', 'turn'],
  };
};

function workedShade(
  studio: Studio,
  lit: Wash,
  palette: readonly string[],
  draw: Draw,
): DrillDraft | undefined {
  const start = Object.keys(lit.paints)[0] as string;
  const others = helpersFor(studio, palette, start, draw);
  const [one, two] = others;
  if (one === undefined || two === undefined) return undefined;
  const strength = Math.min(1, 2.5 * lit.strength);
  return workedDraft(
    studio,
    {
      title: `${sentence(namesOf(studio, lit))}, two shades`.slice(0, 60),
      scene: `A worked case. The lit side is ${namesOf(studio, lit)}. One shade was mixed with ${namesOf(studio, wash(one, 1))}, one with ${namesOf(studio, wash(two, 1))}.`,
      ask: 'Which of these does the case show?',
      hint: 'The plain shade is what the lit side would be under less light, at the value reached.',
    },
    [
      { id: 'lit', name: 'lit side', laid: lit },
      { id: 'one', name: 'one shade', laid: pair(start, one, [2, 1], strength) },
      { id: 'two', name: 'other shade', laid: pair(start, two, [2, 1], strength) },
    ],
    [
      { fact: 'keeps-line', of: ['one', 'lit'] },
      { fact: 'below-line', of: ['one', 'lit'] },
      { fact: 'keeps-line', of: ['two', 'lit'] },
      { fact: 'below-line', of: ['two', 'lit'] },
      { fact: 'same-value', of: ['one', 'lit'] },
    ],
    draw,
  );
}

export const WHEEL_GENERATORS: Readonly<Record<string, Generator>> = {
  'around-across': aroundAcross,
  'shade-chroma': shadeChroma,
};
