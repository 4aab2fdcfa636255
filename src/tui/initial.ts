/** The state that the program starts in, and what stays fixed while it runs. */
import { PAPER } from '../pigments/index.js';
import { type ColourSetting, colourLevel } from './colour-level.js';
import type { TuiDeps } from './deps.js';
import type { Screen, Size, State, World } from './state.js';
import { ask } from './update/common.js';

export function worldOf(deps: TuiDeps): World {
  const counts = new Map<string, number>();
  for (const { family } of deps.drills) counts.set(family, (counts.get(family) ?? 0) + 1);
  return {
    drills: new Map(deps.drills.map((drill) => [drill.id, drill])),
    kindOf: (drill) => deps.kindOf(drill),
    familyName: (id) => deps.familyName(id),
    families: [...counts].map(([id, drills]) => ({ id, name: deps.familyName(id), drills })),
    palettes: deps.palettes,
    pigments: deps.pigments,
    paper: PAPER.reflectance,
    colourLevelFor: (setting: ColourSetting) =>
      colourLevel({
        env: deps.env,
        setting,
        ...(deps.noColourFlag === undefined ? {} : { noColourFlag: deps.noColourFlag }),
      }),
  };
}

function firstScreen(deps: TuiDeps): Screen {
  if (deps.startAt?.screen === 'practice' || deps.startAt?.screen === 'drill') return { name: 'waiting' };
  return deps.firstRun ? { name: 'welcome', step: 'greeting', selected: 0 } : { name: 'home' };
}

export function initialState(deps: TuiDeps, world: World, size: Size): State {
  const state: State = {
    screen: firstScreen(deps),
    size,
    settings: deps.settings,
    colourLevel: world.colourLevelFor(deps.settings.colour),
    cautioned: [],
    answered: 0,
    unsaved: 0,
    effects: [],
    nextEffectId: 1,
    ...(deps.savingNote === undefined ? {} : { savingNote: deps.savingNote }),
  };
  const { startAt } = deps;
  if (startAt?.screen !== 'practice') return state;
  const { family, minutes } = startAt;
  return ask(state, {
    type: 'start-set',
    ...(family === undefined ? {} : { family }),
    ...(minutes === undefined ? {} : { minutes }),
  });
}
