/** Recipes: from a wash to a shade, a rich dark, a dull colour or a distance of it; or to a colour. By the one search. */
import { deltaE00 } from '../colour/difference.js';
import { chromaOf, hueDifference, hueOf, type Lab, labToXyz } from '../colour/lab.js';
import { type ColourReading, readXyz } from '../colour/reading.js';
import { whiteOf } from '../colour/xyz.js';
import {
  CHROMATIC_START,
  chromaAsked,
  GOOD_MARK,
  type Judged,
  NO_HUE_CHROMA,
  RECIPE,
  scoreColour,
} from '../judgement/index.js';
import { evidenceOf, paintOf, type Studio } from '../paints/index.js';
import {
  bestOf,
  type FirstWash,
  type Line,
  type Merit,
  seeLaid,
  strengthAlong,
  survey,
} from '../washes/index.js';
import { type Candidate, differentOnes } from './different.js';
import { brightness, costOf, goalEdge, goalFor, goalMerit, isChange, WAY_COST } from './goal.js';
import { openFrom, openFromNothing } from './open.js';
import { recipeOf } from './recipe.js';
import type { Means, Recipe, RecipeAim, Recipes, Wish } from './types.js';

/** What a paint less is worth in the choice of the further ones: marks, CIEDE2000. */
const SIMPLER = { mark: 0.15, deltaE00: 1 } as const;
/** Further recipes are at most so much worse than the best: marks, CIEDE2000. */
const MOST_WORSE = { mark: 15, deltaE00: 2 } as const;
/**
 * CIEDE2000 is made for small differences: far from every paint it finds a grey nearer to a magenta than a violet. A target that is a
 * colour is not answered by another hue: so much is taken for each degree beyond `within`.
 */
const OTHER_HUE = { withinDeg: 45, perDeg: 0.5 } as const;

function otherHue(to: Lab, hue: number): number {
  if (chromaOf(to) < CHROMATIC_START) return 0;
  const turned = Math.abs(hueDifference(hueOf(to), hue));
  return OTHER_HUE.perDeg * Math.max(0, turned - OTHER_HUE.withinDeg);
}

/** CIEDE2000 that each paint more has to be worth. */
const PAINT_COST = 0.05;
/** Merit taken for a puddle beyond the masstone, for each doubling: no painter stirs one. */
const TOO_THICK = 50;

/** Tops of each sort that the brightest is looked for among. */
const BRIGHT_TOPS = 2;

/** What a mixture takes, in merit. */
type Cost = (line: Line, amounts: readonly number[]) => number;

/** A merit that keeps puddles as thick as a masstone at most, and takes off the costs. */
function within(studio: Studio, first: FirstWash | undefined, merit: Merit, cost: Cost): Merit {
  const strengths = new Map<object, (amounts: readonly number[]) => number>();
  return (colour, line, amounts) => {
    let thick = 0;
    if (first !== undefined && line.way === 'puddle') {
      let along = strengths.get(line);
      if (along === undefined) {
        along = strengthAlong(studio, first, line);
        strengths.set(line, along);
      }
      thick = Math.max(0, Math.log2(along(amounts)));
    }
    return merit(colour, line, amounts) - cost(line, amounts) - TOO_THICK * thick;
  };
}

/** A wash changed as an aim asks. @throws InputError where the aim cannot be asked of it */
function changed(
  studio: Studio,
  { from, aim, darker }: { readonly from: FirstWash; readonly aim: RecipeAim; readonly darker: number },
  means: Means,
): Recipes {
  const start = seeLaid(studio, { ...from }).colour;
  const goal = goalFor(aim, darker, start);
  const known = survey(studio, openFrom(from, means));
  const free = { goal, start };
  const inReach = (merit: Merit, cost: Cost): Merit => within(studio, from, merit, cost);
  const [bright] =
    aim === 'rich'
      ? bestOf(
          known,
          inReach(brightness(free), () => 0),
          { ofSort: BRIGHT_TOPS },
        )
      : [];
  const judged: Judged = { ...free, reach: { best: bright?.colour.chroma ?? start.chroma, dullest: 0 } };
  const merit = goalMerit(studio, from, judged);
  const found = bestOf(known, inReach(merit, costOf), { worse: MOST_WORSE.mark });
  const all = found.map((one): Candidate => {
    const recipe = recipeOf(studio, one, start.chroma);
    const paints = recipe.parts.map(({ pigment }) => paintOf(studio, pigment));
    const { mark } = scoreColour(judged, recipe.colour, { evidence: evidenceOf(paints), isNew: false });
    return { recipe: { ...recipe, mark }, merit: one.merit };
  });
  const changes = all.filter(({ recipe }) => isChange(start, recipe.colour));
  const missed = ({ colour, mark = 0 }: Recipe) =>
    goalEdge(judged, colour, chromaAsked(judged, colour), mark >= GOOD_MARK);
  // Beside a recipe that meets all that is asked none stands that does not.
  const met = changes.filter(({ recipe }) => missed(recipe) === undefined);
  const candidates = met.length > 0 ? met : changes;
  const best = candidates[0]?.recipe;
  const edge = best && missed(best);
  return {
    start,
    goal,
    reach: best !== undefined && edge === undefined ? 'in' : 'out',
    ...(edge === undefined ? {} : { edge }),
    recipes: differentOnes(studio, candidates, means.most, SIMPLER.mark, Object.keys(from.paints)),
  };
}

/** A colour, from nothing or from a wash that is there. */
function matched(studio: Studio, to: Lab, from: FirstWash | undefined, means: Means): Recipes {
  const open = from === undefined ? openFromNothing(means) : openFrom(from, means);
  const merit = within(
    studio,
    from,
    ({ lab, hue }) => -deltaE00(lab, to) - otherHue(to, hue),
    ({ ids, way }) => PAINT_COST * ids.length + WAY_COST[way],
  );
  const target = readXyz(labToXyz(to, whiteOf('D65-2')));
  const found = bestOf(survey(studio, open), merit, { worse: MOST_WORSE.deltaE00 });
  const candidates = found.map((one): Candidate => {
    const recipe = recipeOf(studio, one, chromaOf(to));
    return { recipe: { ...recipe, deltaE00: deltaE00(recipe.colour.lab, to) }, merit: one.merit };
  });
  const best = candidates[0]?.recipe;
  const isIn = best !== undefined && (best.deltaE00 ?? 0) <= RECIPE.reached;
  const start = from && seeLaid(studio, { ...from }).colour;
  const own = from && Object.keys(from.paints);
  return {
    ...(start === undefined ? {} : { start }),
    target,
    reach: isIn ? 'in' : 'out',
    ...(isIn || best === undefined
      ? {}
      : { edge: { kind: 'target' as const, ...apart(best.colour, target, to) } }),
    recipes: differentOnes(studio, candidates, means.most, SIMPLER.deltaE00, own),
  };
}

const apart = (best: ColourReading, target: ColourReading, to: Lab) => ({
  steps: best.step - target.step,
  chroma: best.chroma - target.chroma,
  // A grey is off in no hue.
  hueDeg: Math.min(best.chroma, target.chroma) < NO_HUE_CHROMA ? 0 : hueDifference(hueOf(to), best.hue),
});

/**
 * The best few different recipes for a wish, best first.
 * @throws InputError where the wish contradicts itself; RangeError for unknown paints
 */
export function recipesFor(studio: Studio, wish: Wish, means: Means): Recipes {
  return 'to' in wish ? matched(studio, wish.to, wish.from, means) : changed(studio, wish, means);
}
