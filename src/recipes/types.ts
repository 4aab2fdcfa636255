/** What a recipe is asked for and what it is. Plain data. */
import type { Lab } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import type { Goal, RelationKind } from '../judgement/index.js';
import type { FirstWash, Laid, Way } from '../washes/index.js';

/** Aims that a recipe can be asked for. */
export const RECIPE_AIMS = ['shade', 'rich', 'dull', 'distance'] as const;
export type RecipeAim = (typeof RECIPE_AIMS)[number];

/** What is to come out: a change of the wash that lies there, or a colour. */
export type Wish =
  /** @remarks `darker`: painter's steps, negative for lighter */
  | { readonly from: FirstWash; readonly aim: RecipeAim; readonly darker: number }
  /** @remarks `to`: CIELAB, D65, 2 degrees; `from`: the wash that it is to be reached from, where one is made up already */
  | { readonly to: Lab; readonly from?: FirstWash };

/** What may be taken for it. */
export interface Means {
  /** Ids of paints. */
  readonly paints: readonly string[];
  readonly ways: readonly Way[];
  /** Most recipes that are given. */
  readonly most: number;
  /** Most paints in one of them, those of the first wash among them; {@link MOST_PAINTS} where it is not said. */
  readonly mostPaints?: 1 | 2 | 3;
}

/** A paint of a recipe. */
export interface RecipePart {
  readonly pigment: string;
  /** Of tube paint, against the other parts: of one puddle, or on the same stretch of paper. */
  readonly parts: number;
  /** How it stands to the wash that is there, or to the strongest paint; absent for that itself. */
  readonly relation?: RelationKind | 'own';
}

/** One way to what was asked. */
export interface Recipe {
  readonly laid: Laid;
  readonly way: Way;
  readonly parts: readonly RecipePart[];
  /** Of all the paint that is laid, before the water: 1 is as thick as the masstone. */
  readonly strength: number;
  /** Water last of all, one part in so many; 1 for none. */
  readonly thin: number;
  readonly colour: ColourReading;
  /** C* as a share of the start's, or of the target's where nothing is there to start from; 1 of a grey. */
  readonly kept: number;
  /** 0-100, where a change was asked. */
  readonly mark?: number;
  /** CIEDE2000 from the target, where one was asked. */
  readonly deltaE00?: number;
}

/** What no recipe reaches, and how far the nearest comes. */
export type Edge =
  /** Steps from the nearest bound of the value asked, and C* and degrees outside what is asked there; 0 for what is met. */
  | {
      readonly kind: 'goal';
      readonly steps: number;
      readonly chroma: number;
      readonly hueDeg: number;
      /** The brightest at that value falls short of what a mere shade would keep, both in C*; absent where it does not. */
      readonly short?: { readonly brightest: number; readonly shade: number };
    }
  /** The nearest less the target: steps, C* and degrees of hue. */
  | { readonly kind: 'target'; readonly steps: number; readonly chroma: number; readonly hueDeg: number };

/** All that was found, best first. */
export interface Recipes {
  /** The wash to start from as it lies there. */
  readonly start?: ColourReading;
  /** The target as it is read. */
  readonly target?: ColourReading;
  readonly goal?: Goal;
  readonly reach: 'in' | 'out';
  /** Where it is out of reach. */
  readonly edge?: Edge;
  /** Empty only where nothing is open that is seen to change the wash. */
  readonly recipes: readonly Recipe[];
}
