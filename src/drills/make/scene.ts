/** Scenes for made-up mix drills: what is painted, in which light, and what must happen to it. */
import type { Draw } from '../../chance/draw.js';
import { paintOf, type Studio } from '../../paints/index.js';
import type { Subject } from '../lexicon.js';
import type { MixPlan } from './mix-plan.js';
import { type PaintWords, sceneOf, type Theme } from './sentences.js';
import { thirdOf } from './third.js';

/** The words of a drill, and the picture that it is set in. */
export interface SceneWords {
  readonly title: string;
  readonly scene: string;
  readonly hint: string;
  readonly picture: string;
}

const HINTS: Readonly<Record<string, string>> = {
  'darken-bright': 'Ask of each paint: is it dark itself, and does it lie on this side of the wheel?',
  'dull-on-purpose':
    'Name the hue that lies opposite, then ask how little of it is enough; water gives the value back.',
  neutraliser: 'Dull is not neutral. A partner that leaves green or violet lies a little to one side.',
  'grey-lean': 'Proportion sets the lean, water sets the value. Change one at a time.',
  'deep-dark':
    'Depth comes from two strong paints that swallow what the other lets through, with little water.',
  'tinting-strength': 'Equal blobs are not equal colour. Think of which paint stains the water faster.',
};

function hintOf(family: string, { start }: MixPlan): string {
  const third = Object.keys(start.paints).length > 1 ? thirdOf(family) : undefined;
  return third?.hint ?? (HINTS[family] as string);
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

/** The scene of a plan; undefined when all that could be said was said just before. */
export function mixScene(
  studio: Studio,
  family: string,
  plan: MixPlan,
  subject: Subject,
  avoid: readonly string[],
  draw: Draw,
): SceneWords | undefined {
  const words = sceneOf(themeOf(family, plan), subject, paintWords(studio, plan), avoid, draw);
  return words === undefined ? undefined : { ...words, hint: hintOf(family, plan), picture: subject.picture };
}
