/** The measured films that K and S of the thirteen paints are fitted to. Loaded by the refit and its tests only. */
import { GRID, type Spectrum, spectrum } from '../../optics/index.js';
import mixtureData from './data/mixture-films.json' with { type: 'json' };
import singleData from './data/single-films.json' with { type: 'json' };
import transmittanceData from './data/transmittance.json' with { type: 'json' };

/** Load 1 is the film that 0.01 mL of paint made on one patch. */
const MILLILITRES_PER_LOAD = 0.01;

/** The files hold ten-thousandths. */
const SCALE = 1e4;

/** A film and what it reflects; a single paint has `b` equal to `a` and a `loadB` of 0. Paints by their place in {@link PAINT_IDS}. */
export interface MeasuredFilm {
  readonly a: number;
  readonly b: number;
  readonly loadA: number;
  readonly loadB: number;
  /** Measured reflectance on white watercolour paper, 0-1. */
  readonly reflectance: Spectrum;
}

/** Relative transmittance of a single film in {@link TRANSMITTANCE_BANDS}. */
export interface MeasuredTransmittance {
  readonly paint: number;
  readonly load: number;
  readonly values: readonly number[];
}

/** Where the films are from. */
export const SOURCE = singleData.source;
export const LICENCE = singleData.licence;

type Row = readonly (string | number | readonly number[])[];

function loadOf(millilitres: unknown): number {
  return Number((Number(millilitres) / MILLILITRES_PER_LOAD).toFixed(6));
}

function reflectanceOf(values: unknown, name: string): Spectrum {
  return spectrum(
    (values as readonly number[]).map((value) => value / SCALE),
    name,
  );
}

/** Ids of the measured paints. */
export const PAINT_IDS: readonly string[] = [...new Set(singleData.films.map(([id]) => String(id)))];

const PLACE = new Map(PAINT_IDS.map((id, place) => [id, place]));

function placeOf(id: unknown): number {
  const place = PLACE.get(String(id));
  if (place === undefined)
    throw new RangeError(`measured films name ${String(id)}, of which there is no single film`);
  return place;
}

/** 156 films of one paint each, thinnest first within a paint. */
export const SINGLE_FILMS: readonly MeasuredFilm[] = singleData.films.map(
  ([id, millilitres, values]: Row) => ({
    a: placeOf(id),
    b: placeOf(id),
    loadA: loadOf(millilitres),
    loadB: 0,
    reflectance: reflectanceOf(values, `single film of ${String(id)}`),
  }),
);

/** 620 films of two paints each. */
export const MIXTURE_FILMS: readonly MeasuredFilm[] = mixtureData.films.map(
  ([a, b, mlA, mlB, values]: Row) => ({
    a: placeOf(a),
    b: placeOf(b),
    loadA: loadOf(mlA),
    loadB: loadOf(mlB),
    reflectance: reflectanceOf(values, `mixture of ${String(a)} and ${String(b)}`),
  }),
);

/** Bands of the grid in which transmittance is carried. */
export const TRANSMITTANCE_BANDS: readonly number[] = transmittanceData.wavelengthsNm.map(
  (nm) => (nm - GRID.startNm) / GRID.stepNm,
);

/** 52 films of one paint each. */
export const TRANSMITTANCES: readonly MeasuredTransmittance[] = transmittanceData.films.map(
  ([id, millilitres, values]: Row) => ({
    paint: placeOf(id),
    load: loadOf(millilitres),
    values: (values as readonly number[]).map((value) => value / SCALE),
  }),
);
