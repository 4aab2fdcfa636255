/** The end of a set: its answers again, another set, or the mending of mistakes. */
import { showResult } from '../drill/set.js';
import type { SetChoice } from '../kit/deps.js';
import type { Command } from '../kit/keys.js';
import { ask, show, step } from '../kit/moves.js';
import type { SetRun, State, SummaryScreen } from '../kit/state.js';

/** What another set is to be: the family and level as before; a placing round or a mending is not done twice. */
function onceMore(set: SetRun | undefined): SetChoice {
  const { placing: _placed, mend: _mended, ...choice } = set?.choice ?? {};
  return choice;
}

export function updateSummary(state: State, screen: SummaryScreen, command: Command): State {
  const { set } = state;
  const count = set?.attempts.length ?? 0;
  switch (command) {
    case 'up':
      return { ...state, screen: { ...screen, selected: step(screen.selected, -1, count) } };
    case 'down':
      return { ...state, screen: { ...screen, selected: step(screen.selected, 1, count) } };
    case 'confirm':
      return showResult(state, screen.selected, 'summary');
    case 'restart':
      return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: onceMore(set) });
    case 'mend': {
      const mend = set?.summary?.mistakes ?? [];
      if (mend.length === 0) return state;
      return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: { ...onceMore(set), mend } });
    }
    case 'home':
      return show(state, { name: 'home' });
    default:
      return state;
  }
}
