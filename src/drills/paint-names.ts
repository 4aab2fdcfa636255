/** Which paints a drill names, wherever it names them: one walk for boxes, quizzes and the reader of files. */
import { findPaint, type Studio } from '../paints/index.js';
import { didYouMean } from '../text/nearest.js';

/** Keys that hold paints with their parts. */
const MAPS: ReadonlySet<string> = new Set(['paints', 'add']);
/** Keys that hold lists of paints. */
const LISTS: ReadonlySet<string> = new Set(['tray', 'painting']);

/** A paint and where it stands. */
export interface PaintName {
  readonly id: string;
  readonly path: readonly (string | number)[];
}

/** Every paint that is named in a value of a drill file. */
function* paintNames(value: unknown, path: PaintName['path'] = []): Generator<PaintName> {
  if (typeof value !== 'object' || value === null) return;
  for (const [name, inner] of Object.entries(value)) {
    const key = Array.isArray(value) ? Number(name) : name;
    const here = [...path, key];
    if (MAPS.has(name) && typeof inner === 'object' && inner !== null) {
      for (const id of Object.keys(inner)) yield { id, path: [...here, id] };
    } else if (LISTS.has(name) && Array.isArray(inner)) {
      for (const [at, id] of inner.entries()) yield { id: String(id), path: [...here, at] };
    } else if (name === 'paint' && typeof inner === 'string') {
      yield { id: inner, path: here };
    } else yield* paintNames(inner, here);
  }
}

/** Ids of the paints that a drill names, each once, sorted. */
export function paintsIn(drill: object): string[] {
  return [...new Set([...paintNames(drill)].map(({ id }) => id))].sort();
}

/** The first paint that the studio does not have, with what to say of it; undefined when all are known. */
export function unknownPaint(
  studio: Studio,
  value: unknown,
): { readonly path: PaintName['path']; readonly message: string } | undefined {
  for (const { id, path } of paintNames(value)) {
    if (findPaint(studio, id) !== undefined) continue;
    const near = didYouMean(
      id,
      studio.paints.map((paint) => paint.id),
    );
    return { path, message: `no paint is called "${id.slice(0, 60)}".${near}` };
  }
  return undefined;
}
