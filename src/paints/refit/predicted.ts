/** What a fitted table says of films, in the terms that errors are stated in. */
import { type Lab, readColour, reflectanceToLab } from '../../colour/index.js';
import { type Ground, puddle, type Spectrum } from '../../optics/index.js';
import { measuredFullStrength } from '../calibration/measured-strength.js';
import { CATALOGUE } from '../catalogue.js';
import { type MeasuredFilm, PAINT_IDS } from './measurements.js';
import type { Table } from './unknowns.js';

/** Painter's step (10.5 - Munsell value) and C*ab of a film, D65 and 2 degrees. */
export interface ValueAndChroma {
  readonly step: number;
  readonly chroma: number;
}

/** Reflectance of a film of at most two paints. */
export function filmOf(
  table: Table,
  { a, b, loadA, loadB }: Omit<MeasuredFilm, 'reflectance'>,
  on: Ground,
): Spectrum {
  const first = { paint: paintOf(table, a), load: loadA };
  return puddle(loadB === 0 ? [first] : [first, { paint: paintOf(table, b), load: loadB }], on);
}

function paintOf(table: Table, place: number) {
  const paint = table[place];
  if (paint === undefined) throw new RangeError(`the table has no paint ${place}`);
  return paint;
}

/** CIELAB as differences are stated in. */
export function labOf(reflectance: Spectrum): Lab {
  return reflectanceToLab(reflectance, 'D65-2');
}

/** Change from one film to another. */
export function changeOf(from: Spectrum, to: Spectrum): ValueAndChroma {
  const [start, end] = [readColour(from), readColour(to)];
  return { step: end.step - start.step, chroma: end.chroma - start.chroma };
}

/** Load of every paint's masstone under a table. */
export function fullStrengths(table: Table, on: Ground): number[] {
  return PAINT_IDS.map((id, place) => {
    const entry = CATALOGUE.find((candidate) => candidate.id === id);
    if (entry === undefined) throw new RangeError(`the catalogue lacks ${id}`);
    return measuredFullStrength(entry, paintOf(table, place), on);
  });
}
