/** Paints with their parts, and numbers, as they are typed. */
import { UsageError } from '../errors.js';
import { findPaint, type Pigment, type Studio } from '../paints/index.js';
import { nearestNames } from '../text/nearest.js';
import type { Part } from '../washes/index.js';

/** Most paints in one mixture. */
const MOST_PAINTS = 12;

/** A number written in decimal digits; "1e308", "0x10", "" and "Infinity" are refused with their own words. */
export function readNumber(text: string, what: string): number {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (!Number.isFinite(value) || !/^[-+]?[0-9.]+(e[-+]?[0-9]+)?$/i.test(text.trim())) {
    throw new UsageError(`${what} must be a number, got "${text.slice(0, 40)}"`);
  }
  return value;
}

/** The only one of some; undefined of none and of several. */
const only = <T>(some: readonly T[]): T | undefined => (some.length === 1 ? some[0] : undefined);

/** The paint with this id, or the only one of this name or Colour Index code. @throws UsageError that names the nearest ones */
export function readPaint(studio: Studio, id: string): Pigment {
  const words = id.trim().toLowerCase();
  const pigment =
    findPaint(studio, id) ??
    only(studio.paints.filter(({ name }) => name.toLowerCase() === words)) ??
    only(studio.paints.filter(({ ci }) => ci.join('+').toLowerCase() === words));
  if (pigment !== undefined) return pigment;
  const ids = studio.paints.map((paint) => paint.id);
  throw new UsageError(
    `no paint is called "${id.slice(0, 60)}".${nearestNames(id, ids)} See: mudlark pigments`,
  );
}

/** Reads `burnt-sienna=4`. */
function readPart(studio: Studio, text: string): Part {
  const at = text.lastIndexOf('=');
  if (at <= 0)
    throw new UsageError(`"${text.slice(0, 60)}" must be written paint=parts, like burnt-sienna=4`);
  const id = text.slice(0, at);
  return { pigment: readPaint(studio, id), parts: readNumber(text.slice(at + 1), `parts of ${id}`) };
}

/** Reads paints with their parts, each paint once. @param example a command that names some */
export function readParts(studio: Studio, texts: readonly string[], example: string): Part[] {
  if (texts.length === 0) throw new UsageError(`name at least one paint, like: ${example}`);
  if (texts.length > MOST_PAINTS)
    throw new UsageError(`a mixture takes at most ${MOST_PAINTS} paints, got ${texts.length}`);
  const parts = texts.map((text) => readPart(studio, text));
  const twice = parts.find(
    ({ pigment }, index) => parts.findIndex((part) => part.pigment === pigment) !== index,
  );
  if (twice !== undefined) throw new UsageError(`${twice.pigment.id} is named twice; add its parts together`);
  return parts;
}
