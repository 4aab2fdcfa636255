/** What keys do while a paint is picked, swatches are compared, recipes are looked for or a mixture is named. Pure. */
import { RECIPE_AIMS, USUAL_DARKER } from '../../recipes/index.js';
import { cleanText } from '../../text/sanitize.js';
import { type Command, typed } from '../kit/keys.js';
import { step, stepBy, turn } from '../kit/moves.js';
import type { World } from '../kit/stage.js';
import { firstWash, laid } from './lay.js';
import { benchLaid, fromLaid, type Mixture, withPaint } from './mixture.js';
import { type BenchEffect, type BenchState, type Doing, MOST_NAME, pickable } from './state.js';

type Doings = { readonly [K in Doing['name']]: Extract<Doing, { name: K }> };
type Step<K extends Doing['name']> = (
  state: BenchState,
  doing: Doings[K],
  world: World,
  command: Command,
  key: string,
) => BenchState;

function done({ doing: _done, ...bench }: BenchState): BenchState {
  return bench;
}

const asked = (state: BenchState, effect: BenchEffect): BenchState => ({
  ...state,
  effects: [...(state.effects ?? []), effect],
});

/** One up or down a list. */
const moved = <D extends Doing & { readonly at: number }>(doing: D, command: Command, count: number): D => ({
  ...doing,
  at: step(doing.at, command === 'up' || command === 'less' ? -1 : 1, count),
});
const MOVES: readonly Command[] = ['up', 'down', 'less', 'more'];

const onPicking: Step<'picking'> = (state, doing, world, command, key) => {
  const order = pickable(world, state.settings.palette, doing.text);
  if (command === 'up' || command === 'down') return { ...state, doing: moved(doing, command, order.length) };
  if (command === 'confirm') {
    if (order.length === 0) return { ...state, notice: 'No paint is called that.' };
    return laid(done(state), world, withPaint(state.mixture, state.focus, order[doing.at]));
  }
  return { ...state, doing: { ...doing, at: 0, text: typed(doing.text, key, MOST_NAME) } };
};

const onPins: Step<'pins'> = (state, doing, world, command) => {
  const { pins } = state;
  if (MOVES.includes(command)) return { ...state, doing: moved(doing, command, pins.length) };
  const mixture = pins[doing.at];
  if (command === 'confirm') return mixture === undefined ? done(state) : laid(done(state), world, mixture);
  const left = pins.filter((_, at) => at !== doing.at);
  const next = { ...state, pins: left };
  return left.length === 0
    ? done(next)
    : { ...next, doing: { ...doing, at: Math.min(doing.at, left.length - 1) } };
};

/** Most steps lighter or darker that are asked for. */
const MOST_DARKER = 6;

const onAsking: Step<'asking'> = (state, doing, world, command) => {
  const { row, aim, darker } = doing;
  if (command === 'up' || command === 'down')
    return { ...state, doing: { ...doing, row: stepBy(command, row, 2) } };
  if (command === 'confirm') {
    const from = firstWash(state, world);
    if (from === undefined) return done(state);
    const wish = { from, aim, darker } as const;
    return asked({ ...state, doing: { name: 'recipes', at: 0, wish } }, { type: 'find', wish });
  }
  const by = command === 'less' ? -1 : 1;
  if (row === 1) {
    const next = Math.min(MOST_DARKER, Math.max(-MOST_DARKER, darker + by));
    return { ...state, doing: { ...doing, darker: next } };
  }
  const next = RECIPE_AIMS[turn(RECIPE_AIMS.indexOf(aim), by, RECIPE_AIMS.length)] ?? aim;
  return { ...state, doing: { ...doing, aim: next, darker: USUAL_DARKER[next] } };
};

function placed(state: BenchState, world: World, mixture: Mixture | undefined): BenchState {
  return mixture === undefined
    ? { ...state, notice: 'The bench lays one paint in each glaze and stroke: this one it cannot show.' }
    : laid(done(state), world, mixture);
}

const onRecipes: Step<'recipes'> = (state, doing, world, command) => {
  const recipes = doing.found?.recipes ?? [];
  if (command !== 'confirm') return { ...state, doing: moved(doing, command, recipes.length) };
  const recipe = recipes[doing.at];
  return recipe === undefined ? state : placed(state, world, fromLaid(world.studio, recipe.laid));
};

const onNaming: Step<'naming'> = (state, doing, _world, command, key) => {
  if (command !== 'confirm')
    return { ...state, doing: { ...doing, text: typed(doing.text, key, MOST_NAME) } };
  const name = cleanText(doing.text, MOST_NAME).trim();
  const lies = benchLaid(state.mixture);
  if (name === '' || lies === undefined) return { ...state, notice: 'A name needs a letter.' };
  return asked(done(state), { type: 'keep', mixture: { name, laid: lies } });
};

const onKept: Step<'kept'> = (state, doing, world, command) => {
  const kept = state.kept ?? [];
  if (MOVES.includes(command)) return { ...state, doing: moved(doing, command, kept.length) };
  const one = kept[doing.at];
  if (one === undefined) return done(state);
  if (command === 'confirm') return placed(state, world, fromLaid(world.studio, one.laid));
  const next = asked(state, { type: 'remove', name: one.name });
  return kept.length === 1
    ? done(next)
    : { ...next, doing: { ...doing, at: Math.min(doing.at, kept.length - 2) } };
};

const STEPS: { readonly [K in Doing['name']]: Step<K> } = {
  picking: onPicking,
  pins: onPins,
  asking: onAsking,
  recipes: onRecipes,
  naming: onNaming,
  kept: onKept,
};

/** The bench after a key while something is done; the way back leaves it. */
export function onDoing(
  state: BenchState,
  doing: Doing,
  world: World,
  command: Command,
  key: string,
): BenchState {
  if (command === 'back') return done(state);
  return (STEPS[doing.name] as Step<Doing['name']>)(state, doing as never, world, command, key);
}
