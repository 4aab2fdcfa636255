/** Ports that remember what they were asked, and a bench to press keys on. */

import type { Palette } from '../../src/paints/index.js';
import type { Answered, Feedback } from '../../src/practice/index.js';
import { carriedOut, type MixtureShelf } from '../../src/tui/bench/outside.js';
import { benchProgram } from '../../src/tui/bench/program.js';
import {
  type BenchAction,
  type BenchEffect,
  type BenchState,
  freshBench,
  type KeptMixture,
} from '../../src/tui/bench/state.js';
import { homeMenu } from '../../src/tui/home/screen.js';
import type { Happening } from '../../src/tui/kit/program.js';
import type { SetItem, TuiDeps } from '../../src/tui/practice/deps.js';
import { practiceProgram } from '../../src/tui/practice/program.js';
import { startedState, worldOf } from '../../src/tui/practice/start.js';
import type {
  Action,
  DrillScreen,
  Effect,
  PracticeWorld,
  ResultScreen,
  State,
} from '../../src/tui/practice/state.js';
import { settingsMenu } from '../../src/tui/settings/screen.js';
import { STUDIO } from '../studio.js';
import { BARE_KIND, DRILLS, FAKE_KIND } from './fake-kind.js';
import { Pressed } from './pressed.js';

export * from './fake-kind.js';

export const items = (ids: readonly string[], feedback: Feedback = 'each'): SetItem[] =>
  ids.map((drillId) => ({ drillId, feedback, why: 'due' }));

/** A box of a learner's own, with the longest names that it may have. */
export const OWN_BOX: Palette = {
  id: 'out-of-doors-in-any-weather-at',
  name: 'out-of-doors-in-any-weather-at box',
  note: '3 paints of your own',
  pigments: ['burnt-sienna', 'ultramarine-violet', 'alizarin-crimson'],
  isOwn: true,
  names: {
    'burnt-sienna': 'the old tube from the harbours',
    'ultramarine-violet': 'violet of the two of a summers',
  },
  strengths: { 'burnt-sienna': 0.625, 'ultramarine-violet': 1.375 },
};

/** Ports that keep what they were given. */
export interface FakeDeps extends TuiDeps {
  readonly saved: Answered[];
  readonly patches: object[];
}

export function fakeDeps(extra: Partial<TuiDeps> = {}): FakeDeps {
  const saved: Answered[] = [];
  const patches: object[] = [];
  let clock = 1_000_000;
  return {
    saved,
    patches,
    version: '9.9.9',
    drills: DRILLS,
    kindOf: ({ id }) => (id === 'bare' ? BARE_KIND : FAKE_KIND),
    placingIsOpen: () => false,
    sceneOf: () => undefined,
    glance: () => [],
    familyName: (id) => `Family ${id}`,
    studio: STUDIO,
    settings: { valueScale: 'paper-first', palette: 'six', screenReader: false, colour: 'auto' },
    saveSettings: (patch) => {
      patches.push(patch);
      return { saved: true };
    },
    firstRun: false,
    changeBox: () => ({ saved: true }),
    copyBox: () => ({ saved: true }),
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
      lines: ['This set: nearer than before.'],
      next: ['more of the same'],
    }),
    // As long as its lines may be: a sign beside them has to have room.
    progressText: (columns) =>
      Array.from({ length: 60 }, (_, at) => `row ${at} of ${columns} `.padEnd(columns, '.')).join('\n'),
    now: () => {
      clock += 1000;
      return clock;
    },
    env: { TERM: 'xterm-256color', COLORTERM: 'truecolor', LANG: 'C.UTF-8' },
    ...extra,
  };
}

const SIZE = { columns: 80, rows: 24 };

/** Mixtures that are kept in memory. */
function heldMixtures(): MixtureShelf {
  let kept: readonly KeptMixture[] = [];
  const held = (told: string) => ({ kept, told });
  return {
    all: () => kept,
    keep: (mixture) => {
      kept = [...kept.filter(({ name }) => name !== mixture.name), mixture];
      return held(`Kept as ${mixture.name}.`);
    },
    remove: (gone) => {
      kept = kept.filter(({ name }) => name !== gone);
      return held(`${gone} is taken away.`);
    },
  };
}

/** The mixing bench, with the paints that were last laid; what it asks for is done at once. */
export function mixingBench(
  lastPaints?: readonly string[],
  deps: FakeDeps = fakeDeps(),
): Pressed<BenchState, BenchAction, BenchEffect> {
  const world = worldOf(deps);
  const { settings, colourLevel } = startedState(deps, world, SIZE);
  const stage = { size: SIZE, settings, colourLevel, cautioned: [] };
  const mixtures = heldMixtures();
  return new (class extends Pressed<BenchState, BenchAction, BenchEffect> {
    override send(action: BenchAction | Happening): this {
      super.send(action);
      const { effects = [], ...rest } = this.state;
      this.state = rest;
      for (const effect of effects) this.send(carriedOut(effect, world, rest.settings, mixtures));
      return this;
    }
  })(
    benchProgram({ ...deps, mixtures }, world, {
      ...freshBench(world, settings.palette, lastPaints),
      ...stage,
    }),
  );
}

/** Practice under test: carries out what it asks for. */
export class Bench extends Pressed<State, Action, Effect> {
  readonly deps: FakeDeps;
  readonly world: PracticeWorld;
  /** Everything that was asked for, in order. */
  readonly asked: Effect[] = [];

  constructor(deps: FakeDeps = fakeDeps()) {
    const world = worldOf(deps);
    super(practiceProgram(deps, world, startedState(deps, world, SIZE)));
    this.deps = deps;
    this.world = world;
    this.carryOut();
  }

  override send(action: Action | Happening): this {
    super.send(action);
    this.carryOut();
    return this;
  }

  set(given: readonly SetItem[], minutes?: number): this {
    return this.send({
      type: 'set-ready',
      items: given,
      at: this.deps.now(),
      ...(minutes === undefined ? {} : { minutes }),
    });
  }

  /** Chooses an entry of the home menu or of the settings by its number. */
  menu(value: string): this {
    const menu = this.state.screen.name === 'settings' ? settingsMenu : homeMenu;
    const at = menu(this.state, this.world).findIndex((item) => item.value === value);
    if (at < 0) throw new Error(`no entry ${value} on ${this.state.screen.name}`);
    return this.keys(String(at + 1));
  }

  get drill(): DrillScreen {
    if (this.state.screen.name !== 'drill') throw new Error(`on ${this.state.screen.name}, not on a drill`);
    return this.state.screen;
  }

  get result(): ResultScreen {
    if (this.state.screen.name !== 'result') throw new Error(`on ${this.state.screen.name}, not on a result`);
    return this.state.screen;
  }

  /** Does at once what the shell does after each change; saving is left to the shell's own tests. */
  private carryOut(): void {
    const { effects, ...rest } = this.state;
    if (effects === undefined) return;
    this.state = rest;
    for (const effect of effects) {
      this.asked.push(effect);
      if (effect.type === 'start-set') {
        const { choice } = effect;
        this.send({ type: 'set-ready', items: this.deps.nextSet(choice), choice, at: this.deps.now() });
      }
      if (effect.type === 'lay') this.lay(effect.screen, effect.at);
    }
  }

  private lay(screen: DrillScreen, answeredAt: number): void {
    const { drill, answer, attempt, shownAt, place, worked, item } = screen;
    const { feedback, why } = item;
    const grade = this.world.kindOf(drill).grade(drill, answer);
    const hints = screen.hint === 'shown' ? 1 : 0;
    const answered: Answered = {
      ...{ drill, answer, grade, mark: grade.mark, hints, attempt, feedback, why, shownAt, answeredAt },
      kept: { saved: true },
    };
    this.send({ type: 'laid', answered, place, worked, at: answeredAt });
  }
}
