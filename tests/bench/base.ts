/** Timing by ratio: every figure is set against a base that is measured in the same run, turn about. */

/** One line of the report. */
export interface BenchRow {
  readonly name: string;
  /** Times the base. */
  readonly ratio: number;
  readonly base: string;
  /** What we aim at, when there is an aim. */
  readonly atMost?: number;
  readonly note?: string;
}

/** Median of a list. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[middle] as number)
    : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
}

function callsMs(work: () => unknown, calls: number): number {
  const from = performance.now();
  for (let call = 0; call < calls; call++) work();
  return (performance.now() - from) / calls;
}

/** How long a piece of work takes, and how many times its base: both timed turn about, so that a busy machine hits both. */
export interface Timed {
  readonly ms: number;
  readonly ratio: number;
}

/**
 * Times work against a base.
 * @param calls of the work in one round
 * @param baseCalls of the base in one round
 */
export function against(
  work: () => unknown,
  calls: number,
  base: () => unknown,
  baseCalls: number,
  rounds = 15,
): Timed {
  callsMs(base, baseCalls);
  callsMs(work, calls);
  const times: number[] = [];
  const ratios: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const unit = callsMs(base, baseCalls);
    const ms = callsMs(work, calls);
    times.push(ms);
    ratios.push(ms / unit);
  }
  return { ms: median(times), ratio: median(ratios) };
}

/** Prints rows as a table; a ratio above its aim is marked. */
export function printRows(title: string, rows: readonly BenchRow[]): void {
  console.log(`\n${title}`);
  for (const { name, ratio, base, atMost, note } of rows) {
    const aim = atMost === undefined ? '' : `  aim <= ${atMost}${ratio > atMost ? '  MISSED' : ''}`;
    console.log(
      `  ${name.padEnd(46)} ${ratio.toFixed(2).padStart(8)} x ${base}${aim}${note === undefined ? '' : `  (${note})`}`,
    );
  }
}
