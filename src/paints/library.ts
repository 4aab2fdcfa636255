/** The paints the program knows, each with its evidence. */
import { type Spectrum, spectrum } from '../optics/index.js';
import { APPEARANCE_SOURCE, CATALOGUE, type CatalogueEntry } from './catalogue.js';
import shipped from './data/library.json' with { type: 'json' };
import measured from './data/measured.json' with { type: 'json' };
import { handlingOf, hazardOf } from './handling.js';
import type { Pigment, Provenance, StrengthEvidence } from './types.js';

type Shape = NonNullable<CatalogueEntry['shape']>;

interface Shipped {
  readonly id: string;
  readonly fullStrength: number;
  readonly residualDeltaE00?: number;
  readonly shape?: Shape;
  readonly departure?: number;
  readonly K?: readonly number[];
  readonly S?: readonly number[];
}

const SHIPPED = new Map(shipped.pigments.map((record) => [record.id, record as Shipped]));
const MEASURED = new Map(measured.pigments.map((record) => [record.id, record]));

function methodOf(entry: CatalogueEntry, shape: Shape | undefined): string {
  if (entry.evidence === 'measured') return measured.method;
  if (shape === undefined) return 'mixture of pigments of this library';
  const relation = entry.relation ?? (entry.shape === undefined ? 'the nearest of all carried spectra' : '');
  const start = `K from ${shipped.sets[shape.from].name}, ${shape.pigment}${relation === '' ? '' : ` (${relation})`}`;
  return entry.evidence === 'transferred'
    ? `${start}; brought to the published masstone by two scales and a slight smooth correction`
    : `${start}; changed smoothly until it gives the published masstone and hue shift: estimated from published colour`;
}

function strengthMethodOf({ evidence, tinting, mixture }: CatalogueEntry): string {
  if (evidence === 'measured') return 'the load whose measured film reaches the published masstone';
  if (mixture !== undefined) return 'from the paints that it is mixed from';
  if (tinting === undefined) return 'a convention: a white has no masstone below paper';
  if (tinting.usual !== undefined) return `the load usual for the masstone of ${tinting.usual} paints`;
  return tinting.same === undefined
    ? `as strong against ultramarine blue as acrylic ${tinting.like}, a like or the nearest known paint`
    : `as strong against ultramarine blue as acrylic ${tinting.same}, the same pigment; good to a factor of two`;
}

function provenanceOf(entry: CatalogueEntry, record: Shipped): Provenance {
  const shape = record.shape ?? entry.shape;
  const set = shape === undefined ? undefined : shipped.sets[shape.from];
  const spectrumCredit = entry.evidence === 'measured' ? measured : set;
  const colour = `colour: ${APPEARANCE_SOURCE}`;
  return {
    source: spectrumCredit === undefined ? colour : `spectrum: ${spectrumCredit.source}; ${colour}`,
    licence: spectrumCredit?.licence ?? 'figures quoted as facts with citation',
    method: methodOf(entry, shape),
    strengthMethod: strengthMethodOf(entry),
    date: entry.evidence === 'measured' ? measured.date : shipped.date,
    ...(record.residualDeltaE00 === undefined ? {} : { residualDeltaE00: record.residualDeltaE00 }),
    ...(record.departure === undefined ? {} : { departure: record.departure }),
  };
}

function strengthEvidenceOf({ evidence, tinting }: CatalogueEntry): StrengthEvidence {
  if (evidence === 'measured') return 'measured';
  return tinting?.same === undefined ? 'assumed' : 'anchored';
}

function coefficients(id: string, which: 'K' | 'S', record: Shipped): Spectrum {
  const values = MEASURED.get(id)?.[which] ?? record[which];
  if (values === undefined) throw new Error(`data/library.json: ${id} has no ${which}; run the rebuild`);
  return spectrum(values, `${id} ${which}`);
}

function pigmentOf(entry: CatalogueEntry): Pigment {
  const { id, name, ci, ciNote, evidence } = entry;
  const record = SHIPPED.get(id);
  if (record === undefined) throw new Error(`data/library.json lacks ${id}; run the rebuild`);
  const hazard = hazardOf(id, ci);
  return {
    id,
    name,
    ci,
    evidence,
    fullStrength: record.fullStrength,
    strengthEvidence: strengthEvidenceOf(entry),
    K: coefficients(id, 'K', record),
    S: coefficients(id, 'S', record),
    provenance: provenanceOf(entry, record),
    handling: handlingOf(id, ci),
    ...(ciNote === undefined ? {} : { ciNote }),
    ...(hazard === undefined ? {} : { hazard }),
  };
}

/** All paints, each id once: the measured ones first, then the others round the hue circle from yellow. */
export const LIBRARY: readonly Pigment[] = CATALOGUE.map(pigmentOf);
