/** What `mudlark recipe` is asked for, read from its options. */
import { readColourText } from '../colour/read-colour.js';
import { UsageError } from '../errors.js';
import type { Palette, Studio } from '../paints/index.js';
import {
  type Means,
  MOST_PAINTS,
  RECIPE_AIMS,
  type RecipeAim,
  USUAL_DARKER,
  type Wish,
} from '../recipes/index.js';
import { listWords } from '../text/list-words.js';
import { type FirstWash, WAYS, type Way } from '../washes/index.js';
import { readPaints } from './read-paints.js';
import { readNumber, readParts } from './read-parts.js';
import { usage } from './run.js';

/** Options as typed. */
export interface RecipeOptions {
  /** `paint=parts` each. */
  readonly from?: readonly string[];
  readonly strength?: string;
  readonly goal?: string;
  readonly darker?: string;
  readonly lighter?: string;
  readonly to?: string;
  readonly within?: readonly string[];
  readonly box?: string;
  readonly ways?: string;
  readonly most?: string;
  readonly json?: boolean;
}

/** What is asked, ready for the search. */
export interface RecipeRequest {
  readonly wish: Wish;
  readonly means: Means;
  /** The paints that may be taken, in words: "twelve paints". */
  readonly box: string;
}

const EXAMPLE = 'mudlark recipe --from burnt-sienna=1 --strength 0.3 --darker 2 --goal rich';
/** Strength of the wash where none is given. */
const USUAL_STRENGTH = 0.3;
/** Recipes that are given where no number is, and at most. */
const RECIPES = { usual: 3, most: 6 } as const;
/** Most paints that are searched: more take longer than anybody waits. */
const MOST_SEARCHED = 24;

function readFirst(studio: Studio, { from = [], strength }: RecipeOptions): FirstWash | undefined {
  if (from.length === 0) {
    if (strength !== undefined) throw new UsageError(`--strength is that of the wash in --from: ${EXAMPLE}`);
    return undefined;
  }
  const parts = readParts(studio, from, EXAMPLE);
  if (parts.length > MOST_PAINTS)
    throw new UsageError(`--from takes a wash of at most ${MOST_PAINTS} paints, got ${parts.length}`);
  const wrong = parts.find(({ parts: amount }) => !(amount > 0 && amount <= 1000));
  if (wrong !== undefined)
    throw new UsageError(`parts of ${wrong.pigment.id} must be above 0 and at most 1000, got ${wrong.parts}`);
  const strong = strength === undefined ? USUAL_STRENGTH : readNumber(strength, '--strength');
  if (!(strong >= 0.01 && strong <= 1))
    throw new UsageError(`--strength must be from 0.01 to 1, got ${strong}`);
  return {
    paints: Object.fromEntries(parts.map(({ pigment, parts: amount }) => [pigment.id, amount])),
    strength: strong,
  };
}

/** Steps darker, negative for lighter. */
function readDarker({ darker, lighter }: RecipeOptions, aim: RecipeAim): number {
  if (darker !== undefined && lighter !== undefined)
    throw new UsageError('--darker and --lighter are both given; leave one out');
  const text = darker ?? lighter;
  if (text === undefined) return USUAL_DARKER[aim];
  const steps = readNumber(text, darker === undefined ? '--lighter' : '--darker');
  if (!(steps >= 0 && steps <= 9))
    throw new UsageError(`--darker and --lighter take 0 to 9 steps, got ${steps}`);
  return darker === undefined ? -steps : steps;
}

function readWish(studio: Studio, options: RecipeOptions): Wish {
  const { to, goal } = options;
  const from = readFirst(studio, options);
  if (to !== undefined) {
    const other = (['goal', 'darker', 'lighter'] as const).find((name) => options[name] !== undefined);
    if (other !== undefined) throw new UsageError(`--to asks for one colour; leave out --${other}`);
    const target = usage(() => readColourText(to));
    return from === undefined ? { to: target } : { to: target, from };
  }
  if (from === undefined) throw new UsageError(`say from which wash, or to which colour: ${EXAMPLE}`);
  const aim = RECIPE_AIMS.find((known) => known === goal);
  if (goal === undefined)
    throw new UsageError(`a goal is missing: add --goal ${listWords(RECIPE_AIMS, 'or')}`);
  if (aim === undefined)
    throw new UsageError(`--goal takes ${listWords(RECIPE_AIMS, 'or')}; not "${goal.slice(0, 40)}"`);
  return { from, aim, darker: readDarker(options, aim) };
}

function readWays(text: string | undefined): readonly Way[] {
  if (text === undefined) return WAYS;
  const words = text.split(',').map((word) => word.trim());
  const wrong = words.find((word) => !WAYS.some((way) => way === word));
  if (wrong !== undefined)
    throw new UsageError(`--ways takes ${WAYS.join(', ')}, with commas between; not "${wrong.slice(0, 40)}"`);
  return WAYS.filter((way) => words.includes(way));
}

function readMost(text: string | undefined): number {
  if (text === undefined) return RECIPES.usual;
  const most = readNumber(text, '--most');
  if (!Number.isInteger(most) || most < 1 || most > RECIPES.most)
    throw new UsageError(`--most takes a whole number from 1 to ${RECIPES.most}, got ${text.slice(0, 20)}`);
  return most;
}

/** Reads the options. @param usual the box where no paints are named @throws UsageError for whatever cannot be asked */
export function readRequest(studio: Studio, options: RecipeOptions, usual: Palette): RecipeRequest {
  const wish = readWish(studio, options);
  const { paints, box } = readPaints(
    studio,
    { flag: '--within', texts: options.within, boxName: options.box },
    usual,
    MOST_SEARCHED,
  );
  return { wish, box, means: { paints, ways: readWays(options.ways), most: readMost(options.most) } };
}
