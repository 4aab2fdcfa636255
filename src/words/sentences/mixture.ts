/** Why a mixture, a glaze or strokes look as they do. */
import type { HueName } from '../../colour/hue.js';
import { KEPT_LINE, LEAN_CHROMA, NEUTRAL_CHROMA, type RelationKind } from '../../judgement/index.js';
import { percent, sentence, stepsWords, withArticle } from '../laid.js';
import { type Run, runsWords } from '../spectrum.js';

/** What two paints did to each other in one film. */
export interface PairFigures {
  readonly names: readonly [string, string];
  readonly kind: Exclude<RelationKind, 'neutral'>;
  /** Share of the second in the film, by strength. */
  readonly share: number;
  /** C* of the mixture as a share of the mean of its two parts at the mixture's own strength, weighed by their shares. */
  readonly left: number;
  /** C* of the mixture. */
  readonly chroma: number;
  /** The colour that it is, where that is another one than both. */
  readonly made?: HueName | 'brown' | 'olive' | undefined;
  /** Parts of the light that both swallow, but for what still comes back in a colour. */
  readonly both: readonly Run[];
  /** Both swallow so much that its parts are not worth naming. */
  readonly isNearlyAll: boolean;
  /** Parts of the light that make the mixture's colour; empty for a grey, or where no part tells it. */
  readonly back: readonly Run[];
}

/** If colour was lost, what both swallow; if it was kept, what each lets through. */
function lightWords({ left, chroma, both, isNearlyAll, back }: PairFigures): string {
  if (left >= KEPT_LINE) return back.length === 0 ? '' : ` Mostly ${runsWords(back)} comes back.`;
  if (isNearlyAll) return ' Both swallow nearly all of the light.';
  const parts = runsWords(both);
  if (parts !== '') return ` Both swallow ${parts}.`;
  return chroma < NEUTRAL_CHROMA ? ' All parts of the light come back alike.' : '';
}

/** How the two stand to each other, and what that did here. */
function pairWords(figures: PairFigures): string {
  const { kind, share, left, chroma, made, names } = figures;
  const [first, second] = names;
  const both = `${sentence(first)} and ${second}`;
  const isKept = left >= KEPT_LINE;
  const lost = `${percent(left)} of the chroma between them is left`;
  if (kind === 'around')
    return `${both} go around the wheel: ${isKept ? 'what one sends back the other lets pass, and the colour is kept' : lost}`;
  if (kind === 'across' && !isKept && chroma < LEAN_CHROMA && left < 0.5)
    return `${both} go across the wheel: each swallows what the other sends back, and ${lost}`;
  if (made !== undefined) {
    const between = withArticle(`${chroma < LEAN_CHROMA ? 'greyed ' : ''}${made}`);
    return `${both} make ${between} between them: ${isKept ? 'the colour is kept' : lost}`;
  }
  if (kind === 'across') {
    if (!isKept) return `${both} go across the wheel: each takes from the other’s colour, and ${lost}`;
    return `${both} go across the wheel, but ${share <= 0.5 ? 'this little of it leaves the colour' : `${second} has taken over`}`;
  }
  return `${both} go neither around nor across: ${isKept ? 'most of the colour is kept' : lost}`;
}

/** What a film over another did. */
export interface LayerFigures {
  readonly paint: string;
  /** Painter's step of the upper film over black: the lighter, the more it covers. */
  readonly overBlack: number;
  /** Share of the light that the upper film sends back by itself, 0-1. */
  readonly fromAbove: number;
  /** Steps darker than before; negative where it got lighter. */
  readonly darker: number;
  /** C* more than before. */
  readonly chroma: number;
}

/**
 * A film covers where it shows over black, as a painter tries it over a line of ink, and sends back so much of what comes
 * back from the passage; where it lightens it covers in part at least. Our bounds: the opaque paints of the usual box show over black at step 8 or lighter when laid thick.
 */
const COVERS = { overBlack: 8, fromAbove: 0.5 } as const;
const COVERS_IN_PART = { overBlack: 8.2, fromAbove: 0.25 } as const;

function layerWords({ paint, overBlack, fromAbove, darker, chroma }: LayerFigures): string {
  const value = darker <= -0.05 ? 'lighter' : darker < 0.05 ? 'as light as before' : 'darker';
  const strength =
    Math.abs(chroma) < 2 ? 'as strong in colour' : chroma > 0 ? 'stronger in colour' : 'duller';
  const is = (bounds: typeof COVERS | typeof COVERS_IN_PART): boolean =>
    overBlack <= bounds.overBlack && fromAbove >= bounds.fromAbove;
  const does = is(COVERS)
    ? 'covers with light of its own'
    : darker <= -0.05 || is(COVERS_IN_PART)
      ? 'covers in part, with some light of its own'
      : 'filters what comes from below';
  return `The upper film, ${paint}, ${does}: ${value} and ${strength}.`;
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
  const colour =
    Math.abs(stronger) < 2 ? '' : stronger > 0 ? ' and stronger in colour' : ' and weaker in colour';
  const reads = hue === 'grey' ? 'the hues cancel to nearly grey' : `it reads as ${hue}`;
  return `Side by side the eye adds the light of both: ${value} the same paint stirred${colour}; ${reads}.`;
}

export const MIXTURE = {
  pair: (figures: PairFigures): string => `${pairWords(figures)}.${lightWords(figures)}`,
  /** A colour brought to a black, a grey or a white. */
  'sets-hue': ({ neutral, colour }: { readonly neutral: string; readonly colour: string }): string =>
    `${sentence(neutral)} is close to neutral, so ${colour} sets the hue.`,
  neutral: ({ name, isWhite }: { readonly name: string; readonly isWhite: boolean }): string =>
    isWhite
      ? `${sentence(name)} sends all parts of the light back alike: it makes a colour paler and chalkier.`
      : `${sentence(name)} swallows all parts of the light alike: the colour goes with the value.`,
  'same-paint': ({ name, isStronger }: { readonly name: string; readonly isStronger: boolean }): string =>
    `${sentence(name)} is the wash itself: it only gets ${isStronger ? 'stronger' : 'weaker, with so much water'}.`,
  'share-grew': ({ name }: { readonly name: string }): string =>
    `${sentence(name)} is already in the wash: its share in it grew.`,
  layer: layerWords,
  strokes: strokesWords,
};
