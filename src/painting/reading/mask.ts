/** Masks of cells: 1 where a cell belongs, 0 where not. */

/** Fills what a mask encloses: everything that cannot be reached from the border. */
export function filled(mask: Uint8Array, width: number, height: number): Uint8Array {
  const outside = new Uint8Array(mask.length);
  const queue = new Int32Array(mask.length);
  let [head, tail] = [0, 0];
  const reach = (at: number): void => {
    if (mask[at] === 1 || outside[at] === 1) return;
    outside[at] = 1;
    queue[tail++] = at;
  };
  for (let x = 0; x < width; x++) for (const y of [0, height - 1]) reach(y * width + x);
  for (let y = 0; y < height; y++) for (const x of [0, width - 1]) reach(y * width + x);
  while (head < tail) {
    const at = queue[head++] as number;
    const column = at % width;
    if (column > 0) reach(at - 1);
    if (column < width - 1) reach(at + 1);
    if (at >= width) reach(at - width);
    if (at + width < mask.length) reach(at + width);
  }
  return outside.map((is) => 1 - is);
}

/** A mask with what lies beside its border taken away (`keep` 0) or added (1). */
function passed(from: Uint8Array, width: number, height: number, keep: 0 | 1): Uint8Array {
  const out = Uint8Array.from(from);
  for (let row = 0, at = 0; row < height; row++)
    for (let column = 0; column < width; column++, at++)
      if (
        (column > 0 && from[at - 1] === keep) ||
        (column < width - 1 && from[at + 1] === keep) ||
        (row > 0 && from[at - width] === keep) ||
        (row < height - 1 && from[at + width] === keep)
      )
        out[at] = keep;
  return out;
}

/** Takes away what is thinner than about five cells: a tongue of light that leaves the sheet. */
export const opened = (mask: Uint8Array, width: number, height: number): Uint8Array =>
  ([0, 0, 1, 1] as const).reduce((from, keep) => passed(from, width, height, keep), mask);

/** How many cells a mask holds. */
export function count(mask: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < mask.length; at++) sum += mask[at] as number;
  return sum;
}
