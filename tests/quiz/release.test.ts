/** Results that are kept back, the files that release them, and the teacher's key. */
import { describe, expect, it } from 'vitest';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { keyText, quizKey } from '../../src/quiz/key.js';
import { jsonKind, parseResults, resultsText } from '../../src/quiz/results.js';
import { resultsCaution, resultsWords } from '../../src/quiz/results-text.js';
import { finishSitting, mayShow, startSitting } from '../../src/quiz/sitting.js';
import { kindOf, STUDIO } from '../studio.js';
import {
  ACROSS,
  bestAnswers,
  everyKindHandout,
  NINE,
  SECRET,
  sittingOf,
  someHandout,
  someHandoutText,
} from './fixture.js';

const text = someHandoutText(4, { showResult: 'later' }, 'Week 3', SECRET);
const handout = someHandout(4, { showResult: 'later' }, SECRET);
const best = bestAnswers(handout);
const MADE = { engine: '0.2.0', released: '2026-03-08T09:00:00.000Z' };

const result = markClass(handout, [
  {
    file: 'ann.json',
    sitting: parseSitting(sittingText(sittingOf(handout, 'Ann Lee', [best[0], ACROSS]), SECRET), 'ann.json'),
  },
]);
const [ann] = result.students;
if (ann === undefined) throw new Error('the class is empty');
const file = resultsText(result, ann, text, MADE);
const read = (changed = file) => parseResults(STUDIO, changed, 'ann.results.json');

describe('the results of who typed a number', () => {
  it('bear the name that the class has', () => {
    const sitting = sittingOf(handout, '7', best);
    const list = { students: [{ name: 'Eva Moss', number: '7' }] };
    const marked = markClass(handout, [{ file: '7.json', sitting }], { list });
    const [eva] = marked.students;
    if (eva === undefined) throw new Error('the class is empty');
    const released = parseResults(STUDIO, resultsText(marked, eva, text, MADE), 'eva.results.json');
    expect([released.name, released.sitting.name, released.isSound]).toEqual(['Eva Moss', '7', true]);
    expect(resultsWords(released, 80)).toMatch(/^Week 3: results of Eva Moss$/m);
    expect(read().name).toBe('Ann Lee');
  });
});

describe('what may be shown', () => {
  const open = startSitting(handout, 'Ann', NINE);
  const done = finishSitting(open, NINE + 1);

  it.each([
    ['end', 'nothing', 'all'],
    ['each', 'closed', 'all'],
    ['later', 'nothing', 'nothing'],
  ] as const)(
    'with showResult %s: %s while it goes on, %s when it is handed in, all when it is released',
    (showResult, during, after) => {
      const rules = { ...handout.rules, showResult };
      expect([mayShow(rules, open, false), mayShow(rules, done, false)]).toEqual([during, after]);
      expect([mayShow(rules, open, true), mayShow(rules, done, true)]).toEqual(['all', 'all']);
    },
  );
});

describe('a result file', () => {
  it('holds marks, best answers and reasons, and opens by itself', () => {
    const released = read();
    expect(released).toMatchObject({ ...MADE, isSound: true, points: ann.points, possible: 6 });
    expect(released.sitting).toEqual(ann.sitting);
    expect(released.handout.digest).toBe(handout.digest);
    expect(released.results.map(({ mark }) => mark)).toEqual(ann.marks.map(({ mark }) => mark));
    for (const [index, { best: label, yours, why }] of released.results.entries()) {
      const { drill } = handout.questions[index] as (typeof handout.questions)[number];
      expect(label).toBe(kindOf(drill).label(drill, kindOf(drill).best(drill)));
      expect(yours === undefined).toBe(index > 1);
      expect(why.length).toBeGreaterThan(0);
    }
    const words = resultsWords(released, 60);
    expect(words).toMatch(/^Week 3: results of Ann Lee\n/);
    expect(words).toMatch(/Not answered: 0 of 1 points/);
    for (const line of words.split('\n')) expect(line.length).toBeLessThanOrEqual(60);
    expect(resultsCaution(released)).toBeUndefined();
  });

  it('says when it was changed: marks, words, answers or the moment', () => {
    const changes = [
      file.replace(`"points": ${ann.points}`, '"points": 6'),
      file.replace(/"mark": \d+/, '"mark": 99'),
      file.replace('Ann Lee', 'Ben Lee'),
      file.replace('"released": "2026-03-08', '"released": "2026-03-09'),
      file.replace(/"seal": "(?=[0-9a-f]{64}"\n\})/, '"seal": "0'),
    ];
    for (const changed of changes) {
      expect(changed).not.toBe(file);
      expect(read(changed).isSound).toBe(false);
      expect(resultsCaution(read(changed))).toMatch(/changed after it was released/);
    }
    expect(read(JSON.stringify(JSON.parse(file))).isSound).toBe(true);
  });

  it('is refused in one line when it is not one', () => {
    expect(() => read(file.replace('"format": 1', '"format": 2'))).toThrow(
      /^ann\.results\.json: format: format must be 1$/,
    );
    expect(() => read(file.replace('seed: 42', 'seed: 43'))).toThrow(/belong to another handout/);
    expect(() => read(file.replace('seed: 42', 'sed: 42'))).toThrow(/^ann\.results\.json: its handout:\d+: /);
    expect(() => read(`{"mark": 1, ${file.slice(1)}`)).toThrow(/"mark" is not a known key/);
    expect(() => read('[')).toThrow(/not JSON/);
  });

  it('is told from answers and from a handout', () => {
    expect(jsonKind(file)).toBe('results');
    expect(jsonKind(sittingText(ann.sitting, SECRET))).toBe('answers');
    expect([jsonKind(text), jsonKind('{'), jsonKind('{"format": 3}'), jsonKind('')]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('of a handout without a secret says that it is not sealed', () => {
    const plainText = someHandoutText(2);
    const plain = someHandout(2);
    const class2 = markClass(plain, [{ file: 'a', sitting: sittingOf(plain, 'Ann', []) }]);
    const released = read(resultsText(class2, class2.students[0] as never, plainText, MADE));
    expect(released.isSound).toBeUndefined();
    expect(resultsCaution(released)).toMatch(/no seal/);
  });
});

describe('the key', () => {
  const { handout: all } = everyKindHandout();
  const key = quizKey(all);

  it('gives the best answer of every kind of drill full marks, and explains it', () => {
    for (const [index, { best: entry, why, possible, alsoGood, traps }] of key.entries()) {
      const { drill } = all.questions[index] as (typeof all.questions)[number];
      expect(kindOf(drill).grade(drill, entry.answer).mark).toBe(100);
      expect(entry.points).toBe(possible);
      expect(why.length).toBeGreaterThan(0);
      for (const answer of alsoGood)
        expect(kindOf(drill).grade(drill, answer.answer).mark).toBeGreaterThanOrEqual(85);
      for (const answer of traps) expect(kindOf(drill).grade(drill, answer.answer).mark).toBeLessThan(85);
    }
  });

  it('keeps to the width of the page', () => {
    const page = keyText(all, key, 70);
    for (const line of page.split('\n')) expect([...line].length).toBeLessThanOrEqual(70);
    for (const { best: entry } of key)
      expect(page.replace(/\s+/g, ' ')).toContain(entry.label.replace(/\s+/g, ' '));
  });
});
