/** What the curves of a "why" show, in words. */
import { listWords } from '../../text/list-words.js';
import { percent, sentence } from '../laid.js';
import { type Run, runsWithNm } from '../spectrum.js';
import type { Covering } from './mixture.js';

/** What one paint or film does to the light by itself. */
export interface Taken {
  readonly name: string;
  /** A black or a grey takes all parts alike, a white none; a colour the parts in `swallows`. */
  readonly is: 'black' | 'white' | 'colour';
  readonly swallows: readonly Run[];
}

/** "ultramarine blue swallows green to red (500 to 700 nm)". */
function takenWords({ name, is, swallows }: Taken): string {
  if (is === 'black') return `${name} lowers the whole curve`;
  if (is === 'white') return `${name} sends all parts back`;
  return swallows.length === 0
    ? `${name}, so thin, takes only some of the light`
    : `${name} swallows ${runsWithNm(swallows)}`;
}

/** One film among several that are compared. */
export interface ComparedFilm extends Taken {
  /** Share of all light that the eye gets back, 0-1: what value goes by. */
  readonly all: number;
  /** The lowest and the highest point of the curve, 0-1. */
  readonly ends: readonly [number, number];
}

/** Of little light a tenth of a per cent counts. */
const lowShare = (share: number): string => (share < 0.1 ? `${(100 * share).toFixed(1)} %` : percent(share));

export const WHY = {
  'why-one-paint': (): string =>
    'One paint alone: more water lifts the whole curve, more paint lowers it where it already swallows.',
  'why-mixture': ({ paints }: { readonly paints: readonly Taken[] }): string =>
    `Each alone, as strong as the mixture: ${paints.map(takenWords).join('; ')}.`,
  /** @param figures `share`: what the upper film sends back by itself, of all the light that comes back, 0-1 */
  'why-glaze': ({
    does,
    share,
    upper,
    below,
  }: {
    readonly does: Covering;
    readonly share: number;
    readonly upper: Taken;
    readonly below: Taken;
  }): string =>
    does === 'filters'
      ? `Light goes through the upper film twice, down and back: ${takenWords(upper)}. Below it, ${takenWords(below)}.`
      : `Of the light that comes back about ${percent(share)} never reached what lies below: ${upper.name} sends it back by itself.`,
  'why-strokes': ({
    strokes,
  }: {
    readonly strokes: readonly { readonly name: string; readonly share: number }[];
  }): string =>
    `The eye takes the mean, each by the paper it covers: ${listWords(strokes.map(({ name, share }) => `${name} ${percent(share)}`))}. The same paint stirred lies lower, nearer the lower curve.`,
  'why-dried': ({
    low,
    high,
  }: {
    readonly low: readonly [number, number];
    readonly high: readonly [number, number];
  }): string => {
    const part = ([wet, dry]: readonly [number, number]): string =>
      lowShare(wet) === lowShare(dry)
        ? `it stays ${lowShare(dry)}`
        : `from ${lowShare(wet)} wet to ${lowShare(dry)} dry`;
    return `How much comes back where the film swallows most: ${part(low)}; where it lets most through: ${part(high)}.`;
  },
  'why-drying-limits': (): string =>
    'In measured washes the value hardly moves; what pales is the look of the wet gloss, and the colour. Paints differ: the program never predicts darker, yet some do dry darker.',
  /** What of the films decided, the best first. */
  'why-films': ({
    by,
    isGreyFirst,
    films,
  }: {
    readonly by: 'value' | 'chroma' | 'hue';
    readonly isGreyFirst: boolean;
    readonly films: readonly ComparedFilm[];
  }): string => {
    const each = (text: (film: ComparedFilm) => string): string =>
      films.map((film) => `${film.name} ${text(film)}`).join('; ');
    if (by === 'value') return `How much of all light comes back: ${each(({ all }) => lowShare(all))}.`;
    if (by === 'chroma') {
      const apart = films.map(({ ends }) => ends[1] - ends[0]);
      // Told where these films bear it out.
      const isSo = apart.every(
        (span, at) => at === 0 || (isGreyFirst ? span >= (apart[at - 1] ?? 0) : span <= (apart[at - 1] ?? 1)),
      );
      const rule = isSo ? ' The further apart, the stronger the colour.' : '';
      return `Each curve at its lowest and its highest: ${each(({ ends }) => ends.map((end) => lowShare(end)).join(' and '))}.${rule}`;
    }
    return `${sentence(films.map(takenWords).join('; '))}.`;
  },
  'why-loss': ({
    name,
    wet,
    dry,
  }: {
    readonly name: string;
    readonly wet: number;
    readonly dry: number;
  }): string => `${name}: chroma ${wet.toFixed(1)} wet, ${dry.toFixed(1)} dry.`,
};
