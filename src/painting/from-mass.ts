/** From a mass of the painting to a mixture: the wash that it is taken for, and how that is changed as a goal asks. */
import { deltaE00 } from '../colour/difference.js';
import type { ColourReading } from '../colour/reading.js';
import { STAINS } from '../judgement/index.js';
import { paintOf, type Studio } from '../paints/index.js';
import {
  edgeTold,
  type Recipe,
  type RecipeAim,
  type Recipes,
  recipesFor,
  recipeTold,
} from '../recipes/index.js';
import { type FirstWash, seeLaid, WAYS } from '../washes/index.js';
import { tidyParts } from '../washes/tidy.js';
import { paintsLabel, strengthWords } from '../words/laid.js';
import type { Named } from '../words/sentences/painting.js';
import { type Finding, tell } from '../words/tell.js';
import { nameOf } from './name.js';
import { MATCHED } from './table.js';
import type { Mass, PaintingReading } from './types.js';

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
  readonly asked: Asked;
  /** The wash that it is taken for; absent where these paints do not make it. */
  readonly from?: FirstWash;
  /** CIEDE2000 of the wash from the mass. */
  readonly deltaE00: number;
  /** Absent where there is no wash to start from. */
  readonly found?: Recipes;
  /** Ids of paints that the painting does not have. */
  readonly newcomers: readonly string[];
}

/** Recipes that are given. */
const MOST = 3;

/** The same wash in parts that can be counted out. */
function counted({ paints, strength }: FirstWash): FirstWash {
  const [first, second, ...more] = Object.entries(paints);
  if (first === undefined || second === undefined || more.length > 0) return { paints, strength };
  const [one, other] = tidyParts(second[1] / first[1])[0] ?? [first[1], second[1]];
  return { paints: { [first[0]]: one, [second[0]]: other }, strength };
}

/** The wash of one or two of these paints that comes nearest to a mass; none where it is too far off. */
function washFor(studio: Studio, { lab }: ColourReading, paints: readonly string[]) {
  const means = { paints, ways: ['puddle'], most: 1, mostPaints: 2 } as const;
  const laid = recipesFor(studio, { to: lab }, means).recipes[0]?.laid;
  if (laid === undefined || !('paints' in laid)) return { deltaE00: Number.POSITIVE_INFINITY };
  const from = counted(laid);
  const off = deltaE00(seeLaid(studio, from).colour.lab, lab);
  return off <= MATCHED ? { from, deltaE00: off } : { deltaE00: off };
}

const newIn = ({ paints }: Tray, { parts }: Recipe): string[] =>
  parts.map(({ pigment }) => pigment).filter((id) => !paints.includes(id));

/** Recipes from the paints that the painting has; from all only where those do not reach what is asked and all do. */
function changed(studio: Studio, from: FirstWash, asked: Asked, tray: Tray): Recipes {
  const look = (paints: readonly string[]): Recipes =>
    recipesFor(studio, { from, ...asked }, { paints, ways: WAYS, most: MOST });
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
  const { colour } = reading.masses[mass] as Mass;
  const { from, deltaE00: off } = washFor(studio, colour, tray.paints);
  if (from === undefined) return { mass: named, asked, deltaE00: off, newcomers: [] };
  const found = changed(studio, from, asked, tray);
  const [best] = found.recipes;
  return {
    mass: named,
    asked,
    from,
    deltaE00: off,
    found,
    newcomers: best === undefined ? [] : newIn(tray, best),
  };
}

/** What lies on the paper does not grow lighter by a recipe: it has to be lifted, if it can be. */
function liftTold(studio: Studio, from: FirstWash, { darker }: Asked): Finding[] {
  if (darker >= 0) return [];
  const paints = Object.keys(from.paints).map((id) => paintOf(studio, id));
  const staining = paints.filter(({ handling }) => (handling.staining?.value ?? 0) >= STAINS);
  return [tell('painting-lift', { staining: staining.map(({ name }) => name) })];
}

/** What its recipes start from and take: the wash that the mass is taken for, and paints that the painting does not have. */
export function massBasis(
  studio: Studio,
  { mass, asked, from, deltaE00, newcomers }: MassRecipes,
): Finding[] {
  if (from === undefined) return [tell('painting-no-match', { mass, deltaE00 })];
  const made = `${paintsLabel(studio, from)}, ${strengthWords(from.strength)}`;
  return [
    tell('painting-match', { mass, made, deltaE00 }),
    ...liftTold(studio, from, asked),
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
