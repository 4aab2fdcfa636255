/** Eight mixtures to paint, made like the drills of the program: so that each is worth deciding. */
import { seedOf } from '../chance/draw.js';
import { findFamily } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { solved } from '../drills/kinds/mix/solve.js';
import { generateDrill, usedBefore } from '../drills/make/index.js';
import { InputError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { seeLaid, type Wash } from '../washes/index.js';
import { recipeExercise } from './practice-recipe.js';
import type { Exercise, Progress } from './types.js';

/** Families in turn: darker and bright, dulled, greys, a dark; each of them takes the place of one that the box cannot make. */
const TURNS = [
  'darken-bright',
  'dull-on-purpose',
  'neutraliser',
  'grey-lean',
  'darken-bright',
  'dull-on-purpose',
  'deep-dark',
  'tinting-strength',
] as const;

export const EXERCISES = TURNS.length;
/** Level of the drills: amount and water are to be decided. */
const LEVEL = 4;
/** Drills of a family that are made before the next family is asked. */
const TRIES = 6;

/** What a sheet is known by: two that mix the same are one. */
const keyOf = ({ paints, add = {} }: Wash): string =>
  JSON.stringify([Object.keys(paints).sort(), Object.keys(add)]);

const isOld = (before: readonly Exercise[], wash: Wash): boolean =>
  before.some((one) => keyOf(one.wash) === keyOf(wash));

type Made = Exercise & { readonly drill?: Drill };

/** A drill; undefined for a box that such a drill cannot be made from. */
function drillOf(
  studio: Studio,
  request: Omit<Parameters<typeof generateDrill>[1], 'level'>,
): Drill | undefined {
  try {
    return generateDrill(studio, { ...request, level: LEVEL });
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** One exercise of a family, unlike those before; undefined where the box gives none. */
function made(
  studio: Studio,
  family: string,
  palette: readonly string[],
  seed: number,
  before: readonly Made[],
): Made | undefined {
  const avoid = usedBefore(before.flatMap(({ drill }) => drill ?? []));
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const drill = drillOf(studio, {
      family,
      palette,
      avoid,
      seed: seedOf(seed, family, before.length, attempt),
    });
    if (drill?.kind !== 'mix') return undefined;
    const { seen } = solved(studio, drill).best;
    const wash = seen.laid;
    // Glazes and strokes are another exercise: here one puddle is mixed.
    if (!('paints' in wash) || isOld(before, wash)) continue;
    const { paints, strength } = wash;
    const start = seeLaid(studio, { paints, strength });
    return {
      family: findFamily(family)?.name ?? family,
      title: drill.title,
      wash,
      start,
      mixed: seen,
      drill,
    };
  }
  return undefined;
}

/**
 * The exercises of a sheet: the same seed and paints give the same sheet.
 * @returns as many as the box gives, eight at most
 * @throws InputError for a box that gives none
 */
export function exercisesFor(
  studio: Studio,
  palette: readonly string[],
  seed: number,
  progress: Progress,
): Exercise[] {
  const found: Made[] = [];
  // Families that have no more to give are not asked again.
  const open = new Set<string>(TURNS);
  for (const [at, family] of TURNS.entries()) {
    let exercise: Made | undefined;
    for (const name of [family, ...TURNS]) {
      if (!open.has(name)) continue;
      exercise = made(studio, name, palette, seed, found);
      if (exercise !== undefined) break;
      open.delete(name);
    }
    exercise ??= recipeExercise(studio, palette, seedOf(seed, at), (wash) => isOld(found, wash));
    if (exercise !== undefined) found.push(exercise);
    progress(at + 1, TURNS.length);
  }
  if (found.length === 0)
    throw new InputError('no exercise can be made of these paints; take more of them, or unlike ones');
  return found.map(({ drill: _, ...exercise }) => exercise);
}
