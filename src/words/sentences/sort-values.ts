/** What is said of a scene sorted into light, middle and dark. */
import { listWords } from '../../text/list-words.js';
import { percent, sentence, stepsWords, strengthWords } from '../laid.js';
import { scaleUnit, stepText, type Voice } from '../voice.js';

export type ValueName = 'light' | 'middle' | 'dark';

/** An area as it was sorted and as it is. */
export interface SortedArea {
  readonly name: string;
  readonly said: ValueName;
  readonly is: ValueName;
  /** Where it lies on a bound: all that count. */
  readonly counts?: readonly ValueName[];
}

/** Two areas and the steps between them. */
interface Pair {
  readonly one: string;
  readonly other: string;
  readonly gap: number;
}

type Bounds = readonly [number, number];

/** "light to step 3.5, dark from step 6.0", in the order of the scale. */
function boundsText([light, dark]: Bounds, voice: Voice): string {
  const unit = scaleUnit(voice);
  return voice.scale === 'paper-first'
    ? `light to ${unit} ${stepText(light, voice)}, dark from ${unit} ${stepText(dark, voice)}`
    : `light from ${unit} ${stepText(light, voice)}, dark to ${unit} ${stepText(dark, voice)}`;
}

type Shares = Readonly<Record<ValueName, number>>;

const NAMES = ['light', 'middle', 'dark'] as const;

const sharesText = (shares: Shares): string =>
  NAMES.map((name) => `${name} ${percent(shares[name])}`).join(', ');

export const SORT_VALUES = {
  'sort-bounds': ({ bounds }: { readonly bounds: Bounds }, voice: Voice): string =>
    `limits: ${boundsText(bounds, voice)}, middle between`,
  'sort-local': ({
    name,
    hue,
    strengths,
  }: {
    readonly name: string;
    readonly hue: string;
    readonly strengths: readonly number[];
  }): string => `${name}: ${hue}, ${listWords(strengths.map(strengthWords))} strong`,
  'sort-areas': ({
    right,
    of,
    wrong,
  }: {
    readonly right: number;
    readonly of: number;
    readonly wrong: readonly SortedArea[];
  }): string => {
    if (wrong.length === 0) return `All ${of} areas are sorted right.`;
    const each = NAMES.flatMap((name) => {
      const own = wrong.filter(({ is }) => is === name).map((area) => area.name);
      return own.length === 0 ? [] : [`the ${listWords(own)} should be ${name}`];
    });
    return `${right} of ${of} areas right; ${each.join('; ')}.`;
  },
  /** Areas that lie on a bound. */
  'sort-close': ({ names }: { readonly names: readonly string[] }): string =>
    `On the limit, too close to call, either way counts: ${listWords(names)}.`,
  'sort-darkest': ({
    said,
    is,
    counts,
  }: {
    readonly said: string;
    readonly is: string;
    readonly counts: boolean;
  }): string => {
    if (said === is) return `Darkest dark: the ${is}, as you said.`;
    return counts
      ? `Darkest dark: the ${is} by a hair over the ${said}; too close to call, so yours counts.`
      : `Darkest dark: the ${is}, not the ${said}.`;
  },
  'sort-most': ({
    said,
    shares,
    counts,
  }: {
    readonly said: ValueName;
    readonly shares: Shares;
    readonly counts: boolean;
  }): string => `Shares of the sheet${counts ? '' : `, not mostly ${said}`}: ${sharesText(shares)}.`,
  'sort-span': ({
    span,
    wide,
    isClose,
  }: {
    /** Steps. */
    readonly span: number;
    readonly wide: number;
    readonly isClose: boolean;
  }): string => {
    if (isClose) return `Span: ${stepsWords(span)}, too close to call: either way counts.`;
    return span >= wide
      ? `A wide span, strong as in sun: ${stepsWords(span)}.`
      : `A short span, soft as fog: ${stepsWords(span)}.`;
  },
  /** Strong colours that were taken for another value than they have. */
  'sort-strong': ({ names }: { readonly names: readonly string[] }): string =>
    `A strong colour hides its value: ${listWords(names)}.`,
  'sort-merge': ({ pairs }: { readonly pairs: readonly Pair[] }): string =>
    `Squint, and whatever their colours these merge: ${pairs.map(({ one, other }) => `${one} with ${other}`).join(', ')}.`,
  /** None merge: the two nearest in value. */
  'sort-apart': ({ one, other, gap }: Pair): string =>
    `Squint: all stand apart; nearest are the ${one} and the ${other}, by ${stepsWords(gap)}.`,
  'sort-squint': (): string =>
    'Squint: what merges has the same value, whatever its colour; what stands apart will carry the picture.',
  'why-sorted': (
    {
      bounds,
      areas,
    }: {
      readonly bounds: Bounds;
      readonly areas: readonly { readonly name: string; readonly is: ValueName }[];
    },
    voice: Voice,
  ): string => {
    const each = NAMES.flatMap((name) => {
      const own = areas.filter(({ is }) => is === name).map((area) => area.name);
      return own.length === 0 ? [] : [`${name}: ${own.join(', ')}`];
    });
    return `${sentence(boundsText(bounds, voice))}. ${sentence(each.join('; '))}.`;
  },
  'why-plan': ({ shares, span }: { readonly shares: Shares; readonly span: number }): string =>
    `Shares of the sheet: ${sharesText(shares)}. From lightest to darkest ${stepsWords(span)}.`,
};
