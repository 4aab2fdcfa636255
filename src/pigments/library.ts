/** The paints the program knows, each with its evidence. */
import { spectrum } from '../optics/index.js';
import measured from './data/measured.json' with { type: 'json' };
import type { Evidence, Pigment } from './types.js';

/** All paints, each id once. */
export const LIBRARY: readonly Pigment[] = measured.pigments.map((record) => ({
  ...record,
  evidence: record.evidence as Evidence,
  K: spectrum(record.K, `${record.id} K`),
  S: spectrum(record.S, `${record.id} S`),
  provenance: {
    source: measured.source,
    licence: measured.licence,
    method: measured.method,
    date: measured.date,
  },
  handling: {},
}));

const BY_ID = new Map(LIBRARY.map((pigment) => [pigment.id, pigment]));

/** The paint with this id, or undefined. */
export function findPigment(id: string): Pigment | undefined {
  return BY_ID.get(id);
}
