/** What is said of a passage that is out of its plan, and of its repair. */
import { hueName } from '../../colour/hue.js';
import { listWords } from '../../text/list-words.js';
import { stepsWords } from '../laid.js';
import { bandText, scaleUnit, stepWords, type Voice } from '../voice.js';

/** What of an area is out of its plan, and by how much; empty where nothing is. */
export interface OutOfPlan {
  /** Steps too dark, or too light below 0. */
  readonly step?: number;
  /** Chroma too strong, or too dull below 0. */
  readonly chroma?: number;
  readonly hue?: true;
}

const sideOf = ({ step, chroma, hue }: OutOfPlan): string[] => [
  ...(step === undefined ? [] : [step > 0 ? 'too dark' : 'too light']),
  ...(chroma === undefined ? [] : [chroma > 0 ? 'too strong' : 'too dull']),
  ...(hue === undefined ? [] : ['off in hue']),
];

/** "too dark and too dull". */
const sides = (out: OutOfPlan): string => listWords(sideOf(out));

/** "1.9 steps too dark and 7 too dull in chroma". */
function amounts(out: OutOfPlan): string {
  const [first = '', ...rest] = sideOf(out);
  const words = [
    ...(out.step === undefined ? [] : [`${stepsWords(out.step)} ${first}`]),
    ...(out.chroma === undefined
      ? []
      : [`${Math.abs(out.chroma).toFixed(0)} ${out.step === undefined ? first : rest[0]} in chroma`]),
    ...(out.hue === undefined ? [] : ['off in hue']),
  ];
  return listWords(words);
}

/** What a repair did to value and chroma, in steps darker and chroma up. */
export interface Moved {
  readonly darker: number;
  readonly stronger: number;
}

/** Less than these moves nothing that is seen. */
const SEEN = { darker: 0.2, stronger: 4 } as const;

function movedWords({ darker, stronger }: Moved): string {
  const words = [
    ...(Math.abs(darker) < SEEN.darker ? [] : [darker > 0 ? 'darker' : 'lighter']),
    ...(Math.abs(stronger) < SEEN.stronger ? [] : [stronger > 0 ? 'stronger' : 'duller']),
  ];
  return words.length === 0 ? 'hardly changed' : listWords(words);
}

export type Fault = 'value' | 'chroma' | 'hue';

interface Plan {
  readonly step: readonly [number, number];
  readonly chroma?: readonly [number, number];
  readonly hue?: { readonly near: number; readonly within: number };
}

const planText = ({ step, chroma, hue }: Plan, voice: Voice): string =>
  [
    `${scaleUnit(voice)} ${bandText(step, voice)}`,
    ...(chroma === undefined ? [] : [`chroma ${chroma[0]} to ${chroma[1]}`]),
    ...(hue === undefined ? [] : [`hue ${hueName(hue.near)}, ${hue.near}° ± ${hue.within}`]),
  ].join(', ');

export const DIAGNOSIS = {
  /** In figures: what lies there is only seen, and by how much it is off is to be judged. */
  'passage-asked': ({ area, plan }: { readonly area: string; readonly plan: Plan }, voice: Voice): string =>
    `${area}: planned ${planText(plan, voice)}`,
  'passage-found': ({ area, out }: { readonly area: string; readonly out: OutOfPlan }): string =>
    `You found it, the ${area}: ${sides(out)} for the plan.`,
  'passage-elsewhere': (
    { said, area, out }: { readonly said: string; readonly area: string; readonly out: OutOfPlan },
    _voice: Voice,
  ): string => `Nothing is out in the ${said}. The fault is in the ${area}: ${sides(out)}.`,
  'passage-missed': ({ area, out }: { readonly area: string; readonly out: OutOfPlan }): string =>
    `You found no fault, but there is one in the ${area}: ${sides(out)}.`,
  'passage-sound': ({ said }: { readonly said?: string }): string =>
    said === undefined
      ? 'Every area lies inside its plan, as you said.'
      : `Nothing is out, in the ${said} or anywhere else: every area lies inside its plan.`,
  /** The fault was called by another name than the first that is out. */
  'passage-misnamed': ({
    said,
    is,
  }: {
    readonly said: Fault | 'none';
    readonly is: Fault | 'none';
  }): string => {
    if (is === 'none') return `So no ${said} is at fault either.`;
    if (said === 'none') return `You named no fault there; what is out is ${is}.`;
    return `Its ${said} is inside the plan; what is out is ${is}.`;
  },
  /** The repair on the area at fault; what it is called and its figures stand above. */
  'repair-serves': ({ moved }: { readonly moved: Moved }): string =>
    `Your repair brings it inside the plan: ${movedWords(moved)}.`,
  'repair-fails': ({ moved, out }: { readonly moved: Moved; readonly out: OutOfPlan }): string =>
    `Your repair leaves it ${movedWords(moved)}: ${sides(out)}.`,
  'repair-stains': ({ out }: { readonly out: OutOfPlan }): string =>
    `The paint stains and hardly lifts: it stays ${sides(out)}.`,
  'repair-none': ({ out }: { readonly out: OutOfPlan }): string => `Left alone it stays ${sides(out)}.`,
  /** The repair laid where nothing was out. */
  'repair-harms': ({ area, out }: { readonly area: string; readonly out: OutOfPlan }): string =>
    `Your repair would have left the ${area} ${amounts(out)}.`,
  'repair-wasted': ({
    area,
    isSound,
    moved,
  }: {
    readonly area: string;
    /** Nothing is out anywhere. */
    readonly isSound: boolean;
    readonly moved?: Moved;
  }): string => {
    if (moved === undefined)
      return `The ${area} needed nothing${isSound ? '' : '; the fault stays where it is'}.`;
    const rest = isSound ? ', for nothing' : ', and the fault as it was';
    return `Your repair would have left the ${area} ${movedWords(moved)}${rest}.`;
  },
  'repair-reason': ({ by, darker, stronger }: Moved & { readonly by: 'glaze' | 'lift' | 'anew' }): string => {
    if (by === 'lift') return 'Less paint lies there now, so more of the white paper shows through.';
    if (by === 'anew') return 'On a new sheet nothing lies below to filter the wash.';
    if (darker <= -SEEN.darker)
      return 'The glaze covers: it sends back light of its own over what lies below.';
    if (Math.abs(stronger) < SEEN.stronger)
      return 'The glaze takes from all of the light that comes back from below.';
    return stronger > 0
      ? 'The glaze lets the colour’s own light through and takes the white out of it.'
      : 'The glaze swallows part of the very light that the colour below sends back.';
  },
  /** @param figures `repair` is absent where the right repair was laid on the wrong area */
  'repair-better': (
    {
      repair,
      area,
      step,
      chroma,
    }: {
      readonly repair?: string;
      readonly area?: string;
      readonly step: number;
      readonly chroma: number;
    },
    voice: Voice,
  ): string => {
    const what = repair === undefined ? 'the same repair' : `"${repair}"`;
    const where = area === undefined ? '' : `, on the ${area}`;
    return `Better${where}: ${what}, to ${stepWords(step, voice)}, chroma ${chroma}.`;
  },
  'repair-leave': (): string =>
    'Better: leave it alone. What is inside its plan can only be taken out of it.',

  /** Why: the plan, and how each stands against it. */
  'passage-plan': ({ area, plan }: { readonly area: string; readonly plan: Plan }, voice: Voice): string =>
    `The plan for the ${area}: ${planText(plan, voice)}.`,
  /** Its own figures stand beside its colour. */
  'passage-stands': ({ label, out }: { readonly label: string; readonly out: OutOfPlan }): string =>
    `${label}: ${sideOf(out).length === 0 ? 'inside the plan' : amounts(out)}.`,
};
