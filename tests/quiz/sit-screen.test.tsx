import { renderToString } from 'ink';
import { describe, expect, it } from 'vitest';
import type { Sitting } from '../../src/quiz/answers.js';
import type { Handout } from '../../src/quiz/handout.js';
import { questionOrder } from '../../src/quiz/order.js';
import { finishSitting, givenFor, startSitting } from '../../src/quiz/sitting.js';
import { widthOf } from '../../src/text/wrap.js';
import type { Program } from '../../src/tui/kit/program.js';
import { Scene } from '../../src/tui/kit/shell.js';
import type { Stage } from '../../src/tui/kit/stage.js';
import type { QuizDeps } from '../../src/tui/quiz/classroom.js';
import { sitProgram } from '../../src/tui/quiz/sit/program.js';
import type { SitState } from '../../src/tui/quiz/sit/state.js';
import { some } from '../cases.js';
import { kindOf } from '../studio.js';
import { everyKindHandout, NINE, someHandout } from './fixture.js';

const deps: QuizDeps = {
  settings: { valueScale: 'paper-first', palette: 'six', screenReader: false, colour: 'full' },
  env: { LANG: 'C.UTF-8', TERM: 'xterm-256color' },
  noColourFlag: false,
  now: () => NINE,
};

function programOf(handout: Handout, sitting?: Sitting): Program<SitState> {
  return sitProgram(
    {
      deps,
      handout,
      sitting: sitting ?? startSitting(handout, 'Ann', NINE),
      isResumed: sitting !== undefined,
      save: () => {},
    },
    { columns: 80, rows: 24 },
  );
}

/** Presses keys one after another, `seconds` apart. */
function press(program: Program<SitState>, state: SitState, keys: readonly string[], seconds = 1): SitState {
  return keys.reduce(
    (before, key) => program.update(before, { type: 'key', key, at: before.now + seconds * 1000 }),
    state,
  );
}

const textOf = <S extends Stage>(program: Program<S>, state: S): string =>
  renderToString(<Scene program={program} state={state} />, { columns: state.size.columns }).replace(
    /\u001b\[[0-9;]*m/g,
    '',
  );

describe('sitting on the screen', () => {
  const handout = someHandout(3);
  const order = questionOrder(handout, 'Ann');
  const idAt = (place: number): string => handout.questions[order[place] ?? 0]?.drill.id ?? '';

  it('lists released results of a sheet of paper as the sheet has them, under the name that the class has', () => {
    const shuffled = questionOrder(handout, '7');
    expect(shuffled).not.toEqual([0, 1, 2]);
    const typed = finishSitting(startSitting(handout, '7', NINE, 'paper'), NINE);
    const released = { name: 'Eva Moss' };
    const program = sitProgram(
      { deps, handout, sitting: typed, isResumed: true, released, save: () => {} },
      { columns: 80, rows: 24 },
    );
    const text = textOf(program, program.initial);
    expect(text).toContain('Eva Moss: handed in');
    const titles = handout.questions.map(({ drill }) => text.indexOf(drill.title));
    expect(titles.every((at) => at >= 0)).toBe(true);
    expect(titles).toEqual([...titles].sort((a, b) => a - b));
  });

  it('takes each question in the student’s order, saves each choice, hands in and shows results only then', () => {
    const program = programOf(handout);
    let state = press(program, program.initial, ['enter']);
    expect(state.screen).toMatchObject({ name: 'question', place: 0 });
    expect(givenFor(state.sitting, idAt(0))?.answer).toEqual({});
    state = press(program, state, ['down']);
    // An arrow key chooses; only Enter takes.
    expect(givenFor(state.sitting, idAt(0))).toMatchObject({
      choices: { second: 'ultramarine-blue' },
      answer: {},
    });
    expect(textOf(program, state)).toContain('not answered');
    state = press(program, state, ['enter', 'right', 'enter', 'n']);
    expect(state.screen.name).toBe('overview');
    expect(givenFor(state.sitting, idAt(2))?.answer).toEqual({});
    state = press(program, state, ['f']);
    expect(textOf(program, state)).toContain('1 of 3 questions is not answered');
    state = press(program, state, ['escape', 'f', 'enter']);
    expect(state.sitting.finished).toBeDefined();
    expect(state.screen.name).toBe('done');
    expect(textOf(program, state)).toMatch(/points/);
    state = press(program, state, ['enter']);
    expect(textOf(program, state)).toMatch(/of 100/);
    const after = press(program, state, ['enter', 'q']);
    expect(after.ending).toBe(0);
  });

  it('shows no mark on any screen before the sitting is handed in', () => {
    const program = programOf(handout);
    let state = program.initial;
    const keys = [
      'enter',
      'down',
      'enter',
      'up',
      'p',
      '?',
      'escape',
      'c',
      'escape',
      'n',
      'right',
      'enter',
      'o',
      'f',
    ];
    for (const key of keys) {
      state = press(program, state, [key]);
      expect(textOf(program, state)).not.toMatch(/of 100|\d points/);
    }
  });

  it('goes back and changes where the rules allow it, and not where they do not', () => {
    const free = programOf(handout);
    let state = press(free, free.initial, ['enter', 'enter', 'p', 'down', 'enter']);
    expect(givenFor(state.sitting, idAt(0))?.answer['second']).toBe('ultramarine-blue');
    const strict = programOf(someHandout(3, { backAllowed: false }));
    state = press(strict, strict.initial, ['enter', 'enter']);
    expect(state.screen).toMatchObject({ name: 'question', place: 1 });
    expect(press(strict, state, ['p', 'o', 'n']).screen).toEqual(state.screen);
    const ended = press(strict, state, ['enter', 'enter']);
    expect(ended.screen.name).toBe('overview');
    expect(press(strict, ended, ['enter']).screen.name).toBe('overview');
  });

  it('shows each result where the teacher allows it, and closes the question', () => {
    const program = programOf(someHandout(3, { showResult: 'each' }));
    let state = press(program, program.initial, ['enter', 'enter']);
    expect(state.screen.name).toBe('result');
    expect(textOf(program, state)).toMatch(/of 100/);
    const { sitting } = state;
    state = press(program, state, ['enter', 'p', 'down', '2']);
    expect(state.screen.name).toBe('result');
    expect(givenFor(state.sitting, idAt(0))).toEqual(givenFor(sitting, idAt(0)));
  });

  it('closes a question when its time is up and keeps what was chosen', () => {
    const program = programOf(someHandout(3, { timePerQuestionSeconds: 30 }));
    let state = press(program, program.initial, ['enter']);
    expect(textOf(program, state)).toMatch(
      /You have 0:30 .*The\s+clock\s+starts\s+when\s+you\s+press\s+Enter/s,
    );
    expect(givenFor(state.sitting, idAt(0))?.shown).toBeUndefined();
    state = press(program, state, ['enter', 'down', 'enter', 'p']);
    expect(textOf(program, state)).toMatch(/0:27 left/);
    state = program.update(state, { type: 'tick', at: state.now + 40_000 });
    expect(state.screen).toMatchObject({ name: 'covered', place: 1 });
    expect(state.notice).toMatch(/Time is up for question 1; what you took counts/);
    const back = press(program, state, ['p', 'down', 'enter']);
    expect(givenFor(back.sitting, idAt(0))).toMatchObject({
      closed: true,
      answer: { second: 'ultramarine-blue' },
    });
    // A key that comes after the time is not taken for the next question.
    const late = press(program, press(program, program.initial, ['enter', 'enter']), ['enter'], 60);
    expect(givenFor(late.sitting, idAt(0))?.answer).toEqual({});
    expect(givenFor(late.sitting, idAt(1))?.answer).toEqual({});
  });

  it('explains a question that was not answered', () => {
    const program = programOf(handout);
    let state = press(program, program.initial, ['enter', 'n', 'n', 'n', 'f', 'enter']);
    expect(state.screen.name).toBe('done');
    state = press(program, state, ['enter']);
    expect(textOf(program, state)).toMatch(/Not answered; the best: Question/);
  });

  it('goes on where it was after a break', () => {
    const program = programOf(handout);
    const left = press(program, program.initial, ['enter', 'enter', 'down', 'ctrl-c']);
    expect(left.ending).toBe(130);
    const again = programOf(handout, left.sitting);
    expect(textOf(again, again.initial)).toContain('1 of 3 answered');
    const state = press(again, again.initial, ['enter']);
    expect(state.screen).toMatchObject({
      name: 'question',
      place: 1,
      answer: givenFor(left.sitting, idAt(1))?.choices,
    });
  });

  it('says as long as it holds that an answer could not be saved', () => {
    const program = programOf(handout);
    const state = { ...press(program, program.initial, ['enter']), savingNote: 'the disk is full' };
    expect(textOf(program, state)).toContain('the disk is full');
  });
});

describe('every kind of drill as a question', () => {
  const { handout, drills: firstOfKind } = everyKindHandout({ shuffle: false, hints: true });

  it('reads back from a handout as it was written', () => {
    expect(handout.questions.map(({ drill }) => drill)).toEqual(JSON.parse(JSON.stringify(firstOfKind)));
    expect(new Set(firstOfKind.map(({ kind }) => kind)).size).toBeGreaterThan(5);
  });

  it('grades the same from the handout as from the exercises', () => {
    for (const [index, { drill }] of handout.questions.entries()) {
      const own = firstOfKind[index] as (typeof firstOfKind)[number];
      const best = kindOf(own).best(own);
      expect(kindOf(drill).best(drill)).toEqual(best);
      expect(kindOf(drill).grade(drill, best).mark).toBe(kindOf(own).grade(own, best).mark);
    }
  });

  const sizes = [
    [60, 18],
    [80, 24],
    [60, 20],
    [120, 40],
  ] as const;
  it.each(some(sizes, 2))('keeps to its %d columns and %d rows', (columns, rows) => {
    const program = sitProgram(
      { deps, handout, sitting: startSitting(handout, 'Ann', NINE), isResumed: false, save: () => {} },
      { columns, rows },
    );
    let state = press(program, program.initial, ['enter']);
    for (const _question of handout.questions) {
      const lines = textOf(program, state).split('\n');
      expect(lines.length).toBeLessThanOrEqual(rows - 1);
      for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(columns);
      expect(lines.at(-1)).toContain('Enter');
      state = press(program, state, ['enter']);
    }
    state = press(program, state, ['f', 'enter']);
    for (const place of handout.questions.keys()) {
      const open = { ...state, screen: { name: 'result', place, top: 0, from: 'done' } } as SitState;
      expect(textOf(program, open).split('\n').length).toBeLessThanOrEqual(rows - 1);
    }
  });
});
