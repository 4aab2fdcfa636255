/** JSON that someone may have edited. */

/** What a text says in JSON; undefined where it is none. */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** Something read, as members of an object; undefined where it is none. */
export function membersOf(read: unknown): Readonly<Record<string, unknown>> | undefined {
  return typeof read === 'object' && read !== null && !Array.isArray(read)
    ? (read as Readonly<Record<string, unknown>>)
    : undefined;
}

/** Names that every object answers to: a schema that asks `key in entries` would take them for known ones. */
export function isReservedKey(key: string): boolean {
  return key === 'prototype' || key in Object.prototype;
}
