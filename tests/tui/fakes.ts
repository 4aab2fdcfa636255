/** A kind of drill with answers of our own, and ports that remember what they were asked. */
import type { Answer, DrillCommon, Field, Grade, Kind } from '../../src/drills/types.js';
import type { Verdict } from '../../src/judgement/index.js';
import type { AnswerEntry, FeedbackTiming, SetItem, TuiDeps } from '../../src/tui/deps.js';
import { startedState, worldOf } from '../../src/tui/initial.js';
import type { Action, DrillScreen, Effect, ResultScreen, State, World } from '../../src/tui/state.js';
import { createReducer } from '../../src/tui/update/root.js';
import { seeAlone } from '../../src/washes/index.js';
import { paintOf, STUDIO } from '../studio.js';

/** What one paint looks like at half strength. */
export function paintSpectrum(id: string, strength = 0.5) {
  return seeAlone(STUDIO, id, strength).reflectance;
}

const TRAY = ['alizarin-crimson', 'ultramarine-blue', 'cadmium-red', 'ivory-black'];
const TOUCHES = ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'];

export const FIELDS: readonly Field[] = [
  {
    id: 'second',
    label: 'second paint',
    shape: 'list',
    options: TRAY.map((id) => ({
      id,
      label: paintOf(id).name,
      note: 'PR1, measured',
      swatch: paintSpectrum(id),
      pigment: id,
    })),
  },
  {
    id: 'amount',
    label: 'amount, second to first',
    shape: 'scale',
    options: TOUCHES.map((id) => ({ id, label: id })),
  },
  {
    id: 'way',
    label: 'way',
    shape: 'list',
    options: ['puddle', 'glaze', 'strokes'].map((id) => ({ id, label: id })),
  },
];

const VERDICTS: readonly Verdict[] = ['off', 'fair', 'good'];

/** The more of the second paint, the better: easy to foretell in a test. */
export function fakeGrade(answer: Answer): Grade {
  const at = TOUCHES.indexOf(answer['amount'] ?? '');
  return {
    mark: at * 20,
    verdict: VERDICTS[Math.min(2, Math.floor(at / 2))] ?? 'off',
    value: { before: 4.2, after: 4.2 + at * 0.5, asked: [6, 7], verdict: 'fair', tooCloseToCall: false },
    chroma: {
      before: 60,
      after: 40,
      asked: [35, Number.POSITIVE_INFINITY],
      verdict: 'good',
      kept: 40 / 60,
      shadingLine: 50,
      best: 45,
      tooCloseToCall: true,
    },
    explanation: [
      'The first line says what was chosen and what it gives, in full, so that it has to be broken.',
      'The second line says why: both paints swallow the same part of the light, and little is left over.',
      'The third line names the better choice.',
    ],
    best: { answer: { second: 'alizarin-crimson', amount: '1:1', way: 'puddle' }, label: 'best', mark: 100 },
    swatches: [
      { label: 'start', reflectance: paintSpectrum('burnt-sienna') },
      { label: 'yours', reflectance: paintSpectrum('alizarin-crimson') },
      { label: 'best', reflectance: paintSpectrum('ultramarine-blue') },
    ],
    laid: [
      { pigment: 'burnt-sienna', parts: 4, load: 0.5 },
      { pigment: 'alizarin-crimson', parts: 1, load: 0.2 },
    ],
    evidence: 'measured',
  };
}

export const FAKE_KIND: Kind = {
  kind: 'fake',
  fields: () => FIELDS,
  given: () => [{ label: 'start', reflectance: paintSpectrum('burnt-sienna') }],
  goalLines: () => ['value: from step 4.2 to between 6 and 7', 'chroma: keep as much as you can of 60'],
  grade: (_, answer) => fakeGrade(answer),
  best: () => ({ second: 'alizarin-crimson', amount: '1:1', way: 'puddle' }),
  label: (_, answer) => `${answer['second']} ${answer['amount']}`,
  plane: (_, answer) => ({
    start: { step: 4.2, chroma: 60, label: 'start' },
    path: TOUCHES.map((label, at) => ({ step: 4.2 + at * 0.5, chroma: 60 - at * 5, label })),
    yours: { step: 4.2 + TOUCHES.indexOf(answer['amount'] ?? '') * 0.5, chroma: 50, label: 'yours' },
    best: { step: 6.5, chroma: 45, label: 'best' },
    goal: { step: [6, 7], chroma: [35, Number.POSITIVE_INFINITY] },
  }),
};

/** A kind with nothing but a few scales, no colours and no plane. */
export const BARE_KIND: Kind = {
  ...FAKE_KIND,
  kind: 'bare',
  fields: () =>
    Array.from({ length: 9 }, (_, at) => ({
      id: `area-${at}`,
      label: `area ${at}`,
      shape: 'list' as const,
      options: ['light', 'middle', 'dark'].map((id) => ({ id, label: id })),
    })),
  given: () => [],
  goalLines: () => ['sort the areas'],
  grade: () => {
    const { value, chroma, laid, ...rest } = fakeGrade({});
    return { ...rest, mark: 50, verdict: 'fair', swatches: [] };
  },
  best: () => Object.fromEntries(Array.from({ length: 9 }, (_, at) => [`area-${at}`, 'dark'])),
  label: () => 'areas',
};
delete (BARE_KIND as { plane?: unknown }).plane;

export function fakeDrill(id: string, extra: Partial<DrillCommon> = {}): DrillCommon {
  return {
    id,
    family: 'darken-bright',
    level: 3,
    title: `Drill ${id}`,
    scene: 'A tiled roof above the harbour, warm in the low sun. The far slope lies in shade.',
    ask: 'Make it darker and keep it bright: which second paint, and how much?',
    hint: 'Look for a neighbour that is itself dark.',
    ...extra,
  };
}

export const DRILLS: readonly DrillCommon[] = [
  fakeDrill('one'),
  fakeDrill('two'),
  fakeDrill('three', { family: 'dull-on-purpose' }),
  fakeDrill('four', { level: 1 }),
  fakeDrill('bare', { family: 'three-values' }),
];

export const items = (ids: readonly string[], feedback: FeedbackTiming = 'each'): SetItem[] =>
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
