/** From a key to the frame that it draws, on every screen of practice and on the bench, with the shipped drills and pictures. */
import { render } from 'ink';
import { Shells } from '../../src/tui/kit/shell.js';
import { writtenTo } from '../../src/tui/kit/written.js';
import { switching } from '../../src/tui/practice/run.js';
import { startedState, worldOf } from '../../src/tui/practice/start.js';
import { FakeIn, FakeOut } from '../fake-terminal.js';
import { loopTimer, withPorts } from './answer.js';
import { type BenchRow, median } from './base.js';
import { LOOPS_PER_MS, msEquivalent } from './film-loop.js';

const SIZE = { columns: 120, rows: 40 };
const ENV = { TERM: 'xterm-256color', COLORTERM: 'truecolor', LANG: 'C.UTF-8' };
/** Keys to each screen, after the first drill of a set is open or from home, and two keys that each draw a new frame there. */
const SCREENS: readonly (readonly [name: string, way: readonly string[], one: string, other: string])[] = [
  ['home', [], '\u001b[B', '\u001b[A'],
  ['families', ['2'], '\u001b[B', '\u001b[A'],
  ['bench', ['3'], '\u001b[C', '\u001b[D'],
  ['bench with the path', ['3', '\u001b[B', 'p'], '\u001b[C', '\u001b[D'],
  ['bench in three ways', ['3', '\u001b[B', 'w'], '\u001b[C', '\u001b[D'],
  ['bench, picking a paint', ['3', '\r'], '\u001b[B', '\u001b[A'],
  ['settings', ['5'], '\u001b[B', '\u001b[A'],
  ['help', ['6'], '\u001b[B', '\u001b[A'],
  ['drill', ['1'], '\u001b[B', '\u001b[A'],
  ['picture', ['1', 'v'], 'g', 'g'],
  ['result', ['1', '\r'], 'g', 'g'],
  ['why', ['1', '\r'], 'w', 'w'],
];
/** A drill that lies in a picture. */
const PICTURED = { drillId: 'harbour-roof-shade', feedback: 'each', why: '' } as const;
const ROUNDS = 12;

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Types a key and waits for its frame. @returns ms until it is written @throws Error when none comes */
async function framed(stdin: FakeIn, out: FakeOut, key: string): Promise<number> {
  const before = out.frames.length;
  const from = performance.now();
  stdin.type(key);
  while (out.frames.length === before) {
    if (performance.now() - from > 2_000) throw new Error(`no frame after ${JSON.stringify(key)}`);
    await turn();
  }
  return performance.now() - from;
}

/** Until nothing more is drawn: what a key asked for may be shown a little later. */
async function settled(out: FakeOut): Promise<void> {
  for (let frames = -1; frames !== out.frames.length; ) {
    frames = out.frames.length;
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
}

/** Rows for the report. */
export const benchFrames = (): Promise<BenchRow[]> =>
  withPorts(async ({ ports }) => {
    const loopMs = loopTimer();
    const rows: BenchRow[] = [];
    for (const [name, way, one, other] of SCREENS) {
      const deps = { ...ports(), env: ENV, nextSet: () => [PICTURED] };
      const world = worldOf(deps);
      const { first, after } = switching(deps, world, startedState(deps, world, SIZE));
      const [out, stdin] = [new FakeOut(SIZE), new FakeIn()];
      const app = render(<Shells first={first} after={after} onEnd={() => {}} />, {
        stdout: writtenTo(out as unknown as NodeJS.WriteStream).out,
        stdin: stdin as unknown as NodeJS.ReadStream,
        debug: true,
        exitOnCtrlC: false,
        patchConsole: false,
      });
      await settled(out);
      for (const key of way) {
        await framed(stdin, out, key);
        await settled(out);
      }
      const ratios: number[] = [];
      for (let round = 0; round < ROUNDS; round++) {
        const unit = loopMs();
        for (const key of [one, other]) {
          ratios.push((await framed(stdin, out, key)) / unit);
          await settled(out);
        }
      }
      app.unmount();
      app.cleanup();
      const ratio = median(ratios.slice(4));
      rows.push({
        name: `key to frame: ${name}`,
        ratio,
        base: 'the bare loop of one film',
        atMost: 16 * LOOPS_PER_MS,
        note: msEquivalent(ratio),
      });
    }
    return rows;
  });
