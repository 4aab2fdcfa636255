/** An exercise for a box that is too small for the drills: a recipe, its amounts rounded to touches. */
import { fraction, pick, seededDraw } from '../chance/draw.js';
import { deltaE00 } from '../colour/difference.js';
import { CHROMATIC_START } from '../judgement/index.js';
import { paintOf, type Studio } from '../paints/index.js';
import { isOnScale, recipesFor } from '../recipes/index.js';
import { seeLaid, type Wash } from '../washes/index.js';
import { sentence } from '../words/laid.js';
import type { Exercise } from './types.js';

/** What is asked: how much darker in steps, and how it is said. */
const WISHES = [
  { aim: 'rich', darker: 1, family: 'darker and still bright' },
  { aim: 'dull', darker: 0, family: 'duller, as light as it is' },
  { aim: 'shade', darker: 1, family: 'its shade' },
  { aim: 'distance', darker: -0.5, family: 'lighter and duller, as from afar' },
] as const;

const STRENGTHS = [0.2, 0.3, 0.45] as const;
const TRIES = 10;
/** A mixture that looks so much like the wash teaches nothing, CIEDE2000. */
const ALIKE = 5;
/** Water that is added, one part in so many. */
const THINS = [1, 1.5, 2, 3, 4, 6, 8] as const;

/** The touches that painters count in: halves of halves. */
const asTouch = (ratio: number): number => 2 ** Math.round(Math.log2(ratio));
const asThin = (thin: number): number =>
  THINS.reduce((best, next) =>
    Math.abs(Math.log(next / thin)) < Math.abs(Math.log(best / thin)) ? next : best,
  );

function counted({ add = {}, thin = 1, ...first }: Wash): Wash {
  const touches = Object.entries(add).map(([id, ratio]) => [id, asTouch(ratio)] as const);
  const water = asThin(thin);
  return { ...first, add: Object.fromEntries(touches), ...(water === 1 ? {} : { thin: water }) };
}

/** A wash of one paint and what to do to it; undefined where nothing new comes of some tries. @param isOld mixed before */
export function recipeExercise(
  studio: Studio,
  paints: readonly string[],
  seed: number,
  isOld: (wash: Wash) => boolean,
): Exercise | undefined {
  const draw = seededDraw(seed);
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const id = pick(paints, draw);
    const { aim, darker, family } = pick(WISHES, draw);
    const from = { paints: { [id]: 1 }, strength: pick(STRENGTHS, draw) };
    const start = seeLaid(studio, from);
    if (start.colour.chroma < CHROMATIC_START || !isOnScale(start.colour.step + darker)) continue;
    const others = paints.filter((other) => other !== id && fraction(draw) < 0.8);
    const { recipes, reach } = recipesFor(
      studio,
      { from, aim, darker },
      { paints: others, ways: ['puddle'], most: 1 },
    );
    const laid = recipes[0]?.laid;
    if (reach === 'out' || laid === undefined || !('paints' in laid)) continue;
    const wash = counted(laid);
    const mixed = seeLaid(studio, wash);
    if (isOld(wash) || Object.keys(wash.add ?? {}).length === 0) continue;
    if (deltaE00(start.colour.lab, mixed.colour.lab) < ALIKE) continue;
    return { title: sentence(paintOf(studio, id).name), family, wash, start, mixed };
  }
  return undefined;
}
