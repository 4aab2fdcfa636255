/**
 * Keeps Ink 6 from wiping the scrollback. When a terminal gets shorter than the frame on it, Ink clears the screen
 * with a sequence that takes the lines above it along; those belong to the learner. Not needed from Ink 7 on.
 */

/** Erase the scrollback: the part of "clear terminal" that is left out. */
const ERASE_SCROLLBACK = '\u001b[3J';

type Out = NodeJS.WriteStream;

/** The same stream, except that nothing written to it erases the scrollback. */
export function keepScrollback(out: Out): Out {
  const write = (chunk: string | Uint8Array, ...rest: []): boolean =>
    out.write(typeof chunk === 'string' ? chunk.replaceAll(ERASE_SCROLLBACK, '') : chunk, ...rest);
  return new Proxy(out, {
    get(target, key) {
      if (key === 'write') return write;
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}
