/** Which paints of a mixture ask for care, and which of them have been told already in this run. */
import type { Stage, World } from './stage.js';

const textOf = (world: World, id: string): string =>
  world.studio.paints.find((pigment) => pigment.id === id)?.hazard?.note ?? '';

/** Of these paints, those whose handling asks for care. */
export function withCaution(world: World, ids: readonly string[]): string[] {
  return [...new Set(ids)].filter((id) => {
    const hazard = world.studio.paints.find((pigment) => pigment.id === id)?.hazard;
    return hazard !== undefined && hazard.level !== 'low';
  });
}

/** The paints whose caution has not been shown yet, and the state that remembers it as shown. */
export function dueCautions<S extends Stage>(
  state: S,
  world: World,
  ids: readonly string[],
): { readonly due: readonly string[]; readonly told: S } {
  const due = withCaution(world, ids).filter((id) => !state.cautioned.includes(textOf(world, id)));
  return { due, told: { ...state, cautioned: [...state.cautioned, ...due.map((id) => textOf(world, id))] } };
}
