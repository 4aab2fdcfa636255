/** The welcome: what the terminal shows, paints, scale, a worked example, and where to begin. */
import type { ColourSetting } from '../kit/colour-level.js';
import { pickIn } from '../kit/menu-keys.js';
import type { Settings } from '../kit/stage.js';
import type { SetItem } from '../practice/deps.js';
import { offerPlacing, show, startSet } from '../practice/moves.js';
import { drillScreen } from '../practice/set.js';
import type { PracticeWorld, Pressed, State, WelcomeScreen } from '../practice/state.js';
import { changeSettings } from '../settings/change.js';
import { welcomeOptions } from './options.js';

/** The next coarser colour setting to try when the ramp cannot be told apart. */
const COARSER: Readonly<Record<number, ColourSetting>> = { 3: '256', 2: '16', 1: 'none', 0: 'none' };

/** The worked example, answered: the easiest drill with a plane to read and both paint and amount to choose. */
function workedExample(state: State, world: PracticeWorld, at: number): State {
  const byLevel = [...world.drills.values()].sort((one, other) => one.level - other.level);
  const withPlane = byLevel.filter((drill) => world.kindOf(drill).plane !== undefined);
  const full = withPlane.find((drill) => world.kindOf(drill).fields(drill).length > 1);
  const easiest = full ?? withPlane[0] ?? byLevel[0];
  if (easiest === undefined) return offerPlacing(state, world);
  const item: SetItem = { drillId: easiest.id, feedback: 'each', why: 'worked example' };
  const screen = drillScreen(world, item, at);
  if (screen === undefined) return offerPlacing(state, world);
  return show(state, { ...screen, worked: true, answer: world.kindOf(easiest).best(easiest) });
}

function answerWelcome(
  state: State,
  world: PracticeWorld,
  screen: WelcomeScreen,
  value: string,
  at: number,
): State {
  const go = (from: State, stepName: typeof screen.step, selected = 0): State =>
    show(from, { name: 'welcome', step: stepName, selected });
  const toPalette = (from: State): State =>
    go(
      from,
      'palette',
      Math.max(
        0,
        world.studio.palettes.findIndex(({ id }) => id === from.settings.palette),
      ),
    );
  switch (screen.step) {
    case 'greeting':
      if (value === 'skip') return finishWelcome(state, world);
      return state.colourLevel === 0 ? toPalette(state) : go(state, 'colours');
    case 'colours': {
      if (value === 'yes') return toPalette(state);
      const colour = value === 'none' ? 'none' : (COARSER[state.colourLevel] ?? 'none');
      const next = changeSettings(state, world, { colour });
      return next.colourLevel === 0 ? toPalette(next) : go(next, 'colours');
    }
    case 'palette':
      return go(changeSettings(state, world, { palette: value }), 'scale');
    case 'scale':
      return workedExample(
        changeSettings(state, world, { valueScale: value as Settings['valueScale'], welcomed: true }),
        world,
        at,
      );
    case 'placing':
      return value === 'placing' ? startSet(state, { placing: true }) : show(state, { name: 'home' });
  }
}

/** Leaves the welcome for good. */
function finishWelcome(state: State, world: PracticeWorld): State {
  return show(changeSettings(state, world, { welcomed: true }), { name: 'home' });
}

export function updateWelcome(
  state: State,
  world: PracticeWorld,
  screen: WelcomeScreen,
  pressed: Pressed,
): State {
  if (pressed.command === 'back') return finishWelcome(state, world);
  const picked = pickIn(welcomeOptions(screen.step, world), screen.selected, pressed);
  if (picked === undefined) return state;
  const moved = { ...screen, selected: picked.selected };
  return picked.chosen === undefined
    ? { ...state, screen: moved }
    : answerWelcome(state, world, moved, picked.chosen, pressed.at);
}
