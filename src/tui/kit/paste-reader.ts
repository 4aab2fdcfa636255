/**
 * Tells what is pasted from what is typed. In bracketed paste (xterm, "Control Sequences": CSI ? 2004 h) a terminal puts
 * CSI 200 ~ before a pasted text and CSI 201 ~ after it. Pure: who reads tells when waiting is over.
 */

/** What a read holds, in its order. */
export type Arrival = { readonly keys: string } | { readonly paste: string };

/** Has a terminal mark what is pasted, and no longer. */
export const MARKING = { on: '\u001b[?2004h', off: '\u001b[?2004l' } as const;

const START = '\u001b[200~';
const END = '\u001b[201~';
const CTRL_C = '\u0003';

/** Signs of a paste that are passed on: more than any field takes. */
const MOST_PASTED = 1000;
/** So many signs in one read were not typed: fast hands bring a few while the program is busy. */
const LEAST_BULK = 12;

/**
 * How long is waited, ms: Esc may still be the beginning of a marker; the rest of a paste may come, and keys work again afterwards; a text that
 * is not marked has no longer pauses between its reads, and hands do.
 */
export const WAIT_MS = { key: 50, paste: 1000, bulk: 100 } as const;

/** An escape sequence of a key, or what stands between two of them. */
const PIECES = /\u001b+(?:\[\[?[0-?]*[ -/]*[@-~]?|O[@-~]?|[^\u001b])?|[^\u001b]+/gu;

/** Sequences of keys that mean something here: arrows, Home, End, pages, Delete, Tab, with what is held down beside them (xterm, rxvt, ECMA-48). */
const USED = /^\u001b+(?:(?:\[|O)(?:1;)?\d*[ABCDFHZabcd]|\[[1-8](?:;\d+)?[~^$]|\[[\d;:]+u)$/;
/** A sequence as terminals send it for a key, whole. */
const SEQUENCE = /^\u001b+(?:\[\[?[0-?]*[ -/]*[@-~]|O[@-~])$/;
/** The beginning of one, cut by the end of a read. */
const BEGUN = /\u001b(?:\[\[?[0-?]{0,16}[ -/]{0,4}|O)$/;

/** Other keys are left out: Ink 6 ends with a fault at one it has no name for, such as Ctrl+F1. */
const isUsed = (piece: string): boolean => !SEQUENCE.test(piece) || USED.test(piece);

/** The longest end of a text with which a marker could begin. */
function begunMarker(text: string, markers: readonly string[]): string {
  for (let length = Math.min(START.length - 1, text.length); length > 0; length--) {
    const tail = text.slice(-length);
    if (markers.some((marker) => marker.startsWith(tail))) return tail;
  }
  return '';
}

/** Whether signs of one read are too many to have been typed; a key held down repeats one sign. */
const isBulk = (text: string): boolean => text.length >= LEAST_BULK && new Set(text).size > 2;

export interface PasteReader {
  /** What a read holds. A marker cut by its end waits for the next one. */
  push(chunk: string): Arrival[];
  /** What is waited for: the rest of a marker that may be a key as well, the end of a paste, or more of a paste that is not marked. */
  readonly waits: 'nothing' | 'key' | 'paste' | 'bulk';
  /** Gives up waiting: what was held back is a key, the paste is all there is, and what comes next is typed. */
  giveUp(): Arrival[];
}

/** @param tellsBulk whether many signs of one read are a paste, marked or not: where a line is typed they may be that line */
export function pasteReader(tellsBulk = true): PasteReader {
  let held = '';
  /** The paste so far. */
  let open: string | undefined;
  /** The last reads were an unmarked paste, and more of it may come. */
  let inBulk = false;

  /** Typed, as far as can be told: many signs at once are a paste of a terminal that does not mark it. */
  function unmarked(text: string): Arrival[] {
    const arrivals: Arrival[] = [];
    for (const [piece] of text.matchAll(PIECES)) {
      if (!isUsed(piece)) continue;
      if (!piece.startsWith('\u001b') && tellsBulk && (inBulk || isBulk(piece))) {
        inBulk = true;
        arrivals.push({ paste: piece.slice(0, MOST_PASTED) });
        // The way out works however much is typed ahead.
        if (piece.includes(CTRL_C)) arrivals.push({ keys: CTRL_C });
      } else {
        const last = arrivals.at(-1);
        if (last !== undefined && 'keys' in last) arrivals[arrivals.length - 1] = { keys: last.keys + piece };
        else arrivals.push({ keys: piece });
      }
    }
    return arrivals;
  }

  function closed(): Arrival {
    const paste = open ?? '';
    open = undefined;
    return { paste };
  }

  const takeIn = (text: string): void => {
    if (open !== undefined && open.length < MOST_PASTED) open = (open + text).slice(0, MOST_PASTED);
  };

  return {
    push(chunk) {
      let text = held + chunk;
      const arrivals: Arrival[] = [];
      // What stands before an end was pasted, marked or not: a paste may hold an end of its own, and no key is one.
      for (let end = text.indexOf(END); end >= 0; end = text.indexOf(END)) {
        const start = open === undefined ? text.slice(0, end).indexOf(START) : -1;
        if (start > 0) arrivals.push(...unmarked(text.slice(0, start)));
        open ??= '';
        takeIn(text.slice(start < 0 ? 0 : start + START.length, end));
        arrivals.push(closed());
        text = text.slice(end + END.length);
      }
      if (open === undefined) {
        const start = text.indexOf(START);
        if (start >= 0) {
          arrivals.push(...unmarked(text.slice(0, start)));
          open = '';
          text = text.slice(start + START.length);
        }
      }
      const marker = begunMarker(text, open === undefined ? [START, END] : [END]);
      const begun = open === undefined ? (BEGUN.exec(text)?.[0] ?? '') : '';
      held = begun.length > marker.length ? begun : marker;
      const rest = text.slice(0, text.length - held.length);
      if (open === undefined) arrivals.push(...unmarked(rest));
      else takeIn(rest);
      return arrivals;
    },
    get waits() {
      if (open !== undefined) return 'paste';
      if (held !== '') return 'key';
      return inBulk ? 'bulk' : 'nothing';
    },
    giveUp() {
      if (open === undefined && held === '') {
        inBulk = false;
        return [];
      }
      // What began as a sequence and has no end is no key.
      const arrival = open === undefined ? { keys: BEGUN.test(held) ? '' : held } : closed();
      held = '';
      return [arrival];
    },
  };
}
