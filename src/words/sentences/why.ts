/** What the curves of a "why" show, in words. */
import { NEUTRAL_CHROMA } from '../../judgement/index.js';
import { listWords } from '../../text/list-words.js';
import { type Run, runsWords, without } from '../spectrum.js';
import { shareText, signsText, type Voice } from '../voice.js';

/** What comes back from a mixture, its own parts of the light or all of it alike, after what was said; nothing where no part tells it. */
export function withBack(said: string, join: string, left: readonly Run[], isGrey: boolean): string {
  if (isGrey) return `${said}${join}what comes back is spread so wide that it looks grey.`;
  const words = runsWords(left);
  return words === '' ? `${said}.` : `${said}${join}mostly ${words} comes back.`;
}

export const WHY = {
  'why-one-paint': (): string =>
    'One paint alone: more water lifts the whole curve, more paint lowers it where it already swallows.',
  'why-mixture': ({
    paints,
    swallowed,
    left,
    chroma,
  }: {
    readonly paints: number;
    readonly swallowed: readonly Run[];
    readonly left: readonly Run[];
    readonly chroma: number;
  }): string => {
    const all = paints === 2 ? 'both paints' : 'all the paints';
    const isGrey = chroma < NEUTRAL_CHROMA;
    const shared = runsWords(isGrey ? swallowed : without(swallowed, left));
    return shared === ''
      ? withBack(
          `No wide part of the light is swallowed by ${all}: what one takes another sends back`,
          ', and ',
          left,
          isGrey,
        )
      : withBack(
          `Under the curves: ${shared} is swallowed by ${all}. There the mixture goes dark`,
          ', and ',
          left,
          isGrey,
        );
  },
  'why-glaze': ({
    covers,
    swallowed,
  }: {
    readonly covers: boolean;
    readonly swallowed: readonly Run[];
  }): string => {
    const shared = runsWords(swallowed);
    const both = shared === '' ? '' : ` Both films swallow ${shared}.`;
    return covers
      ? `The upper film covers: it sends back light of its own, and there the two lie above the curve of what is below.${both}`
      : `The upper film filters: light goes through it twice, and nowhere do the two lie above the curve of what is below.${both}`;
  },
  'why-strokes': (
    { strokes }: { readonly strokes: readonly { readonly name: string; readonly share: number }[] },
    voice: Voice,
  ): string =>
    `The eye takes the mean, each by the paper it covers: ${listWords(strokes.map(({ name, share }) => `${name} ${shareText(share, voice)}`))}. A mean never falls below the lower curve, as a stirred mixture can.`,
  'why-dried': (
    { low, high }: { readonly low: readonly [number, number]; readonly high: readonly [number, number] },
    voice: Voice,
  ): string => {
    // Of little light a tenth of a per cent counts.
    const text = (share: number): string =>
      share < 0.1 ? signsText(`${(100 * share).toFixed(1)} %`, voice) : shareText(share, voice);
    const part = ([wet, dry]: readonly [number, number]): string =>
      text(wet) === text(dry) ? `it stays ${text(dry)}` : `from ${text(wet)} wet to ${text(dry)} dry`;
    return `How much comes back where the film swallows most: ${part(low)}; where it lets most through: ${part(high)}.`;
  },
  'why-drying-limits': (): string =>
    'In measured washes the value hardly moves; what pales is the look of the wet gloss, and the colour. Paints differ: the program never predicts darker, yet some do dry darker.',
  'why-films': (): string =>
    'Where a curve lies low the film swallows that part of the light. The higher it lies, the lighter the colour; the flatter, the greyer.',
  'why-shared': ({
    name,
    swallowed,
  }: {
    readonly name: string;
    readonly swallowed: readonly Run[];
  }): string => {
    const shared = runsWords(swallowed);
    return shared === ''
      ? `In ${name} no wide part of the light is swallowed by all its paints.`
      : `In ${name} all its paints swallow ${shared}.`;
  },
  'why-loss': ({
    name,
    wet,
    dry,
  }: {
    readonly name: string;
    readonly wet: number;
    readonly dry: number;
  }): string => `${name}: chroma ${wet.toFixed(1)} wet, ${dry.toFixed(1)} dry.`,
};
