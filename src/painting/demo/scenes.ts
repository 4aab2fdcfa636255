/**
 * Pictures to try the program with, of nobody else's painting: scenes of the little sheet, before and after their darks were repaired.
 * Before, values end at a middle grey, and what is turned from the light is the lit colour with black in it.
 */
import { CHROMATIC_START } from '../../judgement/table.js';
import { findPalette, type Studio } from '../../paints/index.js';
import type { Area, Picture } from '../../pictures/index.js';
import { recipesFor } from '../../recipes/index.js';
import { seeLaid, type Wash } from '../../washes/index.js';
import type { FilePixels } from '../file-pixels.js';
import { drawnSheet } from './drawn-sheet.js';

/** Scenes: the picture, and what its files are called. */
export const DEMO_SCENES = [
  { picture: 'harbour-roofs', name: 'harbour' },
  { picture: 'orchard-rows', name: 'orchard' },
  { picture: 'market-awning', name: 'market' },
  { picture: 'quarry-face', name: 'quarry' },
] as const;

export const DEMO_STATES = ['before', 'after'] as const;
export type DemoState = (typeof DEMO_STATES)[number];

/** Step that the darkest wash of a painting without darks comes to. */
const NO_DARKS = 5.5;
/** Black stirred into the lit colour where a side is turned: parts to one. */
const BLACK = { paint: 'ivory-black', parts: 0.6 } as const;
/** Weakest wash that is looked for, and in how many halvings. */
const WEAKEST = 0.004;
const HALVINGS = 14;

const stepOf = (studio: Studio, wash: Wash): number => seeLaid(studio, wash).colour.step;

/** The wash at the strength that brings it to a step, or as near as it comes. */
function atStep(studio: Studio, wash: Wash, step: number): Wash {
  let [weak, strong] = [WEAKEST, 1];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const strength = Math.sqrt(weak * strong);
    if (stepOf(studio, { ...wash, strength }) < step) weak = strength;
    else strong = strength;
  }
  return { ...wash, strength: Math.sqrt(weak * strong) };
}

/** The washes of somebody who is afraid of darks. */
function timid(studio: Studio, { areas }: Picture): Readonly<Record<string, Wash>> {
  const steps = new Map(areas.map(({ id, wash }) => [id, stepOf(studio, wash)]));
  const darkest = Math.max(...steps.values());
  const blackened = ({ wash, turned }: Area): Wash => {
    const lit = areas.find(({ id }) => id === turned)?.wash;
    if (lit === undefined) return wash;
    const parts = Object.values(lit.paints).reduce((sum, part) => sum + part, 0);
    return { paints: { ...lit.paints, [BLACK.paint]: BLACK.parts * parts }, strength: lit.strength };
  };
  return Object.fromEntries(
    areas.map((area): [string, Wash] => {
      const step = steps.get(area.id) as number;
      return [area.id, atStep(studio, blackened(area), 1 + ((step - 1) * (NO_DARKS - 1)) / (darkest - 1))];
    }),
  );
}

/** The paints that the repair may take. */
const BOX = 'twelve';

/**
 * The washes after the repair: what is turned from the light is a shade of the lit colour, as dark as the picture has it, and no mud. Where
 * the lit colour is next to none, the picture's own wash does as well.
 */
function repaired(studio: Studio, { areas }: Picture): Readonly<Record<string, Wash>> {
  const paints = findPalette(studio, BOX)?.pigments ?? [];
  return Object.fromEntries(
    areas.flatMap(({ id, wash, turned }): [string, Wash][] => {
      const lit = areas.find((area) => area.id === turned)?.wash;
      if (lit === undefined || seeLaid(studio, lit).colour.chroma < CHROMATIC_START) return [];
      const wish = {
        from: { paints: lit.paints, strength: lit.strength },
        aim: 'shade',
        darker: stepOf(studio, wash) - stepOf(studio, lit),
      } as const;
      const laid = recipesFor(studio, wish, { paints, ways: ['puddle'], most: 1 }).recipes[0]?.laid;
      return laid !== undefined && 'paints' in laid ? [[id, laid]] : [];
    }),
  );
}

/** A scene before or after, as a photograph that shows the whole sheet. */
export function demoSheet(studio: Studio, picture: Picture, state: DemoState): FilePixels {
  const washes = state === 'before' ? timid(studio, picture) : repaired(studio, picture);
  return drawnSheet(studio, picture, washes, 7);
}
