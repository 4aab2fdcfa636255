/** Eight mixtures to paint, made like the drills of the program: so that each is worth deciding. */
import { seedOf } from '../chance/draw.js';
import { findFamily } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { solved } from '../drills/kinds/mix/solve.js';
import { generateDrill, usedBefore } from '../drills/make/index.js';
import { InputError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { type Seen, seeLaid, type Wash } from '../washes/index.js';
import type { Progress } from './types.js';

/** A mixture to paint. */
export interface Exercise {
  readonly family: string;
  readonly title: string;
  /** Made up, stirred into, perhaps thinned. */
  readonly wash: Wash;
  /** The wash before anything came in. */
  readonly start: Seen;
  readonly mixed: Seen;
}

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

/** One exercise of a family, unlike those before; undefined where the box gives none. */
function made(
  studio: Studio,
  family: string,
  palette: readonly string[],
  seed: number,
  before: readonly (Exercise & { readonly drill: Drill })[],
): (Exercise & { readonly drill: Drill }) | undefined {
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const drill = drillOf(studio, {
      family,
      palette,
      seed: seedOf(seed, family, before.length, attempt),
      avoid: usedBefore(before.map((one) => one.drill)),
    });
    if (drill === undefined) return undefined;
    if (drill.kind !== 'mix') continue;
    const { seen } = solved(studio, drill).best;
    const wash = seen.laid;
    // Glazes and strokes are another exercise: here one puddle is mixed.
    if (!('paints' in wash) || before.some((one) => keyOf(one.wash) === keyOf(wash))) continue;
    const { paints, strength } = wash;
    return {
      family: findFamily(family)?.name ?? family,
      title: drill.title,
      wash,
      start: seeLaid(studio, { paints, strength }),
      mixed: seen,
      drill,
    };
  }
  return undefined;
}

function drillOf(
  studio: Studio,
  request: {
    readonly family: string;
    readonly palette: readonly string[];
    readonly seed: number;
    readonly avoid: readonly string[];
  },
): Drill | undefined {
  try {
    return generateDrill(studio, { ...request, level: LEVEL });
  } catch (error) {
    // A box that this family cannot be made from.
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/**
 * The exercises of a sheet: the same seed and paints give the same sheet.
 * @returns as many as the box gives, eight at most
 */
export function exercisesFor(
  studio: Studio,
  palette: readonly string[],
  seed: number,
  progress: Progress,
): Exercise[] {
  const found: (Exercise & { readonly drill: Drill })[] = [];
  for (const [at, family] of TURNS.entries()) {
    const others = TURNS.filter((other, place) => other !== family && TURNS.indexOf(other) === place);
    for (const name of [family, ...others]) {
      const exercise = made(studio, name, palette, seed, found);
      if (exercise === undefined) continue;
      found.push(exercise);
      break;
    }
    progress(at + 1, TURNS.length);
  }
  return found.map(({ drill: _, ...exercise }) => exercise);
}
