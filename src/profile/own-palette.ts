/** An own box as a palette. Without the schemas of its file, which only a learner with a box has need of. Pure. */
import { findPaint, type Palette, type Studio } from '../paints/index.js';
import type { OwnBox, OwnStudio } from './own-studio.js';

export const NOTHING_OWN: OwnStudio = { format: 1, boxes: [] };

/** The box that the program knows by a learner's: paints that this version does not have are left out. */
export function paletteOf(studio: Studio, { name, paints }: OwnBox): Palette {
  const known = paints.filter(({ paint }) => findPaint(studio, paint) !== undefined);
  return {
    id: name,
    name: /(^|-)box$/.test(name) ? name : `${name} box`,
    note: `${known.length} paints of your own`,
    pigments: known.map(({ paint }) => paint),
    isOwn: true,
    names: Object.fromEntries(
      known.flatMap((each) => (each.name === undefined ? [] : [[each.paint, each.name]])),
    ),
    strengths: Object.fromEntries(
      known.flatMap(({ paint, strength }) => (strength === undefined ? [] : [[paint, strength]])),
    ),
  };
}
