/** The part of a list that fits on the screen. */

export interface Window {
  readonly from: number;
  readonly to: number;
  readonly moreBefore: boolean;
  readonly moreAfter: boolean;
}

/** Items `from` up to but not including `to`, the chosen one kept in the middle as far as the ends allow. */
export function windowAround(count: number, chosen: number, rows: number): Window {
  const room = Math.max(1, rows);
  const from = Math.max(0, Math.min(count - room, chosen - Math.floor(room / 2)));
  const to = Math.min(count, from + room);
  return { from, to, moreBefore: from > 0, moreAfter: to < count };
}
