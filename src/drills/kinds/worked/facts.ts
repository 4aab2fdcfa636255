/** Statements about a case that the prediction can bear out or not. Each figure is a margin: above 0 the statement is true. */

import type { ColourReading } from '../../../colour/reading.js';
import { painterStep } from '../../../colour/value.js';
import { NEUTRAL_CHROMA, RELATION, type Relation, relationBetween } from '../../../judgement/index.js';
import { seeWet } from '../../../washes/index.js';
import type { Proof } from '../../../words/sentences/worked.js';
import { LEFT_IN_SUN } from '../shadow-values/rules.js';
import { SHADING_FACTS } from './shading-facts.js';
import { at, chroma, chromas, type Fact, type Named, name, step, steps } from './things.js';

/** What the two washes do to each other. */
function between(things: readonly Named[]): Relation {
  const [a, b] = [at(things, 0), at(things, 1)];
  return relationBetween(a.studio, a.seen.loads.flat(), b.seen.loads.flat());
}
const onTheWay = (things: readonly Named[]): Proof => ({
  by: 'way',
  kept: between(things).kept,
});
/** Both must be colours: a neutral goes neither around nor across. */
const colourRoom = ({ ends }: Relation): number =>
  Math.min(...ends.map(({ chroma: own }) => own - NEUTRAL_CHROMA));

const wet = (things: readonly Named[], index: number): ColourReading => {
  const { studio, seen } = at(things, index);
  return seeWet(studio, seen.laid).colour;
};
const dryingLoss = (things: readonly Named[], index: number): number =>
  wet(things, index).chroma - chroma(things, index);
const dryings = (things: readonly Named[]): Proof => ({
  by: 'drying',
  of: things.map((thing, index) => ({ name: thing.name, lost: dryingLoss(things, index) })),
});
const dryingRise = (things: readonly Named[]): number => wet(things, 0).step - step(things, 0);

/** Munsell value of one thing as a share of another's. */
const valueShare = (things: readonly Named[]): number =>
  at(things, 0).seen.colour.value / Math.max(0.1, at(things, 1).seen.colour.value);
/** Percent round a share of the lit value that still is that share. */
const SHARE_ROOM = 8;

/** One thing has about such a share of the Munsell value of another, 0-1. */
function shareOfValue(short: string, words: string, as: string, share: number): Fact {
  return {
    takes: 2,
    short: (t) => `${name(t, 0)} has ${short} of the value of ${name(t, 1)}`,
    text: (t) => `${name(t, 0)} has about ${words} of the value of ${name(t, 1)}, as ${as} does`,
    margin: (t) => SHARE_ROOM - Math.abs(100 * (valueShare(t) - share)),
    unit: 'percent',
    figures: (t) => ({
      by: 'share',
      of: [
        { name: name(t, 0), step: step(t, 0) },
        { name: name(t, 1), step: step(t, 1) },
      ],
      words,
      would: painterStep(share * at(t, 1).seen.colour.value),
    }),
  };
}

/** All facts by the id that a drill file uses. */
const FACTS = {
  darker: {
    takes: 2,
    short: (t) => `${name(t, 0)} is darker than ${name(t, 1)}`,
    text: (t) => `${name(t, 0)} is darker than ${name(t, 1)}`,
    margin: (t) => step(t, 0) - step(t, 1),
    unit: 'step',
    figures: steps,
  },
  'darker-than-both': {
    takes: 3,
    short: (t) => `${name(t, 0)} is darker than both others`,
    text: (t) => `${name(t, 0)} is darker than both ${name(t, 1)} and ${name(t, 2)}`,
    margin: (t) => step(t, 0) - Math.max(step(t, 1), step(t, 2)),
    unit: 'step',
    figures: steps,
  },
  'lies-between': {
    takes: 3,
    short: (t) => `${name(t, 0)} lies between in value`,
    text: (t) => `the value of ${name(t, 0)} lies between ${name(t, 1)} and ${name(t, 2)}`,
    margin: (t) =>
      Math.min(step(t, 0) - Math.min(step(t, 1), step(t, 2)), Math.max(step(t, 1), step(t, 2)) - step(t, 0)),
    unit: 'step',
    figures: steps,
  },
  'same-value': {
    takes: 2,
    short: (t) => `${name(t, 0)} and ${name(t, 1)} share a value`,
    text: (t) => `${name(t, 0)} and ${name(t, 1)} share a value, within half a step`,
    margin: (t) => 0.5 - Math.abs(step(t, 0) - step(t, 1)),
    unit: 'step',
    figures: steps,
  },
  'even-steps': {
    takes: 3,
    short: () => 'the steps of value are even',
    text: (t) => `from ${name(t, 0)} to ${name(t, 1)} is as large a step in value as on to ${name(t, 2)}`,
    margin: (t) => 0.25 - Math.abs(Math.abs(step(t, 1) - step(t, 0)) - Math.abs(step(t, 2) - step(t, 1))),
    unit: 'step',
    figures: steps,
  },
  stronger: {
    takes: 2,
    short: (t) => `${name(t, 0)} has more chroma than ${name(t, 1)}`,
    text: (t) => `${name(t, 0)} has more chroma than ${name(t, 1)}`,
    margin: (t) => chroma(t, 0) - chroma(t, 1),
    unit: 'chroma',
    figures: chromas,
  },
  'strongest-of-three': {
    takes: 3,
    short: (t) => `${name(t, 0)} has the most chroma`,
    text: (t) => `${name(t, 0)} has more chroma than either ${name(t, 1)} or ${name(t, 2)}`,
    margin: (t) => chroma(t, 0) - Math.max(chroma(t, 1), chroma(t, 2)),
    unit: 'chroma',
    figures: chromas,
  },
  neutral: {
    takes: 1,
    short: (t) => `${name(t, 0)} is nearly neutral itself`,
    text: (t) => `${name(t, 0)} is close to neutral, so it takes every part of the light alike`,
    margin: (t) => NEUTRAL_CHROMA - chroma(t, 0),
    unit: 'chroma',
    figures: chromas,
  },
  across: {
    takes: 2,
    short: (t) => `${name(t, 0)} and ${name(t, 1)} go across`,
    text: (t) =>
      `${name(t, 0)} and ${name(t, 1)} go across the wheel: each swallows what the other sends back`,
    margin: (t) => {
      const relation = between(t);
      const { kept, least } = RELATION.across;
      return Math.min(100 * (kept - relation.kept), least - relation.least, colourRoom(relation));
    },
    unit: 'percent',
    figures: onTheWay,
  },
  neighbours: {
    takes: 2,
    short: (t) => `${name(t, 0)} and ${name(t, 1)} go around`,
    text: (t) => `${name(t, 0)} and ${name(t, 1)} go around the wheel and let each other’s light pass`,
    margin: (t) => {
      const relation = between(t);
      const { kept, thirdDeg } = RELATION.around;
      return Math.min(100 * (relation.kept - kept), thirdDeg - relation.thirdDeg, colourRoom(relation));
    },
    unit: 'percent',
    figures: onTheWay,
  },
  'third-colour': {
    takes: 2,
    short: (t) => `a third colour lies between ${name(t, 0)} and ${name(t, 1)}`,
    text: (t) =>
      `between ${name(t, 0)} and ${name(t, 1)} a third colour appears that neither of them is, and no grey`,
    margin: (t) => {
      const { thirdDeg, least } = between(t);
      return Math.min(thirdDeg - RELATION.around.thirdDeg, least - RELATION.across.least);
    },
    unit: 'degree',
    figures: (t) => {
      const { thirdDeg, least } = between(t);
      return { by: 'third', turnDeg: thirdDeg, least };
    },
  },
  ...SHADING_FACTS,
  'six-tenths': shareOfValue('6/10', 'six tenths', 'a shaded side', LEFT_IN_SUN.shade),
  'four-tenths': shareOfValue('4/10', 'four tenths', 'a cast shadow', LEFT_IN_SUN.cast),
  'loses-more-drying': {
    takes: 2,
    short: (t) => `${name(t, 0)} loses more than ${name(t, 1)}`,
    text: (t) => `${name(t, 0)} loses more chroma in drying than ${name(t, 1)}`,
    margin: (t) => dryingLoss(t, 0) - dryingLoss(t, 1),
    unit: 'chroma',
    figures: dryings,
  },
  'dries-paler': {
    takes: 1,
    short: (t) => `${name(t, 0)} dries a step paler`,
    text: (t) => `${name(t, 0)} dries a step lighter or more`,
    margin: (t) => dryingRise(t) - 1,
    unit: 'step',
    figures: (t) => ({ by: 'rise', name: name(t, 0), rise: dryingRise(t) }),
  },
} as const satisfies Record<string, Fact>;

export type FactId = keyof typeof FACTS;

export const FACT_IDS = Object.keys(FACTS) as FactId[];

/** The fact with this id. */
export function factOf(id: FactId): Fact {
  return FACTS[id];
}
