/** The end of a set: its answers again, another set, or the mending of mistakes. */
import { stepBy } from '../kit/moves.js';
import type { SetChoice } from '../practice/deps.js';
import { show, startSet } from '../practice/moves.js';
import { showResult } from '../practice/set.js';
import type { PracticeWorld, Pressed, SetRun, State, SummaryScreen } from '../practice/state.js';

/** What another set is to be: the family and level as before; a placing round or a mending is not done twice. */
function onceMore(set: SetRun | undefined): SetChoice {
  const { placing: _placed, mend: _mended, ...choice } = set?.choice ?? {};
  return choice;
}

export function updateSummary(
  state: State,
  _world: PracticeWorld,
  screen: SummaryScreen,
  { command }: Pressed,
): State {
  const { set } = state;
  const count = set?.answers.length ?? 0;
  switch (command) {
    case 'up':
    case 'down':
      return { ...state, screen: { ...screen, selected: stepBy(command, screen.selected, count) } };
    case 'confirm':
      return showResult(state, screen.selected, 'summary');
    case 'restart':
      return startSet(state, onceMore(set));
    case 'mend': {
      const mend = set?.summary?.mistakes ?? [];
      if (mend.length === 0) return state;
      return startSet(state, { ...onceMore(set), mend });
    }
    case 'home':
      return show(state, { name: 'home' });
    default:
      return state;
  }
}
