import { describe, expect, test } from 'vitest';
import { mixKind as mixKindIn } from '../../../../src/drills/kinds/mix/index.js';
import { washLoads } from '../../../../src/washes/index.js';
import { asked, STUDIO, said } from '../../../studio.js';
import { roof, wide } from '../../sample.js';

const mixKind = mixKindIn(STUDIO);

describe('a graded answer', () => {
  test('going round the wheel beats going across it and beats black', () => {
    const mark = (second: string, amount: string): number => mixKind.grade(roof(), { second, amount }).mark;
    // As much crimson as sienna: the puddle is not made up again to a strength, so less of it would stay too light.
    expect(mark('alizarin-crimson', '1:1')).toBe(100);
    expect(mark('ultramarine-blue', '1:2')).toBeLessThan(50);
    expect(mark('ivory-black', '1:2')).toBeLessThan(50);
  });

  test('reports value and chroma apart: the first may be good while the second is off', () => {
    const grade = mixKind.grade(roof({ goal: { value: [5, 6], aim: 'rich' } }), {
      second: 'ultramarine-blue',
      amount: '1:4',
    });
    expect(grade.value?.verdict).toBe('good');
    expect(grade.chroma?.verdict).not.toBe('good');
    expect(grade.mark).toBeLessThan(85);
  });

  test('numbers agree with each other', () => {
    const { chroma, value, swatches, laid } = mixKind.grade(roof(), {
      second: 'ultramarine-blue',
      amount: '1:8',
    });
    expect(chroma?.kept).toBeCloseTo((chroma?.after ?? 0) / (chroma?.before ?? 1), 12);
    expect(value?.before).toBeCloseTo(4.2, 0);
    expect(swatches.map(({ label }) => label)).toEqual(['start', 'yours', 'best']);
    expect(laid?.map(({ pigment }) => pigment)).toEqual(['burnt-sienna', 'ultramarine-blue']);
  });

  test('a paint that the painting does not have costs and the words say why', () => {
    const free = mixKind.grade(roof(), { second: 'alizarin-crimson', amount: '1:1' });
    const drill = roof({ painting: ['burnt-sienna', 'ultramarine-blue'] });
    const costly = mixKind.grade(drill, { second: 'alizarin-crimson', amount: '1:1' });
    expect(costly.mark).toBe(free.mark - 8);
    expect(said(costly).join(' ')).toContain('nowhere else in the painting');
    const known = mixKind.grade(drill, { second: 'ultramarine-blue', amount: '1:8' });
    expect(said(known).join(' ')).not.toContain('nowhere else');
  });

  test.each([
    [{ second: 'phthalo-blue', amount: '1:4' }, /second paint cannot be "phthalo-blue"/],
    [{ second: 'ivory-black', amount: '1:3' }, /added paint to wash/],
    [{ second: 'ivory-black' }, /is not chosen/],
    [{ second: 'ivory-black', amount: '1:4', colour: 'red' }, /no choice called colour/],
    [{ second: '__proto__', amount: '1:4' }, /cannot be/],
  ])('refuses %j', (answer, message) => {
    expect(() => mixKind.grade(roof(), answer as Record<string, string>)).toThrow(message);
  });

  test('what a drill fixes is no choice, and is told with the goal', () => {
    const fixed = roof({ amounts: ['1:4'] });
    expect(mixKind.fields(fixed).map(({ id }) => id)).toEqual(['second']);
    expect(asked(mixKind, fixed)[0]).toBe(
      'first wash: burnt sienna at 30 %, thick as milk; wanted: darker and rich',
    );
    expect(asked(mixKind, fixed).at(-1)).toMatch(/^fixed: .*1 part to 4 of the wash/);
    expect(mixKind.fields(roof({ thins: [1, 2] })).map(({ id }) => id)).toEqual(['second', 'amount', 'thin']);
    // The ways are among the amounts, each with amounts of its own.
    expect(mixKind.fields(wide()).map(({ id }) => id)).toEqual(['second', 'amount']);
    const ids = mixKind.fields(wide())[1]?.options.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['1:4', 'glaze-0.2', 'strokes-0.25-0.3']));
    expect(asked(mixKind, wide()).join()).not.toContain('fixed');
  });

  test('more of the same paint is named so, and makes the wash stronger', () => {
    const drill = roof({ tray: ['burnt-sienna', 'ivory-black'] });
    const answer = { second: 'burnt-sienna', amount: '1:4' };
    expect(mixKind.label(drill, answer)).toBe('more burnt sienna 1:4');
    // Nothing of it is water: stirring in a quarter more leaves a quarter more, less the volume that came in.
    const [laid] = mixKind.grade(drill, answer).laid ?? [];
    const [alone] = washLoads(STUDIO, drill.start);
    expect(laid?.load).toBeCloseTo((1.25 / (1 + (0.25 * 0.3) / 4)) * (alone?.load ?? 0), 9);
    expect(mixKind.grade(drill, { ...answer, amount: '1:1' }).value?.after).toBeGreaterThan(
      mixKind.grade(drill, answer).value?.after ?? 10,
    );
  });
});

describe('the mistaken idea', () => {
  const idea = (second: string, amount: string, change = {}): string | undefined =>
    mixKind.grade(roof(change), { second, amount }).idea;

  test('is none for a good answer', () => {
    expect(idea('alizarin-crimson', '1:1')).toBeUndefined();
  });
  test('names the paint where no amount of it would do', () => {
    const coarse = { amounts: ['1:4', '1:2', '1:1'] as const };
    expect(idea('ultramarine-blue', '1:2', coarse)).toBe('went-across');
    expect(idea('ivory-black', '1:2', coarse)).toBe('took-a-neutral');
  });
  test('names the amount where another would do', () => {
    // A touch of the blue darkens by a quarter of a step and keeps most of the chroma.
    const near = { goal: { value: [4.2, 5.2], aim: 'rich' } } as const;
    expect(idea('ultramarine-blue', '1:32', near)).toBeUndefined();
    expect(idea('ultramarine-blue', '1:1', near)).toBe('too-much');
    expect(idea('alizarin-crimson', '1:8')).toBe('too-little');
  });
  test('names the water where only that is wrong', () => {
    const drill = roof({ thins: [1, 4] });
    const grade = mixKind.grade(drill, { second: 'alizarin-crimson', amount: '1:1', thin: '4' });
    expect(grade.idea).toBe('too-light');
  });
  test('names the nearness where colour had to go', () => {
    const drill = roof({
      goal: { aim: 'dull', value: [5.3, 6.3], chroma: [15, 27] },
      tray: ['alizarin-crimson', 'ultramarine-blue'],
    });
    expect(mixKind.grade(drill, { second: 'alizarin-crimson', amount: '1:1' }).idea).toBe('stayed-near');
  });
  test('names the lean where value and chroma are right', () => {
    const drill = roof({
      start: { paints: { 'cadmium-red': 1 }, strength: 0.2 },
      goal: { aim: 'lean', value: [6.5, 7.7], chroma: [5, 25], hue: { near: 55, within: 50 } },
      tray: ['prussian-blue'],
    });
    expect(mixKind.grade(drill, { amount: '1:2' }).idea).toBe('wrong-lean');
  });
});
