/** Generators of the families of application: puddle, glaze or strokes and layers in order. */

import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { Studio } from '../../paints/index.js';
import { type Laid, strokeShares, WATERS, type Wash, washLoads, waterStrength } from '../../washes/index.js';
import { sentence } from '../../words/laid.js';
import { colourOf, colours, nameOf, tenth, wash, workedDraft } from './made.js';
import { bare, opening, placed } from './sentences.js';
import { someSubject } from './subjects.js';
import type { DrillDraft, Generator } from './types.js';

/** Two colours of the palette in random order. */
function twoColours(
  studio: Studio,
  palette: readonly string[],
  draw: Draw,
): readonly [string, string] | undefined {
  const [a, b] = shuffled(colours(studio, palette), draw);
  return a === undefined || b === undefined ? undefined : [a, b];
}

/** The same two paints in equal parts: stirred, as strokes that share the paper as they share the paint, and as two full washes. */
function threeWays(
  studio: Studio,
  a: string,
  b: string,
  strength: number,
): { readonly puddle: Laid; readonly strokes: Laid; readonly layers: Laid } {
  const mixed: Wash = { paints: { [a]: 1, [b]: 1 }, strength };
  const [share = 0.5] = strokeShares(washLoads(studio, mixed));
  const one = { ...wash(a, strength), share };
  const other = { ...wash(b, strength), share: 1 - share };
  return {
    puddle: mixed,
    strokes: { strokes: [one, other] },
    layers: { layers: [wash(a, strength), wash(b, strength)] },
  };
}

/** A washes drill over a dry wash: one glaze for each block. */
function glazeLadder(
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
    colourOf(studio, { layers: [over, wash(paint, waterStrength(water))] }).step;
  const some = shuffled(WATERS, draw).slice(0, 3);
  const steps = WATERS.filter((water) => some.includes(water)).map(stepAt);
  if (steps.some((step, index) => index > 0 && step - (steps[index - 1] as number) < 0.55)) return undefined;
  return {
    kind: 'washes',
    title: `Glazes of ${nameOf(studio, paint)}`.slice(0, 60),
    scene: `A passage lies dry in ${nameOf(studio, below)}. One glaze of ${nameOf(studio, paint)} goes over each part of it.`,
    ask: 'How strong must each glaze be?',
    ...(level < 5 ? { hint: 'A clear glaze only darkens; start from the value that lies there.' } : {}),
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

const ways: Generator = (studio, { level, palette, avoid }, draw) => {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [a, b] = two;
  const strength = pick([0.25, 0.35, 0.5], draw);
  const { puddle, strokes, layers } = threeWays(studio, a, b, strength);
  const thing = someSubject(colourOf(studio, puddle), avoid, draw);
  if (thing === undefined) return undefined;
  const { picture } = thing;
  const title = `${sentence(bare(thing))}, which way?`.slice(0, 60);
  const scene = `${opening(thing, 'any', avoid, draw)}${sentence(placed(thing))}, in ${nameOf(studio, a)} and ${nameOf(studio, b)}.`;
  const hint = 'Strokes average the light, a puddle shares the paint, two washes filter twice.';
  if (level === 1) {
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. ${scene} Stirred, laid as fine strokes, and as two full washes.`,
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
          : { id: 'layers', label: 'two full washes', laid: layers },
      ],
      draw,
    );
    return {
      kind: 'choose',
      picture,
      title,
      scene,
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
    scene,
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

const layerOrder: Generator = (studio, { level, palette, avoid }, draw) => {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [a, b] = two;
  const [sa, sb] = [pick([0.3, 0.5, 0.8], draw), pick([0.3, 0.5, 0.8], draw)];
  const first: Laid = { layers: [wash(a, sa), wash(b, sb)] };
  const second: Laid = { layers: [wash(b, sb), wash(a, sa)] };
  // Where glazes are still to come, the subject is what lies there dry.
  const thing = someSubject(colourOf(studio, level >= 3 ? wash(a, sa) : first), avoid, draw);
  if (thing === undefined) return undefined;
  const { picture } = thing;
  const title = `${sentence(bare(thing))}, in layers`.slice(0, 60);
  const scene = `${opening(thing, 'any', avoid, draw)}${sentence(placed(thing))}, in films of ${nameOf(studio, a)} and ${nameOf(studio, b)}, each dry before the next.`;
  const hint =
    'Ask of the upper film whether it filters or covers; light before dark, covering before clear.';
  if (level === 1) {
    return workedDraft(
      studio,
      {
        title,
        scene: `A worked case. ${scene} The order was changed.`,
        ask: 'Which of these does the case show?',
        hint,
        picture,
      },
      [
        { id: 'one', name: 'one order', laid: first },
        { id: 'other', name: 'other order', laid: second },
        { id: 'single', name: 'single film', laid: wash(a, sa) },
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
  if (glazes.length < (level === 3 ? 4 : 3)) return undefined;
  const laid = (glaze: string): Laid => ({ layers: [wash(a, sa), wash(glaze, sb)] });
  const over = `${sentence(placed(thing))}: a wash of ${nameOf(studio, a)} is dry. ${level === 3 ? 'Four' : 'Three'} glazes could go over it, all equally strong.`;
  if (level === 3) {
    return {
      kind: 'choose',
      picture,
      title,
      scene: over,
      ask,
      hint,
      by,
      options: glazes.map((id) => ({
        id,
        label: `glaze of ${nameOf(studio, id)}`.slice(0, 48),
        laid: laid(id),
      })),
    };
  }
  return {
    kind: 'order',
    picture,
    title,
    scene: `${over} ${glazes.map((id, index) => `${'ABC'[index]}: ${nameOf(studio, id)}`).join(', ')}.`,
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
