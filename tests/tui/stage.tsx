/** The app on a stage of any size: a fake terminal that can be typed into and resized. */
import { type Instance, render } from 'ink';
import { vi } from 'vitest';
import { Shells } from '../../src/tui/kit/shell.js';
import type { Stage as LastState, Size } from '../../src/tui/kit/stage.js';
import { writtenTo } from '../../src/tui/kit/written.js';
import { switching } from '../../src/tui/practice/run.js';
import { startedState, worldOf } from '../../src/tui/practice/start.js';
import { FakeIn, FakeOut } from '../fake-terminal.js';
import { type FakeDeps, fakeDeps } from './fakes.js';

const escapes = /\u001b\[[0-9;?]*[A-Za-z]/g;

export class Stage {
  readonly deps: FakeDeps;
  readonly out: FakeOut;
  readonly stdin = new FakeIn();
  last: LastState | undefined;
  /** Settles when the app has gone; rejects with a fault that it did not expect. */
  readonly exited: Promise<unknown>;
  private readonly app: Instance;

  constructor(size: Size, deps: FakeDeps = fakeDeps()) {
    this.deps = deps;
    this.out = new FakeOut(size);
    const world = worldOf(deps);
    const initial = startedState(deps, world, size);
    const { first, after } = switching(deps, world, initial);
    const onEnd = (last: LastState): void => {
      this.last = last;
    };
    this.app = render(<Shells first={first} after={after} onEnd={onEnd} />, {
      stdout: writtenTo(this.out as unknown as NodeJS.WriteStream).out,
      stdin: this.stdin as unknown as NodeJS.ReadStream,
      debug: true,
      exitOnCtrlC: false,
      patchConsole: false,
      isScreenReaderEnabled: initial.settings.screenReader,
    });
    this.exited = this.app.waitUntilExit();
    this.exited.catch(() => {});
    stages.push(this);
  }

  /** The last frame with its colours. */
  get raw(): string {
    return this.out.frames.findLast((frame) => frame.trim() !== '') ?? '';
  }

  /** The last frame as it reads. */
  get text(): string {
    return this.raw.replace(escapes, '');
  }

  get lines(): string[] {
    return this.text.split('\n');
  }

  /** Waits until the last frame shows something. */
  async shows(wanted: string | RegExp): Promise<void> {
    await vi.waitFor(() => {
      if (!(typeof wanted === 'string' ? this.text.includes(wanted) : wanted.test(this.text))) {
        throw new Error(`waiting for ${wanted}, seeing:\n${this.text}`);
      }
    });
  }

  /** Types one read after another, each once what the one before led to is done, then waits for what they lead to. */
  async type(keys: readonly string[], wanted: string | RegExp): Promise<void> {
    await this.settled();
    for (const key of keys) {
      this.stdin.type(key);
      await this.settled();
    }
    await this.shows(wanted);
  }

  /** Input, effects, ports and the drawing after them each take a turn of the event loop. */
  private async settled(): Promise<void> {
    for (let turn = 0; turn < 4; turn++) await new Promise((resolve) => setTimeout(resolve, 0));
  }

  resize({ columns, rows }: Size): void {
    this.out.columns = columns;
    this.out.rows = rows;
    this.out.emit('resize');
  }

  close(): void {
    this.app.unmount();
    this.app.cleanup();
  }
}

const stages: Stage[] = [];

/** Takes every stage down; for `afterEach`. */
export function strike(): void {
  for (const stage of stages.splice(0)) stage.close();
}

export const ENTER = '\r';
export const ESC = '\u001b';
export const DOWN = '\u001b[B';
export const RIGHT = '\u001b[C';
