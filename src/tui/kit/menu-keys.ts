/** What the keys of a menu do. Pure. */
import { type Binding, type Command, digits, enter, upDown } from './keys.js';
import { turn } from './moves.js';

export interface MenuItem {
  readonly value: string;
  readonly label: string;
}

/** The rows of keys of a menu. @param does what Enter does with the entry in front */
export const menuKeys = (does: string): Binding[] => [
  upDown('move'),
  enter(does),
  digits('1', 'choose by number', true),
];

/** Where a key leads in a menu. */
export interface Picked {
  /** The entry in front, from 0. */
  readonly selected: number;
  /** Its value where it was chosen. */
  readonly chosen?: string;
}

/** @returns undefined for a key that means nothing in a menu, or a digit of no entry */
export function pickIn(
  items: readonly MenuItem[],
  selected: number,
  { command, key }: { readonly command: Command; readonly key: string },
): Picked | undefined {
  const choose = (at: number): Picked | undefined => {
    const item = items[at];
    return item && { selected: at, chosen: item.value };
  };
  switch (command) {
    case 'up':
      return { selected: turn(selected, -1, items.length) };
    case 'down':
      return { selected: turn(selected, 1, items.length) };
    case 'digit':
      return choose(Number(key) - 1);
    case 'confirm':
      return choose(selected);
    default:
      return undefined;
  }
}
