/** Why a mixture, a glaze or strokes look as they do. */
import type { HueName } from '../../colour/hue.js';
import {
  KEPT_LINE,
  LEAN_CHROMA,
  NEUTRAL_CHROMA,
  NO_HUE_CHROMA,
  type RelationKind,
} from '../../judgement/index.js';
import { sentence, stepsWords, withArticle } from '../laid.js';
import { comesBack, type Light, runsWords } from '../spectrum.js';

/** What two sides did to each other in one film, each a paint or a wash of several. */
export interface PairFigures {
  /** A wash of several by its paints, joined by "with". */
  readonly names: readonly [string, string];
  readonly kind: Exclude<RelationKind, 'neutral'>;
  /** Share of the second in the film, by strength. */
  readonly share: number;
  /** C* of the mixture as a share of the mean of its two sides at the mixture's own strength, weighed by their shares. */
  readonly left: number;
  /** C* of the first side as it lies there, without the second; or of the start that is told. */
  readonly before: number;
  /** C* of each side alone, as strong as the mixture. */
  readonly alone: readonly [number, number];
  /** C* of the mixture. */
  readonly chroma: number;
  /** The colour that it is; of a grey the hue that it leans to. */
  readonly made: HueName | 'brown' | 'olive';
  /** It is another colour than both. */
  readonly isOwn: boolean;
  readonly light: Light;
}

/** Least share of the colour left at which only a little of it is gone, and about half. */
const LEFT = { little: 0.7, half: 0.4 } as const;

/** What became of the colour: kept against both as they would be alone, or lost against the first as it lay there, as the rows have it. */
function colourWords({ names, left, before, alone, chroma }: PairFigures): string {
  const still = before > 0 ? chroma / before : 1;
  if (left >= KEPT_LINE && still >= KEPT_LINE) return 'the colour is kept';
  if (left >= KEPT_LINE)
    return alone[1] < alone[0]
      ? `the colour falls only because ${named(names[1])} is duller by itself`
      : 'neither takes the other’s colour';
  if (Math.max(...alone) < LEAN_CHROMA) return 'both are dull by themselves';
  if (still >= KEPT_LINE)
    return chroma < Math.min(...alone)
      ? 'duller than either would be alone'
      : `duller than ${named(names[alone[0] > alone[1] ? 0 : 1])} would be alone`;
  if (still >= LEFT.little) return 'a little of the colour goes';
  return still >= LEFT.half ? 'about half of the colour goes' : 'most of the colour goes';
}

const isWash = (name: string): boolean => name.includes(' with ');
/** A wash of several is one thing. */
const named = (name: string): string => (isWash(name) ? `the wash of ${name}` : name);

/** If colour was kept, what makes it; else what both swallow. */
function lightWords({ left, chroma, made, light }: PairFigures): string {
  const { both, isNearlyAll, back } = light;
  const coming = back.length === 0 ? '' : ` Mostly ${comesBack(back)}.`;
  if (left >= KEPT_LINE && coming !== '') return coming;
  if (isNearlyAll && chroma < LEAN_CHROMA) return ' Both swallow nearly all of the light.';
  const parts = runsWords(both);
  if (parts !== '') return ` Both swallow ${parts}.`;
  if (chroma >= NEUTRAL_CHROMA) return coming;
  return chroma < NO_HUE_CHROMA
    ? ' All parts of the light come back nearly alike.'
    : ` What comes back is nearly balanced: a grey that leans to ${made}.`;
}

/** How the two stand to each other, and what that did here. */
function pairWords(figures: PairFigures): string {
  const { kind, share, left, chroma, made, isOwn, names } = figures;
  const [first, second] = names.map(named) as [string, string];
  // The paint before the wash: "raw sienna and the wash of ultramarine blue with alizarin crimson".
  const both = isWash(names[0]) ? `${second} and ${first}` : `${first} and ${second}`;
  const isKept = left >= KEPT_LINE;
  const colour = colourWords(figures);
  if (kind === 'around') {
    const passes = colour === 'the colour is kept' ? 'what one sends back the other lets pass, and ' : '';
    return `${sentence(both)} go around the wheel: ${passes}${colour}`;
  }
  if (kind === 'across' && !isKept && chroma < LEAN_CHROMA && left < 0.5)
    return `${sentence(both)} go across the wheel: each swallows what the other sends back, and ${colour}`;
  const grey = chroma < LEAN_CHROMA ? 'greyed ' : '';
  if (isOwn && chroma >= NEUTRAL_CHROMA)
    return `${sentence(both)} make ${withArticle(grey + made)} between them: ${colour}`;
  if (kind === 'across') {
    if (isKept)
      return share <= 0.5
        ? `So little ${second} cannot take much from the colour of ${first}`
        : `${sentence(second)} has taken over: ${first} takes little from its colour`;
    const [taker, giver] = share <= 0.5 ? [second, first] : [first, second];
    return `${sentence(taker)} takes part of what ${giver} sends back: ${colour}`;
  }
  const is = chroma < NEUTRAL_CHROMA ? 'a grey' : withArticle(grey + made);
  return `${sentence(both)} come out as ${is}: ${colour}`;
}

/** How a film treats what lies below: most of what comes back is its own, part of it, or next to none. */
export type Covering = 'covers' | 'in-part' | 'filters';

/** What a film over another did. */
export interface LayerFigures {
  readonly paint: string;
  readonly does: Covering;
  /** Steps darker than before; negative where it got lighter. */
  readonly darker: number;
  /** C* more than before. */
  readonly chroma: number;
}

const COVERING: Readonly<Record<Covering, string>> = {
  covers: 'covers with light of its own',
  'in-part': 'covers in part, with some light of its own',
  filters: 'filters what comes from below',
};

/** Below so many steps, and so much of C*, a change is a little one; below the least of C* it is none. */
const LITTLE = { steps: 0.5, chroma: 6, none: 2 } as const;

function layerWords({ paint, does, darker, chroma }: LayerFigures): string {
  const little = (is: boolean): string => (is ? 'a little ' : '');
  const value =
    Math.abs(darker) < 0.05
      ? 'as light as before'
      : `${little(Math.abs(darker) < LITTLE.steps)}${darker < 0 ? 'lighter' : 'darker'}`;
  const strength =
    Math.abs(chroma) < LITTLE.none
      ? 'as strong in colour'
      : `${little(Math.abs(chroma) < LITTLE.chroma)}${chroma > 0 ? 'stronger in colour' : 'duller'}`;
  return `The upper film, ${paint}, ${COVERING[does]}: ${value} and ${strength}.`;
}

/** What strokes side by side did, against the same paint in one puddle. */
export interface StrokesFigures {
  readonly hue: HueName | 'grey';
  /** Steps lighter than stirred. */
  readonly lighter: number;
  /** C* more than stirred. */
  readonly stronger: number;
}

function strokesWords({ hue, lighter, stronger }: StrokesFigures): string {
  const value = lighter < 0.05 ? 'as light as' : `${stepsWords(lighter)} lighter than`;
  const by = Math.abs(stronger) < 2 ? '' : stronger > 0 ? 'stronger' : 'weaker';
  if (hue === 'grey') {
    const still =
      by === ''
        ? 'the hues cancel'
        : `${by === 'stronger' ? 'less' : 'more'} grey, yet the hues nearly cancel`;
    return `Side by side the eye takes the mean of both: ${value} the same paint stirred; ${still}.`;
  }
  const colour = by === '' ? '' : ` and ${by} in colour`;
  return `Side by side the eye takes the mean of both: ${value} the same paint stirred${colour}; it reads as ${hue}.`;
}

export const MIXTURE = {
  pair: (figures: PairFigures): string => `${pairWords(figures)}.${lightWords(figures)}`,
  /** A colour brought to a black, a grey or a white. */
  'sets-hue': ({ neutral, colour }: { readonly neutral: string; readonly colour: string }): string =>
    `${sentence(named(neutral))} is close to neutral, so ${named(colour)} sets the hue.`,
  neutral: ({ name, isWhite }: { readonly name: string; readonly isWhite: boolean }): string =>
    isWhite
      ? `${sentence(named(name))} sends all parts of the light back alike: it makes a colour paler and chalkier.`
      : `${sentence(named(name))} swallows all parts of the light alike, and the colour goes.`,
  'same-paint': ({ name, isStronger }: { readonly name: string; readonly isStronger: boolean }): string =>
    `${sentence(name)} is the wash itself: it only gets ${isStronger ? 'stronger' : 'weaker, with so much water'}.`,
  'share-grew': ({ name }: { readonly name: string }): string =>
    `${sentence(name)} is already in the wash: its share in it grew.`,
  layer: layerWords,
  strokes: strokesWords,
};
