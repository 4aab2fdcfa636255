/** Generators of the families of application: puddle, glaze or strokes and layers in order. */

import { pick, shuffled } from '../../chance/draw.js';
import { paintOf, type Studio } from '../../paints/index.js';
import { type Laid, strokeShares, washLoads } from '../../washes/index.js';
import { sentence } from '../../words/laid.js';
import { canBe } from '../lexicon.js';
import { glazeLadder } from './glaze-ladder.js';
import { colourOf, nameOf, pair, wash, workedDraft } from './made.js';
import { bare, isDim, opening, placed } from './sentences.js';
import { someSubject } from './subjects.js';
import { twoColours } from './things.js';
import type { Generator } from './types.js';

/** Parts of two paints in a puddle, and shares of the paper that can be laid by eye. */
const PUDDLE_PARTS = [
  [1, 1],
  [2, 1],
  [1, 2],
  [3, 1],
  [1, 3],
] as const;
const BY_EYE = [0.5, 0.25, 0.75] as const;
/** How far such a share may lie from that of the paint in the puddle and still be the same paint to a brush. */
const SAME_PAINT = 0.03;

/**
 * The same two paints stirred, as strokes that share the paper as they share the paint, and as two full washes.
 * @returns undefined where the shares of the paper could not be laid by eye
 */
function threeWays(
  studio: Studio,
  a: string,
  b: string,
  strength: number,
): { readonly puddle: Laid; readonly strokes: Laid; readonly layers: Laid } | undefined {
  const laid = PUDDLE_PARTS.map((parts) => pair(a, b, parts, strength)).flatMap((mixed) => {
    const [of = 0.5] = strokeShares(washLoads(studio, mixed));
    const share = BY_EYE.find((one) => Math.abs(one - of) <= SAME_PAINT);
    return share === undefined ? [] : [{ mixed, share }];
  })[0];
  if (laid === undefined) return undefined;
  const { mixed, share } = laid;
  const one = { ...wash(a, strength), share };
  const other = { ...wash(b, strength), share: 1 - share };
  return {
    puddle: mixed,
    strokes: { strokes: [one, other] },
    layers: { layers: [wash(a, strength), wash(b, strength)] },
  };
}

const ways: Generator = (studio, { level, palette, avoid }, draw) => {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [a, b] = two;
  const strength = pick([0.25, 0.35, 0.5], draw);
  const three = threeWays(studio, a, b, strength);
  if (three === undefined) return undefined;
  const { puddle, strokes, layers } = three;
  const thing = someSubject(colourOf(studio, puddle), avoid, draw);
  // However they are laid, they have to do for the thing.
  if (thing === undefined) return undefined;
  if (![strokes, layers].every((laid) => canBe(thing, colourOf(studio, laid), true))) return undefined;
  const { picture } = thing;
  const title = `${sentence(bare(thing))}, which way?`.slice(0, 60);
  const light = isDim(colourOf(studio, puddle).step) ? 'dim' : 'any';
  const scene = `${opening(thing, light, avoid, draw)}${sentence(placed(thing))}, in ${nameOf(studio, a)} and ${nameOf(studio, b)}.`;
  const same =
    'As much paint goes into the strokes as into the puddle; each of the two washes is a full one.';
  const hint = 'Ask of each way how much paint the light goes through, and how often.';
  if (level === 1) {
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. ${scene} Stirred, laid as fine strokes of the same paint, and as two full washes.`,
        ask: 'Which of these does the case show?',
        hint,
        picture,
      },
      [
        { id: 'puddle', name: 'puddle', laid: puddle },
        { id: 'strokes', name: 'stroked part', laid: strokes },
        { id: 'layers', name: 'second wash', laid: layers },
      ],
      [
        { fact: 'darker', of: ['puddle', 'strokes'] },
        { fact: 'darker', of: ['strokes', 'puddle'] },
        { fact: 'darker-than-both', of: ['layers', 'puddle', 'strokes'] },
        { fact: 'darker-than-both', of: ['strokes', 'puddle', 'layers'] },
        { fact: 'same-value', of: ['strokes', 'layers'] },
        { fact: 'same-value', of: ['puddle', 'strokes'] },
      ],
      draw,
    );
  }
  if (level === 2) {
    const by = pick(['lightest', 'darkest'] as const, draw);
    const options = shuffled(
      [
        { id: 'puddle', label: 'stirred into one puddle', laid: puddle },
        by === 'lightest'
          ? { id: 'strokes', label: 'fine strokes side by side', laid: strokes }
          : { id: 'layers', label: 'one wash over the other', laid: layers },
      ],
      draw,
    );
    return {
      kind: 'choose',
      picture,
      title,
      scene:
        by === 'lightest'
          ? `${scene} As much paint goes into the strokes as into the puddle.`
          : `${scene} Each wash is as strong as the puddle.`,
      ask: `Which way comes out ${by.replace('est', 'er')}?`,
      hint,
      by,
      options,
    };
  }
  if (level === 4 && draw(1) === 0) return glazeLadder(studio, palette, 4, draw);
  const by = pick(['lightest', 'darkest', 'most-chroma'] as const, draw);
  return {
    kind: 'order',
    picture,
    title,
    scene: `${scene} ${same}`,
    ask: `In what order do the three ways come out${level < 4 ? '' : `, and which ${by === 'most-chroma' ? 'is darkest' : 'has the most chroma'}`}?`,
    ...(level < 5 ? { hint } : {}),
    by,
    ...(level >= 4 ? { also: by === 'most-chroma' ? ('darkest' as const) : ('most-chroma' as const) } : {}),
    items: shuffled(
      [
        { id: 'puddle', name: 'puddle', laid: puddle },
        { id: 'strokes', name: 'strokes', laid: strokes },
        { id: 'layers', name: 'two washes', laid: layers },
      ],
      draw,
    ),
  };
};

/** Last word of a paint's name that leaves room for where it lies, or undefined. */
const lastShort = (name: string): string | undefined =>
  (name.split(',')[0] as string)
    .split(' ')
    .filter((word) => word.length <= 7 && word !== 'hue')
    .at(-1);

/** Strengths of films that lie one over the other; a stronger one is a coat and no glaze. */
const FILMS = [0.3, 0.45, 0.6];

/** Ultramarine beside Prussian blue, equally strong: which of the two goes darker depends on the maker, so nothing is asked of it. */
const isDisputed = (studio: Studio, ids: readonly string[]): boolean =>
  ['PB27', 'PB29'].every((name) => ids.some((id) => paintOf(studio, id).ci.includes(name)));

const layerOrder: Generator = (studio, { level, palette, avoid }, draw) => {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [a, b] = two;
  const [sa, sb] = [pick(FILMS, draw), pick(FILMS, draw)];
  const first: Laid = { layers: [wash(a, sa), wash(b, sb)] };
  const second: Laid = { layers: [wash(b, sb), wash(a, sa)] };
  // Where glazes are still to come, the subject is what lies there dry.
  const lying = colourOf(studio, level >= 3 ? wash(a, sa) : first);
  const thing = someSubject(lying, avoid, draw);
  if (thing === undefined) return undefined;
  const { picture } = thing;
  const title = `${sentence(bare(thing))}, in layers`.slice(0, 60);
  const scene = `${opening(thing, isDim(lying.step) ? 'dim' : 'any', avoid, draw)}${sentence(placed(thing))}, in films of ${nameOf(studio, a)} and ${nameOf(studio, b)}, each dry before the next.`;
  const hint = 'Ask of the upper film whether it filters or covers.';
  if (level === 1) {
    const nameA = lastShort(nameOf(studio, a));
    if (nameA === undefined || nameOf(studio, b).includes(nameA)) return undefined;
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. ${scene} Look at either order.`,
        ask: 'Which of these does the case show?',
        hint,
        picture,
      },
      [
        { id: 'one', name: `${nameA} below`, laid: first },
        { id: 'other', name: `${nameA} on top`, laid: second },
        { id: 'single', name: `${nameA} alone`, laid: wash(a, sa) },
      ],
      [
        { fact: 'darker', of: ['one', 'other'] },
        { fact: 'darker', of: ['other', 'one'] },
        { fact: 'stronger', of: ['one', 'other'] },
        { fact: 'stronger', of: ['other', 'one'] },
        { fact: 'darker', of: ['single', 'one'] },
        { fact: 'darker', of: ['single', 'other'] },
      ],
      draw,
    );
  }
  const by = pick(['darkest', 'most-chroma'] as const, draw);
  const ask = by === 'darkest' ? 'Which is darkest?' : 'Which keeps the most chroma?';
  if (level === 2) {
    const options = [
      { id: 'one', label: `${nameOf(studio, b)} on top`, laid: first },
      { id: 'other', label: `${nameOf(studio, a)} on top`, laid: second },
    ];
    return { kind: 'choose', picture, title, scene, ask, hint, by, options };
  }
  if (level === 4 && draw(1) === 0) return glazeLadder(studio, palette, 4, draw);
  const glazes = shuffled(
    palette.filter((id) => id !== a),
    draw,
  ).slice(0, level === 3 ? 4 : 3);
  if (glazes.length < (level === 3 ? 4 : 3) || isDisputed(studio, glazes)) return undefined;
  const laid = (glaze: string): Laid => ({ layers: [wash(a, sa), wash(glaze, sb)] });
  const over = `A trial for ${placed(thing)}: a wash of ${nameOf(studio, a)} is dry. ${level === 3 ? 'Four' : 'Three'} glazes are tried, each on its own strip, all equally strong.`;
  if (level === 3) {
    const options = glazes.map((id) => ({
      id,
      label: `glaze of ${nameOf(studio, id)}`.slice(0, 48),
      laid: laid(id),
    }));
    return { kind: 'choose', picture, title, scene: over, ask, hint, by, options };
  }
  return {
    kind: 'order',
    picture,
    title,
    scene: over,
    ask: `In what order do the three come out, and which ${by === 'darkest' ? 'has the most chroma' : 'is darkest'}?`,
    ...(level < 5 ? { hint } : {}),
    by,
    also: by === 'darkest' ? 'most-chroma' : 'darkest',
    items: glazes.map((id, index) => ({ id, name: `glaze ${'ABC'[index]}`, laid: laid(id) })),
  };
};

export const APPLICATION_GENERATORS: Readonly<Record<string, Generator>> = {
  'ways-of-applying': ways,
  'layer-order': layerOrder,
};
