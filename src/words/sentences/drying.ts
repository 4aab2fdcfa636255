/** What is said of a wash that dries. */
import { listWords } from '../../text/list-words.js';
import { sentence, stepsWords } from '../laid.js';
import { stepText, stepWords, type Voice } from '../voice.js';

/** A colour by its words and two of its figures. */
interface Reading {
  readonly step: number;
  readonly chroma: number;
}

const readingText = ({ step, chroma }: Reading, voice: Voice): string =>
  `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`;

/** What carries the change of a wash that dries. */
const REASONS = {
  thin: 'So thin a film has little to cloud; the white of the paper outweighs it.',
  bright: 'So light a colour sends back too much for a little more white to count.',
  some: 'The matt surface spreads a little white; a film like this clouds little.',
  strong: 'The matt surface spreads white, and a film this strong turns cloudy.',
} as const;
export type DryingReason = keyof typeof REASONS;

const VALUE_WORDS = {
  darker: 'falls by half a step or more',
  same: 'holds within half a step',
  lighter: 'rises by half a step or more',
  'much-lighter': 'rises by one and a half steps or more',
} as const;
export type ValueChange = keyof typeof VALUE_WORDS;

const CHROMA_WORDS = {
  rises: 'rises',
  'falls-little': 'falls by less than a tenth',
  'falls-clearly': 'falls by a tenth or more',
  'falls-half': 'falls by half or more',
} as const;
export type ChromaChange = keyof typeof CHROMA_WORDS;

const MEND_WORDS = { water: 'more water', leave: 'leaving it', paint: 'more paint' } as const;
export type Mend = keyof typeof MEND_WORDS;

const NAMES = {
  value: 'value',
  chroma: 'chroma',
  mend: 'what to do now',
  wait: 'when to judge it',
} as const;

export const DRYING = {
  'drying-laid': ({ label, note }: { readonly label: string; readonly note: string }): string =>
    `laid: ${label}, ${note}`,
  'drying-wanted': (wanted: { readonly step: number; readonly chroma?: number }, voice: Voice): string =>
    `wanted dry: ${stepWords(wanted.step, voice)}${wanted.chroma === undefined ? '' : `, chroma ${wanted.chroma.toFixed(0)}`}`,
  /** What it is when it is dry; its own figures stand beside its colour. */
  'drying-dry': ({
    words,
    lighter,
    lost,
  }: {
    readonly words: string;
    /** Steps, below 0 darker. */
    readonly lighter: number;
    /** Chroma. */
    readonly lost: number;
  }): string => {
    const value =
      Math.abs(lighter) < 0.05
        ? 'its value unmoved'
        : `${stepsWords(lighter)} ${lighter > 0 ? 'lighter' : 'darker'}`;
    const chroma =
      Math.abs(lost) < 0.5
        ? 'its chroma as before'
        : `${Math.abs(lost).toFixed(0)} of chroma ${lost > 0 ? 'gone' : 'gained'}`;
    return `Dry it is ${words}: ${value}, ${chroma}.`;
  },
  /** What counts: right, or too near for the model to tell. */
  'drying-right': ({ asks, close }: Record<'asks' | 'close', readonly (keyof typeof NAMES)[]>): string => {
    const words = (list: readonly (keyof typeof NAMES)[]): string => listWords(list.map((ask) => NAMES[ask]));
    const parts = [
      ...(asks.length === 0 ? [] : [`right: ${words(asks)}`]),
      ...(close.length === 0 ? [] : [`too close to call: ${words(close)}`]),
    ];
    return `${sentence(parts.join('; '))}.`;
  },
  /** What becomes of what was answered wrongly. */
  'drying-is': ({
    value,
    chroma,
  }: {
    readonly value?: ValueChange;
    readonly chroma?: ChromaChange;
  }): string => {
    const words = [
      ...(chroma === undefined ? [] : [`chroma ${CHROMA_WORDS[chroma]}`]),
      ...(value === undefined ? [] : [`value ${VALUE_WORDS[value]}`]),
    ];
    return `${sentence(words.join('; '))}.`;
  },
  'drying-mend-off': (
    { did, dries, best, to }: { did: Mend; dries: Reading; best: Mend; to: Reading },
    voice: Voice,
  ): string =>
    `${sentence(MEND_WORDS[best])} dries nearer (${readingText(to, voice)}) than ${MEND_WORDS[did]} (${stepText(dries.step, voice)}, ${dries.chroma}).`,
  'drying-wait-off': ({ minutes: [from, to] }: { readonly minutes: readonly [number, number] }): string =>
    `A wet patch cannot be set beside a dry one: give it ${from} to ${to} minutes.`,
  'drying-reason': ({ reason }: { readonly reason: DryingReason }): string => REASONS[reason],
  'drying-expect-less': (): string =>
    'Expect less: what pales is mostly the wet gloss. Lay a patch, let it dry.',
  /** What is judged, before the answer. */
  'drying-judged': (): string =>
    'judged: the film itself, not the gloss that makes a wet wash look darker; paints differ',
};
