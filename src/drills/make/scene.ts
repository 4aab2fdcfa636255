/** Scenes for made-up drills: a light, a thing that has the start's colour, and what must happen to it. */

import { type Draw, pick } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import { paintOf, type Studio } from '../../paints/index.js';
import type { MixPlan } from './mix-plan.js';
import {
  DARKS,
  DISTANCE,
  DISTANCE_MANY,
  GREYS,
  type Hue,
  LIGHTS,
  THINGS,
  type Thing,
} from './scene-words.js';

/** The words of a drill. */
export interface SceneWords {
  readonly title: string;
  readonly scene: string;
  readonly hint: string;
}

/** Coarse name of a colour: which things could have it. Brown is orange gone dark or dull. */
export function hueClass({ chroma, hue, step }: ColourReading): Hue {
  if (chroma < 12) return 'grey';
  if (hue < 44 || hue >= 345) return 'red';
  if (hue < 78) return step > 4 || chroma < 50 ? 'brown' : 'orange';
  if (hue < 106) return step > 3 ? 'brown' : 'yellow';
  if (hue < 200) return 'green';
  return hue < 280 ? 'blue' : 'violet';
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "the mooring buoy in the harbour". */
function full({ name, where }: Thing): string {
  return `${name} ${where}`;
}

/** Title of a thing: "Mooring buoy, shaded side". */
function titled({ name }: Thing, aspect: string): string {
  return `${capitalised(name.replace(/^the /, ''))}, ${aspect}`;
}

function paintsOf(studio: Studio, { start }: MixPlan): string {
  return Object.keys(start.paints)
    .map((id) => paintOf(studio, id).name)
    .join(' and ');
}

function isAre({ start }: MixPlan): string {
  return Object.keys(start.paints).length > 1 ? 'are' : 'is';
}

type SceneMaker = (studio: Studio, start: ColourReading, plan: MixPlan, draw: Draw) => SceneWords;

/** What is said of the shaded side, for one thing and for several. */
const SHADES: readonly (readonly [string, string])[] = [
  [
    'Its shaded side must drop and stay as rich as the lit one.',
    'Their shaded sides must drop and stay as rich as the lit ones.',
  ],
  [
    'Where the light leaves it, it darkens but does not go grey.',
    'Where the light leaves them, they darken but do not go grey.',
  ],
  [
    'The turned side is darker, and just as much a colour.',
    'The turned sides are darker, and just as much a colour.',
  ],
  ['Find the shadow side without killing the colour.', 'Find the shadow sides without killing the colour.'],
];

const darkenBright: SceneMaker = (_studio, start, _plan, draw) => {
  const thing = pick(THINGS[hueClass(start)], draw);
  const light = pick(LIGHTS, draw);
  const [one, several] = pick(SHADES, draw);
  return {
    title: titled(thing, pick(['in shade', 'the turned side', 'away from the sun'], draw)),
    scene: `${light} ${capitalised(full(thing))}, the lit wash laid. ${thing.plural ? several : one}`,
    hint: 'Ask of each paint: is it dark itself, and does it lie on this side of the wheel?',
  };
};

const dullOnPurpose: SceneMaker = (_studio, start, _plan, draw) => {
  const thing = pick(THINGS[hueClass(start)], draw);
  const why = pick(thing.plural ? DISTANCE_MANY : DISTANCE, draw);
  return {
    title: titled(thing, pick(['farther off', 'stepping back', 'in the background'], draw)),
    scene: `${pick(LIGHTS, draw)} ${capitalised(full(thing))}. ${why}`,
    hint: 'Name the hue that lies opposite, then ask how little of it is enough.',
  };
};

const neutraliser: SceneMaker = (studio, _start, plan, draw) => {
  const thing = pick(GREYS, draw);
  const task = pick(
    [
      `the puddle of ${paintsOf(studio, plan)} has to become ${thing.plural ? 'their' : 'its'} grey`,
      `mix ${thing.plural ? 'their' : 'its'} grey out of ${paintsOf(studio, plan)}, not out of a tube`,
      `${paintsOf(studio, plan)} ${isAre(plan)} in the well; one partner takes the last of the colour out`,
    ],
    draw,
  );
  return {
    title: titled(thing, pick(['a mixed grey', 'a true grey', 'neutral'], draw)),
    scene: `${capitalised(full(thing))}: ${task}.`,
    hint: 'Dull is not neutral. A partner that leaves green or violet lies a little to one side.',
  };
};

const greyLean: SceneMaker = (_studio, _start, plan, draw) => {
  const thing = pick(GREYS, draw);
  const { hue } = plan.goal;
  const warm = typeof hue?.near === 'number' && hue.near < 180;
  const where = warm
    ? pick(['where the sun just touches', 'beside the cold sky', 'near the brick wall'], draw)
    : pick(['where only the sky lights it', 'under the cloud', 'beside the warm bank'], draw);
  const turned = thing.plural ? where.replace('lights it', 'lights them') : where;
  return {
    title: titled(thing, warm ? 'leaning warm' : 'leaning cool'),
    scene: `${capitalised(full(thing))}, ${turned}: a grey that leans ${warm ? 'warm' : 'cool'}, at the value asked.`,
    hint: 'Proportion sets the lean, water sets the value. Change one at a time.',
  };
};

const deepDark: SceneMaker = (studio, _start, plan, draw) => {
  const thing = pick(DARKS, draw);
  const task = pick(
    [
      'the deepest dark of the sheet, and no black in the box',
      'it has to be a hole, not a grey patch',
      'one wash, as deep as it will go',
    ],
    draw,
  );
  return {
    title: titled(thing, 'deep'),
    scene: `${capitalised(full(thing))}: ${task}. ${capitalised(paintsOf(studio, plan))} ${isAre(plan)} mixed thick already.`,
    hint: 'Depth comes from two strong paints that swallow what the other lets through, with little water.',
  };
};

const tintingStrength: SceneMaker = (studio, start, plan, draw) => {
  const thing = pick(THINGS[hueClass(start)], draw);
  const task = pick(
    [
      'The other paint is strong: it goes in by touches.',
      'One brush tip too many and the puddle is lost.',
      'The wash is right but for a small push.',
    ],
    draw,
  );
  return {
    title: titled(thing, pick(['by touches', 'how little?', 'a small push'], draw)),
    scene: `A wash of ${paintsOf(studio, plan)} for ${full(thing)}. ${task}`,
    hint: 'Equal blobs are not equal colour. Think of which paint stains the water faster.',
  };
};

/** The scene of each family that is made of mix drills. */
export const SCENES: Readonly<Record<string, SceneMaker>> = {
  'darken-bright': darkenBright,
  'dull-on-purpose': dullOnPurpose,
  neutraliser,
  'grey-lean': greyLean,
  'deep-dark': deepDark,
  'tinting-strength': tintingStrength,
};
