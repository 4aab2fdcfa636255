import { describe, expect, it } from 'vitest';
import { FAMILY_IDS } from '../../src/drills/families.js';
import { paintsIn } from '../../src/drills/paint-names.js';
import { chooseQuestions } from '../../src/quiz/choose.js';
import { someDrill } from './fixture.js';

const drills = Array.from({ length: 20 }, (_, index) => someDrill(index));
const wish = { families: [], count: 8, seed: 1 };

describe('choosing questions', () => {
  it('takes as many as asked, each once, evenly over the families', () => {
    const chosen = chooseQuestions(wish, drills);
    expect(new Set(chosen.map(({ id }) => id)).size).toBe(8);
    expect(chosen.filter(({ family }) => family === 'darken-bright')).toHaveLength(4);
  });

  it('gives the same questions for the same seed, and others for another', () => {
    const ids = (seed: number) => chooseQuestions({ ...wish, seed }, drills).map(({ id }) => id);
    expect(ids(5)).toEqual(ids(5));
    expect(ids(6)).not.toEqual(ids(5));
  });

  it('begins with the drills that are named, in that order, and fills up with others', () => {
    const named = ['question-7', 'question-2', 'question-7'];
    const ids = (count: number) =>
      chooseQuestions({ ...wish, count, drills: named }, drills).map(({ id }) => id);
    expect(ids(2)).toEqual(['question-7', 'question-2']);
    expect(ids(6).slice(0, 2)).toEqual(['question-7', 'question-2']);
    expect(new Set(ids(6)).size).toBe(6);
    expect(() => ids(1)).toThrow(/2 drills are named for a quiz of 1 questions/);
    expect(() => chooseQuestions({ ...wish, drills: ['question-77'] }, drills)).toThrow(
      /no drill is called "question-77"\. Did you mean question-7/,
    );
  });

  it('keeps to level, families and paints', () => {
    const one = chooseQuestions({ ...wish, count: 2, level: 3, families: ['darken-bright'] }, drills);
    expect(one.every(({ level, family }) => level === 3 && family === 'darken-bright')).toBe(true);
    const paints = paintsIn(someDrill(0));
    const same = chooseQuestions({ ...wish, count: 2, paints }, drills);
    for (const drill of same) expect(paints).toEqual(expect.arrayContaining(paintsIn(drill)));
  });

  it('makes new drills where the written ones do not reach, and never the same twice', () => {
    let made = 0;
    const make = (family: string, seed: number) => ({
      ...someDrill(0),
      id: `made-${made++ % 5}`,
      family,
      level: 1 + (seed % 3),
    });
    const chosen = chooseQuestions({ ...wish, count: 14, families: ['darken-bright'] }, drills, make);
    expect(chosen).toHaveLength(14);
    expect(new Set(chosen.map(({ id }) => id)).size).toBe(14);
  });

  it('says what there is when there is not enough', () => {
    expect(() => chooseQuestions({ ...wish, count: 30 }, drills)).toThrow(
      /there are 20 drills in .*, not 30/,
    );
    expect(() => chooseQuestions({ ...wish, families: ['darken-brite'] }, drills)).toThrow(
      /Did you mean darken-bright/,
    );
    // Of an id that is near none, the ids are said all the same.
    expect(() => chooseQuestions({ ...wish, families: ['glazing'] }, drills)).toThrow(
      `no family is called "glazing"; there are: ${FAMILY_IDS.join(', ')}.`,
    );
    for (const count of [0, 61, 1.5, Number.NaN])
      expect(() => chooseQuestions({ ...wish, count }, drills)).toThrow(/1 to 60/);
  });
});
