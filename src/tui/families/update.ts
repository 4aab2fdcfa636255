/** The list of skills: one is picked, and a level by hand where wanted. */
import { TOP_LEVEL } from '../../practice/index.js';
import type { Command } from '../kit/keys.js';
import { ask, show, step } from '../kit/moves.js';
import type { Screen, State, World } from '../kit/state.js';

/** A level moved down or up; below 1 lies the learner's own. */
function movedLevel(level: number | undefined, by: number): number | undefined {
  const to = step(level ?? 0, by, TOP_LEVEL + 1);
  return to === 0 ? undefined : to;
}

export function updateFamilies(
  state: State,
  world: World,
  screen: Screen & { name: 'families' },
  command: Command,
  key: string,
): State {
  const { level: picked, ...plain } = screen;
  const atLevel = (level: number | undefined): State => ({
    ...state,
    screen: level === undefined ? plain : { ...plain, level },
  });
  switch (command) {
    case 'less':
      return atLevel(movedLevel(picked, -1));
    case 'more':
      return atLevel(movedLevel(picked, 1));
    case 'digit':
      return atLevel(movedLevel(undefined, Number(key)));
    case 'up':
    case 'down': {
      const by = command === 'up' ? -1 : 1;
      return { ...state, screen: { ...screen, selected: step(screen.selected, by, world.families.length) } };
    }
    case 'confirm': {
      const family = world.families[screen.selected]?.id;
      if (family === undefined) return state;
      const choice = { family, ...(picked === undefined ? {} : { level: picked }) };
      return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice });
    }
    default:
      return show(state, { name: 'home' });
  }
}
