import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../../../src/chance/draw.js';
import type { Drill } from '../../../../src/drills/kinds/index.js';
import { mixKind as mixKindIn } from '../../../../src/drills/kinds/mix/index.js';
import type { MixDrill } from '../../../../src/drills/kinds/mix/schema.js';
import { randomAnswer } from '../../../../src/drills/random-answer.js';
import { readDrillFolder } from '../../../../src/files/exercises.js';
import { IDEAS } from '../../../../src/words/ideas.js';
import { kindOf, STUDIO, said } from '../../../studio.js';
import { roof, wide } from '../../sample.js';

const mixKind = mixKindIn(STUDIO);

const GREY = wide({
  start: { paints: { 'ivory-black': 1 }, strength: 0.3 },
  goal: { aim: 'lean', value: [5, 6], chroma: [10, 30], hue: { near: 40, within: 40 } },
});
const WITH_WHITE = wide({
  start: { paints: { 'cadmium-red': 1, 'chinese-white': 1 }, strength: 0.2 },
  tray: ['chinese-white', 'cadmium-red', 'ivory-black', 'burnt-sienna'],
  painting: ['cadmium-red'],
});
const SHIPPED = readDrillFolder(STUDIO, 'exercises').filter(
  (drill): drill is MixDrill => drill.kind === 'mix',
);

describe('an explanation', () => {
  test('is made of whole, clean, short sentences, whatever was answered', () => {
    const draw = seededDraw(5);
    const isSound = (line: string): boolean =>
      /^[A-Z].*[.]$/.test(line) &&
      !/NaN|undefined|Infinity|null|-0\b|\s{2}|\bsteps? steps?\b/.test(line) &&
      // The reason takes two sentences in its line, with the stretches of light that it names.
      line.split(/(?<=\.) /).every((sentence) => sentence.length <= 180) &&
      line.length <= 330;
    const unsound: string[] = [];
    for (const drill of [...SHIPPED, GREY, WITH_WHITE, roof(), wide()]) {
      const fields = mixKind.fields(drill);
      for (let count = 0; count < 12; count++) {
        const explanation = said(mixKind.grade(drill, randomAnswer(fields, draw)));
        unsound.push(...explanation.filter((line) => !isSound(line)));
        if (explanation.length > 9 || new Set(explanation).size < explanation.length) {
          unsound.push(explanation.join(' | '));
        }
      }
    }
    expect(unsound).toEqual([]);
  }, 30_000);

  test('says what the verdicts say', () => {
    const draw = seededDraw(6);
    for (const drill of [...SHIPPED.slice(0, 30), wide(), GREY]) {
      const fields = mixKind.fields(drill);
      for (let count = 0; count < 25; count++) {
        const grade = mixKind.grade(drill, randomAnswer(fields, draw));
        const { value, chroma, mark, best } = grade;
        const explanation = said(grade);
        const [, valueLine = '', chromaLine = ''] = explanation;
        expect(/ too (light|dark) for /.test(valueLine)).toBe(value?.verdict !== 'good');
        expect(valueLine.includes('too close to call')).toBe(value?.tooCloseToCall);
        expect(
          /too (bright|dull)\.|gone dull|dulled a little|far more could be had|the shade glows|gone to mud/.test(
            chromaLine,
          ),
        ).toBe(chroma?.verdict !== 'good');
        if (mark === best.mark) expect(explanation.join(' ')).not.toContain('does it best');
      }
    }
  });

  const words = (drill: Drill, answer: Record<string, string>): string =>
    said(kindOf(drill).grade(drill, answer)).join(' ');

  test('names the neighbour, the opposite, the black and the white for what they are', () => {
    expect(words(roof(), { second: 'alizarin-crimson', amount: '1:1' })).toMatch(
      /go around the wheel: .*the colour is kept/,
    );
    expect(words(roof(), { second: 'ultramarine-blue', amount: '1:2' })).toMatch(
      /go across the wheel: each swallows what the other sends back/,
    );
    expect(words(roof(), { second: 'ivory-black', amount: '1:2' })).toContain('close to neutral');
    const pale = words(WITH_WHITE, { second: 'chinese-white', amount: '1:1' });
    expect(pale).toContain('already in the wash');
    // Over the dry wash it is a layer like any other.
    expect(words(WITH_WHITE, { second: 'chinese-white', amount: 'glaze-0.8' })).toMatch(
      /The last layer, chinese white, covers/i,
    );
    const white = roof({ tray: ['chinese-white', 'ivory-black'] });
    expect(words(white, { second: 'chinese-white', amount: '1:1' })).toContain('paler and chalkier');
  });

  test('a nearly neutral start has no way round the wheel', () => {
    const text = words(GREY, { second: 'cadmium-red', amount: '1:1' });
    expect(text).toContain('sets the hue');
    expect(text).not.toMatch(/around|across/);
  });

  test('strokes share no light, so no light is said to be swallowed by both', () => {
    const text = words(wide(), { second: 'ultramarine-blue', amount: 'strokes-0.25-0.65' });
    expect(text).toContain('The eye averages the light of the strokes');
    expect(text).not.toContain('Both swallow');
  });

  test('every idea that a grade can name has its words', () => {
    const draw = seededDraw(8);
    for (const drill of SHIPPED) {
      const { idea } = mixKind.grade(drill, randomAnswer(mixKind.fields(drill), draw));
      if (idea !== undefined) expect(IDEAS.has(idea)).toBe(true);
    }
  });
});
