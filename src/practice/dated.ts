/** When answers were given: their order in time, and those that a wrong clock has dated later than now. */
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
 * The places of a list in order of time; equal times keep theirs. What is later than `latestMs` keeps its place in the list.
 * @param ownMs the time of each answer of the list, ms
 */
export function placesByTime(ownMs: ArrayLike<number>, latestMs: number): Uint32Array {
  let believedMs = 0;
  const atMs = Float64Array.from(ownMs, (ms) => {
    if (ms > latestMs) return believedMs;
    believedMs = Math.max(believedMs, ms);
    return ms;
  });
  return Uint32Array.from(atMs, (_, place) => place).sort(
    (a, b) => (atMs[a] as number) - (atMs[b] as number) || a - b,
  );
}
