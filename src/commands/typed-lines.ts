/** Lines that are typed in a terminal, one after another. What is pasted stands in the line as text: it ends none, and moves nothing. */
import { createInterface, type Interface } from 'node:readline/promises';
import { PassThrough, type Readable } from 'node:stream';
import { cleanText } from '../text/sanitize.js';
import { type Arrival, MARKING, pasteReader, WAIT_MS } from '../tui/kit/paste-reader.js';

/** Signs that are put in at most, until a key is typed; no answer is as long. */
const MOST_PASTED = 800;

/** A signal has stopped the program by then, if anything can stop it. */
const STOPPING_MS = 50;

type Input = Readable & { readonly isTTY?: boolean; setRawMode?(isRaw: boolean): unknown };
type Output = NodeJS.WritableStream & { readonly isTTY?: boolean };

/** What was typed and pasted, as a terminal would give it: a stream to read lines from. */
function typedFrom(input: Input, onEnd: (end: () => void) => void): Readable {
  const reader = pasteReader(false);
  let room = MOST_PASTED;
  let timer: NodeJS.Timeout | undefined;
  const stream = new PassThrough();
  const typed = Object.assign(stream, {
    isTTY: input.isTTY === true,
    setRawMode: (isRaw: boolean) => {
      input.setRawMode?.(isRaw);
      return stream;
    },
  });
  const take = (arrivals: readonly Arrival[]): void => {
    for (const arrival of arrivals) {
      if ('keys' in arrival) {
        if (arrival.keys !== '') room = MOST_PASTED;
        typed.write(arrival.keys);
        continue;
      }
      const text = cleanText(arrival.paste, room);
      room -= text.length;
      typed.write(text);
    }
    clearTimeout(timer);
    const { waits } = reader;
    // After the timer what came while the program was busy is read first.
    if (waits !== 'nothing')
      timer = setTimeout(() => setImmediate(() => take(reader.giveUp())), WAIT_MS[waits]);
  };
  const read = (chunk: string | Buffer): void => take(reader.push(String(chunk)));
  const ended = (): void => {
    take(reader.giveUp());
    typed.end();
  };
  input.setEncoding('utf8');
  input.on('data', read).on('end', ended);
  onEnd(() => {
    clearTimeout(timer);
    input.off('data', read).off('end', ended);
    input.pause();
  });
  return typed;
}

/** A reader of lines; where no terminal is at both ends, of whatever comes in. Has to be closed. */
export function typedLines(input: Input, output?: Output): Interface {
  if (output === undefined) return createInterface({ input });
  if (input.isTTY !== true || output.isTTY !== true) return createInterface({ input, output });
  // A terminal that cannot move its cursor gets no sequence.
  const marks = process.env['TERM'] === 'dumb' ? undefined : MARKING;
  let end = (): void => {};
  const typed = typedFrom(input, (ends) => {
    end = ends;
  });
  // Lines of before would come back by a key: each question has its own.
  const lines = createInterface({ input: typed, output, terminal: true, historySize: 0 });
  const begin = (): void => {
    if (marks !== undefined) output.write(marks.on);
  };
  let goingOn: NodeJS.Timeout | undefined;
  const goOn = (): void => {
    input.setRawMode?.(true);
    begin();
    lines.prompt(true);
  };
  begin();
  // Ctrl+Z stops all that was started with the program, as by npm; what runs next here runs after `fg`.
  lines.on('SIGTSTP', () => {
    if (marks !== undefined) output.write(marks.off);
    input.setRawMode?.(false);
    process.kill(0, 'SIGTSTP');
    goingOn = setTimeout(goOn, STOPPING_MS);
  });
  lines.once('close', () => {
    clearTimeout(goingOn);
    if (marks !== undefined) output.write(marks.off);
    end();
  });
  return lines;
}
