/** What is said of the values of shaded sides and cast shadows. */
import { sentence, stepsWords } from '../laid.js';
import { bandText, scaleUnit, stepText, stepWords, type Voice } from '../voice.js';

export type ShadowKind = 'shade' | 'cast';
export type ShadowLight = 'sun' | 'hard-sun' | 'overcast';

/** What a shadow keeps of a lit Munsell value. */
export interface ShadowRule {
  readonly shadow: ShadowKind;
  readonly light: 'sun' | 'hard-sun';
  /** 0-1. */
  readonly share: number;
  readonly value: number;
}

/** A thing and which shadow of it is meant. */
export interface ShadowName {
  readonly name: string;
  readonly shadow: ShadowKind;
}

const whatOf = ({ name, shadow }: ShadowName): string =>
  shadow === 'shade' ? `${name}, shaded side` : `cast shadow on ${name}`;

/** In a list of several. */
const inShort = ({ name, shadow }: ShadowName): string => (shadow === 'shade' ? name : `shadow on ${name}`);

const LIGHTS: Readonly<Record<ShadowLight, string>> = {
  sun: 'direct sun, some light thrown back into the shade',
  'hard-sun': 'direct sun, nothing throws light back',
  overcast: 'grey sky, no direct sun',
};

const TENTHS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'] as const;

export const SHADOW_VALUES = {
  'shadow-light': ({ light }: { readonly light: ShadowLight }): string => `light: ${LIGHTS[light]}`,
  'shadow-lit': ({ name, step }: { readonly name: string; readonly step: number }, voice: Voice): string =>
    `${name}: lit ${stepWords(step, voice)}`,
  'shadow-scale': (_: object, { scale }: Voice): string =>
    scale === 'paper-first' ? 'steps: 1 paper white to 10 darkest dark' : 'values: 0 black to 10 white',
  'shadow-holds': ({ things }: { readonly things: readonly ShadowName[] }): string =>
    things.length === 1
      ? `${sentence(whatOf(things[0] as ShadowName))}: right.`
      : `Right: ${things.map(inShort).join(', ')}.`,
  /** How many steps each is too dark, below 0 too light; the first one's figures stand in the row of value. */
  'shadow-off': ({
    things,
  }: {
    readonly things: readonly (ShadowName & { readonly gap: number })[];
  }): string => {
    const each = things.map((thing, at) => {
      const by = at === 0 ? stepsWords(thing.gap) : Math.abs(thing.gap).toFixed(1);
      return `${things.length === 1 ? `${whatOf(thing)}:` : inShort(thing)} ${by} too ${thing.gap > 0 ? 'dark' : 'light'}`;
    });
    return `${sentence(each.join(', '))}.`;
  },
  /** On a scale that begins at white a share says nothing by itself: what it comes to is told in steps. */
  'shadow-rule': ({ shadow, light, share, value }: ShadowRule): string => {
    const what = shadow === 'shade' ? 'A shaded side' : 'A cast shadow';
    const more = light === 'hard-sun' ? ' or more' : '';
    return `${what} keeps ${TENTHS[Math.round(10 * share)]} tenths of the lit value: ${stepsWords((1 - share) * value)} darker${more}.`;
  },
  /** Why: the same in Munsell's values, which shares are taken of. */
  'why-shadow-rule': ({ light, share, value }: ShadowRule): string => {
    const more = light === 'hard-sun' ? '; one step darker where nothing throws light back' : '';
    return `Counted up from black, ${TENTHS[Math.round(10 * share)]} tenths of ${value.toFixed(1)} is ${(share * value).toFixed(1)}${more}.`;
  },
  'shadow-grey-sky': (): string => 'Under a grey sky no side is truly in shade: keep within a step.',
  'shadow-better': (
    { things }: { readonly things: readonly (ShadowName & { readonly step: number })[] },
    voice: Voice,
  ): string =>
    `Better, nearest on offer: ${things.map((thing, at) => `${inShort(thing)} ${at === 0 ? stepWords(thing.step, voice) : stepText(thing.step, voice)}`).join(', ')}.`,
  /** Why: one thing after another. */
  'why-shadow': (
    { thing, band }: { readonly thing: ShadowName; readonly band: readonly [number, number] },
    voice: Voice,
  ): string => `${sentence(whatOf(thing))}: ${scaleUnit(voice)} ${bandText(band, voice)} fits.`,
  'why-shadow-guess': (): string =>
    'These tenths are a starting guess, not a law: light thrown back from wall or water lifts a shade.',
};
