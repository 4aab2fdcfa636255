/** Answering a drill. */
import { dueCautions } from '../kit/cautions.js';
import { chosenIndex } from '../kit/fields.js';
import { ask, offerPlacing, withNotice, withOverlay } from '../practice/moves.js';
import { showResult } from '../practice/set.js';
import type { DrillScreen, PracticeWorld, Pressed, State } from '../practice/state.js';
import { onSheet } from '../sheet/keys.js';
import { drillLayout } from './layout.js';
import { moveIn, type Question } from './question.js';

/** The paints that are chosen in an answer, each once. */
export const chosenPaints = ({ fields, answer }: Question): string[] => [
  ...new Set(fields.flatMap((field) => field.options[chosenIndex(field, answer)]?.pigment ?? [])),
];

/** What c says where no paint is chosen. */
export const NO_PAINT = 'No paint is chosen here.';

/** Lays the answer down, after a caution where one is due. */
export function lay(state: State, world: PracticeWorld, screen: DrillScreen, at: number): State {
  const { due, told } = dueCautions(state, world, chosenPaints(screen));
  if (due.length > 0 && !screen.worked)
    return withOverlay(told, { name: 'caution', pigments: due, onward: 'lay' });
  return ask({ ...state, screen: { ...screen, laying: true } }, { type: 'lay', screen, at });
}

export function updateDrill(
  state: State,
  world: PracticeWorld,
  screen: DrillScreen,
  { command, key, at }: Pressed,
): State {
  const to = (next: DrillScreen): State => ({ ...state, screen: next });
  // Asked for its keys alone: where the picture stands is worked out.
  const sheet = onSheet(screen, command, () => drillLayout(state, world, screen).sheet !== undefined);
  if (sheet !== undefined)
    return sheet.panel === undefined ? to(sheet.shown) : withOverlay(to(sheet.shown), sheet.panel);
  switch (command) {
    case 'confirm': {
      // Enter after a result that is kept back means that one: it does not lay down the next unseen.
      const { message, ...read } = screen;
      return message === undefined ? lay(state, world, screen, at) : to(read);
    }
    case 'back':
      // Esc after the price of a hint says no to it.
      if (screen.hint === 'offered') return to({ ...screen, hint: 'hidden' });
      if (screen.worked) return offerPlacing(state, world);
      return screen.attempt > 1
        ? showResult(state, screen.place, 'set')
        : withOverlay(state, { name: 'leave' });
    case 'hint':
      return to({ ...screen, hint: screen.hint === 'hidden' ? 'offered' : 'shown' });
    case 'caution': {
      const pigments = chosenPaints(screen);
      return pigments.length === 0
        ? withNotice(state, NO_PAINT)
        : withOverlay(state, { name: 'caution', pigments, onward: 'close' });
    }
    default: {
      const moved = moveIn(screen, command, key);
      return moved === undefined ? state : to(moved);
    }
  }
}
