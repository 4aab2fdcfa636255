/** The stream that Ink reads keys from: what is pasted does not get there, it is told as an event of its own. Ink 7 has this built in. */
import { type Arrival, pasteReader, WAIT_MS } from './paste-reader.js';

/** The event of a paste on the stream, with its text. */
export const PASTE = 'paste';

type In = NodeJS.ReadStream;

/** The same stream, as Ink is to have it. */
export function readFrom(input: In): In {
  const reader = pasteReader();
  const arrived: Arrival[] = [];
  let timer: NodeJS.Timeout | undefined;
  let turn: NodeJS.Immediate | undefined;
  let isOver = false;

  function giveUp(): void {
    isOver = true;
    input.emit('readable');
  }

  function wait(): void {
    clearTimeout(timer);
    clearImmediate(turn);
    const { waits } = reader;
    if (waits === 'nothing') return;
    // After the timer what came while the program was busy is read first.
    const later = (): void => {
      turn = setImmediate(giveUp);
    };
    timer = setTimeout(later, WAIT_MS[waits]).unref();
  }

  /** Whether there is more to look at. */
  function takeIn(): boolean {
    const chunk: string | Buffer | null = input.read();
    if (chunk !== null) arrived.push(...reader.push(String(chunk)));
    else if (isOver) arrived.push(...reader.giveUp());
    else wait();
    isOver = false;
    return chunk !== null || arrived.length > 0;
  }

  const read = (): string | null => {
    while (arrived.length > 0 || takeIn()) {
      const next = arrived.shift();
      if (next === undefined) continue;
      if ('paste' in next) input.emit(PASTE, next.paste);
      else if (next.keys !== '') return next.keys;
    }
    return null;
  };

  return new Proxy(input, {
    get(target, key) {
      if (key === 'read') return read;
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}
