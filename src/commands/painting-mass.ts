/** From a mass of a painting to a mixture, as text and as figures. */
import { UsageError } from '../errors.js';
import { massBasis, type PaintingReading, recipesOfMass, type Tray } from '../painting/index.js';
import type { Studio } from '../paints/index.js';
import { edgeTold, type Recipes, recipesFor, USUAL_DARKER, type Wish } from '../recipes/index.js';
import { wrapText } from '../text/wrap.js';
import { type Finding, sayAll } from '../words/tell.js';
import type { MassWish } from './painting-request.js';
import { colourLine, type RecipeStyle, recipeFigures, recipeLines } from './recipe.js';
import { usage } from './run.js';

/** Recipes of the mass itself. */
const MOST = 3;

interface Mixtures {
  /** What they start from, and how far they reach. */
  readonly told: readonly Finding[];
  readonly wish: Wish;
  /** Absent where the paints do not make the mass that they would start from. */
  readonly found?: Recipes;
}

/** The mass mixed anew, or on from it to an aim. */
function mixturesFor(studio: Studio, reading: PaintingReading, { at, aim }: MassWish, tray: Tray): Mixtures {
  const { lab } = (reading.masses[at] as PaintingReading['masses'][number]).colour;
  if (aim === undefined) {
    const wish = { to: lab };
    const found = recipesFor(studio, wish, { paints: tray.paints, ways: ['puddle'], most: MOST });
    const edge = edgeTold(found);
    return { told: edge === undefined ? [] : [edge], wish, found };
  }
  const darker = USUAL_DARKER[aim];
  const mass = recipesOfMass(studio, reading, at, { aim, darker }, tray);
  const { from, found } = mass;
  const edge = found && edgeTold(found);
  const told = [...massBasis(studio, mass), ...(edge === undefined ? [] : [edge])];
  return from === undefined || found === undefined
    ? { told, wish: { to: lab } }
    : { told, wish: { from, aim, darker }, found };
}

/** @throws UsageError where there are not so many masses */
function requireMass({ masses }: PaintingReading, { at }: MassWish): void {
  if (masses[at] === undefined)
    throw new UsageError(
      `--mass takes 1 to ${masses.length} here, got ${at + 1}; see the list without --mass`,
    );
}

/** @throws UsageError for a mass that there is not, and for an aim that leads off the scale */
export function massText(
  studio: Studio,
  reading: PaintingReading,
  wish: MassWish,
  tray: Tray,
  style: Omit<RecipeStyle, 'box'>,
): string {
  requireMass(reading, wish);
  const columns = Math.max(40, Math.min(style.columns, 100));
  const { told, wish: asked, found } = usage(() => mixturesFor(studio, reading, wish, tray));
  const { colour } = reading.masses[wish.at] as PaintingReading['masses'][number];
  const head = [`Mass ${wish.at + 1}: ${colourLine(colour, style)}.`, ...sayAll(told, style.voice)];
  return `${[
    ...head.flatMap((line) => wrapText(line, columns)),
    ...(found === undefined ? [] : recipeLines(studio, asked, found, style)),
  ].join('\n')}\n`;
}

/** @throws as {@link massText} */
export function massFigures(
  studio: Studio,
  reading: PaintingReading,
  wish: MassWish,
  tray: Tray,
  { voice }: Pick<RecipeStyle, 'voice'>,
) {
  requireMass(reading, wish);
  const { told, wish: asked, found } = usage(() => mixturesFor(studio, reading, wish, tray));
  return {
    mass: wish.at,
    ...(wish.aim === undefined ? {} : { goal: wish.aim }),
    ...('from' in asked && asked.from !== undefined ? { from: asked.from } : {}),
    reach: found?.reach ?? 'out',
    words: sayAll(told, voice).join(' '),
    recipes: (found?.recipes ?? []).map((recipe) =>
      recipeFigures(studio, asked, found as Recipes, recipe, voice),
    ),
  };
}
