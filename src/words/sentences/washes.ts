/** What is asked and said where one paint is thinned for several blocks of value. */
import { sentence } from '../laid.js';
import { bandText, stepText, stepWords, type Voice } from '../voice.js';

/** One block as it came out. */
export interface BlockFigures {
  readonly name: string;
  /** Water chosen; undefined where the block was given up. */
  readonly water: string | undefined;
  readonly wanted: number;
  /** Lightest and darkest step that count. */
  readonly asked: readonly [number, number];
  /** Painter's step that lies there; of a block given up, the darkest that the paint can do. */
  readonly step: number;
}

/** A block and what it is to be. */
export interface TargetFigures {
  readonly name: string;
  readonly as: 'step' | 'shade' | 'cast';
  /** Its step, or that of the lit thing that it is the shadow of. */
  readonly step: number;
}

export const WASHES = {
  'washes-on': (
    { paint, over }: { readonly paint: string; readonly over: number | undefined },
    voice: Voice,
  ): string => {
    const on = over === undefined ? 'on white paper' : `over a dry wash, ${stepWords(over, voice)}`;
    return `${paint} ${on}; paint to water is to be set`;
  },
  'washes-target': ({ name, as, step }: TargetFigures, voice: Voice): string => {
    const at = stepWords(step, voice);
    if (as === 'step') return `${name}: ${at}`;
    return as === 'shade' ? `${name}: shaded side of a lit ${at}` : `${name}: cast shadow on a lit ${at}`;
  },
  'washes-hit': (
    {
      hits,
      close,
      within,
    }: {
      readonly hits: readonly BlockFigures[];
      readonly close: readonly string[];
      /** Steps each way that count. */
      readonly within: number;
    },
    voice: Voice,
  ): string => {
    const each = hits.map(({ name, water, step }) => {
      const at = stepText(step, voice);
      if (water === undefined) return `${name} rightly given up, the paint stops at ${at}`;
      return `${name} ${at}${close.includes(name) ? ' (a little further off, but less than the prediction may be)' : ''}`;
    });
    return `As asked, within ${within === 0.5 ? 'half a step' : `${within} of a step`}: ${each.join('; ')}.`;
  },
  'washes-missed': ({ misses }: { readonly misses: readonly BlockFigures[] }, voice: Voice): string => {
    const off = (word: string, those: readonly BlockFigures[]): string[] =>
      those.length === 0
        ? []
        : [
            `Too ${word}: ${those.map(({ name, step, asked }) => `${name} ${stepText(step, voice)} for ${bandText(asked, voice)}`).join(', ')}.`,
          ];
    const isLight = ({ step, wanted }: BlockFigures): boolean => step < wanted;
    return [
      ...off('light', misses.filter(isLight)),
      ...off(
        'dark',
        misses.filter((miss) => !isLight(miss)),
      ),
    ].join(' ');
  },
  'washes-given-up': ({ blocks }: { readonly blocks: readonly BlockFigures[] }, voice: Voice): string => {
    const reached = Math.max(...blocks.map(({ step }) => step));
    const asked = blocks.map(({ name, wanted }) => `${name} ${stepText(wanted, voice)}`).join(', ');
    return `Given up, yet the paint reaches ${stepText(reached, voice)}: ${asked}.`;
  },
  'washes-range': (
    {
      paint,
      range,
      moves,
    }: {
      readonly paint: string;
      readonly range: readonly [number, number];
      readonly moves?: readonly [number, number] | undefined;
    },
    voice: Voice,
  ): string => {
    const whole = `${sentence(paint)} goes from ${bandText(range, voice)} on these washes`;
    return moves === undefined
      ? `${whole}.`
      : `${whole}, by ${moves[0].toFixed(1)} to ${moves[1].toFixed(1)} steps from each to the next: even steps of water are not even steps of value.`;
  },
  'washes-strongest': ({ named, is, chromas, isGivenUp }: StrongestFigures): string => {
    const each = chromas.map(({ name, chroma }) => `${name} ${chroma.toFixed(0)}`).join(', ');
    if (isGivenUp) return `You gave up the ${named}, so it has no colour; of the others chroma ${each}.`;
    return named === is
      ? `The strongest colour is in the ${is}, as you said: chroma ${each}.`
      : `The strongest colour of your washes is in the ${is}, not the ${named}: chroma ${each}.`;
  },
  /** Two blocks that were to differ. @remarks `apart`: steps */
  'washes-alike': ({ one, other }: { readonly one: string; readonly other: string }): string =>
    `${sentence(one)} and ${other} come out alike, so one of the two values is missing.`,
  'washes-best': ({ as, label }: BestFigures): string => {
    if (as === 'nearest') return 'Nothing on this scale comes nearer.';
    return as === 'as-good'
      ? `As good by the mark, but nearer: ${label}.`
      : `Better, paint to water: ${label}.`;
  },
};

interface BestFigures {
  readonly as: 'nearest' | 'as-good' | 'better';
  /** The blocks that differ in the best answer, with what it has there. */
  readonly label: string;
}

interface StrongestFigures {
  readonly named: string;
  readonly is: string;
  readonly chromas: readonly { readonly name: string; readonly chroma: number }[];
  /** The block named has no wash. */
  readonly isGivenUp: boolean;
}
