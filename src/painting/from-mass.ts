/** From a mass of the painting to a mixture: the wash that it is taken for, and how that is changed as a goal asks. */
import { paintOf, type Studio } from '../paints/index.js';
import {
  edgeTold,
  type Recipe,
  type RecipeAim,
  type Recipes,
  recipesFor,
  recipeTold,
} from '../recipes/index.js';
import { type FirstWash, WAYS } from '../washes/index.js';
import { paintsLabel, strengthWords } from '../words/laid.js';
import type { Named } from '../words/sentences/painting.js';
import { type Finding, tell } from '../words/tell.js';
import { nameOf } from './name.js';
import { MATCHED } from './table.js';
import type { PaintingReading } from './types.js';

/** Paints that recipes may take. */
export interface Tray {
  /** Ids of the paints that the painting has. */
  readonly paints: readonly string[];
  /** Ids of those beside it: one is a newcomer to the painting, and comes in only where it must. */
  readonly others: readonly string[];
}

/** What is asked of a mass. @remarks `darker`: painter's steps, negative for lighter */
export interface Asked {
  readonly aim: RecipeAim;
  readonly darker: number;
}

/** What was found for a mass. */
export interface MassRecipes {
  readonly mass: Named;
  /** The wash that it is taken for; absent where these paints do not make it. */
  readonly from?: FirstWash;
  /** CIEDE2000 of the wash from the mass. */
  readonly deltaE00: number;
  /** Absent where there is no wash to start from. */
  readonly found?: Recipes;
  /** Ids of paints that the painting does not have. */
  readonly newcomers: readonly string[];
}

/** Recipes that are looked through for a wash of few paints, and that are given. */
const MOST = { looked: 4, given: 3 } as const;

function washFor(studio: Studio, reading: PaintingReading, mass: number, paints: readonly string[]) {
  const { lab } = (reading.masses[mass] as PaintingReading['masses'][number]).colour;
  const { recipes } = recipesFor(studio, { to: lab }, { paints, ways: ['puddle'], most: MOST.looked });
  const near = recipes.filter(({ deltaE00 = 0 }) => deltaE00 <= MATCHED);
  // Of two paints a third can still be brought to it.
  const best = near.find(({ parts }) => parts.length < 3) ?? near[0];
  const laid = best?.laid;
  const from =
    laid !== undefined && 'paints' in laid ? { paints: laid.paints, strength: laid.strength } : undefined;
  return { from, deltaE00: (best ?? recipes[0])?.deltaE00 ?? Number.POSITIVE_INFINITY };
}

const newIn = ({ paints }: Tray, { parts }: Recipe): string[] =>
  parts.map(({ pigment }) => pigment).filter((id) => !paints.includes(id));

/** Recipes from the paints that the painting has; from all only where those do not reach what is asked and all do. */
function changed(studio: Studio, from: FirstWash, asked: Asked, tray: Tray): Recipes {
  const look = (paints: readonly string[]): Recipes =>
    recipesFor(studio, { from, ...asked }, { paints, ways: WAYS, most: MOST.given });
  const own = look(tray.paints);
  if (own.reach === 'in' || tray.others.length === 0) return own;
  const all = look([...tray.paints, ...tray.others]);
  return all.reach === 'in' ? all : own;
}

/**
 * The way from a mass to what is asked of it.
 * @param mass index in the reading
 * @throws InputError for what cannot be asked of its wash
 */
export function recipesOfMass(
  studio: Studio,
  reading: PaintingReading,
  mass: number,
  asked: Asked,
  tray: Tray,
): MassRecipes {
  const named = nameOf(reading.masses, mass);
  const { from, deltaE00 } = washFor(studio, reading, mass, tray.paints);
  if (from === undefined) return { mass: named, deltaE00, newcomers: [] };
  const found = changed(studio, from, asked, tray);
  const [best] = found.recipes;
  return { mass: named, from, deltaE00, found, newcomers: best === undefined ? [] : newIn(tray, best) };
}

/** What its recipes start from and take: the wash that the mass is taken for, and paints that the painting does not have. */
export function massBasis(studio: Studio, { mass, from, deltaE00, newcomers }: MassRecipes): Finding[] {
  if (from === undefined) return [tell('painting-no-match', { mass, deltaE00 })];
  const made = `${paintsLabel(studio, from)} at ${strengthWords(from.strength)}`;
  return [
    tell('painting-match', { mass, made, deltaE00 }),
    ...(newcomers.length === 0
      ? []
      : [tell('painting-newcomer', { names: newcomers.map((id) => paintOf(studio, id).name) })]),
  ];
}

/** All that is said of it: the wash, the newcomers, how far it reaches, and the best recipe. */
export function massTold(studio: Studio, recipes: MassRecipes): Finding[] {
  const { from, found } = recipes;
  const basis = massBasis(studio, recipes);
  if (from === undefined || found === undefined) return basis;
  const edge = edgeTold(found);
  const [best] = found.recipes;
  return [
    ...basis,
    ...(edge === undefined ? [] : [edge]),
    ...(best === undefined ? [] : recipeTold(studio, found, best, from)),
  ];
}
