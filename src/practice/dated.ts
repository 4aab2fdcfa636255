/** When answers were given: their order in time, and those that a wrong clock has dated later than now. */
import type { HistoryEntry } from './entry.js';

/** Clocks of two programs differ a little; answers further apart than this are out of order. */
const ORDER_SLACK_MS = 5 * 60_000;

/** Answers dated later than the clock allows: how many, and the times of the first and the last of them, ms. */
export interface Ahead {
  readonly count: number;
  readonly firstMs: number;
  readonly lastMs: number;
}

/** What a standing knows of the times of its answers. */
export interface Times {
  /** Time of the latest answer that is not ahead of the clock, ms; 0 for none. */
  lastMs: number;
  ahead?: Ahead;
  /** Set when an answer came that is older than one before it: fold again in order of time. */
  isOutOfOrder: boolean;
}

/** Takes the time of one more answer, in place. */
export function noteTime(times: Times, atMs: number, isAhead: boolean): void {
  if (isAhead) {
    const { count, firstMs, lastMs } = times.ahead ?? { count: 0, firstMs: atMs, lastMs: atMs };
    times.ahead = { count: count + 1, firstMs: Math.min(firstMs, atMs), lastMs: Math.max(lastMs, atMs) };
    return;
  }
  if (atMs < times.lastMs - ORDER_SLACK_MS) times.isOutOfOrder = true;
  times.lastMs = Math.max(times.lastMs, atMs);
}

/** Whether the clock still divides the answers as it did when they were counted: none was overtaken, none has become ahead. */
export const standsAt = ({ lastMs, ahead }: Times, latestMs: number): boolean =>
  lastMs <= latestMs && (ahead === undefined || ahead.firstMs > latestMs);

/**
 * Answers in order of time whatever the order of the list; equal times keep it. What is later than `latestMs` keeps its place
 * in the list.
 */
export function inOrderOfTime(entries: readonly HistoryEntry[], latestMs: number): HistoryEntry[] {
  let believedMs = 0;
  const timed = entries.map((entry) => {
    const ownMs = Date.parse(entry.at);
    if (ownMs > latestMs) return { entry, atMs: believedMs };
    believedMs = Math.max(believedMs, ownMs);
    return { entry, atMs: ownMs };
  });
  return timed.sort((a, b) => a.atMs - b.atMs).map(({ entry }) => entry);
}
