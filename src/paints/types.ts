/** What the library knows of one paint. */
import type { Coefficients } from '../optics/index.js';

/**
 * How K and S were had:
 * - `measured`: fitted to measured watercolour films of this paint;
 * - `transferred`: the curve's shape measured in another medium, brought to the published watercolour colour;
 * - `estimated`: no spectrum of this pigment known; a related curve, or a level one, changed smoothly to give the published colour.
 */
export type Evidence = 'measured' | 'transferred' | 'estimated';

/**
 * How the tinting strength, and with it `fullStrength`, is known. It counts for amounts only, never for the masstone:
 * - `measured`: from measured watercolour films of this paint;
 * - `anchored`: strength against ultramarine blue as in acrylics of the same pigment, good to a factor of two;
 * - `assumed`: taken from a like pigment or from what is usual; ask nothing about amounts of such a paint.
 */
export type StrengthEvidence = 'measured' | 'anchored' | 'assumed';

/** A figure or rating and where it is from. */
export interface Sourced<T> {
  readonly value: T;
  readonly source: string;
  /** Set where sources disagree, or the figure is an average over unlike paints. */
  readonly note?: string;
}

/** How the paint handles. Ratings run 0-4: transparency 4 clear, 0 covering; staining 4 indelible; granulation 4 coarse. */
export interface Handling {
  readonly transparency?: Sourced<number>;
  readonly staining?: Sourced<number>;
  readonly granulation?: Sourced<number>;
  /** Darkness of the masstone counted from white paper: 97 minus its L*. */
  readonly valueRange?: Sourced<number>;
  /** CIELAB hue angle of the tint minus that of the masstone, degrees. */
  readonly hueShiftDeg?: Sourced<number>;
  readonly lightfastness?: Sourced<Lightfastness>;
}

/** Blue Wool grades (1 fugitive - 8 lasting) of a pale tint and at full strength, and the test they come from. */
export interface Lightfastness {
  readonly blueWoolTint?: number;
  readonly blueWoolFull?: number;
  readonly test: string;
  readonly verdict: string;
}

/** A health caution. `care`: usual hygiene with a named metal; `avoid`: not for a student's box. */
export interface Hazard {
  readonly level: 'low' | 'care' | 'avoid';
  readonly metals: readonly string[];
  readonly note: string;
  readonly source: string;
}

/** Where K and S came from and how far they can be trusted. */
export interface Provenance {
  readonly source: string;
  readonly licence: string;
  readonly method: string;
  /** How `fullStrength` was had, in words. */
  readonly strengthMethod: string;
  /** CIEDE2000 of the film at full strength against the published masstone, when there is one. */
  readonly residualDeltaE00?: number;
  /** Root mean square change of ln K from the source's curve, 0.1 is 10 %; absent for measured paints. */
  readonly departure?: number;
  readonly date: string;
}

/** One paint of the library. */
export interface Pigment extends Coefficients {
  readonly id: string;
  readonly name: string;
  /** Colour Index names; more than one for a mixture; empty when the source states none. */
  readonly ci: readonly string[];
  readonly ciNote?: string;
  readonly evidence: Evidence;
  /** Load of the masstone stroke on the measured scale; a strong tinter has a small one. */
  readonly fullStrength: number;
  readonly strengthEvidence: StrengthEvidence;
  /** How many times as strong as the library's this tube tints, as its owner says; absent for the library's. */
  readonly timesLibrary?: number;
  readonly provenance: Provenance;
  readonly handling: Handling;
  readonly hazard?: Hazard;
}
