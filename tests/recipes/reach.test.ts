/** What no recipe reaches, and how far the nearest comes. */
import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { RECIPE } from '../../src/judgement/index.js';
import { type Recipe, type Recipes, recipesFor, type Wish } from '../../src/recipes/index.js';
import { seeLaid, strengthOf, WAYS } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const box = (id: string): readonly string[] => STUDIO.palettes.find((one) => one.id === id)?.pigments ?? [];
const find = (wish: Wish, paints = box('twelve'), most = 3): Recipes =>
  recipesFor(STUDIO, wish, { paints, ways: WAYS, most });
const SIENNA = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };

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
