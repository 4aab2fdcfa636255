/** What is said of a wash that dries. */
import { listWords } from '../../text/list-words.js';
import { stepsWords } from '../laid.js';
import { signsText, stepWords, type Voice } from '../voice.js';

/** A colour by its words and two of its figures. */
interface Reading {
  readonly step: number;
  readonly chroma: number;
}

const readingText = ({ step, chroma }: Reading, voice: Voice): string =>
  `${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}`;

/** What may be said of how a wash dries, by what carries the change. */
export const DRYING_REASONS = {
  thin: 'So thin a film has little to turn cloudy, and the white of the paper far outweighs what a matt surface spreads.',
  bright:
    'So light a colour sends back so much of its own that the white which a matt surface spreads hardly counts.',
  some: 'The mirror of the wet surface turns matt and spreads a little white; a film of this strength clouds only a little.',
  strong:
    'Wet, it was a mirror over a clear film; dry, the matt surface spreads white and a film this strong turns cloudy.',
} as const;
export type DryingReason = keyof typeof DRYING_REASONS;

const VALUE_WORDS = {
  darker: 'clearly darker',
  same: 'about the same in value',
  lighter: 'clearly lighter',
  'much-lighter': 'far lighter',
} as const;
export type ValueChange = keyof typeof VALUE_WORDS;

const CHROMA_WORDS = {
  rises: 'rises',
  'falls-little': 'falls a little',
  'falls-clearly': 'falls clearly',
  'falls-half': 'falls by half or more',
} as const;
export type ChromaChange = keyof typeof CHROMA_WORDS;

const MEND_WORDS = {
  water: { did: 'With more water', best: 'more water' },
  leave: { did: 'Left alone', best: 'leaving it alone' },
  paint: { did: 'With more paint', best: 'more paint' },
} as const;
export type Mend = keyof typeof MEND_WORDS;

const NAMES = {
  value: 'value',
  chroma: 'chroma',
  mend: 'what to do now',
  wait: 'when to judge it',
} as const;

export const DRYING = {
  'drying-laid': (figures: { readonly label: string; readonly note: string }, voice: Voice): string =>
    signsText(`laid: ${figures.label}, ${figures.note}`, voice),
  'drying-wanted': (wanted: { readonly step: number; readonly chroma?: number }, voice: Voice): string =>
    `wanted dry: ${stepWords(wanted.step, voice)}${wanted.chroma === undefined ? '' : `, chroma ${wanted.chroma.toFixed(0)}`}`,
  /** What it is when it is dry; the steps and chromas as they are written. */
  'drying-dry': (
    {
      words,
      wet,
      dry,
    }: { readonly words: string; readonly wet: { step: number; chroma: number }; readonly dry: Reading },
    voice: Voice,
  ): string => {
    const gap = wet.step - dry.step;
    const value =
      Math.abs(gap) < 0.05
        ? `the ${stepWords(dry.step, voice)} that it was wet`
        : `${stepWords(dry.step, voice)}, ${stepsWords(gap)} ${gap > 0 ? 'lighter' : 'darker'} than wet`;
    const chroma =
      wet.chroma === dry.chroma
        ? `chroma ${dry.chroma} as before`
        : `chroma ${dry.chroma} from ${wet.chroma}`;
    return `Dry it is ${words}: ${value}, ${chroma}.`;
  },
  'drying-right': ({ asks }: { readonly asks: readonly (keyof typeof NAMES)[] }): string =>
    `Right: ${listWords(asks.map((ask) => NAMES[ask]))}.`,
  'drying-close': ({ ask }: { readonly ask: keyof typeof NAMES }): string =>
    `Too close to call, so yours counts: ${NAMES[ask]}.`,
  'drying-value-off': ({ said, is }: { readonly said: ValueChange; readonly is: ValueChange }): string =>
    `You expected it ${VALUE_WORDS[said]}; it dries ${VALUE_WORDS[is]}.`,
  'drying-chroma-off': ({ said, is }: { readonly said: ChromaChange; readonly is: ChromaChange }): string =>
    `You expected that chroma ${CHROMA_WORDS[said]}; it ${CHROMA_WORDS[is]}.`,
  'drying-mend-off': (
    { did, dries, best, to }: { did: Mend; dries: Reading; best: Mend; to: Reading },
    voice: Voice,
  ): string =>
    `${MEND_WORDS[did].did} it dries to ${readingText(dries, voice)}; nearer comes ${MEND_WORDS[best].best}: ${readingText(to, voice)}.`,
  'drying-wait-off': ({ minutes: [from, to] }: { readonly minutes: readonly [number, number] }): string =>
    `A wet patch cannot be set beside a dry one: give it ${from} to ${to} minutes.`,
  'drying-reason': ({ reason }: { readonly reason: DryingReason }): string => DRYING_REASONS[reason],
};
