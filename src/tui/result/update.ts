/** After an answer: on, again, or why. */
import type { Command } from '../kit/keys.js';
import { scrolled } from '../kit/page.js';
import type { Stage, World } from '../kit/stage.js';
import { toPaint } from '../paint-it/update.js';
import { offerPlacing, show, withOverlay } from '../practice/moves.js';
import { afterResult, drillScreen } from '../practice/set.js';
import type { PracticeWorld, Pressed, ResultScreen, State } from '../practice/state.js';
import { onSheet, type SheetPanel } from '../sheet/keys.js';
import type { Judged } from './judged.js';
import { resultLayout, resultPage } from './layout.js';

/** How a result is shown after one of `showingKeys`, and the panel that opens over it. */
export function onShowing<J extends Judged>(
  stage: Stage,
  world: World,
  shown: J,
  command: Command,
): { readonly shown: J; readonly panel?: SheetPanel } {
  // Asked for its keys alone: where the picture stands is worked out.
  const sheet = onSheet(shown, command, () => {
    const { sheet: room, isPair } = resultLayout(stage, world, shown);
    // Where yours and the best stand side by side, b shows the best alone, as large as there is room.
    return room !== undefined && !(isPair && command === 'best');
  });
  if (sheet !== undefined) return sheet;
  if (command === 'picture') return { shown: { ...shown, plane: shown.plane !== true } };
  const top = scrolled(resultPage(stage, world, shown), shown.top, command);
  return { shown: { ...shown, top } };
}

function again(state: State, world: PracticeWorld, { answered, place }: ResultScreen, at: number): State {
  const { drill, feedback, why } = answered;
  const item = { drillId: drill.id, drill, feedback, why };
  const next = drillScreen(world, item, at, { attempt: answered.attempt + 1, place });
  if (next === undefined) return state;
  // Start from what was laid: the learner changes one thing and sees what it does. A hint once seen stays.
  return show(state, { ...next, answer: answered.answer, hint: answered.hints > 0 ? 'shown' : 'hidden' });
}

export function updateResult(
  state: State,
  world: PracticeWorld,
  screen: ResultScreen,
  { command, at }: Pressed,
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
    case 'paint':
      return toPaint(state, world, screen);
    case 'home':
      return show(state, { name: 'home' });
    default: {
      const { shown, panel } = onShowing(state, world, screen, command);
      const next = { ...state, screen: shown };
      return panel === undefined ? next : withOverlay(next, panel);
    }
  }
}
