/** Works out the shipped figures of every pigment from the carried ones. Slow (seconds): run by the rebuild command and the tests. */
import { deltaE00 } from '../../colour/difference.js';
import type { Lab } from '../../colour/index.js';
import { type Coefficients, GRID, mixCoefficients } from '../../optics/index.js';
import {
  type Appearance,
  appearanceOf,
  CATALOGUE,
  type CatalogueEntry,
  type SpectrumSet,
} from '../catalogue.js';
import { TINT_STRENGTH } from '../constants.js';
import { PAPER } from '../paper.js';
import { type Aim, filmColour } from './aims.js';
import { calibrate, type Freedom, type Known, misfitOfShape } from './calibrate.js';
import { creditOf, mediumOf, STARTING_SPECTRA, sourceSpectrum } from './carried-spectra.js';
import { measuredFullStrength } from './measured-strength.js';
import { startingShape } from './medium.js';
import { fullStrengthFrom } from './tinting.js';

/** What is shipped for one pigment; K and S per unit load, absent for measured paints, which carry their own. */
export interface Rebuilt {
  readonly id: string;
  readonly fullStrength: number;
  /** CIEDE2000 (D50, 10 degrees) of the masstone film against the published one. */
  readonly residualDeltaE00?: number;
  /** The spectrum that the curve started from. */
  readonly shape?: NonNullable<CatalogueEntry['shape']>;
  /** Root mean square change of ln K from the source's curve. */
  readonly departure?: number;
  readonly K?: readonly number[];
  readonly S?: readonly number[];
}

const DIGITS = 5;

function rounded(value: number, digits = DIGITS): number {
  return Number(value.toPrecision(digits));
}

function masstoneOf({ masstone }: Appearance): Lab | undefined {
  if (masstone === undefined) return undefined;
  const [l = Number.NaN, a = Number.NaN, b = Number.NaN] = masstone;
  return { l, a, b };
}

function aimsOf(published: Appearance): Aim[] {
  const aims: Aim[] = [];
  const lab = masstoneOf(published);
  if (lab !== undefined) aims.push({ kind: 'colour', strength: 1, lab, observer: 'D50-10' });
  if (published.lightness !== undefined) {
    aims.push({ kind: 'lightness', strength: 1, lightness: published.lightness, observer: 'D65-2' });
  }
  if (published.hueD65 !== undefined) {
    aims.push({ kind: 'hue', strength: 1, hueDeg: published.hueD65, observer: 'D65-2' });
  }
  if (published.hueShiftDeg !== undefined) {
    aims.push({
      kind: 'hue-shift',
      tintStrength: TINT_STRENGTH,
      shiftDeg: published.hueShiftDeg,
      observer: 'D65-2',
    });
  }
  return aims;
}

function residualOf(film: Coefficients, published: Appearance) {
  const lab = masstoneOf(published);
  if (lab === undefined) return {};
  return { residualDeltaE00: rounded(deltaE00(filmColour(film, 1, 'D50-10', PAPER), lab), 3) };
}

function times(film: Coefficients, factor: number): Coefficients {
  return { K: film.K.map((k) => k * factor), S: film.S.map((s) => s * factor) };
}

function rebuildMeasured(entry: CatalogueEntry): Rebuilt {
  const paint = sourceSpectrum('watercolour', entry.id);
  const fullStrength = rounded(measuredFullStrength(entry, paint, PAPER), 4);
  return { id: entry.id, fullStrength, ...residualOf(times(paint, fullStrength), appearanceOf(entry.id)) };
}

type Shape = NonNullable<CatalogueEntry['shape']>;

function knownOf(published: Appearance, shape: Shape, freedom: Freedom): Known {
  return {
    shape: startingShape(sourceSpectrum(shape.from, shape.pigment), mediumOf(shape.from)),
    aims: aimsOf(published),
    freedom,
    ...(published.transparency === undefined ? {} : { transparency: published.transparency }),
  };
}

/** The carried spectrum that comes nearest to what is published of a paint, by the two scales alone. */
function nearestShape(published: Appearance): Shape {
  const ranked = STARTING_SPECTRA.map((shape) => ({
    shape,
    misfit: misfitOfShape(knownOf(published, shape, 'kin'), PAPER),
  }));
  return ranked.reduce((best, next) => (next.misfit < best.misfit ? next : best)).shape;
}

function perUnitLoad(film: Coefficients, fullStrength: number) {
  return {
    K: [...film.K].map((k) => rounded(k / fullStrength)),
    S: [...film.S].map((s) => rounded(s / fullStrength)),
  };
}

function rebuildCalibrated(entry: CatalogueEntry): Rebuilt {
  const published = appearanceOf(entry.id);
  const shape = entry.shape ?? nearestShape(published);
  const freedom = entry.evidence === 'transferred' ? 'same' : 'kin';
  const { film, departure } = calibrate(knownOf(published, shape, freedom), PAPER);
  if (entry.tinting === undefined)
    throw new RangeError(`${entry.id}: say where its tinting strength is from`);
  const fullStrength = rounded(fullStrengthFrom(film, entry.tinting), 4);
  return {
    id: entry.id,
    fullStrength,
    ...residualOf(film, published),
    shape,
    departure: rounded(departure, 3),
    ...perUnitLoad(film, fullStrength),
  };
}

/** A paint mixed from others: each share is a share of strength, so that the mixture at full strength is as thick as its parts. */
function rebuildMixture(entry: CatalogueEntry, done: ReadonlyMap<string, Rebuilt>): Rebuilt {
  const parts = (entry.mixture ?? []).map(([id, share]) => {
    const part = done.get(id);
    if (part?.K === undefined || part.S === undefined) {
      throw new RangeError(`${entry.id}: ${id} must be a calibrated pigment listed before it`);
    }
    const paint = { K: Float64Array.from(part.K), S: Float64Array.from(part.S) };
    return { paint, load: share * part.fullStrength };
  });
  const fullStrength = rounded(
    parts.reduce((sum, { load }) => sum + load, 0),
    4,
  );
  return { id: entry.id, fullStrength, ...perUnitLoad(mixCoefficients(parts), fullStrength) };
}

/** A white absorbs hardly at all and its masstone is the paper's colour: only S matters, on the scale of Chinese white. */
function rebuildWhite(entry: CatalogueEntry): Rebuilt {
  const { shape } = entry;
  if (shape === undefined) throw new RangeError(`${entry.id}: a white needs a spectrum`);
  const source = sourceSpectrum(shape.from, shape.pigment);
  const zinc = sourceSpectrum('watercolour', 'chinese-white');
  const middle = Math.floor(GRID.count / 2);
  const scale = (WHITE_STRENGTH * (zinc.S[middle] as number)) / (source.S[middle] as number);
  return { id: entry.id, fullStrength: 1, ...perUnitLoad(times(source, scale), 1) };
}

/** Hiding power of titanium against zinc white: common practice has it about twice, no source. */
const WHITE_STRENGTH = 2;

function rebuildOne(entry: CatalogueEntry, done: ReadonlyMap<string, Rebuilt>): Rebuilt {
  if (entry.evidence === 'measured') return rebuildMeasured(entry);
  if (entry.mixture !== undefined) return rebuildMixture(entry, done);
  if (aimsOf(appearanceOf(entry.id)).length === 0 || entry.id.endsWith('-white')) return rebuildWhite(entry);
  return rebuildCalibrated(entry);
}

/** Figures of all pigments, in the order of the catalogue; `only` limits it to some ids (mixtures need their parts). */
export function rebuildLibrary(only?: ReadonlySet<string>): Rebuilt[] {
  const done = new Map<string, Rebuilt>();
  for (const entry of CATALOGUE) {
    if (only !== undefined && !only.has(entry.id)) continue;
    done.set(entry.id, rebuildOne(entry, done));
  }
  return [...done.values()];
}

const SET_NAMES: Readonly<Record<SpectrumSet, string>> = {
  watercolour: 'the measured watercolours',
  'acrylic-2016': 'measured acrylics (2016)',
  'acrylic-2005': 'measured acrylics (2005)',
  powder: 'measured dry pigment',
  oil: 'measured oil paint',
};

/**
 * The text of the shipped file, one pigment a line.
 * @param date day of the rebuild, YYYY-MM-DD
 */
export function libraryFile(records: readonly Rebuilt[], date: string): string {
  const sets = Object.fromEntries(
    Object.entries(SET_NAMES).map(([id, name]) => [id, { name, ...creditOf(id as SpectrumSet) }]),
  );
  const head = {
    source:
      'computed by the rebuild command from the figures and spectra carried in this folder, each with its own source',
    licence: 'derived figures; cite the sources named in sets and in appearance.json',
    note: 'K and S per unit load; measured paints carry theirs in measured.json. residualDeltaE00: masstone against the published one, D50, 10 degrees. departure: root mean square change of ln K from the source curve',
    date,
    sets,
  };
  const fields = Object.entries(head).map(
    ([key, value]) => ` ${JSON.stringify(key)}: ${JSON.stringify(value)},`,
  );
  const rows = records.map((record) => `  ${JSON.stringify(record)}`).join(',\n');
  return `{\n${fields.join('\n')}\n "pigments": [\n${rows}\n ]\n}\n`;
}
