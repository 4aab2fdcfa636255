/** Ports that remember what they were asked, and a bench to press keys on. */
import type { Feedback } from '../../src/practice/index.js';
import type { AnswerEntry, SetItem, TuiDeps } from '../../src/tui/kit/deps.js';
import type { Action, DrillScreen, Effect, ResultScreen, State, World } from '../../src/tui/kit/state.js';
import { startedState, worldOf } from '../../src/tui/program/initial.js';
import { createReducer } from '../../src/tui/program/update.js';
import { STUDIO } from '../studio.js';
import { BARE_KIND, DRILLS, FAKE_KIND } from './fake-kind.js';

export * from './fake-kind.js';

export const items = (ids: readonly string[], feedback: Feedback = 'each'): SetItem[] =>
  ids.map((drillId) => ({ drillId, feedback, why: 'due' }));

/** Ports that keep what they were given. */
export interface FakeDeps extends TuiDeps {
  readonly saved: AnswerEntry[];
  readonly patches: object[];
}

export function fakeDeps(extra: Partial<TuiDeps> = {}): FakeDeps {
  const saved: AnswerEntry[] = [];
  const patches: object[] = [];
  let clock = 1_000_000;
  return {
    saved,
    patches,
    version: '9.9.9',
    drills: DRILLS,
    kindOf: ({ id }) => (id === 'bare' ? BARE_KIND : FAKE_KIND),
    placingIsOpen: () => false,
    familyName: (id) => `Family ${id}`,
    studio: STUDIO,
    settings: { valueScale: 'paper-first', palette: 'six', screenReader: false, colour: 'auto' },
    saveSettings: (patch) => {
      patches.push(patch);
      return { saved: true };
    },
    firstRun: false,
    nextSet: () => items(['one', 'two', 'three']),
    saveAnswer: (entry) => {
      saved.push(entry);
      const { savingNote } = extra;
      return savingNote === undefined ? { saved: true } : { saved: false, note: savingNote };
    },
    summarise: (entries) => ({
      now: {
        answers: entries.length,
        good: 1,
        fair: 0,
        off: 0,
        mark: 60,
        level: 2,
        valueError: 0.4,
        chromaKept: 0.7,
      },
      before: { answers: 9, good: 4, fair: 3, off: 2, mark: 50, level: 2, valueError: 0.9, chromaKept: 0.6 },
      families: [],
      warm: 'Well done: two good answers in a row.',
      mistakes: [
        { idea: 'went-across', count: 2, family: 'darken-bright', level: 3 },
        { idea: 'too-light', count: 1, family: 'three-values', level: 2 },
      ],
      lines: ['This set: closer than before.'],
      next: ['more of the same'],
    }),
    progressText: (columns) => Array.from({ length: 60 }, (_, at) => `row ${at} of ${columns}`).join('\n'),
    now: () => {
      clock += 1000;
      return clock;
    },
    env: { TERM: 'xterm-256color', COLORTERM: 'truecolor', LANG: 'C.UTF-8' },
    ...extra,
  };
}

/** A reducer under test: feeds keys, carries out what it asks for, and gives the state. */
export class Bench {
  readonly deps: FakeDeps;
  readonly world: World;
  state: State;
  /** Everything that was asked for, in order. */
  readonly asked: Effect[] = [];
  private readonly reduce: (state: State, action: Action) => State;

  constructor(deps: FakeDeps = fakeDeps()) {
    this.deps = deps;
    this.world = worldOf(deps);
    this.reduce = createReducer(this.world);
    this.state = startedState(deps, this.world, { columns: 80, rows: 24 });
    this.carryOut();
  }

  send(action: Action): this {
    this.state = this.reduce(this.state, action);
    this.carryOut();
    return this;
  }

  keys(...keys: readonly string[]): this {
    for (const key of keys) this.send({ type: 'key', key, at: this.deps.now() });
    return this;
  }

  menu(value: string): this {
    return this.send({ type: 'menu', value, at: this.deps.now() });
  }

  set(given: readonly SetItem[], minutes?: number): this {
    return this.send({
      type: 'set-ready',
      items: given,
      at: this.deps.now(),
      ...(minutes === undefined ? {} : { minutes }),
    });
  }

  get drill(): DrillScreen {
    if (this.state.screen.name !== 'drill') throw new Error(`on ${this.state.screen.name}, not on a drill`);
    return this.state.screen;
  }

  get result(): ResultScreen {
    if (this.state.screen.name !== 'result') throw new Error(`on ${this.state.screen.name}, not on a result`);
    return this.state.screen;
  }

  private done = 0;
  /** Does at once what the app does after drawing; saving is left to the app's own tests. */
  private carryOut(): void {
    for (const effect of this.state.effects) {
      if (effect.id <= this.done) continue;
      this.done = effect.id;
      this.asked.push(effect);
      if (effect.type === 'start-set') {
        const { choice } = effect;
        this.send({ type: 'set-ready', items: this.deps.nextSet(choice), choice, at: this.deps.now() });
      }
      if (effect.type === 'lay') this.lay(effect.screen, effect.at);
    }
  }

  private lay(screen: DrillScreen, at: number): void {
    const grade = this.world.kindOf(screen.drill).grade(screen.drill, screen.answer);
    const entry: AnswerEntry = {
      drill: screen.drill,
      answer: screen.answer,
      grade,
      mark: grade.mark,
      hints: screen.hint === 'shown' ? 1 : 0,
      attempt: screen.attempt,
      feedback: screen.item.feedback,
      why: screen.item.why,
      shownAt: screen.shownAt,
      answeredAt: at,
    };
    this.send({
      type: 'laid',
      attempt: { entry, saved: true },
      place: screen.place,
      worked: screen.worked,
      at,
    });
  }
}
