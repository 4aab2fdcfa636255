/** Handouts and answers of drills with every way of applying, through their files and back; files of the first format. */
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import { DataError } from '../../src/errors.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { type Handout, parseHandout } from '../../src/quiz/handout.js';
import { handoutText } from '../../src/quiz/handout-text.js';
import { roof, wide } from '../drills/sample.js';
import { kindOf, STUDIO } from '../studio.js';
import { RULES, sittingOf, someHandout, someHandoutText } from './fixture.js';

const DRILLS: readonly MixDrill[] = [
  roof({ id: 'stirred', amounts: ['1:32', '1:4', '4:1'], thins: [1, 2, 4.5] }),
  roof({ id: 'glazed', amounts: [], glazes: [0.05, 0.15, 0.8] }),
  roof({
    id: 'strokes',
    amounts: [],
    strokes: [
      { share: 0.25, strength: 0.3 },
      { share: 0.25, strength: 0.65 },
    ],
  }),
  wide({
    id: 'all',
    goal: { aim: 'dull', value: [5, 6], chroma: [20, 36], hue: { near: 55, within: 40 } },
    painting: ['burnt-sienna'],
  }),
];

const text = handoutText({
  title: 'Ways',
  engine: '0.1.0',
  seed: 3,
  rules: RULES,
  questions: DRILLS.map((drill) => ({ drill, points: 1 })),
});
const handout: Handout = parseHandout(STUDIO, text, 'ways.quiz.yaml');

/** The one line that something is refused with. */
function faultOf(read: () => unknown): string {
  try {
    read();
  } catch (error) {
    expect(error).toBeInstanceOf(DataError);
    const { message } = error as Error;
    expect(message.split('\n')).toHaveLength(1);
    return message;
  }
  return '';
}

describe('a handout with glazes, strokes and water', () => {
  it('reads back what was written, and writes it again alike', () => {
    expect(handout.questions.map(({ drill }) => drill)).toEqual(DRILLS);
    // In another order of keys, which does not count.
    const again = parseHandout(STUDIO, handoutText(handout), 'again.yaml');
    expect(again).toEqual(handout);
  });

  it('marks every answer as the drill itself does', () => {
    const draw = seededDraw(9);
    for (const [at, { drill }] of handout.questions.entries()) {
      const own = DRILLS[at] as MixDrill;
      const fields = kindOf(own).fields(own);
      expect(
        kindOf(drill)
          .fields(drill)
          .map(({ id, options }) => [id, options.map((one) => one.id)]),
      ).toEqual(fields.map(({ id, options }) => [id, options.map((one) => one.id)]));
      for (let count = 0; count < 20; count++) {
        const answer = randomAnswer(fields, draw);
        expect(kindOf(drill).grade(drill, answer)).toEqual(kindOf(own).grade(own, answer));
      }
    }
  });

  it('takes the ways, the water and the aim into its digest', () => {
    const digests = [
      text,
      text.replace('0.15', '0.2'),
      text.replace('4.5', '5'),
      text.replace('share: 0.25, strength: 0.65', 'share: 0.25, strength: 0.7'),
      text.replace('aim: rich', 'aim: shade'),
    ].map((changed) => parseHandout(STUDIO, changed, 'x').digest);
    expect(new Set(digests).size).toBe(digests.length);
  });

  it('carries answers through their file', () => {
    const draw = seededDraw(4);
    const answers = DRILLS.map((drill) => randomAnswer(kindOf(drill).fields(drill), draw));
    const sitting = sittingOf(handout, 'Ann Lee', answers);
    expect(parseSitting(sittingText(sitting), 'ann.json')).toMatchObject(sitting);
    expect(sitting.answers.map(({ answer }) => answer['amount'])).toEqual(
      expect.arrayContaining([expect.stringMatching(/^glaze-/), expect.stringMatching(/^strokes-/)]),
    );
  });

  it.each([
    ['amounts: [ "1:3" ]', /an amount is one of/],
    ['glazes: [ 0 ]', /strength/],
    ['glazes: [ 0.1, 0.1 ]', /twice/],
    ['strokes: [ { share: 1, strength: 0.3 } ]', /share must be above 0 and below 1/],
    ['strokes: [ { share: 0.2, strength: 0.3 }, { share: 0.2, strength: 0.3 } ]', /strokes lists one twice/],
    ['thins: [ 0.5 ]', /a thinning is 1/],
    ['glazes: [ 0.2 ]\n      thins: [ 1, 2 ]', /thins go with stirring alone/],
    ['way: [ glaze ]', /"way" is not a known key/],
  ])('refuses %s with its line', (line, message) => {
    const plain = someHandoutText(1).replace(/^ +(glazes|strokes|thins):.*\n/gm, '');
    const isAmounts = line.startsWith('amounts');
    const changed = plain.replace(
      /^ +amounts:.*$/m,
      (amounts) => `${isAmounts ? '' : `${amounts}\n`}      ${line}`,
    );
    expect(faultOf(() => parseHandout(STUDIO, changed, 'x.yaml'))).toMatch(message);
    expect(faultOf(() => parseHandout(STUDIO, changed, 'x.yaml'))).toMatch(/^x\.yaml:\d+: /);
  });
});

describe('files of the first format', () => {
  it('a handout is refused with what to do', () => {
    const old = someHandoutText(2).replace('format: 2', 'format: 1');
    expect(faultOf(() => parseHandout(STUDIO, old, 'old.yaml'))).toBe(
      'old.yaml:5: format: format 1 is of an earlier model of mixing; write the quiz again with: mudlark quiz write',
    );
  });

  it('answers are refused with what to do', () => {
    const old = sittingText(sittingOf(someHandout(2), 'Ann', [])).replace('"format":3', '"format":1');
    expect(faultOf(() => parseSitting(old, 'ann.json'))).toMatch(
      /^ann\.json: format: format 1 is of an earlier model of mixing; let the student sit the quiz again/,
    );
    const odd = old.replace('"format":1', '"format":4');
    expect(faultOf(() => parseSitting(odd, 'ann.json'))).toBe('ann.json: format: format must be 2 or 3');
  });
});
