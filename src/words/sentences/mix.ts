/** What is asked of a mixture and said of what it became, beside the rows of value, chroma and hue. */
import type { HueName } from '../../colour/hue.js';
import type { Aim } from '../../judgement/index.js';
import { sentence } from '../laid.js';
import { bandText, stepText, stepWords, type Voice } from '../voice.js';

/** What is wanted: what the aim says, or of a deep dark and of a colour that turns what it means there. */
export type Wanted = Aim | 'neutral-dark' | 'lean-dark' | 'another-hue' | 'turned-hue';

const WANTED_WORDS: Readonly<Record<Wanted, string>> = {
  shade: 'a shade',
  rich: 'darker and rich',
  dull: 'duller',
  distance: 'farther off',
  neutral: 'a grey',
  lean: 'a grey that leans',
  'neutral-dark': 'a dark nearly without colour',
  'lean-dark': 'a dark that leans',
  'another-hue': 'another hue, and still a colour',
  'turned-hue': 'the hue moved round, and still a colour',
};

interface ChromaGoal {
  readonly from: number;
  /** Absent where the light or the tray sets what counts. */
  readonly band?: readonly [number, number] | undefined;
  readonly aim: Aim;
}

function chromaGoal({ from, band, aim }: ChromaGoal): string {
  const is = `chroma: from ${from.toFixed(0)}`;
  if (band !== undefined)
    return band[0] === 0 ? `${is} to ${band[1]} at most` : `${is} to between ${band[0]} and ${band[1]}`;
  return aim === 'shade'
    ? `${is}, to about what the light leaves`
    : `chroma: keep as much as you can of ${from.toFixed(0)}`;
}

/** A hue asked, degrees. */
export interface HueGoal {
  readonly hue: HueName;
  readonly near: number;
  readonly within: number;
  /** `held`: the start's own; `turned`: from the start's round to another; `towards`: of a grey, which has none. */
  readonly as: 'held' | 'turned' | 'towards';
  /** The start's hue, where it is to turn. */
  readonly from?: { readonly hue: HueName; readonly at: number } | undefined;
  /** The next hue by name on that way. */
  readonly beyond?: string | undefined;
}

function hueGoal({ hue, near, within, as, from, beyond }: HueGoal): string {
  if (as === 'held') return `hue: stays ${hue}, within ${within}°`;
  const to = `${near.toFixed(0)}°`;
  if (as === 'towards' || from === undefined) return `hue: towards ${hue}, ${to}; within ${within}°`;
  const start = `hue: from ${from.hue} ${from.at.toFixed(0)}° round to`;
  return from.hue === hue
    ? `${start} ${to}, towards ${beyond}; within ${within}°`
    : `${start} ${hue} ${to}, within ${within}°`;
}

interface BetterFigures {
  readonly label: string;
  readonly step: number;
  readonly chroma: number;
  /** It takes a paint of the painting's own, where the answer brought a new one. */
  readonly isOwn: boolean;
  /** The answer was good already. */
  readonly wasGood: boolean;
}

export const MIX = {
  'mix-first': ({ wash, wanted }: { readonly wash: string; readonly wanted: Wanted }): string =>
    `first wash: ${wash}; wanted: ${WANTED_WORDS[wanted]}`,
  'mix-value': (
    { from, band }: { readonly from: number; readonly band: readonly [number, number] },
    voice: Voice,
  ): string =>
    `value: from ${voice.scale === 'paper-first' ? stepWords(from, voice) : stepText(from, voice)} to between ${bandText(band, voice).replace(' to ', ' and ')}`,
  'mix-chroma': chromaGoal,
  'mix-hue': hueGoal,
  'mix-painting': ({ names, cost }: { readonly names: readonly string[]; readonly cost: number }): string =>
    `painting: has ${names.join(', ')}; any other paint costs ${cost} marks`,
  'mix-fixed': ({ parts }: { readonly parts: readonly string[] }): string => `fixed: ${parts.join(', ')}`,
  /** What it is now. @remarks `colour` is the name of the colour, `label` the answer's */
  'mix-now': ({ label, colour }: { readonly label: string; readonly colour: string }): string =>
    `It is now ${colour}: ${label}.`,
  /** A paint that the painting does not have. @remarks `cost` is what it took from this mark */
  'mix-apart': ({ name, cost }: { readonly name: string; readonly cost: number }): string =>
    `${sentence(name)} is nowhere else in the painting and stands apart${cost === 0 ? '' : `: ${cost} marks`}.`,
  'mix-best': (_: Readonly<Record<string, never>>): string => 'Nothing on this tray does it better.',
  'mix-as-good': ({ label }: { readonly label: string }): string => `Just as good by the mark: ${label}.`,
  'mix-better': ({ label, step, chroma, isOwn, wasGood }: BetterFigures, voice: Voice): string =>
    `Better${wasGood ? ' still' : ''}${isOwn ? ', of the painting’s own' : ''}: ${label}: ${stepWords(step, voice)}, chroma ${chroma.toFixed(0)}.`,
};
