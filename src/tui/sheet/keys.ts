/** Keys for what goes with a question or its result: all that the drill says, and its picture, on its screen or filling it. */
import type { Question } from '../drill/question.js';
import { type Binding, back, type Command, letter, scroll } from '../kit/keys.js';
import type { Stage, World } from '../kit/stage.js';
import type { Judged } from '../result/judged.js';

/** What a picture goes with. */
export type Pictured = Question | Judged;

/** What fills the screen: the picture, or the text of the drill with its first line that is seen. */
export type SheetPanel = { readonly name: 'sheet' } | { readonly name: 'scene'; readonly top: number };

export const isJudged = (shown: Pictured): shown is Judged => 'answered' in shown;

export const drillIn = (shown: Pictured): Question['drill'] =>
  isJudged(shown) ? shown.answered.drill : shown.drill;

/** What lies in the picture and how it is shown; without colours its signs go by value already, and greys are nothing to the ear. */
function lookKeys({ colourLevel, settings }: Stage, world: World, shown: Pictured): Binding[] {
  const hasGreys = colourLevel > 0 && !settings.screenReader;
  const grey = hasGreys ? [letter('g', 'grey', shown.inGrey === true ? 'colours' : 'greys')] : [];
  // A picture that no answer changes has no best either.
  if (!isJudged(shown) || world.sceneOf(drillIn(shown))?.still !== undefined) return grey;
  return [...grey, letter('b', 'best', shown.ofBest === true ? 'yours' : 'best')];
}

/** On the screen of a question or a result; those of the picture only where there is one. */
export function sheetKeys(stage: Stage, world: World, shown: Pictured): Binding[] {
  const scene = letter('s', 'scene', 'full text');
  if (world.sceneOf(drillIn(shown)) === undefined) return [scene];
  return [scene, letter('v', 'sheet', 'picture'), ...lookKeys(stage, world, shown)];
}

/** While a panel is open. */
export function panelKeys(stage: Stage, world: World, shown: Pictured, panel: SheetPanel): Binding[] {
  if (panel.name === 'scene') return [scroll(false), back('back')];
  const out = ['escape', 'enter', 'v', 'q', 'erase', 'space'].map((key) => [key, 'back' as const]);
  return [
    ...lookKeys(stage, world, shown),
    { keys: Object.fromEntries(out), show: 'Esc', does: 'back', stays: true },
  ];
}

/**
 * How a question or a result is shown after one of these keys, and the panel that opens over it; undefined for any other key.
 * @param isSeen whether the picture is on the screen already: where it is not, its keys open it
 */
export function onSheet<P extends Pictured>(
  shown: P,
  command: Command,
  isSeen: () => boolean,
): { readonly shown: P; readonly panel?: SheetPanel } | undefined {
  if (command === 'scene') return { shown, panel: { name: 'scene', top: 0 } };
  if (command !== 'sheet' && command !== 'grey' && command !== 'best') return undefined;
  const seen = isSeen();
  const { inGrey = false } = shown;
  const open = seen ? {} : { panel: { name: 'sheet' } as const };
  if (command === 'sheet') return { shown: { ...shown, inGrey: seen && inGrey }, panel: { name: 'sheet' } };
  if (command === 'grey') return { shown: { ...shown, inGrey: !seen || !inGrey }, ...open };
  return isJudged(shown) ? { shown: { ...shown, ofBest: shown.ofBest !== true }, ...open } : undefined;
}
