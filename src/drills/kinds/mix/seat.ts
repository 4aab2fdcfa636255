/** How a second paint stands to the wash that a drill starts with. */
import type { ColourReading } from '../../../colour/reading.js';
import { NEUTRAL_CHROMA, type RelationKind, relationOf, WHITE_STEP } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { FirstWash } from '../../../washes/index.js';

/**
 * - `own`: a paint that the first wash holds;
 * - `white`, `black`: neutral by itself (a grey counts as black: it swallows all light alike);
 * - `free`: the start is nearly neutral, so there is no way round;
 * - else what the two do to each other.
 */
export type Place = 'own' | 'white' | 'black' | 'free' | Exclude<RelationKind, 'neutral'>;

/** A paint beside the start. */
export interface Seat {
  readonly place: Place;
  /** The paint alone, at the strength that the relation is told at. */
  readonly alone: ColourReading;
}

/** Where a paint stands beside the wash that a drill starts with. */
export function seatOf(studio: Studio, { paints }: FirstWash, id: string): Seat {
  const { kind, ends } = relationOf(studio, paints, id);
  const alone = ends[1];
  const place: Place =
    id in paints
      ? 'own'
      : alone.chroma < NEUTRAL_CHROMA
        ? alone.step < WHITE_STEP
          ? 'white'
          : 'black'
        : kind === 'neutral'
          ? 'free'
          : kind;
  return { place, alone };
}
