/**
 * From Enter to the result, with saving: the answer is graded, its line written to the record, and everything the
 * result screen shows is computed. It runs the program's own way from effect to reducer to layout; only the drawing is left out.
 */
import fs, { mkdtempSync, rmSync } from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seededDraw, seedOf } from '../../src/chance/draw.js';
import { PracticeRun } from '../../src/commands/practice-run.js';
import { type Drill, kindOf } from '../../src/drills/kinds/index.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import { type Shipped, shipped, shippedPictures } from '../../src/files/shipped.js';
import { libraryStudio, paintOf, type Studio } from '../../src/paints/index.js';
import { drillScenes, type Picture } from '../../src/pictures/index.js';
import { openProfile, type Profile } from '../../src/profile/index.js';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { perform } from '../../src/tui/practice/perform.js';
import { beginSet, drillScreen } from '../../src/tui/practice/set.js';
import { startedState, worldOf } from '../../src/tui/practice/start.js';
import type { Action, State } from '../../src/tui/practice/state.js';
import { updatePractice } from '../../src/tui/practice/update.js';
import { resultLayout, resultPage } from '../../src/tui/result/layout.js';
import { judgedRows } from '../../src/words/judged.js';
import { WRITTEN } from '../../src/words/voice.js';
import { type BenchRow, median } from './base.js';
import { bareLoop, LOOPS_PER_MS, msEquivalent } from './film-loop.js';

/** Answers to each drill, by chance, each on a studio that has predicted nothing yet. */
const ANSWERS = 5;
const LOOPS = 2_000;
/** Wide enough for the picture beside the result. */
const SIZE = { columns: 120, rows: 40 };

let flushMs = 0;

/** Times every flush from now on. @returns undoes it */
function timeFlushes(): () => void {
  const flush = fs.fsyncSync;
  fs.fsyncSync = (fd) => {
    const from = performance.now();
    try {
      flush(fd);
    } finally {
      flushMs += performance.now() - from;
    }
  };
  syncBuiltinESMExports();
  return () => {
    fs.fsyncSync = flush;
    syncBuiltinESMExports();
  };
}

function portsOf(
  studio: Studio,
  profile: Profile,
  { drills, chances }: Shipped,
  pictures: readonly Picture[],
): TuiDeps {
  const practice = new PracticeRun(studio, profile, drills, {
    engine: 'bench',
    minutes: undefined,
    seed: 1,
    plan: undefined,
    chances,
  });
  // Names the sitting that the answers belong to.
  practice.nextSet({});
  const sceneOf = drillScenes(studio, pictures);
  return {
    version: 'bench',
    sceneOf: (drill, answer) => sceneOf(drill as Drill, answer),
    drills,
    kindOf: (drill) => kindOf(studio, drill as Drill) as unknown as ReturnType<TuiDeps['kindOf']>,
    familyName: (id) => id,
    studio,
    settings: { valueScale: 'paper-first', palette: 'twelve', screenReader: false, colour: 'full' },
    saveSettings: () => ({ saved: true }),
    firstRun: false,
    changeBox: () => ({ saved: true }),
    copyBox: () => ({ saved: true }),
    nextSet: (choice) => practice.nextSet(choice),
    placingIsOpen: () => false,
    saveAnswer: (answered) => practice.save(answered),
    summarise: (answers) => practice.summarise(answers),
    glance: (columns) => practice.glance(columns),
    progressText: () => '',
    now: () => Date.now(),
    env: {},
  };
}

/** One answer to one drill, ms from Enter to the data of its result; the flush is not in it. */
async function answerOnce(
  profile: Profile,
  drill: Drill,
  chances: Shipped['chances'],
  pictures: readonly Picture[],
  seed: number,
): Promise<number> {
  const studio: Studio = { ...libraryStudio() };
  const deps = portsOf(studio, profile, { drills: [drill], chances }, pictures);
  const world = worldOf(deps);
  const item = { drillId: drill.id, feedback: 'each', why: 'bench' } as const;
  const at = Date.now();
  const started = beginSet(startedState(deps, world, SIZE), world, { items: [item], at });
  const kind = world.kindOf(drill);
  // What stands on the screen before Enter has been computed before Enter.
  kind.given(drill);
  kind.goalLines(drill);
  const shown = drillScreen(world, item, at);
  if (shown === undefined) throw new Error(`no screen for ${drill.id}`);
  const screen = { ...shown, answer: randomAnswer(shown.fields, seededDraw(seed)) };
  let state: State = { ...started, screen };
  const take = (action: Action): void => {
    state = updatePractice(state, world, action);
  };
  flushMs = 0;
  const from = performance.now();
  await perform({ type: 'lay', screen, at }, state, deps, world, take);
  const result = state.screen;
  if (result.name !== 'result') throw new Error(`no result of ${drill.id}: ${state.notice ?? result.name}`);
  const { grade, answer, kept } = result.answered;
  judgedRows(grade, WRITTEN);
  kind.label(drill, answer);
  kind.plane?.(drill, answer);
  resultLayout(state, world, result);
  resultPage(state, world, result);
  const ms = performance.now() - from - flushMs;
  if (kept?.saved !== true) throw new Error(`not saved: ${kept?.note}`);
  return ms;
}

/** What the rows of a benchmark of the screens are measured with. */
interface Shop {
  readonly profile: Profile;
  readonly shop: Shipped;
  readonly pictures: readonly Picture[];
  /** The ports of practice on the shipped drills, in a studio that has predicted nothing yet. */
  ports(): TuiDeps;
}

/** Measures with a profile in a temporary folder, which is removed. */
export async function withPorts(measure: (shop: Shop) => Promise<BenchRow[]>): Promise<BenchRow[]> {
  const studio = libraryStudio();
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-bench-'));
  const before = process.env['XDG_DATA_HOME'];
  process.env['XDG_DATA_HOME'] = folder;
  const restore = timeFlushes();
  try {
    const profile = await openProfile({ learner: 'bench' });
    const shop = await shipped(studio);
    const pictures = await shippedPictures(studio);
    const ports = (): TuiDeps => portsOf({ ...libraryStudio() }, profile, shop, pictures);
    return await measure({ profile, shop, pictures, ports });
  } finally {
    restore();
    if (before === undefined) delete process.env['XDG_DATA_HOME'];
    else process.env['XDG_DATA_HOME'] = before;
    rmSync(folder, { recursive: true, force: true });
  }
}

/** How long the bare loop of one film takes here and now, ms: the median of three. */
export function loopTimer(): () => number {
  const studio = libraryStudio();
  const [a, b] = [paintOf(studio, 'burnt-sienna'), paintOf(studio, 'ultramarine-blue')];
  const out = new Float64Array(38);
  const once = (): number => {
    const from = performance.now();
    for (let loop = 0; loop < LOOPS; loop++) bareLoop(a, b, 0.2, 0.1, 0.9, out);
    return (performance.now() - from) / LOOPS;
  };
  return () => median([once(), once(), once()]);
}

/** Rows for the report. */
export const benchAnswer = (): Promise<BenchRow[]> =>
  withPorts(async ({ profile, shop: { drills, chances }, pictures }) => {
    const loopMs = loopTimer();
    // The first answers compile the code; they are not counted.
    for (const drill of drills.slice(0, 40)) await answerOnce(profile, drill, chances, pictures, 1);
    const flushes: number[] = [];
    const rated: { id: string; ratio: number }[] = [];
    for (const drill of drills) {
      const ratios: number[] = [];
      for (let n = 1; n <= ANSWERS; n++) {
        const unit = loopMs();
        ratios.push((await answerOnce(profile, drill, chances, pictures, seedOf(drill.id, n))) / unit);
        flushes.push(flushMs);
      }
      rated.push({ id: drill.id, ratio: median(ratios) });
    }
    const slowest = rated.reduce((one, other) => (other.ratio > one.ratio ? other : one));
    const middle = median(rated.map(({ ratio }) => ratio));
    const base = 'the bare loop of one film';
    const atMost = 48 * LOOPS_PER_MS;
    return [
      {
        name: `Enter to result, with saving: slowest of ${drills.length}`,
        ratio: slowest.ratio,
        base,
        atMost,
        note: `${msEquivalent(slowest.ratio)}; ${slowest.id}`,
      },
      {
        name: 'Enter to result, with saving: median',
        ratio: middle,
        base,
        atMost,
        note: `${msEquivalent(middle)}; and the flush to disk, ${median(flushes).toFixed(2)} ms here, ${Math.max(...flushes).toFixed(2)} at most`,
      },
    ];
  });
