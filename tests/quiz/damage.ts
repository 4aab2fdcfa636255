/** Files that were cut, spliced, swapped and scribbled on, for every reader: one clear line or a value, never a crash. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { MudlarkError } from '../../src/errors.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { classListText, parseClassList } from '../../src/quiz/class-list.js';
import { parseHandout } from '../../src/quiz/handout.js';
import { parsePlan, planText } from '../../src/quiz/plan.js';
import { parseResults, resultsText } from '../../src/quiz/results.js';
import { parseRoomCounts, roomCountsText } from '../../src/quiz/room-counts.js';
import { parseTermFile } from '../../src/quiz/term/term-file.js';
import { STUDIO } from '../studio.js';
import { bestAnswers, SECRET, sittingOf, someHandout, someHandoutText } from './fixture.js';

/** What tends to upset readers. */
const SCRIBBLES = [
  '__proto__',
  'constructor',
  'toString',
  '"__proto__": {"x": 1},',
  '{',
  '}',
  '[',
  ']',
  '[[[[[[[[',
  '{{{{{{{{',
  ': ',
  '- ',
  '- - - - ',
  '? ',
  '&a ',
  '*a',
  '<<: ',
  '!!js/function ',
  '!!binary ',
  '!!set ',
  '---\n',
  '...\n',
  '|\n',
  '>\n',
  '"',
  "'",
  '\\u0000',
  '\u0000',
  '\u202e',
  '\ufeff',
  '\ud800',
  '🙂',
  '\t',
  '\r',
  '\n',
  'null',
  'true',
  '-0',
  '1e999',
  '.nan',
  '.inf',
  '0x10',
  '99999999999999999999',
  '2026-02-30T00:00:00Z',
  'a'.repeat(5000),
  '['.repeat(3000),
  ' '.repeat(300),
  '#',
  '%YAML 9.9\n',
  ',',
  '""',
] as const;

type Mutation = (text: string) => string;

const place = fc.double({ min: 0, max: 1, noNaN: true });
const at = (text: string, share: number): number => Math.floor(share * text.length);

const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.tuple(place, fc.constantFrom(...SCRIBBLES)).map(
    ([where, scribble]): Mutation =>
      (text) =>
        text.slice(0, at(text, where)) + scribble + text.slice(at(text, where)),
  ),
  fc.tuple(place, place).map(
    ([from, to]): Mutation =>
      (text) =>
        text.slice(0, Math.min(at(text, from), at(text, to))) +
        text.slice(Math.max(at(text, from), at(text, to))),
  ),
  place.map(
    (where): Mutation =>
      (text) =>
        text.slice(0, at(text, where)),
  ),
  fc.tuple(place, place, place).map(
    ([from, length, to]): Mutation =>
      (text) => {
        const piece = text.slice(at(text, from), at(text, from) + Math.floor(length * 200));
        return text.slice(0, at(text, to)) + piece + text.slice(at(text, to));
      },
  ),
  fc.tuple(place, fc.string({ unit: 'binary', maxLength: 20 })).map(
    ([where, noise]): Mutation =>
      (text) =>
        text.slice(0, at(text, where)) + noise + text.slice(at(text, where) + noise.length),
  ),
  fc.tuple(place, place).map(
    ([one, other]): Mutation =>
      (text) => {
        const lines = text.split('\n');
        const [a, b] = [Math.floor(one * lines.length), Math.floor(other * lines.length)];
        const kept = lines[a] ?? '';
        return lines
          .with(Math.min(a, lines.length - 1), lines[b] ?? '')
          .with(Math.min(b, lines.length - 1), kept)
          .join('\n');
      },
  ),
);

const mutations = fc.array(mutation, { minLength: 1, maxLength: 5 });

function survives(
  read: (text: string, name: string) => unknown,
  text: string,
  change: readonly Mutation[],
): void {
  const changed = change.reduce((before, mutate) => mutate(before), text);
  const started = process.hrtime.bigint();
  try {
    read(changed, 'file');
  } catch (error) {
    expect(error).toBeInstanceOf(MudlarkError);
    const { message } = error as Error;
    expect(message).toMatch(/^file(:\d+)?: \S/);
    expect(message.split(/[\n\r]/)).toHaveLength(1);
    expect(message.length).toBeLessThan(2000);
  }
  // A hang, not a speed: the readers take milliseconds.
  expect(Number(process.hrtime.bigint() - started) / 1e6).toBeLessThan(5000);
  expect(Object.keys(Object.prototype)).toEqual([]);
}

const handout = someHandout(2, {}, SECRET);
const handoutText = someHandoutText(2, {}, 'Week 3', SECRET);
const ann = sittingOf(handout, 'Ann Lee', bestAnswers(handout));
const marked = markClass(handout, [{ file: 'ann.json', sitting: ann }]);

/** Each reader with a sound file. */
export const READERS = [
  {
    what: 'handout',
    read: (text: string, name: string) => parseHandout(STUDIO, text, name),
    text: someHandoutText(2, { timePerQuestionSeconds: 60 }, 'Week 3', SECRET),
  },
  {
    what: 'answers',
    // Marked as well: what can be read has to be judged without a crash.
    read: (text: string, name: string) =>
      markClass(handout, [{ file: name, sitting: parseSitting(text, name) }]),
    text: sittingText(ann, SECRET),
  },
  {
    what: 'answers without seals',
    read: parseSitting,
    text: JSON.stringify({
      format: 2,
      handoutDigest: handout.digest,
      name: 'Ann Lee',
      started: ann.started,
      answers: ann.answers,
      finished: ann.finished,
    }),
  },
  {
    what: 'results',
    read: (text: string, name: string) => parseResults(STUDIO, text, name),
    text: resultsText(marked, marked.students[0] as never, handoutText, {
      engine: '0.2.0',
      released: '2026-03-08T09:00:00Z',
    }),
  },
  {
    what: 'plan',
    read: parsePlan,
    text: planText({
      name: 'Ann Lee',
      quiz: 'Week 3',
      families: [
        { family: 'darken-bright', drills: 5, level: 2, why: 'went across the wheel' },
        { family: 'dull-on-purpose', drills: 3, why: 'stayed near' },
      ],
    }),
  },
  {
    what: 'class',
    read: parseClassList,
    text: classListText({
      title: 'Evening class',
      students: [
        { name: 'Ann Lee', number: '7', group: 'morning' },
        { name: 'Ann Lee', number: 'b12' },
        { name: 'Ольга Иванова' },
      ],
    }),
  },
  {
    what: 'room counts',
    read: parseRoomCounts,
    text: roomCountsText({
      handoutDigest: handout.digest,
      held: '2026-03-02T10:00:00.000Z',
      questions: bestAnswers(handout).map((answer, index) => ({
        drill: `question-${index}`,
        offered: [{ answer, first: 3, second: 9 }],
        none: { first: 1, second: 0 },
      })),
    }),
  },
  {
    what: 'term',
    read: parseTermFile,
    text: `format: 1
title: Autumn
class: class.yaml
quizzes:
  - { handout: week1.quiz.yaml, answers: [before, 'week1.*.json'], title: Before }
  - handout: week1.quiz.yaml
    answers: [after]
`,
  },
];

/** Gives a reader damaged files. */
export function damage({ read, text }: (typeof READERS)[number], runs: number): void {
  read(text, 'file');
  fc.assert(
    fc.property(mutations, (change) => survives(read, text, change)),
    { numRuns: runs },
  );
}
