/** JSON that is the same for the same data: what digests, seals and comparisons go over. */
import { stringify } from 'safe-stable-stringify';

/**
 * JSON with the keys of every object in the order of their UTF-16 units and without blanks; what is undefined is left out. Digests and
 * seals in files out there stand on it, so it may not change by a byte (tests/stored).
 */
export const canonicalJson = (value: unknown): string => stringify(value) ?? 'null';
