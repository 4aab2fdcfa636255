/** Laying another mixture on the bench, and taking what lies there as a wash to start from. Pure. */
import { paintIn, strengthOf, washLoads } from '../../washes/index.js';
import { dueCautions } from '../kit/cautions.js';
import type { World } from '../kit/stage.js';
import { benchLaid, type Mixture } from './mixture.js';
import { type BenchState, benchPaints, MOST_PAST } from './state.js';

/** Another mixture on the bench; the one before can be had back. Cautions of paints that it brings come over it, the first time. */
export function laid(state: BenchState, world: World, mixture: Mixture): BenchState {
  if (mixture === state.mixture) return state;
  const next = { ...state, mixture, past: [...state.past, state.mixture].slice(-MOST_PAST) };
  const lay = benchPaints(state.mixture);
  const brought = benchPaints(mixture).filter((id) => !lay.includes(id));
  const { due, told } = dueCautions(next, world, brought);
  return due.length === 0 ? told : { ...told, overlay: { name: 'caution', pigments: due } };
}

/** What lies on the bench as one wash to start from. */
export function firstWash({ mixture }: BenchState, world: World) {
  const lies = benchLaid(mixture);
  if (lies === undefined || !('paints' in lies)) return undefined;
  const loads = washLoads(world.studio, lies);
  const all = paintIn(loads);
  return {
    paints: Object.fromEntries(loads.map(({ pigment, load }) => [pigment.id, load / all])),
    strength: strengthOf(loads),
  };
}
