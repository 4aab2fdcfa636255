/** After an answer: the result, why, and the end of the set. */

import { afterResult, drillScreen, showResult } from '../drill/set.js';
import { offerPlacing } from '../home/update.js';
import type { SetChoice } from '../kit/deps.js';
import type { Command } from '../kit/keys.js';
import { ask, show, step } from '../kit/moves.js';
import { scrolled } from '../kit/page.js';
import type { ResultScreen, SetRun, State, SummaryScreen, World } from '../kit/state.js';

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
      return { ...state, screen: { ...screen, top: scrolled(state, world, screen.top, command) } };
  }
}

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
