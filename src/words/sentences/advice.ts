/** What to try next: the one change that would have mended an answer, or the lesson of the mistaken idea that it showed. */
import type { HueName } from '../../colour/hue.js';
import { listWords } from '../../text/list-words.js';
import type { Way } from '../../washes/index.js';
import { IDEAS } from '../ideas.js';
import { sentence } from '../laid.js';

/** Where a better paint stands beside the wash. */
export type BetterPlace = 'own' | 'white' | 'black' | 'free' | 'around' | 'across' | 'between';

/** How a better paint differs by itself from the one chosen, where that is what it takes. */
export type BetterBy = 'darker' | 'lighter' | 'brighter' | 'duller';

/** More or less of the same paint. @remarks `by`: the new amount against the old, above 1 for more */
interface AmountChange {
  readonly what: 'amount';
  readonly way: Way;
  readonly by: number;
  /** Of strokes: their strength against the old. */
  readonly strengthBy: number;
  /** Water is to change as well. */
  readonly water?: 'more' | 'less' | undefined;
}

/** Another paint. */
export interface PaintChange {
  readonly what: 'paint';
  readonly place: BetterPlace;
  readonly itself?: BetterBy | undefined;
  /** Its own hue, beside a wash that has none to be near or across from. */
  readonly hue?: HueName | undefined;
}

/** One change that is open and raises the mark. */
export type Change = (
  | AmountChange
  | { readonly what: 'water'; readonly water: 'more' | 'less' }
  | { readonly what: 'way'; readonly to: Way }
  | PaintChange
) & {
  /** The answer is good after it. */
  readonly isEnough: boolean;
  /** Another way there than the one told as better. */
  readonly isOther: boolean;
  /** The paint was the drill's, not chosen. */
  readonly isGiven: boolean;
};

/** "halve it", "take four times as much". */
function amountWords({ way, by, strengthBy }: AmountChange): string {
  if (way === 'strokes') {
    const strong = strengthBy === 1 ? '' : strengthBy > 1 ? 'stronger ' : 'weaker ';
    const share = by === 1 ? '' : by > 1 ? ' on more of the paper' : ' on less of the paper';
    return `lay ${strong}strokes${share}`;
  }
  if (way === 'glaze') {
    const far = by >= 3 || by <= 1 / 3 ? 'far ' : '';
    return `glaze it ${far}${by > 1 ? 'stronger' : 'weaker'}`;
  }
  if (by >= 6) return 'take far more of it';
  if (by > 3) return 'take four times as much';
  if (by > 1) return 'double it';
  if (by >= 0.4) return 'halve it';
  return by > 0.2 ? 'take a quarter of it' : 'take far less of it';
}

const TO_WAY: Readonly<Record<Way, string>> = {
  puddle: 'stir it in',
  glaze: 'glaze it over the dry wash',
  strokes: 'lay it in strokes beside the wash',
};

const FROM_PLACE: Readonly<Record<BetterPlace, string>> = {
  own: 'more of what the wash is made of',
  white: 'a white',
  black: 'a black or a grey',
  free: 'one of another hue',
  around: 'a neighbour of the colour',
  across: 'one from across the wheel',
  between: 'one from part of the way round the wheel',
};

function changeWords(change: Change): string {
  const keep = change.isGiven ? '' : 'keep the paint and ';
  if (change.what === 'amount')
    return `${keep}${amountWords(change)}${change.water === undefined ? '' : `, with ${change.water} water`}`;
  if (change.what === 'water')
    return `${change.isGiven ? 'keep the amount' : 'keep the paint and its amount'}: ${change.water} water`;
  if (change.what === 'way') return `keep the paint, change the way: ${TO_WAY[change.to]}`;
  const itself =
    change.itself === undefined
      ? ''
      : `, ${change.hue === undefined ? 'itself ' : ''}${change.itself} than yours`;
  if (change.place === 'own') return `bring no other paint: ${FROM_PLACE.own}`;
  const from = change.hue === undefined ? FROM_PLACE[change.place] : `one that is ${change.hue} by itself`;
  return `take another paint: ${from}${itself}`;
}

export const ADVICE = {
  /** The lesson of the idea. */
  advice: ({ idea }: { readonly idea: string }): string => IDEAS.get(idea)?.instead ?? '',
  /** What would have mended this answer. */
  change: (change: Change): string =>
    change.isEnough
      ? `${sentence(`${change.isOther ? 'or, with less change, ' : ''}${changeWords(change)}`)}.`
      : `Nearer, if not there: ${changeWords(change)}.`,
  /** Washes of one paint that came out too dark or too light, by name. */
  'advice-water': ({ more, less }: WaterAdvice): string => {
    const of = (word: string, names: readonly string[]): string[] =>
      names.length === 0 ? [] : [`${word} water for ${listWords(names)}`];
    return `${sentence([...of('more', more), ...of('less', less)].join('; '))}.`;
  },
};

interface WaterAdvice {
  readonly more: readonly string[];
  readonly less: readonly string[];
}
