/** What laid paint reflects, wet and dry: every passage is areas side by side, each a stack of films. */
import { type ColourReading, readColour } from '../colour/reading.js';
import {
  fuseAreas,
  type Ground,
  type LoadedPaint,
  lastFilmWet,
  layers,
  puddle,
  type Spectrum,
} from '../optics/index.js';
import { type Evidence, evidenceOf, once, perStudio, type Studio } from '../paints/index.js';
import { type Load, washLoads } from './puddle.js';
import type { Laid, Wash } from './types.js';

/** One film, all its paints in one puddle. */
type Film = readonly Load[];

/** An area of the passage: its share, and the films that lie there, the first on the paper. */
interface Area {
  readonly share: number;
  readonly films: readonly Film[];
}

const asPaints = (film: Film): LoadedPaint[] => film.map(({ pigment, load }) => ({ paint: pigment, load }));

/** Reflectance of one dry film on paper, 0-1 in each band. */
export function puddleReflectance(loads: Film, on: Ground): Spectrum {
  return puddle(asPaints(loads), on);
}

/** Reflectance of films laid one over the other, the first on the paper. */
export function glazeReflectance(films: readonly Film[], on: Ground): Spectrum {
  return layers(films.map(asPaints), on);
}

/**
 * Share of the paper that each paint of a puddle covers when the same paint is laid as strokes instead: every stroke at
 * the strength of the whole.
 * @returns shares adding up to 1
 */
export function strokeShares(loads: Film): number[] {
  const shares = loads.map(({ pigment, load }) => load / pigment.fullStrength);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => share / total);
}

/** The same paint as in a puddle, kept apart in strokes side by side; see {@link strokeShares}. */
export function strokesReflectance(loads: Film, on: Ground): Spectrum {
  const shares = strokeShares(loads);
  const apart = loads.map(({ pigment, load }, at) =>
    puddleReflectance([{ pigment, load: load / (shares[at] ?? 1) }], on),
  );
  return fuseAreas(apart, shares);
}

/** The washes that lie there, in the order they were laid. */
export function washesOf(laid: Laid): readonly Wash[] {
  if ('layers' in laid) return laid.layers;
  return 'strokes' in laid ? laid.strokes : [laid];
}

function areasOf(studio: Studio, laid: Laid): Area[] {
  const film = (wash: Wash): Film => washLoads(studio, wash);
  if ('layers' in laid) return [{ share: 1, films: laid.layers.map(film) }];
  if ('strokes' in laid)
    return laid.strokes.map((stroke) => ({ share: stroke.share, films: [film(stroke)] }));
  return [{ share: 1, films: [film(laid)] }];
}

function fused(areas: readonly Area[], of: (films: readonly Film[]) => Spectrum): Spectrum {
  const [only] = areas;
  if (areas.length === 1 && only !== undefined) return of(only.films);
  return fuseAreas(
    areas.map(({ films }) => of(films)),
    areas.map(({ share }) => share),
  );
}

/** A passage with its colour. */
export interface Seen {
  readonly laid: Laid;
  /** Dry, as an instrument would read it, 0-1 in each band. */
  readonly reflectance: Spectrum;
  readonly colour: ColourReading;
  readonly evidence: Evidence;
  /** Paints of the passage with their loads, wash by wash. */
  readonly loads: readonly (readonly Load[])[];
}

/** Laid paint as the eye has it when dry; computed once for each object. @throws RangeError for unknown paints */
export const seeLaid: (studio: Studio, laid: Laid) => Seen = once((studio, laid: Laid): Seen => {
  const areas = areasOf(studio, laid);
  const reflectance = fused(areas, (films) => glazeReflectance(films, studio.paper));
  const loads = areas.flatMap(({ films }) => films);
  const evidence = evidenceOf(loads.flat().map(({ pigment }) => pigment));
  return { laid, reflectance, colour: readColour(reflectance), evidence, loads };
});

/** A passage while its last wash is still wet: strokes are taken as laid at one time. Computed once for each object. */
export const seeWet: (studio: Studio, laid: Laid) => Pick<Seen, 'reflectance' | 'colour'> = once(
  (studio, laid: Laid) => {
    const reflectance = fused(areasOf(studio, laid), (films) =>
      lastFilmWet(films.map(asPaints), studio.paper),
    );
    return { reflectance, colour: readColour(reflectance) };
  },
);

/** A paint alone in one wash of that strength, dry. */
export function seeAlone(studio: Studio, id: string, strength: number): Seen {
  const alone = singles(studio);
  const key = `${id} ${strength}`;
  let seen = alone.get(key);
  if (seen === undefined) {
    seen = seeLaid(studio, { paints: { [id]: 1 }, strength });
    alone.set(key, seen);
  }
  return seen;
}
const singles = perStudio(() => new Map<string, Seen>());
