/** `mudlark recipe`: how to get from a wash to a shade, a rich dark, a dull colour or a distance of it, or to a colour. */
import { munsellNotation } from '../colour/munsell-notation.js';
import type { ColourReading } from '../colour/reading.js';
import { toScreen } from '../colour/screen.js';
import { colourInWords } from '../colour/words.js';
import { type Palette, paintOf, type Studio } from '../paints/index.js';
import { edgeTold, type Recipe, type Recipes, recipesFor, recipeTold, type Wish } from '../recipes/index.js';
import { wrapText } from '../text/wrap.js';
import { laidLabel, stepsWords, strengthWords } from '../words/laid.js';
import { sayAll, sayFinding } from '../words/tell.js';
import { bandText, scaleUnit, stepWords, type Voice } from '../words/voice.js';
import { cautionLines, correctionLines } from './cautions.js';
import { type RecipeOptions, type RecipeRequest, readRequest } from './recipe-request.js';
import { document, usage } from './run.js';

/** How a page is written. */
export interface RecipeStyle {
  readonly voice: Voice;
  readonly columns: number;
  /** Whether patches are coloured (24-bit) as well as described. */
  readonly colour: boolean;
  /** The box that is kept to where no paints are named. */
  readonly box: Palette;
}

const COLUMNS = { least: 40, most: 100 } as const;

const widthOf = ({ columns }: Pick<RecipeStyle, 'columns'>): number =>
  Math.max(COLUMNS.least, Math.min(columns, COLUMNS.most));

function patch({ xyz }: ColourReading): string {
  const { hex } = toScreen(xyz);
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return `\u001b[48;2;${r};${g};${b}m        \u001b[49m `;
}

/** "step 6.2, chroma 40, hue 30°, 10R 4.1/6.8, dark reddish brown". */
export function colourLine(colour: ColourReading, { voice }: Pick<RecipeStyle, 'voice'>): string {
  const { value, chroma, hue, xyz, lab } = colour;
  const degrees = chroma < 1 ? '' : `hue ${hue.toFixed(0)}°, `;
  return `${stepWords(10.5 - value, voice)}, chroma ${chroma.toFixed(0)}, ${degrees}Munsell ${munsellNotation(xyz)}, ${colourInWords(lab)}`;
}

function askedWords(studio: Studio, wish: Wish, { goal, target }: Recipes, style: RecipeStyle): string {
  const from =
    wish.from === undefined
      ? ''
      : `${laidLabel(studio, { ...wish.from })} at ${strengthWords(wish.from.strength)}`;
  if ('to' in wish) {
    const colour = target === undefined ? '' : colourLine(target, style);
    return from === '' ? `asked: ${colour}` : `asked: from ${from} to ${colour}`;
  }
  const { aim, darker } = wish;
  const by =
    darker === 0 ? 'as light as it is' : `${stepsWords(darker)} ${darker > 0 ? 'darker' : 'lighter'}`;
  const as = { shade: 'in shade', rich: 'rich', dull: 'dull', distance: 'for distance' }[aim];
  const band = goal === undefined ? '' : `: ${scaleUnit(style.voice)} ${bandText(goal.value, style.voice)}`;
  const chroma =
    goal?.chroma === undefined ? '' : `, chroma ${goal.chroma.map((bound) => bound.toFixed(0)).join(' to ')}`;
  return `asked: ${from}, ${by}, ${as}${band}${chroma}`;
}

const wordsOf = (studio: Studio, wish: Wish, found: Recipes, recipe: Recipe, voice: Voice): string[] =>
  sayAll(recipeTold(studio, found, recipe, wish.from), voice);

/** The recipes with their numbers, each after an empty line. */
export function recipeLines(
  studio: Studio,
  wish: Wish,
  found: Recipes,
  style: Omit<RecipeStyle, 'box'>,
): string[] {
  const width = widthOf(style);
  const { voice, colour } = style;
  const under = (text: string): string[] => wrapText(text, width - 3).map((line) => `   ${line}`);
  return found.recipes.flatMap((recipe, at) => {
    const [first = '', ...rest] = wrapText(colourLine(recipe.colour, style), width - (colour ? 12 : 3));
    return [
      '',
      `${at + 1}. ${colour ? patch(recipe.colour) : ''}${first}`,
      ...rest.map((line) => `   ${line}`),
      ...wordsOf(studio, wish, found, recipe, voice).flatMap(under),
    ];
  });
}

function page(
  studio: Studio,
  { wish, box, means }: RecipeRequest,
  found: Recipes,
  style: RecipeStyle,
): string {
  const width = widthOf(style);
  const { voice } = style;
  const start = found.start === undefined ? [] : [`start: ${colourLine(found.start, style)}`];
  const edge = edgeTold(found);
  const reach = edge === undefined ? `In reach with ${box}.` : `${sayFinding(edge, voice)} (With ${box}.)`;
  const head = [askedWords(studio, wish, found, style), ...start, reach].flatMap((line) =>
    wrapText(line, width),
  );
  const list = recipeLines(studio, wish, found, style);
  const fewer = found.recipes.length < means.most ? ['', 'No further one is clearly another.'] : [];
  const laid = found.recipes.flatMap(({ parts }) => parts.map(({ pigment }) => pigment));
  const ids = new Set([...Object.keys(wish.from?.paints ?? {}), ...laid]);
  const paints = [...ids].map((id) => paintOf(studio, id));
  const cautions = [...correctionLines(paints), ...cautionLines(paints)].flatMap((line) =>
    wrapText(line, width),
  );
  return `${[...head, ...list, ...fewer, ...(cautions.length === 0 ? [] : ['', ...cautions])].join('\n')}\n`;
}

/** A recipe as documents have it. */
export function recipeFigures(studio: Studio, wish: Wish, found: Recipes, recipe: Recipe, voice: Voice) {
  const { parts, strength, thin, way, colour, kept, mark, deltaE00, laid } = recipe;
  return {
    parts,
    strength,
    thin,
    way,
    ...figures(colour),
    munsell: munsellNotation(colour.xyz),
    kept,
    ...(mark === undefined ? {} : { mark }),
    ...(deltaE00 === undefined ? {} : { deltaE00 }),
    laid,
    words: wordsOf(studio, wish, found, recipe, voice).join(' '),
  };
}

function asJson(studio: Studio, { wish, means }: RecipeRequest, found: Recipes, voice: Voice): string {
  const { start, target, goal, reach, edge, recipes } = found;
  const edgeWords = edgeTold(found);
  return document({
    asked: {
      ...wish,
      within: means.paints,
      ways: means.ways,
      ...(start === undefined ? {} : { start: figures(start) }),
      ...(target === undefined ? {} : { target: figures(target) }),
      ...(goal === undefined ? {} : { value: goal.value, chroma: goal.chroma }),
    },
    reach,
    ...(edge === undefined || edgeWords === undefined
      ? {}
      : { edge: { ...edge, words: sayFinding(edgeWords, voice) } }),
    recipes: recipes.map((recipe) => recipeFigures(studio, wish, found, recipe, voice)),
  });
}

const figures = ({ step, chroma, hue, lab }: ColourReading) => ({ step, chroma, hue, lab });

/** Finds recipes; text, or the JSON document. @throws UsageError for whatever cannot be asked */
export function recipeCommand(studio: Studio, options: RecipeOptions, style: RecipeStyle): string {
  const request = readRequest(studio, options, style.box);
  const found = usage(() => recipesFor(studio, request.wish, request.means));
  return options.json === true
    ? asJson(studio, request, found, style.voice)
    : page(studio, request, found, style);
}
