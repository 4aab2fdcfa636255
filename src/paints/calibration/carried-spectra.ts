/** The carried spectra that calibration starts from. Imported by the rebuild only: nothing of this loads with the program. */
import { type Coefficients, spectrum } from '../../optics/index.js';
import type { SpectrumSet } from '../catalogue.js';
import measured from '../data/measured.json' with { type: 'json' };
import acrylic2005 from '../data/spectra-acrylic-2005.json' with { type: 'json' };
import acrylic2016 from '../data/spectra-acrylic-2016.json' with { type: 'json' };
import oil from '../data/spectra-oil.json' with { type: 'json' };
import powder from '../data/spectra-powder.json' with { type: 'json' };
import type { Medium } from './medium.js';
import { powderCoefficients } from './medium.js';

interface Lists {
  readonly K: readonly number[];
  readonly S: readonly number[];
}

const WITH_COEFFICIENTS: Readonly<Record<Exclude<SpectrumSet, 'powder'>, Readonly<Record<string, Lists>>>> = {
  watercolour: Object.fromEntries(measured.pigments.map((paint) => [paint.id, paint])),
  'acrylic-2016': acrylic2016.paints,
  'acrylic-2005': acrylic2005.paints,
  oil: oil.paints,
};

const POWDERS: Readonly<Record<string, { readonly reflectance: readonly number[] }>> = powder.paints;

const MEDIA: Readonly<Record<SpectrumSet, Medium>> = {
  watercolour: 'watercolour',
  'acrylic-2016': 'acrylic',
  'acrylic-2005': 'acrylic',
  oil: 'oil',
  powder: 'powder',
};

const LICENCES: Readonly<Record<SpectrumSet, { readonly source: string; readonly licence: string }>> = {
  watercolour: measured,
  'acrylic-2016': acrylic2016,
  'acrylic-2005': acrylic2005,
  oil,
  powder,
};

/** A carried spectrum. @throws RangeError when the set has no such pigment */
export function sourceSpectrum(from: SpectrumSet, pigment: string): Coefficients {
  const name = `${from} ${pigment}`;
  if (from === 'powder') {
    const sample = POWDERS[pigment];
    if (sample === undefined) throw new RangeError(`no spectrum ${name}`);
    return powderCoefficients(spectrum(sample.reflectance, name));
  }
  const lists = WITH_COEFFICIENTS[from][pigment];
  if (lists === undefined) throw new RangeError(`no spectrum ${name}`);
  return { K: spectrum(lists.K, `${name} K`), S: spectrum(lists.S, `${name} S`) };
}

/** What a set was measured in. */
export function mediumOf(from: SpectrumSet): Medium {
  return MEDIA[from];
}

/** Source and licence of a set. */
export function creditOf(from: SpectrumSet): { readonly source: string; readonly licence: string } {
  return { source: LICENCES[from].source, licence: LICENCES[from].licence };
}

/** Paints whose curve says nothing about a colour: whites, and the blacks. */
const COLOURLESS = /white|black|^PW|^PBk/;

/** Every carried spectrum of a colour. */
export const STARTING_SPECTRA: readonly { readonly from: SpectrumSet; readonly pigment: string }[] = (
  Object.keys(MEDIA) as SpectrumSet[]
).flatMap((from) => {
  const names = Object.keys(from === 'powder' ? POWDERS : WITH_COEFFICIENTS[from]);
  return names.filter((name) => !COLOURLESS.test(name)).map((pigment) => ({ from, pigment }));
});
