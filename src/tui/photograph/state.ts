/** A photographed painting on the screen: its picture, the mass in front, and what is looked for from there. Pure data. */
import type { MassRecipes, PaintingReading } from '../../painting/index.js';
import type { RecipeAim } from '../../recipes/index.js';
import type { Stage } from '../kit/stage.js';

/** How the picture is shown: as it is, in greys, or in so many values. */
export const LOOKS = ['colour', 'grey', 2, 3, 5] as const;
export type PictureLook = (typeof LOOKS)[number];

/** One photograph with what is said of it. */
export interface Shown {
  /** Name of the file, cleaned. */
  readonly name: string;
  readonly reading: PaintingReading;
}

/** What is being done beside looking at the picture. */
export type Looking =
  | { readonly name: 'told'; readonly top: number }
  | { readonly name: 'asking'; readonly row: number; readonly aim: RecipeAim; readonly darker: number }
  /** Absent `found`: still looking; or it cannot be, for the reason that is `told`. */
  | {
      readonly name: 'recipes';
      readonly at: number;
      readonly aim: RecipeAim;
      readonly darker: number;
      readonly found?: MassRecipes;
      readonly told?: string;
    };

export interface RecipesAsked {
  readonly type: 'find';
  readonly painting: number;
  readonly mass: number;
  readonly aim: RecipeAim;
  readonly darker: number;
}

/** @remarks `told`: why nothing could be looked for */
export interface RecipesFound {
  readonly type: 'found';
  readonly asked: RecipesAsked;
  readonly found?: MassRecipes;
  readonly told?: string;
}

export interface PhotographState extends Stage<RecipesAsked> {
  /** Which of the photographs is in front. */
  readonly painting: number;
  /** Index of the mass in front. */
  readonly mass: number;
  readonly look: PictureLook;
  readonly looking?: Looking;
  readonly overlay?: 'keys';
}

/** What is fixed while the painting is looked at. */
export interface PhotographWorld {
  /** The painting, or before and after. */
  readonly paintings: readonly Shown[];
  /** What is said of them, a paragraph each; '' is a blank line. */
  readonly told: readonly string[];
  /** Whether paints are known that recipes can take. */
  readonly hasTray: boolean;
}

export const paintingIn = ({ paintings }: PhotographWorld, { painting }: PhotographState): Shown =>
  paintings[painting] as Shown;
