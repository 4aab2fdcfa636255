/** From a mass of a painting to a mixture: the wash that comes nearest to it, and from there to what is wanted. */
import type { ColourReading } from '../colour/reading.js';
import type { Studio } from '../paints/index.js';
import { type RecipeAim, type Recipes, recipesFor, USUAL_DARKER, type Wish } from '../recipes/index.js';
import { WAYS } from '../washes/index.js';

/** How to mix a mass. */
export interface MassMixture {
  /** The mass itself, in one puddle. */
  readonly match: { readonly wish: Wish; readonly found: Recipes };
  /** From the best of these to the aim, where one is asked and anything comes near the mass. */
  readonly on?: { readonly wish: Wish; readonly found: Recipes };
}

/** Recipes of the mass itself where nothing else is asked, and of the aim. */
const MOST = 3;

/**
 * Looks for mixtures.
 * @param paints ids of those that may be taken
 * @throws InputError where the aim leads off the scale of values
 */
export function massMixture(
  studio: Studio,
  colour: ColourReading,
  aim: RecipeAim | undefined,
  paints: readonly string[],
): MassMixture {
  const to: Wish = { to: colour.lab };
  const found = recipesFor(studio, to, { paints, ways: ['puddle'], most: aim === undefined ? MOST : 1 });
  const match = { wish: to, found };
  const laid = found.recipes[0]?.laid;
  if (aim === undefined || laid === undefined || !('paints' in laid)) return { match };
  const wish: Wish = {
    from: { paints: laid.paints, strength: laid.strength },
    aim,
    darker: USUAL_DARKER[aim],
  };
  return { match, on: { wish, found: recipesFor(studio, wish, { paints, ways: WAYS, most: MOST }) } };
}
