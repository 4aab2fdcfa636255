import { describe, expect, test } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { asked, kindOf, STUDIO, said } from '../../studio.js';
import { drillOf, gradeOf } from './helpers.js';

const CHOOSE = `
by: most-chroma
options:
  - { id: crimson, laid: { paints: { burnt-sienna: 2, alizarin-crimson: 1 }, strength: 0.5 } }
  - { id: blue, laid: { paints: { burnt-sienna: 2, ultramarine-blue: 1 }, strength: 0.5 } }
  - { id: black, laid: { paints: { burnt-sienna: 2, ivory-black: 1 }, strength: 0.5 } }`;

describe('choose', () => {
  // Common practice, no source: crimson is a neighbour of burnt sienna, ultramarine lies across, black is neutral.
  test('the neighbour keeps the chroma; a wrong pick names what was wrong with it', () => {
    const drill = drillOf('choose', CHOOSE);
    expect(kindOf(drill).best(drill)).toEqual({ pick: 'crimson' });
    expect(gradeOf(drill, { pick: 'blue' })).toMatchObject({ verdict: 'off', idea: 'went-across' });
    expect(gradeOf(drill, { pick: 'black' })).toMatchObject({ verdict: 'off', idea: 'took-a-neutral' });
    expect(said(gradeOf(drill, { pick: 'blue' })).join(' ')).toMatch(
      /go across the wheel: each swallows what the other sends back/,
    );
  });

  test('two that the model cannot tell apart both count, and it says so', () => {
    const drill = drillOf(
      'choose',
      `by: darkest
options:
  - { id: one, laid: { paints: { burnt-sienna: 1 }, strength: 0.4 } }
  - { id: two, laid: { paints: { burnt-sienna: 1 }, strength: 0.41 } }`,
    );
    const grade = gradeOf(drill, { pick: 'one' });
    expect(grade.mark).toBe(100);
    expect(said(grade).join(' ')).toMatch(/Too close to call between yours and .*: either way counts/);
    // Then there is no trap left, and the checker does not let it pass.
    expect(checkDrill(STUDIO, drill).faults.join()).toMatch(/nothing tempts/);
  });

  test('keeps-colour counts chroma against a plain shade, not chroma alone', () => {
    const drill = drillOf(
      'choose',
      `by: keeps-colour
start: { paints: { burnt-sienna: 1 }, strength: 0.2 }
options:
  - { id: pale, laid: { paints: { burnt-sienna: 6, ivory-black: 1 }, strength: 0.12 } }
  - { id: deep, laid: { paints: { burnt-sienna: 2, alizarin-crimson: 1 }, strength: 1 } }`,
    );
    expect(kindOf(drill).best(drill)).toEqual({ pick: 'deep' });
  });
});

const ORDER = `
by: most-chroma
also: darkest
items:
  - { id: crimson, name: crimson, laid: { paints: { burnt-sienna: 2, alizarin-crimson: 1 }, strength: 0.5 } }
  - { id: cerulean, name: cerulean, laid: { paints: { burnt-sienna: 2, cerulean-blue: 1 }, strength: 0.5 } }
  - { id: ultra, name: ultra, laid: { paints: { burnt-sienna: 2, ultramarine-blue: 1 }, strength: 0.5 } }`;

describe('order', () => {
  const drill = drillOf('order', ORDER);

  test('six orders, each with every thing once', () => {
    const [order] = kindOf(drill).fields(drill);
    expect(order?.options.map(({ id }) => [...id.split('_')].sort().join())).toEqual(
      Array.from({ length: 6 }, () => 'cerulean,crimson,ultra'),
    );
  });

  test('marks fall with the pairs that stand the wrong way round', () => {
    const marks = [
      'crimson_cerulean_ultra',
      'crimson_ultra_cerulean',
      'cerulean_ultra_crimson',
      'ultra_cerulean_crimson',
    ].map((order) => gradeOf(drill, { order, also: 'ultra' }).mark);
    expect(marks).toEqual([100, 63, 40, 25]);
    expect(gradeOf(drill, { also: 'crimson' })).toMatchObject({ idea: 'misread-value' });
  });
});

test('an order with nothing to tell apart is a fault of the drill', () => {
  const same = drillOf(
    'order',
    ORDER.replaceAll(/laid: .*$/gm, 'laid: { paints: { burnt-sienna: 1 }, strength: 0.4 } }'),
  );
  expect(checkDrill(STUDIO, same).faults.join()).toMatch(
    /crimson and cerulean are too close to call.*cerulean and ultra are too close to call/s,
  );
});

describe('washes', () => {
  const drill = drillOf(
    'washes',
    `paint: raw-sienna
cannot: true
blocks:
  - { name: pale, step: 1.7 }
  - { name: dark, step: 7 }`,
  );

  test('giving a block up is right only where the paint cannot get there', () => {
    expect(kindOf(drill).best(drill)).toEqual({ 'block-1': '1:48', 'block-2': 'cannot' });
    expect(gradeOf(drill, { 'block-1': 'cannot' })).toMatchObject({ idea: 'gave-up-early', mark: 25 });
    expect(gradeOf(drill, { 'block-2': '1:3' }).mark).toBeLessThan(55);
    expect(gradeOf(drill, { 'block-2': '1:3' })).toMatchObject({ idea: 'asked-too-much' });
  });

  test('the target of a shadow is worked out from what is lit', () => {
    const shadow = drillOf(
      'washes',
      `paint: ultramarine-blue
blocks: [{ name: side, shadeOf: 2.5 }]`,
    );
    expect(gradeOf(shadow).value?.asked).toEqual([10.5 - 0.6 * 8 - 0.5, 10.5 - 0.6 * 8 + 0.5]);
  });

  test('over a dry wash the same water comes out darker', () => {
    const lines = 'paint: cobalt-blue\nblocks: [{ name: tread, step: 5 }]';
    const bare = gradeOf(drillOf('washes', lines), { 'block-1': '1:12' });
    const over = gradeOf(drillOf('washes', `${lines}\nover: { paints: { raw-sienna: 1 }, strength: 0.3 }`), {
      'block-1': '1:12',
    });
    expect(over.value?.after).toBeGreaterThan((bare.value?.after ?? 10) + 0.5);
    expect(over.value?.before).toBeGreaterThan((bare.value?.before ?? 10) + 0.5);
  });
});

const AREAS = `areas:
  - { name: sail, laid: { paints: { raw-sienna: 1 }, strength: 0.05 }, share: 0.3 }
  - { name: apples, laid: { paints: { cadmium-red: 1 }, strength: 0.4 }, share: 0.5 }
  - { name: door, laid: { paints: { prussian-blue: 1 }, strength: 1 }, share: 0.2 }`;

describe('sort values', () => {
  const drill = drillOf('sort-values', `asks: [darkest, most, span]\n${AREAS}`, 'three-values');

  test('a strong red is a middle, and taking it for light is explained by its colour', () => {
    expect(kindOf(drill).best(drill)).toEqual({
      'area-1': 'light',
      'area-2': 'middle',
      'area-3': 'dark',
      darkest: 'area-3',
      most: 'middle',
      span: 'wide',
    });
    const grade = gradeOf(drill, { 'area-2': 'light' });
    expect(grade).toMatchObject({ idea: 'misread-value' });
    const bare = drillOf('sort-values', AREAS, 'three-values');
    expect(said(gradeOf(bare, { 'area-2': 'light' })).join(' ')).toMatch(
      /A strong colour hides its value: apples/,
    );
    expect(gradeOf(drill, { span: 'short' })).toMatchObject({ idea: 'misread-value' });
  });

  test('the question shows colours and the limits, but no value', () => {
    expect(
      kindOf(drill)
        .given(drill)
        .every(({ unread }) => unread === 'value'),
    ).toBe(true);
    const [limits, ...areas] = asked(kindOf(drill), drill);
    expect(limits).toBe('limits: light to step 3.5, dark from step 6.0, middle between');
    expect(areas.join(' ')).not.toMatch(/step|\d\.\d/);
  });
});

describe('shadow values', () => {
  test('one step down for every shadow, and the rule under a grey sky, are named', () => {
    const sun = drillOf('shadow-values', 'light: sun\nthings: [{ name: crate, shadow: shade, lit: 3.5 }]');
    expect(gradeOf(sun, { 'thing-1': '5' })).toMatchObject({ idea: 'one-step-shadow' });
    const grey = drillOf(
      'shadow-values',
      'light: overcast\nthings: [{ name: crate, shadow: shade, lit: 3.5 }]',
    );
    expect(kindOf(grey).best(grey)).toEqual({ 'thing-1': '4' });
    expect(gradeOf(grey, { 'thing-1': '6' })).toMatchObject({ idea: 'rule-in-grey-light', mark: 0 });
  });

  test('a cast shadow no darker than the shaded side is named', () => {
    const drill = drillOf(
      'shadow-values',
      'light: sun\nthings: [{ name: apple, shadow: shade, lit: 3 }, { name: table, shadow: cast, lit: 2 }]',
    );
    expect(gradeOf(drill, { 'thing-2': '6' })).toMatchObject({ idea: 'cast-too-light' });
  });
});
