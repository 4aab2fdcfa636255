/** Where the second paint sits on the wheel, seen from the colour that the drill starts with. */
import { hueDifference } from '../../colour/lab.js';
import { type ColourReading, readColour } from '../../colour/reading.js';
import { loadsFromParts, predict } from '../../paints/index.js';
import { pigmentOf, recipeReflectance } from './candidates.js';
import type { MixDrill } from './schema.js';

/** Up to this many degrees round the CIELAB wheel a paint is a neighbour. */
export const NEIGHBOUR_DEG = 75;
/** From this many degrees on a paint lies across the wheel. */
export const ACROSS_DEG = 100;
/** Chroma below which a paint or a wash is a black, a grey or a white rather than a colour. */
export const NEUTRAL_PAINT_CHROMA = 12;
/** A neutral paint lighter than this painter's step is a white. */
const WHITE_STEP = 2;

/**
 * - `own`: a paint that the first wash holds;
 * - `white`, `black`: neutral by itself (a grey counts as black: it swallows all light alike);
 * - `free`: the start is nearly neutral, so there is no way round;
 * - `neighbour`, `quarter`, `across`: by the angle.
 */
export type Place = 'own' | 'white' | 'black' | 'free' | 'neighbour' | 'quarter' | 'across';

/** A paint beside the start. */
export interface Seat {
  readonly place: Place;
  /** The paint alone, at the strength of the first wash. */
  readonly alone: ColourReading;
  /** Signed degrees from the start to the paint; 0 where there is no way round. */
  readonly angle: number;
}

/** Where a paint sits beside the wash that a drill starts with. */
export function seatOf(drill: MixDrill, id: string): Seat {
  const { paints, strength } = drill.start;
  const start = readColour(recipeReflectance(drill.start));
  const alone = readColour(
    predict(loadsFromParts([{ pigment: pigmentOf(id), parts: 1 }], strength), 'puddle'),
  );
  const seat = (place: Place, angle = 0): Seat => ({ place, alone, angle });
  if (id in paints) return seat('own');
  if (alone.chroma < NEUTRAL_PAINT_CHROMA) return seat(alone.step < WHITE_STEP ? 'white' : 'black');
  if (start.chroma < NEUTRAL_PAINT_CHROMA) return seat('free');
  const angle = hueDifference(start.hue, alone.hue);
  const away = Math.abs(angle);
  return seat(away <= NEIGHBOUR_DEG ? 'neighbour' : away < ACROSS_DEG ? 'quarter' : 'across', angle);
}
