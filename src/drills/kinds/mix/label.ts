/** Short words for a choice. */
import { paintOf, type Studio } from '../../../paints/index.js';
import { consistency, seeLaid, timesLibrary, type Way } from '../../../washes/index.js';
import { paintsLabel, ratioWords, strengthWords, thinWords } from '../../../words/laid.js';
import { type Choice, type How, howsOf, howWords } from './choice.js';
import { addedPaint, type MixDrill } from './schema.js';

/** True when the wash is one paint and the second is that paint, stirred in: then the wash only gets stronger. */
export function isMoreOfTheSame({ start }: MixDrill, { second, how }: Choice): boolean {
  return how.way === 'puddle' && second in start.paints && Object.keys(start.paints).length === 1;
}

/** "1 part to 16 of the wash". @param ratio parts of the second paint to one of the paint of the wash */
function partsWords(ratio: number): string {
  const [added, wash] = ratioWords(ratio).split(':');
  if (added === wash) return 'in equal parts with the wash';
  return `${added} ${added === '1' ? 'part' : 'parts'} to ${wash} of the wash`;
}

/** Short words for a choice: "alizarin crimson 1:4, thinned to a half"; only what the drill leaves open. */
export function choiceLabel(
  studio: Studio,
  drill: MixDrill,
  choice: Choice,
  words: (how: How) => string = howWords,
): string {
  const { name } = paintOf(studio, choice.second);
  const isSaid = drill.thins.length > 1 || choice.thin !== 1;
  const water = isSaid ? `, ${thinWords(choice.thin)}` : '';
  const how = words(choice.how);
  if (isMoreOfTheSame(drill, choice)) return `more ${name} ${how}${water}`;
  return choice.how.way === 'puddle' ? `${name} ${how}${water}` : `${name}, ${how}`;
}

/** What the second paint is brought to: "burnt sienna at 30 %, thick as milk". */
export function firstWords(studio: Studio, { start }: MixDrill): string {
  const { step } = seeLaid(studio, start).colour;
  const word = consistency(start.strength / timesLibrary(studio, start.paints), step);
  return `${paintsLabel(studio, start)} at ${strengthWords(start.strength)}${word === undefined ? '' : `, ${word}`}`;
}

/** The choice with its amount in full: "alizarin crimson, 1 part to 16 of the wash". */
export function fullLabel(studio: Studio, drill: MixDrill, choice: Choice): string {
  return choiceLabel(studio, drill, choice, (how) =>
    how.way === 'puddle' ? `, ${partsWords(how.amount)}` : howWords(how),
  ).replace(' ,', ',');
}

const WAY_WORDS: Readonly<Record<Way, string>> = {
  puddle: 'stirred in',
  glaze: 'glazed over the dry wash',
  strokes: 'strokes beside the wash',
};

/** What the drill fixes, in words: "amount 1:4", "stirred in", "no water added". */
export function fixedParts(studio: Studio, drill: MixDrill): string[] {
  const { tray, thins } = drill;
  const hows = howsOf(drill);
  const ways = [...new Set(hows.map(({ way }) => way))];
  const only = hows.length === 1 ? hows[0] : undefined;
  const way = ways.length === 1 ? ways[0] : undefined;
  const thin = thins.length === 1 ? thins[0] : undefined;
  return [
    tray.length === 1 ? `${addedPaint(drill)} ${paintOf(studio, tray[0] as string).name}` : '',
    only === undefined ? '' : only.way === 'puddle' ? partsWords(only.amount) : howWords(only),
    way === undefined || (only !== undefined && way !== 'puddle') ? '' : WAY_WORDS[way],
    way === 'puddle' && thin === 1 ? 'no water added' : '',
    thin === undefined || thin === 1 ? '' : `then ${thinWords(thin)}`,
  ].filter((word) => word !== '');
}
