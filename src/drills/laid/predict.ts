/** What laid paint looks like, wet and dry. */
import { type ColourReading, readColour } from '../../colour/reading.js';
import { fuseAreas, type LoadedPaint, lastFilmWet, type Spectrum } from '../../optics/index.js';
import {
  type Evidence,
  evidenceOf,
  findPigment,
  type Load,
  loadsFromParts,
  PAPER,
  type Pigment,
  predict,
  predictLayers,
  strokeAreas,
} from '../../paints/index.js';
import type { LaidPart } from '../types.js';
import type { Laid, Wash } from './types.js';

/** @throws RangeError when there is no such paint */
export function paintOf(id: string): Pigment {
  const pigment = findPigment(id);
  if (pigment === undefined) throw new RangeError(`no paint is called "${id}"`);
  return pigment;
}

/** Loads of one puddle. */
export function washLoads({ paints, strength }: Wash): Load[] {
  return loadsFromParts(
    Object.entries(paints).map(([id, parts]) => ({ pigment: paintOf(id), parts })),
    strength,
  );
}

/** The washes that lie there, in the order they were laid. */
export function washesOf(laid: Laid): readonly Wash[] {
  if ('layers' in laid) return laid.layers;
  if ('strokes' in laid) return laid.strokes;
  return [laid];
}

/** Reflectance of the dry passage, 0-1 in each band. */
export function laidReflectance(laid: Laid): Spectrum {
  if ('layers' in laid) return predictLayers(laid.layers.map(washLoads));
  if ('strokes' in laid) {
    return fuseAreas(
      laid.strokes.map((stroke) => predict(washLoads(stroke), 'puddle')),
      laid.strokes.map(({ share }) => share),
    );
  }
  return predict(washLoads(laid), laid.way ?? 'puddle');
}

const asPaints = (loads: readonly Load[]): LoadedPaint[] =>
  loads.map(({ pigment, load }) => ({ paint: pigment, load }));

const wetOver = (films: readonly (readonly Load[])[]): Spectrum => lastFilmWet(films.map(asPaints), PAPER);

/** Reflectance while the last wash is still wet; strokes are taken as laid at one time. */
export function wetReflectance(laid: Laid): Spectrum {
  if ('layers' in laid) return wetOver(laid.layers.map(washLoads));
  if ('strokes' in laid) {
    return fuseAreas(
      laid.strokes.map((stroke) => wetOver([washLoads(stroke)])),
      laid.strokes.map(({ share }) => share),
    );
  }
  const loads = washLoads(laid);
  if (laid.way === 'glaze') return wetOver(loads.map((load) => [load]));
  if (laid.way !== 'strokes') return wetOver([loads]);
  const areas = strokeAreas(loads);
  return fuseAreas(
    loads.map(({ pigment, load }, index) => wetOver([[{ pigment, load: load / (areas[index] ?? 1) }]])),
    areas,
  );
}

/** The weakest evidence among the paints. */
export function laidEvidence(laid: Laid): Evidence {
  return evidenceOf(washesOf(laid).flatMap(washLoads));
}

/** What was laid, for the record. */
export function laidParts(laid: Laid): LaidPart[] {
  return washesOf(laid).flatMap((wash) =>
    washLoads(wash).map(({ pigment, load }) => ({
      pigment: pigment.id,
      parts: wash.paints[pigment.id] ?? 0,
      load,
    })),
  );
}

/** Laid paint with its colour. */
export interface Seen {
  readonly laid: Laid;
  readonly reflectance: Spectrum;
  readonly colour: ColourReading;
  readonly evidence: Evidence;
}

const KNOWN = new WeakMap<Laid, Seen>();

/** Laid paint as the eye has it when dry; computed once for each object. */
export function seeLaid(laid: Laid): Seen {
  let known = KNOWN.get(laid);
  if (known === undefined) {
    const reflectance = laidReflectance(laid);
    known = { laid, reflectance, colour: readColour(reflectance), evidence: laidEvidence(laid) };
    KNOWN.set(laid, known);
  }
  return known;
}

const KNOWN_WET = new WeakMap<Laid, ColourReading>();

/** The colour while the last wash is wet; computed once for each object. */
export function seeWet(laid: Laid): ColourReading {
  let known = KNOWN_WET.get(laid);
  if (known === undefined) {
    known = readColour(wetReflectance(laid));
    KNOWN_WET.set(laid, known);
  }
  return known;
}
