/** Generator of the family of light and shadow. */

import { type Draw, pick, shuffled } from '../../chance/draw.js';
import { valueFromStep } from '../../colour/value.js';
import { outside } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import { listWords } from '../../text/list-words.js';
import { seeAlone, WATERS } from '../../washes/index.js';
import { sentence } from '../../words/laid.js';
import { litStep } from '../kinds/shadow-values/index.js';
import { LEFT_IN_SUN, shadowBand } from '../kinds/shadow-values/rules.js';
import type { LitThing } from '../kinds/shadow-values/schema.js';
import { canBe, hasTrait } from '../lexicon.js';
import { colourOf, deepOnes, nameOf, wash, workedDraft } from './made.js';
import { bare, placed } from './sentences.js';
import { litSubject, SUBJECT_PLACES } from './subjects.js';
import { thingAt } from './things.js';
import type { DrillDraft, Generator } from './types.js';

/** Steps of lit things, halves from near paper to a light middle. */
const LIT = [1.5, 2, 2.5, 3, 3.5, 4, 4.5];

/** Steps by which a wrong choice lies outside what fits: light thrown back may lift a shade by nearly a step. */
const CLEARLY_OFF = 1.2;

/** Darkest step of a thing in full light, for a shadow of it to be told. */
const MOST_LIT = 4.6;

function litThing(
  studio: Studio,
  palette: readonly string[],
  index: number,
  shadow: LitThing['shadow'],
  place: string,
  avoid: readonly string[],
  draw: Draw,
): { readonly thing: LitThing; readonly picture: string } | undefined {
  const found = thingAt(studio, palette, [0.03, 0.06, 0.1, 0.16], draw, (colour) => {
    const subject = colour.step > MOST_LIT ? undefined : litSubject(colour, avoid, draw, place);
    if (subject === undefined || hasTrait(subject, 'air')) return undefined;
    // What lies level has no side that turns away.
    return shadow === 'shade' && hasTrait(subject, 'level') ? undefined : subject;
  });
  if (found === undefined) return undefined;
  const { laid, subject } = found;
  const name = bare(subject);
  const steps = LIT.filter((step) => step >= subject.lit.step[0] && step <= subject.lit.step[1]);
  if (steps.length === 0) return undefined;
  // Half of the time a plain step, half of the time a wash to be read.
  const thing: LitThing = { name, shadow, lit: index % 2 === 0 ? pick(steps, draw) : laid };
  return { thing, picture: subject.picture };
}

const lightAndShadow: Generator = (studio, { level, palette, avoid }, draw) => {
  if (level === 1) return workedShadow(studio, palette, avoid, draw);
  if (level === 4 && draw(1) === 0) return shadowWashes(studio, palette, draw);
  const light = level === 3 && draw(2) === 0 ? 'overcast' : level === 5 && draw(1) === 0 ? 'hard-sun' : 'sun';
  const count = level <= 3 ? 1 : level === 4 ? 2 : 3;
  // In rain and fog nothing casts a shadow.
  const place = pick(
    SUBJECT_PLACES.filter((one) => one !== 'weather'),
    draw,
  );
  const things: LitThing[] = [];
  let picture = '';
  for (let index = 0; index < count; index++) {
    const shadow = light === 'overcast' || (index + draw(1)) % 2 === 0 ? 'shade' : 'cast';
    const found = litThing(studio, palette, index, shadow, place, avoid, draw);
    if (found === undefined || things.some(({ name }) => name === found.thing.name)) return undefined;
    things.push(found.thing);
    if (index === 0) picture = found.picture;
  }
  const first = things[0] as LitThing;
  const band = shadowBand(litStep(studio, first), first.shadow, light);
  const steps =
    level <= 3
      ? shuffled(
          [2, 3, 4, 5, 6, 7, 8, 9].filter(
            (step) => outside(step, band) === 0 || outside(step, band) >= CLEARLY_OFF,
          ),
          draw,
        ).slice(0, level === 2 ? 2 : 4)
      : [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  const opening =
    light === 'overcast'
      ? 'An even grey sky, no sun.'
      : light === 'hard-sun'
        ? 'Hard high sun, and little light thrown back.'
        : 'Direct sun.';
  return {
    kind: 'shadow-values',
    picture,
    title: `${sentence(first.name)}, light and shadow`.slice(0, 60),
    scene: `${opening} Give a value to what the light does not reach: ${listWords(things.map(({ name, shadow }) => (shadow === 'cast' ? `the shadow on the ${name}` : `the turned side of the ${name}`)))}.`,
    ...(level < 5
      ? { hint: 'Ask where the light comes from. The lighter the thing, the more steps its shadow falls.' }
      : {}),
    light,
    things,
    steps,
  };
};

/** A strength at which the paint has this share of the lit Munsell value, or undefined. */
function strengthFor(studio: Studio, paint: string, value: number): number | undefined {
  const strengths = Array.from({ length: 50 }, (_, index) => (index + 1) / 50);
  const miss = (strength: number): number => Math.abs(seeAlone(studio, paint, strength).colour.value - value);
  const best = strengths.reduce((a, b) => (miss(b) < miss(a) ? b : a));
  return miss(best) < 0.2 ? best : undefined;
}

function workedShadow(
  studio: Studio,
  palette: readonly string[],
  avoid: readonly string[],
  draw: Draw,
): DrillDraft | undefined {
  const shadow = pick(['shade', 'cast'] as const, draw);
  const lit = wash(pick(palette, draw), pick([0.03, 0.05, 0.08], draw));
  const colour = colourOf(studio, lit);
  const paint = shadow === 'shade' ? (Object.keys(lit.paints)[0] as string) : pick(palette, draw);
  const strength = strengthFor(studio, paint, LEFT_IN_SUN[shadow] * valueFromStep(colour.step));
  if (strength === undefined) return undefined;
  const thing = litSubject(colour, avoid, draw);
  if (thing === undefined || hasTrait(thing, 'air') || thing.place === 'weather') return undefined;
  if (shadow === 'shade' && hasTrait(thing, 'level')) return undefined;
  // The shadow, too, has to be a colour that the thing can have.
  if (!canBe(thing, colourOf(studio, wash(paint, strength)), true)) return undefined;
  const fall = shadow === 'shade' ? 'its shaded side' : 'the shadow that falls on it';
  return workedDraft(
    studio,
    {
      title: `${sentence(bare(thing))}, lit and ${shadow === 'shade' ? 'turned away' : 'in a shadow'}`.slice(
        0,
        60,
      ),
      scene: `A worked case. ${sentence(placed(thing))} in direct sun: the lit side and ${thing.plural === true ? fall.replace('its', 'their').replace('on it', 'on them') : fall} lie side by side. Look how far apart their values are.`,
      ask: 'Which of these does the case show?',
      hint: 'Squint, and count both from black. Is more than half of the lit value left, or less?',
      picture: thing.picture,
    },
    [
      { id: 'lit', name: 'lit side', laid: lit },
      { id: 'shadow', name: 'shadow', laid: wash(paint, strength) },
    ],
    [
      { fact: 'six-tenths', of: ['shadow', 'lit'] },
      { fact: 'four-tenths', of: ['shadow', 'lit'] },
      { fact: 'same-value', of: ['shadow', 'lit'] },
      { fact: 'darker', of: ['lit', 'shadow'] },
    ],
    draw,
  );
}

function shadowWashes(studio: Studio, palette: readonly string[], draw: Draw): DrillDraft | undefined {
  const deep = deepOnes(studio, palette, 7);
  if (deep.length === 0) return undefined;
  const paint = pick(deep, draw);
  const lit = pick([1.5, 2, 2.5, 3], draw);
  return {
    kind: 'washes',
    title: 'Shade and shadow in one paint',
    scene: `Direct sun. A pale block stands on ground that is a little darker. ${sentence(nameOf(studio, paint))} alone gives both shadows.`,
    ask: 'How strong must each wash be?',
    hint: 'Six tenths for the side turned away, four tenths for the shadow that falls; the water comes after.',
    paint,
    waters: [...WATERS],
    cannot: false,
    strongest: false,
    blocks: [
      { name: 'shaded side', shadeOf: lit },
      { name: 'cast shadow', castOf: lit + 0.5 },
    ],
  };
}

export const SHADOW_GENERATORS: Readonly<Record<string, Generator>> = { 'light-and-shadow': lightAndShadow };
