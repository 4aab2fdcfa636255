import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { readColour } from '../../src/colour/reading.js';
import { isSeenApart } from '../../src/judgement/index.js';
import { type Recipe, type Recipes, recipesFor, recipeTold, type Wish } from '../../src/recipes/index.js';
import { madeUp, puddleReflectance, seeLaid, thinned, WAYS } from '../../src/washes/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { some } from '../cases.js';
import { paintOf, STUDIO } from '../studio.js';

const box = (id: string): readonly string[] => STUDIO.palettes.find((one) => one.id === id)?.pigments ?? [];
const find = (wish: Wish, paints = box('twelve'), most = 3): Recipes =>
  recipesFor(STUDIO, wish, { paints, ways: WAYS, most });
const SIENNA = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
const ids = ({ parts }: Recipe): string[] => parts.map(({ pigment }) => pigment);

// What a painter would sign. Common practice, no source.
describe('recipes that painters know', () => {
  test('burnt sienna two steps darker and rich goes to a dark neighbour, never to a black or across', () => {
    for (const { recipes, reach } of [
      find({ from: SIENNA, aim: 'rich', darker: 2 }),
      find({ from: SIENNA, aim: 'rich', darker: 2 }, box('clear')),
    ]) {
      expect(reach).toBe('in');
      for (const { parts, kept } of recipes) {
        expect(kept).toBeGreaterThan(0.9);
        for (const { relation } of parts) expect([undefined, 'own', 'around']).toContain(relation);
      }
    }
    const [best] = find({ from: SIENNA, aim: 'rich', darker: 2 }).recipes as [Recipe];
    expect(ids(best)).toContain('alizarin-crimson');
  });

  test('a cadmium red is dulled for distance by a blue, a green or a grey', () => {
    const red = { paints: { 'cadmium-red': 1 }, strength: 0.4 };
    const { recipes, reach } = find({ from: red, aim: 'distance', darker: -1 });
    const dulling = [
      ...['ultramarine-blue', 'cobalt-blue', 'cerulean-blue', 'prussian-blue'],
      ...['sap-green', 'ivory-black'],
    ];
    expect(reach).toBe('in');
    for (const recipe of recipes) {
      expect(
        ids(recipe).some((id) => dulling.includes(id)),
        ids(recipe).join(),
      ).toBe(true);
      expect(recipe.kept).toBeLessThan(0.7);
    }
  });

  test('a shadow of sap green stays green', () => {
    const green = { paints: { 'sap-green': 1 }, strength: 0.3 };
    const { recipes, start } = find({ from: green, aim: 'shade', darker: 1.5 });
    for (const { colour } of recipes) {
      expect(Math.abs(colour.hue - (start?.hue ?? 0))).toBeLessThan(25);
      expect(colour.chroma).toBeGreaterThan(30);
    }
  });

  test('a shade of a light yellow is not spotted with black', () => {
    const yellow = { paints: { 'cadmium-yellow': 1 }, strength: 0.4 };
    const { recipes, reach } = find({ from: yellow, aim: 'shade', darker: 2 }, box('twelve'), 6);
    expect(reach).toBe('in');
    for (const { laid } of recipes) {
      if (!('strokes' in laid)) continue;
      const steps = laid.strokes.map(({ share: _, ...wash }) => seeLaid(STUDIO, wash).colour.step);
      // A step or two beyond what mixes in the eye at most.
      expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(5.5);
    }
    expect('strokes' in (recipes[0] as Recipe).laid).toBe(false);
  });

  test('a dark neutral comes of ultramarine and burnt sienna', () => {
    const { recipes, reach } = find({ to: { l: 28, a: 0, b: 0 } }, ['burnt-sienna', 'ultramarine-blue']);
    const [best] = recipes as [Recipe];
    expect(reach).toBe('in');
    expect(best.way).toBe('puddle');
    expect(best.parts.map(({ relation }) => relation)).toContain('across');
    // About equal parts.
    expect(Math.max(...best.parts.map(({ parts }) => parts))).toBeLessThan(3);
  });
});

describe('a wash of several paints', () => {
  const wash = { paints: { 'raw-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.35 };

  test('is brought more of its own and one paint more, three in all', () => {
    const { recipes, goal } = find({ from: wash, aim: 'rich', darker: 3 }, box('twelve'), 6);
    const [best] = recipes as [Recipe];
    // Laid by hand: within the value, of three paints in all.
    const byHand = seeLaid(STUDIO, {
      paints: { 'raw-sienna': 1 },
      strength: 0.35,
      add: { 'alizarin-crimson': 2, 'ivory-black': 0.1 },
    });
    expect(best.colour.step).toBeGreaterThan(goal?.value[0] ?? 10);
    expect(best.colour.chroma).toBeGreaterThan(byHand.colour.chroma);
    for (const recipe of recipes) expect(recipe.parts.length).toBeLessThanOrEqual(3);
  });

  test('of three paints is brought none but its own', () => {
    const three = { paints: { ...wash.paints, 'ultramarine-blue': 1 }, strength: 0.2 };
    for (const recipe of find({ from: three, aim: 'shade', darker: 1 }).recipes)
      expect(ids(recipe).sort()).toEqual(Object.keys(three.paints).sort());
  });
});

const WISHES: readonly Wish[] = [
  { from: SIENNA, aim: 'rich', darker: 2 },
  { from: SIENNA, aim: 'shade', darker: 1 },
  { from: { paints: { 'cobalt-blue': 1, 'raw-sienna': 1 }, strength: 0.5 }, aim: 'dull', darker: 0 },
  { to: { l: 40, a: 10, b: 20 } },
  { to: { l: 55, a: -20, b: 25 }, from: SIENNA },
];

describe('what is found', () => {
  test.each(some(WISHES, 2))('are different answers, best first, of three paints at most: %j', (wish) => {
    const { recipes } = find(wish);
    expect(recipes.length).toBeGreaterThan(1);
    for (const [at, one] of recipes.entries()) {
      expect(one.parts.length).toBeLessThanOrEqual(3);
      expect(one.strength).toBeGreaterThan(0);
      for (const other of recipes.slice(0, at)) {
        const isOther = ids(one).sort().join() !== ids(other).sort().join() || one.way !== other.way;
        expect(isOther || isSeenApart(other.colour, one.colour)).toBe(true);
      }
    }
    const marks = recipes.map(({ mark = 0, deltaE00: apart = 0 }) => mark - apart);
    expect((marks[0] ?? 0) + 0.5).toBeGreaterThanOrEqual(Math.max(...marks));
  });

  test.each(some(WISHES, 2))('give what they say, laid and as parts in one puddle: %j', (wish) => {
    for (const { laid, colour, way, parts, strength, thin } of find(wish).recipes) {
      expect(deltaE00(seeLaid(STUDIO, laid).colour.lab, colour.lab)).toBeLessThan(1e-9);
      if (way !== 'puddle') continue;
      const loads = madeUp(
        parts.map((part) => ({ pigment: paintOf(part.pigment), parts: part.parts })),
        Math.min(1, strength),
      );
      const again = readColour(puddleReflectance(thinned(loads, thin), STUDIO.paper));
      expect(deltaE00(again.lab, colour.lab)).toBeLessThan(0.2);
    }
  });

  test.each(some(WISHES, 2))('its own colour asked as a target comes back: %j', (wish) => {
    const [best] = find(wish).recipes as [Recipe];
    const back = find({ to: best.colour.lab }, [...new Set([...ids(best), ...box('six')])]);
    expect(back.reach).toBe('in');
    expect(back.recipes[0]?.deltaE00).toBeLessThan(1);
  });

  test('is the same each time', () => {
    expect(find(WISHES[3] as Wish)).toEqual(find(WISHES[3] as Wish));
  });
});

const AIMS = [
  ['rich', 3],
  ['shade', 2],
  ['dull', 0],
  ['distance', -1],
] as const;

describe('the reason that is told', () => {
  test('says as much lost as the figures do', () => {
    let pairs = 0;
    for (const from of [
      SIENNA,
      { paints: { 'raw-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.35 },
      { paints: { 'cadmium-red': 1 }, strength: 0.4 },
    ])
      for (const [aim, darker] of some(AIMS, 2)) {
        const found = find({ from, aim, darker }, box('twelve'), 6);
        for (const recipe of found.recipes) {
          const words = sayAll(recipeTold(STUDIO, found, recipe, from), WRITTEN).join(' ');
          const { kept } = recipe;
          if (!/of the colour goes/.test(words)) continue;
          pairs++;
          if (/a little of the colour goes/.test(words)) expect(kept, words).toBeGreaterThanOrEqual(0.7);
          else if (/about half of the colour goes/.test(words))
            expect(kept, words).toBeGreaterThanOrEqual(0.4);
          else expect(kept, words).toBeLessThan(0.4);
        }
      }
    expect(pairs).toBeGreaterThan(5);
  });
});
