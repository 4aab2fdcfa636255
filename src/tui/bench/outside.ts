/** What the bench asks of the outside: recipes, and the shelf of kept mixtures. */
import { InputError } from '../../errors.js';
import { recipesFor } from '../../recipes/index.js';
import { WAYS } from '../../washes/index.js';
import type { Settings, World } from '../kit/stage.js';
import { type BenchAction, type BenchEffect, type KeptMixture, paintsAtHand } from './state.js';

/** What came of keeping, for the learner: a fault of the disk is told in `told`. */
interface Held {
  readonly kept: readonly KeptMixture[];
  readonly told: string;
}

/** Mixtures that the learner keeps. */
export interface MixtureShelf {
  all(): readonly KeptMixture[];
  /** Under its name, in place of one of that name. */
  keep(mixture: KeptMixture): Held;
  remove(name: string): Held;
}

/** Recipes that are looked for at once. */
const MOST_RECIPES = 4;

/** Does what was asked, and tells what came of it. */
export function carriedOut(
  effect: BenchEffect,
  { studio }: Pick<World, 'studio'>,
  { palette }: Pick<Settings, 'palette'>,
  shelf: MixtureShelf | undefined,
): BenchAction {
  if (effect.type !== 'find') {
    const held = effect.type === 'keep' ? shelf?.keep(effect.mixture) : shelf?.remove(effect.name);
    return { type: 'kept', ...(held ?? { kept: [], told: 'Nothing can be kept here.' }) };
  }
  const { wish } = effect;
  // The bench lays one paint in each glaze and stroke: from a wash of several it can show only what is stirred in.
  const isOne = !('from' in wish) || wish.from === undefined || Object.keys(wish.from.paints).length === 1;
  try {
    const means = {
      paints: paintsAtHand(studio, palette),
      ways: isOne ? WAYS : (['puddle'] as const),
      most: MOST_RECIPES,
    };
    return { type: 'found', wish, found: recipesFor(studio, wish, means) };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { type: 'found', wish, found: undefined, told: fault.message };
  }
}
