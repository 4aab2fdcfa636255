/** The stream that Ink writes to: lines of many colours are filled in, the scrollback is left alone, and it can be held. */
import { filledIn } from './stand-ins.js';
import type { Drawing } from './terminal-session.js';

/**
 * Erase the scrollback: the part of "clear terminal" that is left out. Ink 6 clears so when a terminal gets shorter than the frame
 * on it; the lines above belong to the learner. Not needed from Ink 7 on.
 */
const ERASE_SCROLLBACK = '\u001b[3J';

/** What Ink erases of the frame before, in front of a frame. */
const ERASED = /^(?:\u001b\[2K(?:\u001b\[1A)?)+\u001b\[G/;
/** Control sequences alone, as for the cursor and synchronised output. */
const NO_TEXT = /^(?:\u001b\[[?\d]*[A-Za-z])*$/;

type Out = NodeJS.WriteStream;

export interface Written extends Drawing {
  /** The same stream, as Ink is to have it. */
  readonly out: Out;
}

export function writtenTo(out: Out): Written {
  let isHeld = false;
  let last = '';
  function write(chunk: string | Uint8Array, ...rest: []): boolean {
    if (typeof chunk !== 'string') return out.write(chunk, ...rest);
    const text = filledIn(chunk.replaceAll(ERASE_SCROLLBACK, ''));
    if (!NO_TEXT.test(text)) last = text.replace(ERASED, '');
    // Who waits for the writing is told all the same.
    return out.write(isHeld ? '' : text, ...rest);
  }
  return {
    out: new Proxy(out, {
      get(target, key) {
        if (key === 'write') return write;
        const value: unknown = Reflect.get(target, key, target);
        return typeof value === 'function' ? value.bind(target) : value;
      },
    }),
    hold() {
      isHeld = true;
    },
    show() {
      isHeld = false;
      out.write(last);
    },
  };
}
