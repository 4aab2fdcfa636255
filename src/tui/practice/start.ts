/** The state that the program starts in, and what stays fixed while it runs. */
import { FAMILY_IDS } from '../../drills/families.js';
import { type ColourSetting, colourIsForced, colourLevel } from '../kit/colour-level.js';
import type { Size } from '../kit/stage.js';
import type { TuiDeps } from './deps.js';
import { beginSet } from './set.js';
import type { PracticeWorld, Screen, State } from './state.js';

export function worldOf(deps: TuiDeps): PracticeWorld {
  const counts = new Map<string, number>();
  for (const { family } of deps.drills) counts.set(family, (counts.get(family) ?? 0) + 1);
  return {
    drills: new Map(deps.drills.map((drill) => [drill.id, drill])),
    kindOf: (drill) => deps.kindOf(drill),
    familyName: (id) => deps.familyName(id),
    sceneOf: (drill, answer) => deps.sceneOf(drill, answer),
    placingIsOpen: () => deps.placingIsOpen(),
    glance: (columns) => deps.glance(columns),
    families: [...counts]
      .sort(([one], [other]) => FAMILY_IDS.indexOf(one) - FAMILY_IDS.indexOf(other))
      .map(([id, drills]) => ({ id, name: deps.familyName(id), drills })),
    get studio() {
      return deps.studio;
    },
    keepsReadings: deps.readings !== undefined,
    ...(deps.learner === undefined ? {} : { learner: deps.learner }),
    colourIsForced: colourIsForced({
      env: deps.env,
      setting: 'auto',
      noColourFlag: deps.noColourFlag === true,
    }),
    colourLevelFor: (setting: ColourSetting) =>
      colourLevel({
        env: deps.env,
        setting,
        ...(deps.noColourFlag === undefined ? {} : { noColourFlag: deps.noColourFlag }),
      }),
  };
}

function firstScreen(deps: TuiDeps): Screen {
  return deps.firstRun ? { name: 'welcome', step: 'greeting', selected: 0 } : { name: 'home' };
}

function initialState(deps: TuiDeps, world: PracticeWorld, size: Size): State {
  const state: State = {
    screen: firstScreen(deps),
    size,
    settings: deps.settings,
    colourLevel: world.colourLevelFor(deps.settings.colour),
    cautioned: [],
    answered: 0,
    unsaved: 0,
    ...(deps.savingNote === undefined ? {} : { savingNote: deps.savingNote }),
  };
  return state;
}

/** The state after what the program was started for: a set is there in the first frame already. */
export function startedState(deps: TuiDeps, world: PracticeWorld, size: Size): State {
  const state = initialState(deps, world, size);
  const { startAt } = deps;
  const at = deps.now();
  if (startAt?.screen !== 'practice') return state;
  const { choice = {}, minutes } = startAt;
  const items = deps.nextSet(choice);
  const note = deps.setNote?.();
  return beginSet(state, world, {
    items,
    choice,
    ...(note === undefined ? {} : { note }),
    at,
    ...(minutes === undefined ? {} : { minutes }),
  });
}
