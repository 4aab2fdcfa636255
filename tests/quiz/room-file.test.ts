/** The file of a room: never another's replaced, gone on with, refused with its reason. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { openRoom } from '../../src/quiz/files/room-file.js';
import { letteredAnswers } from '../../src/quiz/lettered.js';
import { parseRoomCounts, roomCountsText } from '../../src/quiz/room-counts.js';
import { inLetters, votesOf, withVote } from '../../src/quiz/room-votes.js';
import { STUDIO } from '../studio.js';
import { someHandout } from './fixture.js';
import { noCounts } from './room-stands.js';

const handout = someHandout(2);
const [first] = handout.questions as [(typeof handout.questions)[number]];
const letters = letteredAnswers(STUDIO, first.drill, handout.seed);
const order = handout.questions.map(({ drill }) => drill.id);
const vote = letters.map((_, at) => at + 1).concat(3);
const counts = withVote(noCounts(handout), order, { drill: first.drill.id, letters, turn: 'first', vote });

let path = '';
beforeEach(() => {
  path = join(mkdtempSync(join(tmpdir(), 'mudlark-room-')), 'week3.quiz.yaml');
});
const beside = (name: string): string => join(path, '..', name);

describe('the file of a room', () => {
  it('is made with the first vote, read back, and gone on with', () => {
    const { fresh, found } = openRoom(path, handout);
    expect([found, existsSync(fresh.path)]).toEqual([undefined, false]);
    fresh.save(counts);
    const again = openRoom(path, handout);
    expect(again.found?.counts).toEqual(counts);
    expect(votesOf(again.found?.counts.questions[0])).toEqual({ first: vote });
    const twice = withVote(counts, order, { drill: first.drill.id, letters, turn: 'second', vote: [9] });
    again.found?.save(twice);
    expect(parseRoomCounts(readFileSync(beside('week3.room.json'), 'utf8'), 'x')).toEqual(twice);
    again.fresh.save(counts);
    expect(readdirSync(beside('.')).sort()).toEqual(['week3.2.room.json', 'week3.room.json']);
  });

  it.each([
    [
      'of another handout',
      roomCountsText(noCounts({ ...handout, digest: `sha256:${'0'.repeat(64)}` })),
      /another handout/,
    ],
    ['damaged', '{"format":1', /week3\.room\.json: /],
    [
      'with other answers than have letters',
      roomCountsText({
        ...counts,
        questions: counts.questions.map((one) => ({ ...one, offered: one.offered.slice(1) })),
      }),
      /other answers than have letters/,
    ],
  ])('%s stays as it is, and another is made', (_what, text, why) => {
    writeFileSync(beside('week3.room.json'), text);
    const { found, note, fresh } = openRoom(path, handout);
    expect(found).toBeUndefined();
    expect(note).toMatch(why);
    fresh.save(counts);
    expect(readFileSync(beside('week3.room.json'), 'utf8')).toBe(text);
  });

  it('made or changed meanwhile by another window is not written over', () => {
    const { fresh } = openRoom(path, handout);
    writeFileSync(fresh.path, 'mine');
    expect(() => fresh.save(counts)).toThrow(/another window or program has made this file/);
    expect(readFileSync(fresh.path, 'utf8')).toBe('mine');
  });
});

describe('votes', () => {
  it('are put in the order of the letters', () => {
    const turned = counts.questions.map((one) => ({ ...one, offered: [...one.offered].reverse() }));
    expect(inLetters({ ...counts, questions: turned }, () => letters)).toEqual(counts);
  });

  it('of nobody are none', () => {
    const gone = withVote(counts, order, { drill: first.drill.id, letters, turn: 'first', vote: [0] });
    expect(gone.questions).toEqual([]);
  });
});
