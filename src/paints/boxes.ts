/** A box as its owner has it: the owner's names, and tubes stronger or weaker than the library's. */
import { seedOf } from '../chance/draw.js';
import type { Palette } from './palettes.js';
import { once, type Studio } from './studio.js';
import type { Pigment } from './types.js';

/** How many times as strong as the library's a tube may be said to be. */
export const STRENGTH_FACTOR = { least: 0.25, most: 4 } as const;

/** Paints that an own box holds at least and at most. */
export const BOX_PAINTS = { least: 2, most: 60 } as const;

/**
 * A paint whose tube tints `factor` times as strongly as the library's: a part of it brings as much K and S as `factor` parts of
 * the library's, since K and S add up by amount (Duncan 1940). Its masstone takes so much less of it and stays the same colour.
 */
export function withStrength(paint: Pigment, factor: number): Pigment {
  const { K, S, fullStrength, provenance } = paint;
  return {
    ...paint,
    K: K.map((each) => factor * each),
    S: S.map((each) => factor * each),
    fullStrength: fullStrength / factor,
    timesLibrary: factor,
    provenance: {
      ...provenance,
      strengthMethod: `${provenance.strengthMethod}; times ${factor}, as its owner says`,
    },
  };
}

function owned(paint: Pigment, { names = {}, strengths = {} }: Palette): Pigment {
  const { [paint.id]: name = paint.name } = names;
  const { [paint.id]: factor = 1 } = strengths;
  if (factor === 1 && name === paint.name) return paint;
  return { ...(factor === 1 ? paint : withStrength(paint, factor)), name };
}

/** Ids of the paints of a box whose strength is not the library's. */
export const correctedIn = ({ strengths = {} }: Palette): string[] =>
  Object.keys(strengths).filter((id) => strengths[id] !== 1);

/** The studio as the owner of a box has it; the same one each time. */
export const boxStudio = once((studio: Studio, box: Palette): Studio => {
  const paints = studio.paints.map((paint) => owned(paint, box));
  return paints.every((paint, at) => paint === studio.paints[at]) ? studio : { ...studio, paints };
});

/** A studio with a learner's boxes beside its own; of two of one name the learner's stays. */
export function withBoxes(studio: Studio, boxes: readonly Palette[]): Studio {
  if (boxes.length === 0) return studio;
  const own = new Set(boxes.map(({ id }) => id));
  return { ...studio, palettes: [...studio.palettes.filter(({ id }) => !own.has(id)), ...boxes] };
}

/**
 * Eight digits that change with what a box predicts: its paints and their strengths. Names do not count, nor does the order.
 */
export function revisionOf({ pigments, strengths = {} }: Palette): string {
  const parts = pigments.toSorted().map((id) => `${id} ${strengths[id] ?? 1}`);
  return (seedOf(...parts) >>> 0).toString(16).padStart(8, '0');
}
