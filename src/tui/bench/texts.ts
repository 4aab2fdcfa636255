/** What the bench says of what lies on it. Pure. */
import { paintOf, type Studio } from '../../paints/index.js';
import { edgeTold, type RecipeAim, recipeTold } from '../../recipes/index.js';
import { seeLaid, type Way } from '../../washes/index.js';
import { laidLabel, laidNote, ratioWords, stepsWords, strengthWords, thinWords } from '../../words/laid.js';
import { lookOf, spokenLook } from '../../words/look.js';
import { sayAll, sayFinding } from '../../words/tell.js';
import { type Voice, valueWords } from '../../words/voice.js';
import { benchLaid, type Mixture, SLOTS } from './mixture.js';
import { type BenchState, benchPaints, type Doing, WAY_ROW } from './state.js';

const WAY_WORDS: Readonly<Record<Way, string>> = {
  puddle: 'stirred into the wash',
  glaze: 'glazed over the dry wash',
  strokes: 'strokes beside the wash',
};
/** Over a patch. */
export const WAY_NAMES: Readonly<Record<Way, string>> = {
  puddle: 'stirred',
  glaze: 'glazed',
  strokes: 'strokes',
};

/** What the rows without a paint are for. */
export const aboutRow = (row: number): string =>
  row === WAY_ROW
    ? 'Stirred into the wash, laid over it dry, or beside it for the eye to join: the same paint each time.'
    : row > WAY_ROW
      ? 'Stirring adds no water. This does: thinned to a half, every paint is half as thick.'
      : 'Enter picks a paint for this row.';

/** The value of a row: the wash by its strength, the others by how much of them goes on, the way, the water. */
export function rowWords({ slots, way, thin, strokeStrength }: Mixture, row: number): string {
  if (row === WAY_ROW) return WAY_WORDS[way];
  if (row > WAY_ROW) return way === 'puddle' ? thinWords(thin) : 'in the strength of each wash';
  const amount = slots[row]?.amount ?? 0;
  if (row === 0) return `at ${strengthWords(amount)}`;
  if (way === 'puddle') return ratioWords(amount);
  if (way === 'glaze') return `at ${strengthWords(amount)}`;
  const strong = strokeStrength === undefined ? '' : `, ${strengthWords(strokeStrength)} strong`;
  return `on ${strengthWords(amount)} of it${strong}`;
}

/** Paints, amounts and way of a mixture. */
export function mixtureWords(studio: Studio, mixture: Mixture): string[] {
  const laid = benchLaid(mixture);
  return laid === undefined ? [] : [laidLabel(studio, laid), laidNote(laid)];
}

export const AIM_WORDS: Readonly<Record<RecipeAim, string>> = {
  shade: 'in shade, as the light leaves it',
  rich: 'rich: as bright as it can stay',
  dull: 'dull on purpose',
  distance: 'for distance: lighter and duller',
};

/** "2 steps darker". */
export const darkerWords = (darker: number): string =>
  darker === 0 ? 'as light as it is' : `${stepsWords(darker)} ${darker > 0 ? 'darker' : 'lighter'}`;

/** Whether it is in reach, where it is not. */
export function reachWords({ found }: Extract<Doing, { name: 'recipes' }>, voice: Voice): string {
  const edge = found && edgeTold(found);
  return edge === undefined ? '' : sayFinding(edge, voice);
}

/** What a recipe says of itself. */
export function recipeWords(
  studio: Studio,
  { found, wish }: Extract<Doing, { name: 'recipes' }>,
  at: number,
  voice: Voice,
): string[] {
  const recipe = found?.recipes[at];
  return found === undefined || recipe === undefined
    ? []
    : sayAll(recipeTold(studio, found, recipe, wish.from), voice);
}

/** A mixture by its colour, aloud. */
export function spokenMixture(studio: Studio, mixture: Mixture, voice: Voice): string {
  const laid = benchLaid(mixture);
  return laid === undefined ? 'nothing' : spokenLook(lookOf(seeLaid(studio, laid).reflectance), voice);
}

/** What the letters of the path mean. */
export function pathCaption(studio: Studio, { mixture, focus }: BenchState): string {
  const id = focus < SLOTS ? mixture.slots[focus]?.pigment : undefined;
  if (focus >= SLOTS) return mixture.way === 'puddle' ? 'as water comes in' : '';
  return id === undefined ? '' : `as ${paintOf(studio, id).name} grows`;
}

/** Value and chroma in one line. */
export const figures = ({ step, chroma }: { step: number; chroma: number }, voice: Voice): string =>
  `${valueWords(10.5 - step, voice)}, chroma ${chroma.toFixed(0)}`;

export const hasTwo = (mixture: Mixture): boolean => benchPaints(mixture).length > 1;
