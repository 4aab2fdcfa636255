/** Short words for a choice. */
import type { Way } from '../../paints/index.js';
import { paintsLabel } from '../laid/words.js';
import { type Choice, pigmentOf } from './candidates.js';
import { type MixDrill, touchRatio } from './schema.js';

const WAY_WORDS: Readonly<Record<Way, string>> = {
  puddle: 'stirred in',
  glaze: 'glazed over',
  strokes: 'as strokes beside it',
};

/** A text as a sentence begins. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "1:4", for ratios between the touches with one decimal: "1:5.3". */
export function ratioWords(ratio: number, drill: MixDrill): string {
  return drill.amounts.find((touch) => touchRatio(touch) === ratio) ?? `1:${(1 / ratio).toFixed(1)}`;
}

/** "30 %". */
export function strengthWords(strength: number): string {
  return `${Number((strength * 100).toFixed(1))} %`;
}

const fixedStrength = (strength: number, first: number): string =>
  strength === first ? 'same strength' : `strength ${strengthWords(strength)}`;

/** True when the wash is one paint and the second is that paint: only the strength then changes anything. */
export function isMoreOfTheSame(
  { start }: MixDrill,
  { second, way }: Omit<Choice, 'ratio' | 'strength'>,
): boolean {
  return way !== 'glaze' && second in start.paints && Object.keys(start.paints).length === 1;
}

/** Short words for a choice: "alizarin crimson 1:4, glazed over, strength 50 %"; only what the drill leaves open. */
export function choiceLabel(drill: MixDrill, choice: Choice): string {
  const name = pigmentOf(choice.second).name;
  const strength = drill.strengths.length > 1 ? `, strength ${strengthWords(choice.strength)}` : '';
  if (isMoreOfTheSame(drill, choice)) return `${name} alone${strength}`;
  const way = drill.ways.length > 1 ? `, ${WAY_WORDS[choice.way]}` : '';
  return `${name} ${ratioWords(choice.ratio, drill)}${way}${strength}`;
}

/** What the second paint is added to: "first paint: burnt sienna, strength 30 %". */
export function firstWords({ start }: MixDrill): string {
  const head = Object.keys(start.paints).length === 1 ? 'first paint' : 'first wash';
  return `${head}: ${paintsLabel(start)}, strength ${strengthWords(start.strength)}`;
}

/** What the drill fixes, in words, or an empty text: "amount 1:4, same strength, stirred in". */
export function fixedWords(drill: MixDrill): string {
  const { tray, amounts, ways, strengths, start } = drill;
  return [
    tray.length === 1 ? `second paint ${pigmentOf(tray[0] as string).name}` : '',
    amounts.length === 1 ? `amount ${amounts[0]}` : '',
    strengths.length === 1 ? fixedStrength(strengths[0] as number, start.strength) : '',
    ways.length === 1 ? WAY_WORDS[ways[0] as Way] : '',
  ]
    .filter((word) => word !== '')
    .join(', ');
}
