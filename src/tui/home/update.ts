/** The plain menus: home, settings, the families and the welcome. */

import { TOP_LEVEL } from '../../practice/index.js';
import { freshBench } from '../bench/update.js';
import { drillScreen, goOn } from '../drill/set.js';
import { COLOUR_SETTINGS, type ColourSetting } from '../kit/colour-level.js';
import type { SetItem, Settings, SettingsPatch } from '../kit/deps.js';
import type { Command } from '../kit/keys.js';
import { ask, show, step, turn } from '../kit/moves.js';
import type { Screen, State, World } from '../kit/state.js';
import { welcomeOptions } from './menus.js';

/** Changes a setting at once and asks for it to be kept. */
export function changeSettings(state: State, world: World, patch: SettingsPatch): State {
  const { welcomed: _told, ...changes } = patch;
  const settings = { ...state.settings, ...changes };
  const next = { ...state, settings, colourLevel: world.colourLevelFor(settings.colour) };
  return ask(next, { type: 'save-settings', patch });
}

const following = <T>(list: readonly T[], value: T): T =>
  list[turn(list.indexOf(value), 1, list.length)] ?? value;

function changeSetting(state: State, world: World, name: string): State {
  const { settings } = state;
  switch (name) {
    case 'valueScale':
      return changeSettings(state, world, {
        valueScale: settings.valueScale === 'paper-first' ? 'black-first' : 'paper-first',
      });
    case 'palette':
      return changeSettings(state, world, {
        palette: following(
          world.studio.palettes.map(({ id }) => id),
          settings.palette,
        ),
      });
    case 'screenReader':
      return changeSettings(state, world, { screenReader: !settings.screenReader });
    case 'colour':
      return changeSettings(state, world, { colour: following(COLOUR_SETTINGS, settings.colour) });
    default:
      return show(state, { name: 'home' });
  }
}

/** A choice in the home or settings menu. */
export function chooseInMenu(state: State, world: World, value: string, at: number): State {
  if (state.screen.name === 'settings') return changeSetting(state, world, value);
  if (state.screen.name !== 'home') return state;
  switch (value) {
    case 'go-on':
      return goOn(state, world, at);
    case 'practise':
      return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: {} });
    case 'placing':
      return startPlacing(state);
    case 'families':
      return show(state, { name: 'families', selected: 0 });
    case 'bench':
      return show(state, freshBench(world, state.settings.palette));
    case 'progress':
      return ask(show(state, { name: 'progress', top: 0 }), { type: 'read-progress' });
    case 'settings':
      return show(state, { name: 'settings' });
    case 'help':
      return show(state, { name: 'help', top: 0 });
    case 'quit':
      return ask(state, { type: 'exit', code: 0 });
    default:
      return state;
  }
}

function startPlacing(state: State): State {
  return ask(show(state, { name: 'waiting' }), { type: 'start-set', choice: { placing: true } });
}

/** The end of the welcome: the placing round, where it is still open. */
export function offerPlacing(state: State, world: World): State {
  if (!world.placingIsOpen()) return show(state, { name: 'home' });
  return show(state, { name: 'welcome', step: 'placing', selected: 0 });
}

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

/** The next coarser colour setting to try when the ramp cannot be told apart. */
const COARSER: Readonly<Record<number, ColourSetting>> = { 3: '256', 2: '16', 1: 'none', 0: 'none' };

/** The worked example, answered: the easiest drill with a plane to read and both paint and amount to choose. */
export function workedExample(state: State, world: World, at: number): State {
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

function answerWelcome(state: State, world: World, screen: Screen & { name: 'welcome' }, at: number): State {
  const value = welcomeOptions(state, world)[screen.selected]?.value;
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
      return value === 'skip'
        ? finishWelcome(state, world)
        : go(state, state.colourLevel === 0 ? 'palette' : 'colours');
    case 'colours': {
      if (value === 'yes') return toPalette(state);
      const colour = value === 'none' ? 'none' : (COARSER[state.colourLevel] ?? 'none');
      const next = changeSettings(state, world, { colour });
      return next.colourLevel === 0 ? toPalette(next) : go(next, 'colours');
    }
    case 'palette':
      return go(value === undefined ? state : changeSettings(state, world, { palette: value }), 'scale');
    case 'scale':
      return workedExample(
        changeSettings(state, world, { valueScale: value as Settings['valueScale'], welcomed: true }),
        world,
        at,
      );
    case 'placing':
      return value === 'placing' ? startPlacing(state) : show(state, { name: 'home' });
  }
}

/** Leaves the welcome for good. */
function finishWelcome(state: State, world: World): State {
  return show(changeSettings(state, world, { welcomed: true }), { name: 'home' });
}

export function updateWelcome(
  state: State,
  world: World,
  screen: Screen & { name: 'welcome' },
  command: Command,
  key: string,
  at: number,
): State {
  const count = welcomeOptions(state, world).length;
  switch (command) {
    case 'up':
    case 'down':
      return {
        ...state,
        screen: { ...screen, selected: step(screen.selected, command === 'up' ? -1 : 1, count) },
      };
    case 'digit': {
      const selected = Number(key) - 1;
      return selected < count ? answerWelcome(state, world, { ...screen, selected }, at) : state;
    }
    case 'confirm':
      return answerWelcome(state, world, screen, at);
    default:
      return finishWelcome(state, world);
  }
}
