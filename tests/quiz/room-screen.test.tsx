import { afterEach, describe, expect, it } from 'vitest';
import { DataError } from '../../src/errors.js';
import type { RoomCounts } from '../../src/quiz/room-counts.js';
import { UNICODE } from '../../src/tui/kit/glyphs.js';
import { handsBar } from '../../src/tui/quiz/room/bars.js';
import { largeText } from '../../src/tui/quiz/room/large.js';
import { roomLines } from '../../src/tui/quiz/room/program.js';
import { kindOf } from '../studio.js';
import { Stills } from '../tui/still.js';
import { bestAnswers, everyKindHandout, someHandout } from './fixture.js';
import { counted, noCounts, press, type RoomProgram, roomOn, typing } from './room-stands.js';

const handout = someHandout(2);
let stills: Stills | undefined;
afterEach(() => {
  stills?.close();
  stills = undefined;
});
const textOf = (program: RoomProgram, state: RoomProgram['initial']): string => {
  stills ??= new Stills();
  return stills.of(state, program).text;
};

describe('a quiz in the room', () => {
  it('asks with every whole answer and its letter, the best among them', () => {
    const program = roomOn(handout);
    const letters = program.room.letters[0] ?? [];
    expect(letters.length).toBeLessThanOrEqual(6);
    expect(letters.map(({ answer }) => answer)).toContainEqual(bestAnswers(handout)[0]);
    const shown = textOf(program, program.initial);
    for (const { label } of letters) expect(shown.replace(/\s+/g, ' ')).toContain(label);
  });

  it('takes hands out of sight and shows them only when the last is typed', () => {
    const program = roomOn(handout);
    const slots = (program.room.letters[0]?.length ?? 0) + 1;
    // Hands of as many figures look the same until the last is typed.
    const [some, others] = [31, 57].map((each) => typing(Array<number>(slots).fill(each))) as [
      string[],
      string[],
    ];
    for (let typed = 1; typed < some.length; typed++) {
      const states = [some, others].map((keys) =>
        press(program, program.initial, ['enter', ...keys.slice(0, typed)]),
      );
      expect(states.map(({ stage }) => stage.name)).toEqual(['count', 'count']);
      expect(states.map(({ counts }) => counts.questions)).toEqual([[], []]);
      const [one, other] = states.map((state) => textOf(program, state));
      expect(one).toBe(other);
    }
    const shown = textOf(program, press(program, program.initial, ['enter', ...others]));
    expect(shown.match(/\b57\b/g)).toHaveLength(slots + 1);
    expect(shown).toContain('█');
    expect(shown).not.toMatch(/of 100/);
  });

  it('types a number anew after going back, takes a figure back, and keeps to what a room holds', () => {
    const program = roomOn(handout);
    const typed = (keys: string[]) => {
      const { stage } = press(program, program.initial, ['enter', ...keys]);
      return stage.name === 'count' ? stage.typed.filter((number) => number !== '') : stage.name;
    };
    expect(typed(['1', '2', 'erase'])).toEqual(['1']);
    expect(typed(['9', '9', '9', '4'])).toEqual(['999']);
    expect(typed(['1', '2', 'enter', '5', 'up'])).toEqual(['12', '5']);
    expect(typed(['1', '2', 'enter', '5', 'up', '7'])).toEqual(['7', '5']);
    expect(typed(['1', '2', 'enter', '5', 'escape', 'erase', 'down', '3'])).toEqual(['1', '3']);
    expect(typed(['escape'])).toBe('question');
  });

  it('takes no digit for anything but hands: on the question it begins the count, where hands are shown it does nothing', () => {
    const program = roomOn(handout);
    const begun = press(program, program.initial, ['2', '3', 'down', '4']);
    expect(begun.stage).toMatchObject({ name: 'count', typed: expect.arrayContaining(['23', '4']), at: 1 });
    const shown = counted(program, program.initial, [14, 7, 3]);
    for (const digit of '0123456789') expect(press(program, shown, [digit])).toBe(shown);
    const second = press(program, shown, ['h', '9']);
    expect([second.turn, second.stage]).toEqual([
      'second',
      expect.objectContaining({ name: 'count', at: 0 }),
    ]);
    const last = press(program, begun, Array(12).fill('down'));
    expect(last.stage).toMatchObject({ name: 'count', at: program.room.letters[0]?.length });
    expect(press(program, last, ['enter']).stage.name).toBe('shown');
    for (const [state, words] of [
      [program.initial, /0-9 hands for A/],
      [begun, /0-9 how many {2,}Enter next letter {2,}↑↓ move/],
    ] as const)
      expect(textOf(program, state).split('\n').slice(-2).join(' ')).toMatch(words);
    const full = press(program, program.initial, ['9', '9', '9', '4']);
    expect(textOf(program, full)).toContain('At most 999 hands; 4 was not taken.');
  });

  it('says so when two answers have equal hands, and opens neither by itself', () => {
    const program = roomOn(handout);
    const tied = counted(program, program.initial, [4, 9, 9]);
    expect(textOf(program, tied)).toMatch(/a tie: B and C with 9 of 22 each/);
    expect(press(program, tied, ['enter'])).toBe(tied);
    const opened = press(program, tied, ['c']);
    expect(opened.stage).toMatchObject({ name: 'result', at: 2 });
    expect(roomLines(program.room, tied)[0]).toMatch(/a tie: B and C with 9 of 22 each$/);
  });

  it('says so when most hands are for none of them', () => {
    const program = roomOn(handout);
    const slots = program.room.letters[0]?.length ?? 0;
    const state = counted(program, program.initial, [...Array<number>(slots).fill(1), 8]);
    expect(textOf(program, state)).toMatch(/Most hands: 8 of \d+ for none of these/);
    expect(press(program, state, ['enter'])).toBe(state);
  });

  it('opens any of the answers with its mark and why, with or without hands', () => {
    const program = roomOn(handout);
    const { drill } = handout.questions[0] as (typeof handout.questions)[number];
    for (const before of [counted(program, program.initial, [3, 1]), press(program, program.initial, ['o'])])
      for (const { letter, answer } of program.room.letters[0] ?? []) {
        const state = press(program, before, [letter.toLowerCase()]);
        const { mark, reason } = kindOf(drill).grade(drill, answer) as { mark: number; reason?: string };
        const shown = textOf(program, state);
        expect(shown).toContain(`${mark} of 100`);
        if (typeof reason === 'string') expect(shown).toContain(reason.slice(0, 20));
        expect(press(program, state, ['escape']).stage.name).toBe('shown');
        expect(press(program, state, ['right', 'left']).stage).toEqual(state.stage);
      }
  });

  it('votes again after talking and shows both votes, the last one leading', () => {
    const program = roomOn(handout);
    let state = counted(program, program.initial, [14, 7, 3]);
    state = press(program, state, ['h']);
    expect(textOf(program, state)).toContain('Second vote');
    state = counted(program, state, [5, 15, 4]);
    const shown = textOf(program, state);
    expect(shown).toMatch(/First vote: 14 of 24 for A\. After talking: 15 of\s+24 for B/);
    expect(shown).toMatch(/1st +14 +░+/);
    expect(shown).toMatch(/2nd +15 +█+/);
    expect(press(program, state, ['enter']).stage).toMatchObject({ at: 1 });
    // A second vote is counted again, or taken away by counting nothing; the first stands.
    const again = press(program, state, [
      'r',
      ...typing(Array(program.room.letters[0]?.length ?? 0).fill(0)),
      'enter',
    ]);
    expect(again.counts.questions[0]?.offered[0]).toEqual({
      answer: program.room.letters[0]?.[0]?.answer,
      first: 14,
    });
  });

  it('keeps counts after each completed vote, and says as long as it holds that they could not be kept', () => {
    const kept: RoomCounts[] = [];
    let isFull = false;
    const save = (counts: RoomCounts): void => {
      if (isFull) throw new DataError('week3.room.json: the disk is full');
      kept.push(counts);
    };
    const program = roomOn(handout, undefined, undefined, { save });
    const keep = (state: RoomProgram['initial']) => program.keep?.(state) ?? state;
    let state = keep(press(program, program.initial, ['enter', '4', 'enter']));
    expect(kept).toEqual([]);
    state = keep(counted(program, program.initial, [4]));
    state = keep(press(program, state, ['a']));
    expect(kept.map(({ questions }) => questions.length)).toEqual([1]);
    isFull = true;
    state = keep(counted(program, press(program, state, ['enter']), [2]));
    expect(textOf(program, state)).toContain('the disk is full');
    isFull = false;
    expect(keep(press(program, state, ['n'])).savingNote).toBeUndefined();
    expect(kept.at(-1)?.questions.map(({ drill }) => drill)).toEqual(['question-0', 'question-1']);
  });

  it('goes on with counts that are there, or begins another class', () => {
    const first = roomOn(handout);
    const { counts } = counted(first, first.initial, [4, 2]);
    const found = { file: 'week3.room.json', counts };
    const program = roomOn(handout, undefined, undefined, { found, fresh: 'week3.2.room.json' });
    expect(textOf(program, program.initial)).toMatch(/week3\.room\.json has the counts of 1 of 2 questions/);
    const on = press(program, program.initial, ['enter']);
    expect(on).toMatchObject({ place: 1, goesOn: true, counts });
    expect(press(program, on, ['p']).stage.name).toBe('shown');
    const anew = press(program, program.initial, ['n']);
    expect(anew).toMatchObject({ place: 0, goesOn: false, counts: { questions: [] } });
    const refused = roomOn(handout, undefined, undefined, {
      note: 'week3.room.json: damaged',
      fresh: 'x.json',
    });
    expect(textOf(refused, refused.initial)).toMatch(/damaged\. That file stays as it is/);
    expect(press(refused, refused.initial, ['enter']).stage.name).toBe('question');
  });

  it('runs a timer: minutes and seconds, half a minute more or less, its end told', () => {
    const program = roomOn(handout);
    expect(program.ticks?.(program.initial)).toBe(false);
    let state = press(program, program.initial, ['+', 't']);
    expect(program.ticks?.(state)).toBe(true);
    state = program.update(state, { type: 'tick', at: state.now + 26_000 });
    expect(textOf(program, state)).toMatch(/1:04 +1 of 2/);
    state = press(program, state, ['-']);
    expect(textOf(program, state)).toMatch(/0:33 +1 of 2/);
    state = program.update(state, { type: 'tick', at: state.now + 60_000 });
    expect(textOf(program, state)).toMatch(/time is up +1 of 2/);
    expect(program.ticks?.(state)).toBe(false);
    expect(press(program, state, ['t']).timerEnd).toBeUndefined();
    expect(counted(program, state, [3]).timerEnd).toBeUndefined();
  });

  it('ends with a list and prints what was counted', () => {
    const program = roomOn(handout);
    const some = counted(program, program.initial, [3, 1]);
    const over = press(program, some, ['n', 'n']);
    expect(over.isOver).toBe(true);
    expect(textOf(program, over)).toMatch(/no hands/);
    const lines = roomLines(program.room, over);
    const mark = program.room.grader.grade(0, program.room.letters[0]?.[0]?.answer ?? {}).mark;
    expect(lines[0]).toBe(`1. Question 0: 3 of 4 for A, ${mark} of 100`);
    expect(lines[1]).toMatch(/^ {3}A .*: 3 hands; /);
    expect(press(program, over, ['enter']).stage.name).toBe('shown');
    expect(press(program, over, ['q']).ending).toBe(0);
    expect(press(program, some, ['escape', 'enter']).ending).toBe(0);
    expect(press(program, some, ['ctrl-c']).ending).toBe(130);
    expect(roomLines(program.room, { ...over, counts: noCounts(handout) })).toEqual([]);
  });

  it('draws a bar for any hand at all, and letters of dots', () => {
    expect([0, 1, 50, 100].map((hands) => handsBar(hands, 100, 10, '#').length)).toEqual([0, 1, 5, 10]);
    expect(largeText('C', 'half', UNICODE)).toEqual(['▄▀▀▀▀', '█    ', ' ▀▀▀▀']);
    expect(new Set([...'ABCDEF'].map((one) => largeText(one, 'full', UNICODE).join())).size).toBe(6);
  });

  it('offers at most six answers to every kind of drill', () => {
    const program = roomOn(everyKindHandout().handout);
    for (const letters of program.room.letters) expect(letters.length).toBeLessThanOrEqual(6);
  });
});
