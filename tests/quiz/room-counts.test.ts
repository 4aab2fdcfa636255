import { describe, expect, it } from 'vitest';
import { analyseClass } from '../../src/quiz/analysis.js';
import { markClass } from '../../src/quiz/class.js';
import { reportHtml } from '../../src/quiz/report-html.js';
import { reportText } from '../../src/quiz/report-text.js';
import {
  isRoomCounts,
  parseRoomCounts,
  type RoomCounts,
  roomCountsText,
} from '../../src/quiz/room-counts.js';
import { kindOf } from '../studio.js';
import { ACROSS, bestAnswers, someHandout } from './fixture.js';

const handout = someHandout(3);
const best = bestAnswers(handout);
const counts: RoomCounts = {
  handoutDigest: handout.digest,
  held: '2026-03-02T10:00:00.000Z',
  questions: [
    {
      drill: 'question-1',
      offered: [
        { answer: best[1] ?? {}, first: 7, second: 15 },
        { answer: ACROSS, first: 14, second: 9 },
      ],
      none: { first: 3, second: 0 },
    },
    { drill: 'question-0', offered: [{ answer: best[0] ?? {}, first: 24 }] },
  ],
};
const text = roomCountsText(counts);
const mark = (room: RoomCounts) => markClass(handout, [], { rooms: [{ file: 'room.json', counts: room }] });

describe('the counts of a room', () => {
  it('read back as written, and are told from a sitting', () => {
    expect(parseRoomCounts(text, 'room.json')).toEqual(counts);
    expect(isRoomCounts(text)).toBe(true);
    for (const other of ['{"answers":[]}', '"questions"', '["questions"]', '{"questions"', 'null'])
      expect(isRoomCounts(other)).toBe(false);
  });

  it.each([
    ['"first": 7', '"first": -7', /offered\.0\.first: must be a whole number of hands, 0 to 999/],
    ['"first": 7', '"first": 1000', /0 to 999/],
    ['"first": 7', '"frist": 7', /"frist" is not a known key here\. Did you mean first\?/],
    ['"second": 15', '"third": 15', /"third" is not a known key/],
    ['"format": 1', '"format": 9', /format must be 1/],
    ['question-0', 'question-1', /"question-1" is counted twice/],
    ['10:00:00.000Z', '10:00', /date and time with its zone/],
  ])('%s for %s is refused in one line', (was, is, message) => {
    expect(() => parseRoomCounts(text.replace(was, is), 'room.json')).toThrow(message);
  });

  it('with a second vote for a part, or one answer twice, are refused', () => {
    const [question] = counts.questions as [RoomCounts['questions'][number]];
    const [one, other] = question.offered;
    const withOffered = (offered: unknown[]) =>
      JSON.stringify({ ...JSON.parse(text), questions: [{ ...question, offered }] });
    expect(() => parseRoomCounts(withOffered([one, { ...other, second: undefined }]), 'r')).toThrow(
      /some of its answers only/,
    );
    expect(() => parseRoomCounts(withOffered([one, one]), 'r')).toThrow(/offers one answer twice/);
  });

  it('mark as a class does: right by hands, first vote beside the second, whole answers graded', () => {
    const { rooms, setAside } = mark(counts);
    expect(setAside).toEqual([]);
    const [first, second] = rooms[0]?.questions ?? [];
    expect([first?.index, second?.index]).toEqual([0, 1]);
    const { drill } = handout.questions[1] as (typeof handout.questions)[number];
    const across = kindOf(drill).grade(drill, ACROSS);
    expect(second?.answers.map(({ mark: points }) => points)).toEqual([100, across.mark]);
    expect(second?.first).toMatchObject({ hands: 24, right: 7 });
    expect(second?.second).toMatchObject({ hands: 24, right: 15 });
    // Of 7 in 24 and 15 in 24 by the score method: computed with scipy 1.17.1, binomtest(...).proportion_ci(method="wilson").
    for (const [vote, [low, high]] of [
      [second?.first, [0.1491, 0.4917]],
      [second?.second, [0.4271, 0.7884]],
    ] as const) {
      expect(vote?.interval?.[0]).toBeCloseTo(low, 4);
      expect(vote?.interval?.[1]).toBeCloseTo(high, 4);
    }
    expect(rooms[0]?.misconceptions[0]).toMatchObject({
      id: across.idea,
      answers: 9,
      cost: 9 * (100 - across.mark),
    });
  });

  it('of another handout, or with an answer that a question does not have, are set aside by name', () => {
    const refused = [
      { ...counts, handoutDigest: `sha256:${'0'.repeat(64)}` },
      { ...counts, questions: [{ drill: 'question-9', offered: [{ answer: {}, first: 1 }] }] },
      { ...counts, questions: [{ drill: 'question-0', offered: [{ answer: { second: 'mud' }, first: 1 }] }] },
    ].map((room) => mark(room).setAside);
    expect(refused.map(([aside]) => [aside?.file, aside?.isRefused])).toEqual(
      Array(3).fill(['room.json', true]),
    );
    expect(refused.map(([aside]) => aside?.why)).toEqual([
      'counts of another handout, or of one changed since',
      'the handout has no question "question-9"',
      'the question "question-0" is counted with an answer that it does not have',
    ]);
  });

  it('stand in text and page, with what to teach next', () => {
    const result = mark(counts);
    const analysis = analyseClass(result);
    const report = reportText(result, analysis, { columns: 80, full: '#', empty: '.' });
    for (const output of [report, reportHtml(result, analysis)]) {
      expect(output.replace(/\s+/g, ' ')).toMatch(
        /right 7 of 24 \(29 %, 15 % to 49 %\); after talking 15 of 24 \(63 %, 43 % to 79 %\)/,
      );
      expect(output).toContain('none of these: 3, then 0');
      expect(output).toMatch(/hands that /);
      expect(output).not.toMatch(/undefined|NaN/);
    }
  });
});
