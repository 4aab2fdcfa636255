/** The stream that Ink writes to: lines of many colours are filled in, and the scrollback is left alone. */
import { filledIn } from './stand-ins.js';

/**
 * Erase the scrollback: the part of "clear terminal" that is left out. Ink 6 clears so when a terminal gets shorter than the frame
 * on it; the lines above belong to the learner. Not needed from Ink 7 on.
 */
const ERASE_SCROLLBACK = '\u001b[3J';

type Out = NodeJS.WriteStream;

/** The same stream, as Ink is to have it. */
export function writtenTo(out: Out): Out {
  const write = (chunk: string | Uint8Array, ...rest: []): boolean =>
    out.write(typeof chunk === 'string' ? filledIn(chunk.replaceAll(ERASE_SCROLLBACK, '')) : chunk, ...rest);
  return new Proxy(out, {
    get(target, key) {
      if (key === 'write') return write;
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}
