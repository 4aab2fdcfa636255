/** What home offers, from the state. */
import type { MenuItem } from '../kit/menu.js';
import type { State, World } from '../kit/state.js';

/** The home menu; a set under way comes first. The placing round, while it is open, moves no other entry's number. */
export function homeMenu(
  { set }: Pick<State, 'set'>,
  { placingIsOpen }: Pick<World, 'placingIsOpen'>,
): MenuItem[] {
  const left = set === undefined ? 0 : set.items.length - set.index;
  return [
    ...(set !== undefined && left > 0
      ? [{ value: 'go-on', label: `Go on with the set, ${set.index + 1} of ${set.items.length}` }]
      : []),
    { value: 'practise', label: "Practise today's set" },
    { value: 'families', label: 'Choose what to practise' },
    { value: 'bench', label: 'Mixing bench' },
    { value: 'progress', label: 'Progress' },
    { value: 'settings', label: 'Settings' },
    { value: 'help', label: 'How to read the screens' },
    ...(placingIsOpen() && !(left > 0 && set?.choice.placing === true)
      ? [{ value: 'placing', label: 'Placing round: eight decisions, to find your level' }]
      : []),
    { value: 'quit', label: 'Quit' },
  ];
}
