/** After an answer: on, again, or why. */
import { afterResult, drillScreen } from '../drill/set.js';
import type { Command } from '../kit/keys.js';
import { offerPlacing, show } from '../kit/moves.js';
import { scrolled } from '../kit/page.js';
import type { ResultScreen, State, World } from '../kit/state.js';
import { resultPage } from './layout.js';

function again(state: State, world: World, { attempt, place }: ResultScreen, at: number): State {
  const { entry } = attempt;
  const item = { drillId: entry.drill.id, drill: entry.drill, feedback: entry.feedback, why: entry.why };
  const next = drillScreen(world, item, at, { attempt: entry.attempt + 1, place });
  if (next === undefined) return state;
  // Start from what was laid: the learner changes one thing and sees what it does. A hint once seen stays.
  return show(state, { ...next, answer: entry.answer, hint: entry.hints > 0 ? 'shown' : 'hidden' });
}

export function updateResult(
  state: State,
  world: World,
  screen: ResultScreen,
  command: Command,
  at: number,
): State {
  switch (command) {
    case 'next':
      if (screen.worked) return offerPlacing(state, world);
      if (screen.from === 'summary') return show(state, { name: 'summary', selected: screen.place });
      return afterResult(state, world, at);
    case 'again':
      return again(state, world, screen, at);
    case 'why':
      return show(state, { name: 'why', back: screen });
    case 'picture':
      return { ...state, screen: { ...screen, plane: screen.plane !== true } };
    case 'home':
      return show(state, { name: 'home' });
    default:
      return {
        ...state,
        screen: { ...screen, top: scrolled(resultPage(state, world, screen), screen.top, command) },
      };
  }
}
