/** The part of a list that fits on the screen. */

export interface Window {
  readonly from: number;
  readonly to: number;
  readonly moreBefore: boolean;
  readonly moreAfter: boolean;
}

/** Items `from` up to but not including `to`, the chosen one kept in the middle as far as the ends allow. */
export const windowAround = (count: number, chosen: number, rows: number): Window =>
  windowOfLines(new Array<number>(count).fill(1), chosen, rows);

/** The same for items of several lines each: those around the chosen one that fit into so many lines; the chosen one always. */
export function windowOfLines(heights: readonly number[], chosen: number, lines: number): Window {
  let [from, to] = [chosen, Math.min(heights.length, chosen + 1)];
  let left = lines - (heights[chosen] ?? 0);
  for (let isBefore = true; ; isBefore = !isBefore) {
    const [before, after] = [heights[from - 1], heights[to]];
    const takesBefore = before !== undefined && before <= left;
    const takesAfter = after !== undefined && after <= left;
    if (!takesBefore && !takesAfter) break;
    if (takesBefore && (isBefore || !takesAfter)) {
      from -= 1;
      left -= before;
    } else {
      to += 1;
      left -= after ?? 0;
    }
  }
  return { from, to, moreBefore: from > 0, moreAfter: to < heights.length };
}
