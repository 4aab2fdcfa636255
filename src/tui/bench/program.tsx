/** The bench as a program of the screens. */
import type { Glyphs } from '../kit/glyphs.js';
import { glyphsFor } from '../kit/glyphs.js';
import { aboutView, cautionView, keysView } from '../kit/panels.js';
import type { Program, View } from '../kit/program.js';
import type { World } from '../kit/stage.js';
import { type BenchState, benchOrder } from './state.js';
import { benchKeys, updateBench } from './update.js';
import { Bench } from './view.js';

function benchView(state: BenchState, world: World): View {
  const { overlay, picking, settings } = state;
  if (overlay?.name === 'caution') return cautionView(overlay.pigments);
  if (overlay?.name === 'about') return aboutView(overlay.pigments);
  if (overlay?.name === 'keys') {
    const { overlay: _closed, ...behind } = state;
    return keysView(benchKeys(behind));
  }
  const body = <Bench screen={state} />;
  if (settings.screenReader) return { title: 'Mixing bench', body };
  if (picking === undefined)
    return { title: 'Mixing bench', side: 'the colour follows as you change it', body };
  const side = `${picking + 1} of ${benchOrder(world, settings.palette).length + 1}`;
  return { title: 'Mixing bench: pick a paint', side, body };
}

/** What the bench needs from outside. */
export interface BenchDeps {
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Milliseconds since 1970. */
  now(): number;
}

export const benchProgram = (deps: BenchDeps, world: World, initial: BenchState): Program<BenchState> => ({
  name: 'bench',
  world,
  initial,
  glyphs: glyphsFor(deps.env),
  now: () => deps.now(),
  update: (state, action) => updateBench(state, world, action),
  keys: benchKeys,
  view: (state: BenchState, _glyphs: Glyphs) => benchView(state, world),
});
