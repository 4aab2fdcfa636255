/** Moments in files: ISO 8601 with a zone, so that a laptop set to another zone reads the same moment. */
import * as v from 'valibot';

const SHAPE = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(?::\d{2}(?:\.\d{1,3})?)?(?:Z|[+-]\d{2}:\d{2})$/;

/** Whether a text names a moment: a shape and a date that exist. */
export function isInstant(text: string): boolean {
  if (!SHAPE.test(text) || Number.isNaN(Date.parse(text))) return false;
  // Date.parse takes 31 February for 3 March.
  const [year, month, day] = text.slice(0, 10).split('-').map(Number) as [number, number, number];
  return day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
}

/** A moment in a file. */
export const instantSchema = v.pipe(
  v.string('must be a date and time like 2026-03-02T10:15:00Z'),
  v.check(isInstant, 'must be a date and time with its zone, like 2026-03-02T10:15:00Z'),
);

/** A moment as files hold it: UTC, to the millisecond. */
export function toInstant(atMs: number): string {
  return new Date(atMs).toISOString();
}

/** Milliseconds since 1970. */
export function fromInstant(text: string): number {
  return Date.parse(text);
}
