import { describe, expect, test } from 'vitest';
import { seededDraw } from '../../../../src/chance/draw.js';
import type { Drill } from '../../../../src/drills/kinds/index.js';
import { mixKind as mixKindIn } from '../../../../src/drills/kinds/mix/index.js';
import type { MixDrill } from '../../../../src/drills/kinds/mix/schema.js';
import { randomAnswer } from '../../../../src/drills/random-answer.js';
import { IDEAS } from '../../../../src/words/ideas.js';
import { SHIPPED_DRILLS } from '../../../exercises.js';
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
const SHIPPED = SHIPPED_DRILLS.filter((drill): drill is MixDrill => drill.kind === 'mix');

describe('an explanation', () => {
  const words = (drill: Drill, answer: Record<string, string>): string =>
    said(kindOf(drill).grade(drill, answer)).join(' ');

  test('names the neighbour, the opposite, the black and the white for what they are', () => {
    expect(words(roof(), { second: 'alizarin-crimson', amount: '1:1' })).toMatch(
      /go around the wheel: .*the colour is kept/,
    );
    expect(words(roof(), { second: 'ultramarine-blue', amount: '1:2' })).toMatch(
      /go across the wheel: each swallows what the other sends back/,
    );
    expect(words(roof(), { second: 'ivory-black', amount: '1:2' })).toContain(
      'swallows all parts of the light alike',
    );
    const pale = words(WITH_WHITE, { second: 'chinese-white', amount: '1:1' });
    expect(pale).toContain('already in the wash');
    // Over the dry wash it is a layer like any other.
    expect(words(WITH_WHITE, { second: 'chinese-white', amount: 'glaze-0.8' })).toMatch(
      /The upper film, Chinese white, covers/,
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
    expect(text).toContain('Side by side the eye takes the mean of both');
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
