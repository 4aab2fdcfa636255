import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { readColour } from '../../src/colour/reading.js';
import { isSeenApart, RECIPE } from '../../src/judgement/index.js';
import { type Recipe, type Recipes, recipesFor, recipeTold, type Wish } from '../../src/recipes/index.js';
import { madeUp, puddleReflectance, seeLaid, strengthOf, thinned, WAYS } from '../../src/washes/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
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
  test.each(WISHES)('are different answers, best first, of three paints at most: %j', (wish) => {
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

  test.each(WISHES)('give what they say, laid and as parts in one puddle: %j', (wish) => {
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

  test.each(WISHES)('its own colour asked as a target comes back: %j', (wish) => {
    const [best] = find(wish).recipes as [Recipe];
    const back = find({ to: best.colour.lab }, [...new Set([...ids(best), ...box('six')])]);
    expect(back.reach).toBe('in');
    expect(back.recipes[0]?.deltaE00).toBeLessThan(1);
  });

  test('is the same each time', () => {
    expect(find(WISHES[3] as Wish)).toEqual(find(WISHES[3] as Wish));
  });
});

describe('the reason that is told', () => {
  test('says as much lost as the figures do', () => {
    let pairs = 0;
    for (const from of [
      SIENNA,
      { paints: { 'raw-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.35 },
      { paints: { 'cadmium-red': 1 }, strength: 0.4 },
    ])
      for (const [aim, darker] of [
        ['rich', 3],
        ['shade', 2],
        ['dull', 0],
        ['distance', -1],
      ] as const) {
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

describe('out of reach', () => {
  test('a screen’s magenta, and the nearest is no grey', () => {
    const { reach, edge, recipes } = find({ to: { l: 60, a: 98, b: -60 } });
    expect(reach).toBe('out');
    expect(edge?.kind).toBe('target');
    expect(edge?.chroma).toBeLessThan(-20);
    expect(recipes[0]?.deltaE00).toBeGreaterThan(RECIPE.reached);
    expect(recipes[0]?.colour.chroma).toBeGreaterThan(30);
  });

  test('of a grey no hue is missed', () => {
    const { edge } = find({ to: { l: 21, a: 0, b: 0 } }, ['burnt-sienna', 'ultramarine-blue']);
    expect(edge).toMatchObject({ kind: 'target', hueDeg: 0 });
  });

  test('nor of a grey where an aim was missed', () => {
    const { edge, recipes } = find({ from: SIENNA, aim: 'rich', darker: 5 }, ['ivory-black']);
    expect(recipes[0]?.colour.chroma).toBeLessThan(5);
    expect(edge).toMatchObject({ kind: 'goal', hueDeg: 0 });
  });

  test('a yellow cannot be rich four and a half steps darker, of itself and a black', () => {
    const yellow = { paints: { 'lemon-yellow': 1 }, strength: 0.5 };
    const { reach, edge } = find({ from: yellow, aim: 'rich', darker: 4.5 }, ['lemon-yellow', 'ivory-black']);
    expect(reach).toBe('out');
    expect(edge).toBeDefined();
  });

  test.each([
    ['burnt-sienna', 5],
    ['ultramarine-blue', 3],
  ])('%s %i steps darker: nothing that is laid comes nearer in value than what is told', (id, darker) => {
    const from = { paints: { [id]: 1 }, strength: 0.3 };
    const { goal, edge, recipes, reach } = find({ from, aim: 'rich', darker });
    const [best] = recipes as [Recipe];
    const low = goal?.value[0] ?? 0;
    expect(reach).toBe('out');
    expect(edge?.steps).toBeCloseTo(best.colour.step - low, 6);
    for (const other of box('twelve')) {
      for (const laid of [
        { ...from, add: { [other]: 2 } },
        { layers: [from, { paints: { [other]: 1 }, strength: 0.5 }] },
        {
          strokes: [
            { ...from, share: 0.5 },
            { paints: { [other]: 1 }, strength: 1, share: 0.5 },
          ],
        },
      ]) {
        const seen = seeLaid(STUDIO, laid);
        if (strengthOf(seen.loads.flat()) > 1 && !('layers' in laid || 'strokes' in laid)) continue;
        expect(seen.colour.step, other).toBeLessThan(best.colour.step + 0.1);
      }
    }
  });

  test('no recipe leaves the wash as it is', () => {
    for (const aim of ['rich', 'shade'] as const)
      for (const darker of aim === 'rich' ? [0, 0.2, 5] : [0.5, 5]) {
        const { start, recipes } = find({ from: SIENNA, aim, darker }, box('six'), 6);
        expect(recipes.length).toBeGreaterThan(0);
        for (const { colour } of recipes)
          expect(deltaE00(colour.lab, start?.lab ?? colour.lab)).toBeGreaterThan(RECIPE.reached);
      }
  });

  test('in reach is inside the bands that are told, each recipe of the list', () => {
    const wash = { paints: { 'raw-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.35 };
    const red = { paints: { 'cadmium-red': 1 }, strength: 0.4 };
    for (const wish of [
      { from: wash, aim: 'rich', darker: 3 },
      { from: red, aim: 'distance', darker: -1 },
      { from: red, aim: 'dull', darker: 1 },
      { from: SIENNA, aim: 'shade', darker: 2.5 },
    ] as const) {
      const { goal, reach, recipes } = find(wish, box('twelve'), 6);
      expect(reach).toBe('in');
      const [[low, high], [dull, bright] = [0, 200]] = [goal?.value ?? [0, 0], goal?.chroma];
      for (const { colour } of recipes) {
        expect(colour.step).toBeGreaterThanOrEqual(low);
        expect(colour.step).toBeLessThanOrEqual(high);
        expect(colour.chroma).toBeGreaterThanOrEqual(dull);
        expect(colour.chroma).toBeLessThanOrEqual(bright);
      }
    }
  });

  test('beyond the painter’s scale it says how far can be asked', () => {
    expect(() => find({ from: SIENNA, aim: 'rich', darker: 6 })).toThrow(/at most 5\.7 steps darker/);
    expect(() => find({ from: SIENNA, aim: 'distance', darker: -4 })).toThrow(/at most 3\.2 steps lighter/);
  });

  test('a wish that contradicts itself is refused', () => {
    expect(() => find({ from: SIENNA, aim: 'shade', darker: -1 })).toThrow(/a shade is darker/);
    expect(() => find({ from: SIENNA, aim: 'distance', darker: 1 })).toThrow(/a distance is lighter/);
    const grey = { paints: { 'ivory-black': 1 }, strength: 0.3 };
    expect(() => find({ from: grey, aim: 'dull', darker: 0 })).toThrow(/nearly grey already/);
  });
});
