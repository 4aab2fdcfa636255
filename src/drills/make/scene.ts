/** Scenes for made-up mix drills: what is painted, in which light, and what must happen to it. */
import type { Draw } from '../../chance/draw.js';
import { paintOf, type Studio } from '../../paints/index.js';
import { seeLaid } from '../../washes/index.js';
import type { Subject } from '../lexicon.js';
import type { MixPlan } from './mix-plan.js';
import { isDim, type PaintWords, sceneOf, type Theme } from './sentences.js';
import { thirdOf } from './third.js';

/** The words of a drill, and the picture that it is set in. */
export interface SceneWords {
  readonly title: string;
  readonly scene: string;
  readonly hint: string;
  readonly picture: string;
}

/** How to think, never which: a hint describes no paint of the tray, and speaks of amounts and of water only where they are open. */
const HINTS: Readonly<Record<string, string>> = {
  'darken-bright': 'Ask of each paint how dark it is by itself, and how far round the wheel it lies.',
  'dull-on-purpose':
    'Ask of each paint how far round the wheel it lies: the farther, the more colour it takes.',
  neutraliser: 'Dull is not neutral. Ask of each paint which colour the two would leave over.',
  'grey-lean': 'Proportion sets the lean. Go by halves and doubles.',
  'deep-dark': 'Ask of each paint how dark it is alone, and what it still lets through.',
  'tinting-strength': 'Equal blobs are not equal colour. Think of either paint in a jar of water.',
};
const AND_WATER = ' Water, last of all, sets the value.';

function hintOf(family: string, { start, thins }: MixPlan): string {
  const third = Object.keys(start.paints).length > 1 ? thirdOf(family) : undefined;
  const hint = third?.hint ?? (HINTS[family] as string);
  return thins.length > 1 ? hint + AND_WATER : hint;
}

/** Which sentences say what a family asks for with an aim. */
function themeOf(family: string, { goal, painting }: MixPlan): Theme {
  const { aim, hue } = goal;
  if (painting !== undefined) return 'tied';
  if (aim === 'lean') return typeof hue?.near === 'number' && hue.near < 180 ? 'lean-warm' : 'lean-cool';
  if (family === 'tinting-strength') return aim === 'rich' ? 'touch-rich' : 'touch-dull';
  return family === 'deep-dark' && aim === 'neutral' ? 'deep' : aim;
}

function paintWords(studio: Studio, { start }: MixPlan): PaintWords {
  const names = Object.keys(start.paints).map((id) => paintOf(studio, id).name);
  return { names: names.join(' and '), several: names.length > 1 };
}

/** Whether the goal is too dark for bright light: for a thing begun in its own colour by the first wash, else by what it is when lit. */
function isGoalDim(studio: Studio, { start, goal }: MixPlan, { lit }: Subject): boolean {
  const [low, high] = goal.value;
  const isOwn = goal.aim !== 'neutral' && goal.aim !== 'lean';
  return isDim(
    (low + high) / 2,
    isOwn ? seeLaid(studio, start).colour.step : (lit.step[0] + lit.step[1]) / 2,
  );
}

/** The scene of a plan; undefined when all that could be said was said just before. */
export function mixScene(
  studio: Studio,
  family: string,
  plan: MixPlan,
  subject: Subject,
  avoid: readonly string[],
  draw: Draw,
): SceneWords | undefined {
  const dim = isGoalDim(studio, plan, subject);
  const words = sceneOf(themeOf(family, plan), subject, paintWords(studio, plan), dim, avoid, draw);
  return words === undefined ? undefined : { ...words, hint: hintOf(family, plan), picture: subject.picture };
}
