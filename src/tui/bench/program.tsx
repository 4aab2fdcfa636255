/** The bench as a program of the screens. */
import { setImmediate } from 'node:timers/promises';
import { glyphsFor } from '../kit/glyphs.js';
import { aboutView, cautionView, keysView } from '../kit/panels.js';
import type { Program, View } from '../kit/program.js';
import type { World } from '../kit/stage.js';
import { benchKeys } from './keys.js';
import { carriedOut, type MixtureShelf } from './outside.js';
import { type BenchAction, type BenchEffect, type BenchState, pickable } from './state.js';
import { updateBench } from './update.js';
import { Bench } from './view.js';

const TITLES = {
  picking: 'Mixing bench: pick a paint',
  pins: 'Mixing bench: set aside',
  asking: 'Mixing bench: from here to where?',
  recipes: 'Mixing bench: recipes from here',
  naming: 'Mixing bench: a name for it',
  kept: 'Mixing bench: kept mixtures',
} as const;

function sideOf({ doing, settings, pins, kept = [] }: BenchState, world: World): string {
  switch (doing?.name) {
    case undefined:
      return 'the colour follows as you change it';
    case 'picking': {
      const count = pickable(world, settings.palette, doing.text).length;
      return count === 0 ? 'none' : `${doing.at + 1} of ${count}`;
    }
    case 'pins':
      return `${doing.at + 1} of ${pins.length}`;
    case 'kept':
      return `${doing.at + 1} of ${kept.length}`;
    case 'recipes':
      return doing.found === undefined ? '' : `${doing.at + 1} of ${doing.found.recipes.length}`;
    default:
      return '';
  }
}

function benchView(state: BenchState, world: World): View {
  const { overlay, doing, settings } = state;
  if (overlay?.name === 'caution') return cautionView(overlay.pigments);
  if (overlay?.name === 'about') return aboutView(overlay.pigments);
  if (overlay?.name === 'keys') {
    const { overlay: _closed, ...behind } = state;
    return keysView(benchKeys(behind));
  }
  const title = doing === undefined ? 'Mixing bench' : TITLES[doing.name];
  const body = <Bench screen={state} />;
  return settings.screenReader ? { title, body } : { title, side: sideOf(state, world), body };
}

/** What the bench needs from outside. */
export interface BenchDeps {
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Milliseconds since 1970. */
  now(): number;
  /** Absent where nothing can be kept. */
  readonly mixtures?: MixtureShelf;
}

export const benchProgram = (
  deps: BenchDeps,
  world: World,
  initial: BenchState,
): Program<BenchState, BenchAction, BenchEffect> => ({
  name: 'bench',
  world,
  initial: deps.mixtures === undefined ? initial : { ...initial, kept: deps.mixtures.all() },
  glyphs: glyphsFor(deps.env),
  now: () => deps.now(),
  update: (state, action) => updateBench(state, world, action),
  keys: benchKeys,
  view: (state) => benchView(state, world),
  perform: async (effect, { settings }, dispatch) => {
    // The screen that says that it is looked for is drawn first.
    await setImmediate();
    dispatch(carriedOut(effect, world, settings, deps.mixtures));
  },
});
