/** Keys for the picture that goes with a question or a result: how it is shown, on its screen or filling it. */
import type { Question } from '../drill/question.js';
import type { Judged } from '../result/judged.js';
import type { Binding, Command } from './keys.js';
import type { Stage } from './stage.js';

/** What a picture goes with. */
export type Pictured = Question | Judged;

export const isJudged = (shown: Pictured): shown is Judged => 'answered' in shown;

/** What lies in the picture and how it is shown; without colours its signs go by value already, and greys are nothing to the ear. */
function lookKeys({ colourLevel, settings }: Stage, shown: Pictured): Binding[] {
  const grey: Binding = { keys: { g: 'grey' }, show: 'g', does: shown.inGrey === true ? 'colours' : 'greys' };
  const hasGreys = colourLevel > 0 && !settings.screenReader;
  if (!isJudged(shown)) return hasGreys ? [grey] : [];
  const best: Binding = { keys: { b: 'best' }, show: 'b', does: shown.ofBest === true ? 'yours' : 'best' };
  return [...(hasGreys ? [grey] : []), best];
}

/** On the screen that a picture goes with. */
export const sheetKeys = (stage: Stage, shown: Pictured): Binding[] => [
  { keys: { v: 'sheet' }, show: 'v', does: 'sheet', stays: true },
  ...lookKeys(stage, shown),
];

/** While the picture fills the screen. */
export function openSheetKeys(stage: Stage, shown: Pictured): Binding[] {
  const out = ['escape', 'enter', 'v', 'q', 'erase', 'space'].map((key) => [key, 'back' as const]);
  return [
    ...lookKeys(stage, shown),
    { keys: Object.fromEntries(out), show: 'Esc', does: 'back', stays: true },
  ];
}

/**
 * How the picture is shown after one of its keys, and whether it now fills the screen; undefined for any other key.
 * @param isSeen whether the picture is on the screen already: where it is not, its keys open it
 */
export function onSheet<P extends Pictured>(
  shown: P,
  command: Command,
  isSeen: () => boolean,
): { readonly shown: P; readonly isOpen: boolean } | undefined {
  if (command !== 'sheet' && command !== 'grey' && command !== 'best') return undefined;
  const seen = isSeen();
  const { inGrey = false } = shown;
  if (command === 'sheet') return { shown: { ...shown, inGrey: seen && inGrey }, isOpen: true };
  if (command === 'grey') return { shown: { ...shown, inGrey: !seen || !inGrey }, isOpen: !seen };
  return isJudged(shown) ? { shown: { ...shown, ofBest: shown.ofBest !== true }, isOpen: !seen } : undefined;
}
