/** At most three next steps for a painting, each with what to practise for it and, where it is a mixture, how to mix it. */
import { CHROMATIC_START, NEUTRAL_CHROMA, RELATION } from '../judgement/index.js';
import type { Studio } from '../paints/index.js';
import { seeLaid } from '../washes/index.js';
import { type Finding, tell } from '../words/tell.js';
import { competing, valueFaults } from './diagnosis.js';
import { type Asked, type MassRecipes, recipesOfMass, type Tray } from './from-mass.js';
import { nameOf } from './name.js';
import { REACH, REPAIRED } from './table.js';
import type { PaintingReading } from './types.js';

/** Most steps that are advised at once. */
const MOST_STEPS = 3;

/** What could be done next. */
export type AdviceId = 'darken' | 'unveil' | 'quieten' | 'three-values';

export interface Advice {
  readonly id: AdviceId;
  readonly finding: Finding;
  /** Id of the family of drills that trains it. */
  readonly family: string;
  /** Index of the mass that it is about, and what is asked of it. */
  readonly repair?: Asked & { readonly mass: number };
  readonly recipe?: MassRecipes;
}

/**
 * The mass that is to carry the darks: of those that are neither a speck nor half the painting the darkest, since it has the shortest way to
 * go; where none is, the darkest of all.
 */
function carrierOf({ masses }: PaintingReading): number | undefined {
  const sized = masses.flatMap(({ share }, index) =>
    share >= REPAIRED.least && share <= REPAIRED.most ? [index] : [],
  );
  const open = sized.length > 0 ? sized : masses.map((_, index) => index);
  const step = (index: number): number => masses[index]?.colour.step ?? 0;
  return open.reduce<number | undefined>(
    (best, index) => (best === undefined || step(index) > step(best) ? index : best),
    undefined,
  );
}

function darken(reading: PaintingReading): Advice[] {
  const { noDarks, fewDarks } = valueFaults(reading);
  // A sheet that is hardly begun has no mass to darken.
  const isBare = reading.doubts.some(({ id }) => id === 'bare');
  const mass = !isBare && (noDarks || fewDarks) ? carrierOf(reading) : undefined;
  if (mass === undefined) return [];
  const { step, chroma } = (reading.masses[mass] as PaintingReading['masses'][number]).colour;
  const isBright = chroma >= CHROMATIC_START;
  const darker = Math.min(REACH.most, REACH.darkened - step);
  // What is dark already is too small, not too light: more of it is to be dark, which no recipe tells.
  if (darker < 0.5) return [];
  const to = step + darker;
  return [
    {
      id: 'darken',
      finding: tell('painting-darken', { mass: nameOf(reading.masses, mass), steps: darker, to, isBright }),
      family: 'darken-bright',
      repair: { mass, aim: isBright ? 'rich' : 'shade', darker },
    },
  ];
}

function unveil(reading: PaintingReading): Advice[] {
  const { masses, veil } = reading;
  const [worst] = [...veil.masses].sort((one, other) => other.below - one.below);
  if (worst === undefined) return [];
  const step = (index: number): number => masses[index]?.colour.step ?? 0;
  return [
    {
      id: 'unveil',
      finding: tell('painting-unveil', {
        mass: nameOf(masses, worst.mass),
        from: nameOf(masses, worst.from),
      }),
      family: 'shade-chroma',
      repair: { mass: worst.from, aim: 'shade', darker: step(worst.mass) - step(worst.from) },
    },
  ];
}

function quieten(reading: PaintingReading): Advice[] {
  const mass = competing(reading);
  if (mass === undefined) return [];
  return [
    {
      id: 'quieten',
      finding: tell('painting-quieten', { mass: nameOf(reading.masses, mass) }),
      family: 'dull-on-purpose',
      repair: { mass, aim: 'dull', darker: 0 },
    },
  ];
}

function planValues(reading: PaintingReading): Advice[] {
  const { allMiddle, likeShares, noLights } = valueFaults(reading);
  if (!allMiddle && !likeShares && !noLights) return [];
  return [{ id: 'three-values', finding: tell('painting-three-values', {}), family: 'three-values' }];
}

/**
 * How to mix what is advised, without a black: a coach who asks for darks that keep their colour names none. Where the other paints do not
 * make the mass, with it.
 */
function recipeFor(
  studio: Studio,
  reading: PaintingReading,
  { mass, ...asked }: NonNullable<Advice['repair']>,
  tray: Tray,
): MassRecipes {
  const isColour = (id: string): boolean =>
    seeLaid(studio, { paints: { [id]: 1 }, strength: RELATION.strength }).colour.chroma >= NEUTRAL_CHROMA;
  const colours = { paints: tray.paints.filter(isColour), others: tray.others.filter(isColour) };
  const without =
    colours.paints.length > 0 ? recipesOfMass(studio, reading, mass, asked, colours) : undefined;
  return without?.found === undefined ? recipesOfMass(studio, reading, mass, asked, tray) : without;
}

/**
 * The next steps, the most needed first.
 * @param tray paints that recipes may take; without one no recipes are looked for
 */
export function adviceOf(studio: Studio, reading: PaintingReading, tray?: Tray): readonly Advice[] {
  return [...darken(reading), ...unveil(reading), ...quieten(reading), ...planValues(reading)]
    .slice(0, MOST_STEPS)
    .map((advice) => {
      const { repair } = advice;
      if (tray === undefined || repair === undefined) return advice;
      return { ...advice, recipe: recipeFor(studio, reading, repair, tray) };
    });
}
