/** Pixels that are labelled: specks given to what is around them, and the place deepest inside each label. */

/**
 * Gives each pixel the label that most pixels around it have: soft edges between two masses have the colour of a third, and are none.
 * Votes are counted in a window that slides along a row.
 * @param reaches half the side of the window in each round
 */
export function despeckled(
  labels: Uint8Array,
  width: number,
  height: number,
  count: number,
  reaches: readonly number[],
): Uint8Array {
  return reaches.reduce((from, reach) => outvoted(from, width, height, count, reach), labels);
}

function outvoted(
  labels: Uint8Array,
  width: number,
  height: number,
  count: number,
  reach: number,
): Uint8Array {
  const out = new Uint8Array(labels.length);
  const votes = new Int32Array(count);
  const most = (2 * reach + 1) ** 2;
  for (let y = 0; y < height; y++) {
    const [top, bottom] = [Math.max(0, y - reach), Math.min(height - 1, y + reach)];
    votes.fill(0);
    const column = (x: number, by: 1 | -1): void => {
      if (x < 0 || x >= width) return;
      for (let row = top; row <= bottom; row++) {
        const label = labels[row * width + x] as number;
        votes[label] = (votes[label] as number) + by;
      }
    };
    for (let x = 0; x < reach; x++) column(x, 1);
    for (let x = 0; x < width; x++) {
      column(x + reach, 1);
      column(x - reach - 1, -1);
      let best = labels[y * width + x] as number;
      // What has half the votes needs no count.
      if (2 * (votes[best] as number) > most) {
        out[y * width + x] = best;
        continue;
      }
      for (let label = 0; label < count; label++)
        if ((votes[label] as number) > (votes[best] as number)) best = label;
      out[y * width + x] = best;
    }
  }
  return out;
}

/** How deep each pixel lies inside its label, and of each label the deepest: where a mark can stand. */
export interface Depths {
  readonly depth: Uint16Array;
  readonly deepest: readonly number[];
}

/** Depths in pixels, 1 at a border; the border of the painting counts as one. City-block distance in two passes (Rosenfeld, Pfaltz 1966). */
export function depthsOf(labels: Uint8Array, width: number, height: number, count: number): Depths {
  const depth = new Uint16Array(labels.length);
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at++) {
      const same = (there: number): number => (labels[there] === labels[at] ? (depth[there] as number) : 0);
      depth[at] = 1 + Math.min(x > 0 ? same(at - 1) : 0, y > 0 ? same(at - width) : 0);
    }
  const best = new Array<number>(count).fill(-1);
  for (let y = height - 1, at = labels.length - 1; y >= 0; y--)
    for (let x = width - 1; x >= 0; x--, at--) {
      const label = labels[at] as number;
      const same = (there: number): number => (labels[there] === label ? (depth[there] as number) : 0);
      const after = 1 + Math.min(x < width - 1 ? same(at + 1) : 0, y < height - 1 ? same(at + width) : 0);
      if (after < (depth[at] as number)) depth[at] = after;
      const held = best[label] as number;
      if (held < 0 || (depth[at] as number) > (depth[held] as number)) best[label] = at;
    }
  return { depth, deepest: best };
}
