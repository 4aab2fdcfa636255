/** What is said of a scene sorted into light, middle and dark. */
import { SAME_VALUE } from '../../judgement/index.js';
import { listWords } from '../../text/list-words.js';
import { sentence, stepsWords, strengthWords } from '../laid.js';
import { shareText, signsText, stepWords, type Voice } from '../voice.js';

export type ValueName = 'light' | 'middle' | 'dark';

/** An area as it was sorted and as it is. */
export interface SortedArea {
  readonly name: string;
  readonly said: ValueName;
  readonly is: ValueName;
}

type Shares = Readonly<Record<ValueName, number>>;

const NAMES = ['light', 'middle', 'dark'] as const;

const sharesText = (shares: Shares, voice: Voice): string =>
  NAMES.map((name) => `${name} ${shareText(shares[name], voice)}`).join(', ');

export const SORT_VALUES = {
  'sort-local': (
    {
      name,
      hue,
      strengths,
    }: { readonly name: string; readonly hue: string; readonly strengths: readonly number[] },
    voice: Voice,
  ): string => signsText(`${name}: ${hue}, ${listWords(strengths.map(strengthWords))} strong`, voice),
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
      return own.length === 0 ? [] : [`${name}: ${listWords(own)}`];
    });
    return `${right} of ${of} areas right; ${each.join('; ')}.`;
  },
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
  'sort-most': (
    { said, shares, counts }: { readonly said: ValueName; readonly shares: Shares; readonly counts: boolean },
    voice: Voice,
  ): string => `Shares of the sheet${counts ? '' : `, not mostly ${said}`}: ${sharesText(shares, voice)}.`,
  'sort-span': ({
    span,
    least,
    isClose,
  }: {
    readonly span: number;
    readonly least: number;
    readonly isClose: boolean;
  }): string => {
    const end = isClose
      ? 'too close to call, so yours counts'
      : span >= least
        ? 'wide enough to carry'
        : 'too short to carry';
    return `Span ${span.toFixed(0)} L*, ${end}; a plan needs ${least}.`;
  },
  /** Strong colours that were taken for another value than they have. */
  'sort-strong': ({ names }: { readonly names: readonly string[] }): string =>
    `A strong colour hides its value: ${listWords(names)}.`,
  /** The two areas nearest in value; they merge under half a step. */
  'sort-nearest': (
    { one, other, gap }: { readonly one: string; readonly other: string; readonly gap: number },
    _voice: Voice,
  ): string =>
    gap < SAME_VALUE
      ? `Squint: the ${one} and the ${other} merge, whatever their colours.`
      : `Squint: all stand apart; nearest are the ${one} and the ${other}, by ${stepsWords(gap)}.`,
  'sort-squint': (): string =>
    'Squint: what merges has the same value, whatever its colour; what stands apart will carry the picture.',
  'why-sorted': (
    {
      bounds: [dark, darker],
      areas,
    }: {
      readonly bounds: readonly [number, number];
      readonly areas: readonly { readonly name: string; readonly is: ValueName }[];
    },
    voice: Voice,
  ): string => {
    const each = NAMES.flatMap((name) => {
      const own = areas.filter(({ is }) => is === name).map((area) => area.name);
      return own.length === 0 ? [] : [`${name}: ${own.join(', ')}`];
    });
    return `Light ends at ${stepWords(dark, voice)}, dark begins at ${stepWords(darker, voice)}. ${sentence(each.join('; '))}.`;
  },
  'why-plan': (
    { shares, span, least }: { readonly shares: Shares; readonly span: number; readonly least: number },
    voice: Voice,
  ): string =>
    `Shares of the sheet: ${sharesText(shares, voice)}. From lightest to darkest ${span.toFixed(0)} L*; a plan that carries has ${least} or more.`,
};
