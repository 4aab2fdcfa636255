/** What is said of the values of shaded sides and cast shadows. */
import { painterStep } from '../../colour/value.js';
import { listWords } from '../../text/list-words.js';
import { sentence, stepsWords } from '../laid.js';
import { bandText, scaleUnit, stepWords, type Voice } from '../voice.js';

export type ShadowKind = 'shade' | 'cast';
export type ShadowLight = 'sun' | 'hard-sun' | 'overcast';

/** A thing and which shadow of it is meant. */
export interface ShadowName {
  readonly name: string;
  readonly shadow: ShadowKind;
}

const whatOf = ({ name, shadow }: ShadowName): string =>
  shadow === 'shade' ? `${name}, shaded side` : `cast shadow on ${name}`;

const LIGHTS: Readonly<Record<ShadowLight, string>> = {
  sun: 'direct sun, some light thrown back into the shade',
  'hard-sun': 'direct sun, nothing throws light back',
  overcast: 'grey sky, no direct sun',
};

const TENTHS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'] as const;

/** By how many steps something is too dark, below 0 too light. */
const offWords = (gap: number): string => `too ${gap > 0 ? 'dark' : 'light'}`;

export const SHADOW_VALUES = {
  'shadow-light': ({ light }: { readonly light: ShadowLight }): string => `light: ${LIGHTS[light]}`,
  'shadow-lit': ({ name, step }: { readonly name: string; readonly step: number }, voice: Voice): string =>
    `${name}: lit ${stepWords(step, voice)}`,
  'shadow-scale': (_: object, { scale }: Voice): string =>
    scale === 'paper-first' ? 'steps: 1 paper white to 10 darkest dark' : 'values: 0 black to 10 white',
  'shadow-holds': ({ things }: { readonly things: readonly ShadowName[] }): string =>
    `${sentence(listWords(things.map(whatOf)))}: right.`,
  /** The thing that the row of value is about: its figures stand there. */
  'shadow-off': ({ thing, gap }: { readonly thing: ShadowName; readonly gap: number }): string =>
    `${sentence(whatOf(thing))}: ${stepsWords(gap)} ${offWords(gap)}.`,
  /** Any other thing. */
  'shadow-off-too': (
    {
      thing,
      gap,
      band,
    }: { readonly thing: ShadowName; readonly gap: number; readonly band: readonly [number, number] },
    voice: Voice,
  ): string =>
    `${sentence(whatOf(thing))}: ${stepsWords(gap)} ${offWords(gap)}; ${bandText(band, voice)} fits.`,
  /** What a shadow keeps of the lit value, in Munsell's values, which shares are taken of. */
  'shadow-rule': (
    {
      shadow,
      light,
      share,
      value,
    }: {
      readonly shadow: ShadowKind;
      readonly light: 'sun' | 'hard-sun';
      readonly share: number;
      readonly value: number;
    },
    voice: Voice,
  ): string => {
    const what = shadow === 'shade' ? 'A shaded side' : 'A cast shadow';
    const left = share * value;
    const of =
      voice.scale === 'paper-first'
        ? `${value.toFixed(1)} of 10 becomes ${left.toFixed(1)}, ${stepWords(painterStep(left), voice)}`
        : `${value.toFixed(1)} becomes ${left.toFixed(1)}`;
    const more = light === 'hard-sun' ? ', or one darker where nothing throws light back' : '';
    return `${what} keeps about ${TENTHS[Math.round(10 * share)]} tenths of the lit value: ${of}${more}.`;
  },
  'shadow-grey-sky': (): string =>
    'Under a grey sky light comes from all round and no side is truly in shade: keep within a step.',
  'shadow-better': (
    { things }: { readonly things: readonly (ShadowName & { readonly step: number })[] },
    voice: Voice,
  ): string =>
    `Better: ${things.map((thing) => `${whatOf(thing)}, ${stepWords(thing.step, voice)}`).join('; ')}.`,
  /** Why: one thing after another. */
  'why-shadow': (
    { thing, band }: { readonly thing: ShadowName; readonly band: readonly [number, number] },
    voice: Voice,
  ): string => `${sentence(whatOf(thing))}: ${scaleUnit(voice)} ${bandText(band, voice)} fits.`,
  'why-shadow-guess': (): string =>
    'Shares of the lit value are a starting guess, not a law: light thrown back from wall or water lifts a shade.',
};
