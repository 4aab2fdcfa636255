/** Value, as painters and Munsell use the word: how light or dark a colour is, in equal visual steps. */
import { lightnessFromY } from './lab.js';

/** Powers 1 to 5 of Munsell value V in luminance factor Y. Source: ASTM D1535, referred to the perfect diffuser. */
const D1535 = [1.1914, -0.22533, 0.23352, -0.020484, 0.00081939] as const;

const clampValue = (value: number): number => Math.min(10, Math.max(0, value));

/**
 * Luminance factor Y, 0-100, from Munsell value.
 * @param value 0 black to 10 white; clamped to that range
 * Worked number: V 5 is Y 19.27. Source: ASTM D1535.
 */
export function yFromMunsellValue(value: number): number {
  const v = clampValue(value);
  const [c1, c2, c3, c4, c5] = D1535;
  return v * (c1 + v * (c2 + v * (c3 + v * (c4 + v * c5))));
}

function slopeAt(v: number): number {
  const [c1, c2, c3, c4, c5] = D1535;
  return c1 + v * (2 * c2 + v * (3 * c3 + v * (4 * c4 + v * 5 * c5)));
}

/**
 * Munsell value from luminance factor.
 * @param y 0-100 against the perfect diffuser; clamped to that range
 * @returns 0 black to 10 white, within 1e-9 of the exact inverse of {@link yFromMunsellValue}
 */
export function munsellValueFromY(y: number): number {
  if (y <= 0) return 0;
  if (y >= 100) return 10;
  // Newton from L*/10, which is never further off than a tenth; the quintic rises all the way from 0 to 10.
  let v = clampValue(lightnessFromY(y) / 10);
  for (let round = 0; round < 20; round++) {
    const change = (yFromMunsellValue(v) - y) / slopeAt(v);
    v = clampValue(v - change);
    if (Math.abs(change) < 1e-12) break;
  }
  return v;
}

/** L*, 0-100, of a grey of that Munsell value. */
export function lightnessFromMunsellValue(value: number): number {
  return lightnessFromY(yFromMunsellValue(value));
}

/** Munsell value of white paper, the first painter's step. */
export const PAPER_VALUE = 9.5;

/**
 * The painter's step of a Munsell value: 1 for white paper (V 9.5) to 10 for the darkest dark (V 0.5).
 * @returns 0.5 to 10.5; a paper brighter than V 9.5 comes out a little under 1
 */
export function painterStep(value: number): number {
  return 10.5 - clampValue(value);
}

/** Munsell value of a painter's step: the inverse of {@link painterStep}, clamped to 0-10. */
export function valueFromStep(step: number): number {
  return clampValue(10.5 - step);
}

/** The two directions in which painters number values. */
export type ValueScaleId = 'paper-first' | 'black-first';

/** A way of numbering values. Every scale names its ends, since both directions are in common use. */
export interface ValueScale {
  readonly id: ValueScaleId;
  readonly title: string;
  readonly lightest: { readonly step: number; readonly name: string };
  readonly darkest: { readonly step: number; readonly name: string };
  /** Step on this scale of a Munsell value 0-10. */
  readonly stepOf: (value: number) => number;
  /** Munsell value 0-10 of a step on this scale. */
  readonly valueOf: (step: number) => number;
}

/** 1 paper white to 10 darkest dark: the default. */
export const PAPER_FIRST: ValueScale = {
  id: 'paper-first',
  title: "painter's steps",
  lightest: { step: 1, name: 'paper white' },
  darkest: { step: 10, name: 'darkest dark' },
  stepOf: painterStep,
  valueOf: valueFromStep,
};

/** 0 black to 10 white: Munsell value as it stands. */
export const BLACK_FIRST: ValueScale = {
  id: 'black-first',
  title: 'Munsell value',
  lightest: { step: 10, name: 'white' },
  darkest: { step: 0, name: 'black' },
  stepOf: clampValue,
  valueOf: clampValue,
};

/** Both scales by id. */
export const VALUE_SCALES: Readonly<Record<ValueScaleId, ValueScale>> = {
  'paper-first': PAPER_FIRST,
  'black-first': BLACK_FIRST,
};

/** A Munsell value as a number on the chosen scale, to one decimal: '6.5'. */
export function formatStep(value: number, scale: ValueScale = PAPER_FIRST): string {
  return scale.stepOf(value).toFixed(1);
}

/**
 * The ends of a band of painter's steps as numbers on a scale, lower number first, to one decimal: '4.6', '5.6'. A band may go on
 * beyond what can be painted; the scale does not: '7.9', '10 (the darkest)'.
 */
export function bandEnds(
  steps: readonly [number, number],
  scale: ValueScale = PAPER_FIRST,
): [string, string] {
  const ends = [scale.lightest, scale.darkest].sort((one, other) => one.step - other.step);
  const [least, most] = ends as [ValueScale['lightest'], ValueScale['darkest']];
  const beyond = (end: ValueScale['lightest']): string =>
    `${end.step} (the ${end === scale.darkest ? 'darkest' : 'lightest'})`;
  const [low, high] = steps
    .map((step) => scale.stepOf(valueFromStep(step)))
    .sort((one, other) => one - other);
  const shown = (at: number): string =>
    at < least.step ? beyond(least) : at > most.step ? beyond(most) : at.toFixed(1);
  return [shown(low as number), shown(high as number)];
}

/** The ends of a scale in words, lower number first: '1 paper white to 10 darkest dark'. */
export function scaleEnds(scale: ValueScale = PAPER_FIRST): string {
  const ends = [scale.lightest, scale.darkest].sort((one, other) => one.step - other.step);
  return ends.map(({ step, name }) => `${step} ${name}`).join(' to ');
}

/** Lower bound in Munsell value of each word, one whole step each; the bands are the published L* tens. */
const VALUE_WORDS = [
  [9, 'near white'],
  [8, 'very light'],
  [7, 'light'],
  [6, 'middle light'],
  [5, 'middle'],
  [4, 'middle dark'],
  [3, 'dark'],
  [2, 'very dark'],
  [0, 'near black'],
] as const;

/** A Munsell value, 0-10, in a painter's words. */
export type ValueWord = (typeof VALUE_WORDS)[number][1];

/** How light a colour is, in words, from its Munsell value 0-10. */
export function valueWord(value: number): ValueWord {
  return VALUE_WORDS.find(([from]) => value >= from)?.[1] ?? 'near black';
}
