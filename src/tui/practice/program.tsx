/** Practice as a program of the screens. */

import type { Glyphs } from '../kit/glyphs.js';
import { glyphsFor } from '../kit/glyphs.js';
import { aboutView, cautionView, keysView, textView } from '../kit/panels.js';
import type { Happening, Program, View } from '../kit/program.js';
import { panelView } from '../sheet/panel.js';
import type { TuiDeps } from './deps.js';
import { withoutOverlay } from './moves.js';
import { perform } from './perform.js';
import { screenOf } from './screens.js';
import type { Action, Effect, PracticeWorld, State } from './state.js';
import { isPictured, practiceKeys, updatePractice } from './update.js';

function leaveText({ set, savingNote }: State): string {
  const count = set?.answers.length ?? 0;
  if (count === 0) return 'Leave this set? Nothing is answered yet.';
  const kept = savingNote === undefined ? 'kept' : 'not kept, since nothing is saved';
  const answers = count === 1 ? 'answer is' : `${count} answers are`;
  return `Leave this set? Your ${answers} ${kept}; until you quit, home goes on with the rest.`;
}

/** The screen in front, or the panel over it. */
function practiceView(state: State, world: PracticeWorld, glyphs: Glyphs): View {
  const { overlay, screen } = state;
  const own = (): View => screenOf(screen).view(state, world, screen, glyphs);
  switch (overlay?.name) {
    case 'keys':
      return keysView(practiceKeys(withoutOverlay(state), world));
    case 'leave':
      return textView('Leave the set', [leaveText(state)]);
    case 'caution':
      return overlay.onward === 'close' ? aboutView(overlay.pigments) : cautionView(overlay.pigments);
    case 'sheet':
    case 'scene':
      return (isPictured(screen) ? panelView(state, world, screen, overlay) : undefined) ?? own();
    default:
      return own();
  }
}

export function practiceProgram(
  deps: TuiDeps,
  world: PracticeWorld,
  initial: State,
): Program<State, Action, Effect> {
  return {
    name: 'practice',
    world,
    initial,
    glyphs: glyphsFor(deps.env),
    now: () => deps.now(),
    update: (state: State, action: Action | Happening) => updatePractice(state, world, action),
    keys: (state) => practiceKeys(state, world),
    view: (state, glyphs) => practiceView(state, world, glyphs),
    perform: (effect, state, dispatch) => perform(effect, state, deps, world, dispatch),
  };
}
