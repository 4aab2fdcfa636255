import type { Happening, Program } from '../../src/tui/kit/program.js';
import type { Stage } from '../../src/tui/kit/stage.js';

/** A program under test, without a terminal: takes keys and gives the state. */
export class Pressed<S extends Stage<E>, A = never, E = unknown> {
  readonly program: Program<S, A, E>;
  state: S;

  constructor(program: Program<S, A, E>) {
    this.program = program;
    this.state = program.initial;
  }

  send(action: A | Happening): this {
    this.state = this.program.update(this.state, action);
    return this;
  }

  keys(...keys: readonly string[]): this {
    for (const key of keys) this.send({ type: 'key', key, at: this.program.now() });
    return this;
  }
}
