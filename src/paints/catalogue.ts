/** The list of pigments and the figures carried for each, as the data files hold them. */
import appearance from './data/appearance.json' with { type: 'json' };
import catalogue from './data/catalogue.json' with { type: 'json' };
import type { Evidence } from './types.js';

/** Sets of spectra that a curve can start from. */
export type SpectrumSet = 'watercolour' | 'acrylic-2016' | 'acrylic-2005' | 'powder' | 'oil';

/**
 * Where the tinting strength of a paint is from: an acrylic of the same pigment, an acrylic of a like one (names of
 * data/tinting-strength.json), or no more than what is usual for its kind.
 */
export type Tinting =
  | { readonly same: string; readonly like?: undefined; readonly usual?: undefined }
  | { readonly like: string; readonly same?: undefined; readonly usual?: undefined }
  | { readonly usual: 'mineral' | 'organic'; readonly same?: undefined; readonly like?: undefined };

/** One pigment: what it is and how its curve is had. */
export interface CatalogueEntry {
  readonly id: string;
  readonly name: string;
  readonly ci: readonly string[];
  readonly ciNote?: string;
  readonly evidence: Evidence;
  /** The spectrum that the curve starts from; absent for a measured paint, a mixture and the smoothest curve. */
  readonly shape?: { readonly from: SpectrumSet; readonly pigment: string };
  /** How near the pigment of the starting spectrum is, where it is not the same. */
  readonly relation?: string;
  /** Where its tinting strength is from; absent for a mixture and a white; on a measured paint only a check. */
  readonly tinting?: Tinting;
  /** Ids and shares of strength of a paint that is mixed from others. */
  readonly mixture?: readonly (readonly [string, number])[];
  /** A pigment whose published lightness stands in where the pigment itself is not stated. */
  readonly lightnessFrom?: string;
}

/** Published figures of one pigment; see the note in the data file for conditions and ranges. */
export interface Appearance {
  readonly masstone?: readonly number[];
  readonly lightness?: number;
  readonly hueD65?: number;
  readonly paints?: number;
  readonly transparency?: number;
  readonly staining?: number;
  readonly granulation?: number;
  readonly valueRange?: number;
  readonly hueShiftDeg?: number;
}

/** All pigments in the order they are shown. */
export const CATALOGUE = catalogue.pigments as unknown as readonly CatalogueEntry[];

/** Where the published figures are from. */
export const APPEARANCE_SOURCE = appearance.source;

const APPEARANCE = appearance.pigments as Readonly<Record<string, Appearance>>;

/** Published figures of a pigment; empty when there are none. */
export function appearanceOf(id: string): Appearance {
  return APPEARANCE[id] ?? {};
}
