/** The frame of a state, drawn without keys or waiting: for tests that look at many. */

import chalk from 'chalk';
import { type Instance, render } from 'ink';
import { type AnyProgram, Scene } from '../../src/tui/kit/shell.js';
import type { Stage } from '../../src/tui/kit/stage.js';
import { writtenTo } from '../../src/tui/kit/written.js';
import { FakeIn, FakeOut } from '../fake-terminal.js';

const escapes = /\u001b\[[0-9;?]*[A-Za-z]/g;

/** A frame as it is drawn, and as it reads. */
export interface Still {
  readonly raw: string;
  readonly text: string;
  readonly lines: readonly string[];
}

/** Draws states one after another on one terminal. */
export class Stills {
  private readonly out = new FakeOut({ columns: 80, rows: 24 });
  private app: Instance | undefined;
  private drawn = 0;
  private readonly isSpoken: boolean;

  constructor(isSpoken = false) {
    this.isSpoken = isSpoken;
  }

  of(state: Stage, program: AnyProgram): Still {
    chalk.level = state.settings.screenReader ? 0 : state.colourLevel;
    this.out.columns = state.size.columns;
    this.out.rows = state.size.rows;
    this.out.frames.length = 0;
    // A key of its own each time: nothing is left of the state before.
    this.drawn += 1;
    const view = <Scene key={this.drawn} program={program} state={state} />;
    if (this.app !== undefined) this.app.rerender(view);
    this.app ??= render(view, {
      stdout: writtenTo(this.out as unknown as NodeJS.WriteStream).out,
      stdin: new FakeIn() as unknown as NodeJS.ReadStream,
      debug: true,
      exitOnCtrlC: false,
      patchConsole: false,
      isScreenReaderEnabled: this.isSpoken,
    });
    const raw = this.out.frames.findLast((frame) => frame.trim() !== '') ?? '';
    const text = raw.replace(escapes, '');
    return { raw, text, lines: text.split('\n') };
  }

  close(): void {
    this.app?.unmount();
    this.app?.cleanup();
  }
}
