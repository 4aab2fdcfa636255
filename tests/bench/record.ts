/**
 * What a long record costs. Home: opening the profile and choosing today's set. Progress: opening it and drawing the
 * text. Each is compared with the same on an empty record plus one read of the long file; at most 2 is wanted.
 */
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { progressText } from '../../src/commands/progress.js';
import type { DrillRef, FamilyRef, HistoryEntry } from '../../src/practice/index.js';
import { chooseSet } from '../../src/practice/index.js';
import { appendAnswers, learnerFiles, makePlace, openProfile } from '../../src/profile/index.js';
import type { BenchRow } from './base.js';

const ANSWERS = 100_000;
const RUNS = 20;
const START = Date.UTC(2025, 0, 1, 9);
const NOW = new Date(START + 400 * 86_400_000);

const FAMILIES: FamilyRef[] = Array.from({ length: 15 }, (_, i) => ({
  id: `family-${i}`,
  title: `Skill ${i}`,
}));
const DRILLS: DrillRef[] = Array.from({ length: 225 }, (_, n) => ({
  id: `drill-${n}`,
  family: `family-${n % 15}`,
  level: 1 + (Math.floor(n / 15) % 5),
}));

function* longHistory(): Generator<HistoryEntry> {
  for (let n = 0; n < ANSWERS; n += 1) {
    const drill = DRILLS[(n * 7) % DRILLS.length] as DrillRef;
    const isGood = (n * 2_654_435_761) % 5 !== 0;
    yield {
      v: 1,
      at: new Date(START + n * 300_000).toISOString(),
      drill: n % 3 === 0 ? `made-${n}` : drill.id,
      family: drill.family,
      level: drill.level,
      answer: { second: 'burnt-sienna', amount: '1:8', strength: 'full' },
      mark: isGood ? 85 : 20,
      verdict: isGood ? 'good' : 'off',
      value: { before: 3.125, after: isGood ? 6.812 : 5.117, asked: [6.5, 7.5] },
      chroma: { before: 48.331, after: 36.207, kept: 0.749, asked: [31.4, 60] },
      hints: 0,
      try: 1,
      set: `set-${Math.floor(n / 12)}`,
      engine: '0.1.0',
      guess: 0.25,
    };
  }
}

/** The fastest of some runs of each piece of work, ms; they take turns, so that a busy machine hits all of them. */
async function fastest(works: readonly (() => unknown)[]): Promise<number[]> {
  const best = works.map(() => Number.POSITIVE_INFINITY);
  for (let run = 0; run < RUNS; run += 1) {
    for (const [place, work] of works.entries()) {
      const start = performance.now();
      await work();
      best[place] = Math.min(best[place] as number, performance.now() - start);
    }
  }
  return best;
}

/** Measures; the fastest of some runs of each, in this process. Writes to a temporary folder and removes it. */
export async function benchRecord(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-bench-'));
  const before = process.env['XDG_DATA_HOME'];
  process.env['XDG_DATA_HOME'] = folder;
  try {
    const long = learnerFiles(join(folder, 'mudlark'), 'long');
    makePlace(long, 'long');
    appendAnswers(long.record, longHistory());
    const home = (learner: string) => async (): Promise<unknown> => {
      const { standing } = await openProfile({ learner });
      return chooseSet({ standing, families: FAMILIES, drills: DRILLS, now: NOW, seed: 1, count: 12 });
    };
    const progress = (learner: string) => async (): Promise<unknown> =>
      progressText(await openProfile({ learner }), { families: FAMILIES, now: NOW });
    const start = performance.now();
    await home('long')();
    const firstTime = performance.now() - start;
    const times = await fastest([
      () => readFileSync(long.record),
      home('empty'),
      progress('empty'),
      home('long'),
      progress('long'),
    ]);
    const [read, emptyHome, emptyProgress, longHome, longProgress] = times as [
      number,
      number,
      number,
      number,
      number,
    ];
    const homeBase = emptyHome + read;
    const progressBase = emptyProgress + read;
    const base = `empty record + one read of ${(statSync(long.record).size / 1e6).toFixed(0)} MB`;
    const thousands = `${ANSWERS.toLocaleString('en')} answers`;
    return [
      { name: `home, ${thousands}`, ratio: longHome / homeBase, base, atMost: 2 },
      { name: `progress, ${thousands}`, ratio: longProgress / progressBase, base, atMost: 2 },
      { name: `home without its checkpoint (once, then it is made)`, ratio: firstTime / homeBase, base },
    ];
  } finally {
    if (before === undefined) delete process.env['XDG_DATA_HOME'];
    else process.env['XDG_DATA_HOME'] = before;
    rmSync(folder, { recursive: true, force: true });
  }
}
