/** How far a long piece of work is, as a bar on one line of the terminal; nothing where nobody watches. */

const CELLS = 24;
/** To the start of the line and clear it (ECMA-48: CR, then EL). */
const CLEAR = '\r\u001b[2K';

/** A line that work is told to. */
export interface WorkBar {
  readonly progress: (done: number, of: number) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

/**
 * A bar on the terminal, drawn anew only where it grows.
 * @param label what is being done @param output a terminal; anything else gets nothing
 */
export function workBar(
  label: string,
  output: { readonly isTTY?: boolean; write(text: string): unknown },
  isWanted: boolean,
): WorkBar {
  if (!isWanted || output.isTTY !== true) return { progress: () => {}, end: () => {} };
  let drawn = '';
  return {
    progress: (done, of) => {
      const full = Math.floor((CELLS * done) / of);
      const text = `${label} [${'#'.repeat(full)}${'.'.repeat(CELLS - full)}] ${Math.floor((100 * done) / of)} %`;
      if (text === drawn) return;
      drawn = text;
      output.write(`${CLEAR}${text}`);
    },
    end: () => {
      if (drawn !== '') output.write(CLEAR);
    },
  };
}
