import { renderToString } from 'ink';
import { describe, expect, it } from 'vitest';
import { UNICODE } from '../../src/tui/kit/glyphs.js';
import type { Program } from '../../src/tui/kit/program.js';
import { Scene } from '../../src/tui/kit/shell.js';
import type { QuizDeps } from '../../src/tui/quiz/classroom.js';
import { handsBar } from '../../src/tui/quiz/room/parts.js';
import { roomLines, roomProgram } from '../../src/tui/quiz/room/program.js';
import {
  handsWords,
  isCounted,
  type RoomState,
  roomAnswer,
  roomGrade,
} from '../../src/tui/quiz/room/state.js';
import { kindOf } from '../studio.js';
import { bestAnswers, NINE, someHandout } from './fixture.js';

const deps: QuizDeps = {
  settings: { valueScale: 'paper-first', palette: 'six', screenReader: false, colour: 'full' },
  env: { LANG: 'C.UTF-8', TERM: 'xterm-256color' },
  noColourFlag: false,
  now: () => NINE,
};
const handout = someHandout(2);
const start = (columns = 80, rows = 24) => roomProgram(handout, deps, { columns, rows });

function press(program: Program<RoomState>, state: RoomState, keys: readonly string[]): RoomState {
  return keys.reduce((before, key) => program.update(before, { type: 'key', key, at: NINE }), state);
}
const textOf = (program: Program<RoomState>, state: RoomState): string =>
  renderToString(<Scene program={program} state={state} />, { columns: state.size.columns }).replace(
    /\u001b\[[0-9;]*m/g,
    '',
  );

describe('a quiz in the room', () => {
  it('counts hands, shows them, then what the answer with most hands gives, then the next question', () => {
    const program = start();
    let state = press(program, program.initial, [
      'enter',
      '1',
      '2',
      'down',
      '7',
      'down',
      '9',
      'erase',
      'right',
    ]);
    expect(state.counts[0]?.[0]).toEqual([12, 7, 1, 0]);
    expect(textOf(program, state)).toMatch(/A +alizarin crimson +12/);
    state = press(program, state, ['enter', 'down', 'down', '5']);
    expect(state.counts[0]?.[1]?.slice(0, 4)).toEqual([0, 0, 5, 0]);
    state = press(program, state, ['enter']);
    expect(state.stage.name).toBe('shown');
    const shown = textOf(program, state);
    expect(shown).toMatch(/20 hands/);
    expect(shown).not.toMatch(/of 100/);
    expect(roomAnswer(program.room, state, 0)).toEqual({ second: 'alizarin-crimson', amount: '1:8' });
    expect(handsWords(program.room, state, 0)).toBe('12 of 20, 5 of 5');
    state = press(program, state, ['enter']);
    const { drill } = handout.questions[0] as (typeof handout.questions)[number];
    const { mark } = kindOf(drill).grade(drill, { second: 'alizarin-crimson', amount: '1:8' });
    expect(textOf(program, state)).toContain(`${mark} of 100`);
    state = press(program, state, ['enter']);
    expect(state).toMatchObject({ place: 1, stage: { name: 'question' } });
    expect(press(program, state, ['p']).stage.name).toBe('shown');
  });

  it('speaks of the best answer where no hands were counted', () => {
    const program = start();
    const state = press(program, program.initial, ['enter', 'enter', 'enter', 'enter']);
    expect(state.stage.name).toBe('result');
    expect(roomAnswer(program.room, state, 0)).toEqual(bestAnswers(handout)[0]);
    expect(textOf(program, state)).toContain('The best answer');
    expect(isCounted(state, 0)).toBe(false);
    expect(roomLines(program.room, state)).toEqual([]);
  });

  it('keeps counts to what a room holds', () => {
    const program = start();
    const many = press(program, program.initial, ['enter', '9', '9', '9', '4']);
    expect(many.counts[0]?.[0]?.[0]).toBe(4);
    const none = press(program, program.initial, ['enter', 'left', 'erase', 'left']);
    expect(none.counts[0]?.[0]?.[0]).toBe(0);
    expect(
      press(program, press(program, program.initial, ['enter', '9', '9', '9']), ['right'])
        .counts[0]?.[0]?.[0],
    ).toBe(999);
  });

  it('ends with a list and prints what was counted', () => {
    const program = start();
    const counted = press(program, program.initial, ['enter', '3', 'enter', '3', 'enter']);
    const over = press(program, counted, ['n', 'n']);
    expect(over.isOver).toBe(true);
    expect(textOf(program, over)).toMatch(/no hands/);
    const lines = roomLines(program.room, over);
    expect(lines[0]).toBe('1. Question 0');
    expect(lines.join('\n')).toContain(`${roomGrade(program.room, over, 0).mark} of 100`);
    expect(press(program, over, ['q']).ending).toBe(0);
    expect(press(program, counted, ['escape', 'enter']).ending).toBe(0);
    expect(press(program, counted, ['ctrl-c']).ending).toBe(130);
  });

  it.each([
    [80, 24],
    [120, 40],
    [60, 20],
    [60, 18],
  ])('keeps to its %d columns and %d rows', (columns, rows) => {
    const program = start(columns, rows);
    let state = program.initial;
    for (const key of [
      'enter',
      '7',
      'down',
      '5',
      'enter',
      '4',
      'enter',
      'enter',
      '?',
      'escape',
      'enter',
      'escape',
    ]) {
      state = press(program, state, [key]);
      const lines = textOf(program, state).split('\n');
      expect(lines.length).toBeLessThanOrEqual(rows - 1);
    }
  });

  it('draws a bar for any hand at all', () => {
    expect([0, 1, 50, 100].map((hands) => handsBar(hands, 100, 10, UNICODE).length)).toEqual([0, 1, 5, 10]);
  });
});
