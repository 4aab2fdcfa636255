import { describe, expect, it } from 'vitest';
import { recipesFor, recipeTold } from '../../src/recipes/index.js';
import { type BenchSlot, benchLaid, broughtAs, fromLaid, type Mixture } from '../../src/tui/bench/mixture.js';
import { rowWords } from '../../src/tui/bench/texts.js';
import { seeLaid, type Wash, washLoads } from '../../src/washes/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import { Bench, items, mixingBench } from './fakes.js';

const bench = () => mixingBench(['cadmium-yellow', 'cadmium-red']);
const state = (from: ReturnType<typeof bench>) => from.state;
const laid = (from: ReturnType<typeof bench>) => benchLaid(from.state.mixture);
const paints = (lastPaints?: readonly string[]) =>
  mixingBench(lastPaints).state.mixture.slots.map(({ pigment }) => pigment);
const times = (count: number, key: string): string[] => Array<string>(count).fill(key);

describe('the bench', () => {
  it('starts with the paints that were last laid, else with the example of the README', () => {
    expect(paints(['cadmium-yellow', 'cadmium-red'])).toEqual([
      'cadmium-yellow',
      'cadmium-red',
      undefined,
      undefined,
    ]);
    expect(laid(mixingBench())).toEqual({
      paints: { 'burnt-sienna': 1 },
      strength: 0.3,
      add: { 'alizarin-crimson': 0.5 },
    });
    const practised = new Bench().set(items(['one'])).keys('enter');
    expect(practised.state.lastPaints).toEqual(
      practised.result.answered.grade.laid?.map(({ pigment }) => pigment),
    );
  });

  it('goes back to practice', () => {
    expect(bench().keys('escape').state.ending).toBe('practice');
  });

  it('changes strength, amounts, way and water in the row in focus', () => {
    const { mixture, focus } = state(
      bench().keys('right', 'down', 'right', 'down', 'down', 'down', 'down', 'right'),
    );
    expect(focus).toBe(5);
    expect(mixture).toMatchObject({
      way: 'puddle',
      thin: 2,
      slots: [{ amount: 0.35 }, { amount: 0.5 }, {}, {}],
    });
  });

  it('keeps strength between 5 and 100 %', () => {
    const at = bench().keys(...times(30, 'right'));
    expect(state(at).mixture.slots[0]?.amount).toBe(1);
    expect(state(at.keys(...times(40, 'left'))).mixture.slots[0]?.amount).toBe(0.05);
  });

  it('lets nothing happen in a row without a paint, and takes nothing back for it', () => {
    const at = bench().keys('down', 'down', 'right', 'left');
    expect(state(at).past).toEqual([]);
  });

  it('lays what its rows say: stirred in, glazed, in strokes; water only where paint is stirred', () => {
    const at = bench();
    expect(laid(at)).toEqual({
      paints: { 'cadmium-yellow': 1 },
      strength: 0.3,
      add: { 'cadmium-red': 0.25 },
    });
    expect(laid(at.keys(...times(5, 'down'), 'right'))).toMatchObject({ thin: 2 });
    const glazed = laid(at.keys('up', 'right'));
    expect(glazed).toMatchObject({ layers: [{ strength: 0.15 }, { paints: { 'cadmium-red': 1 } }] });
    expect(laid(at.keys('right'))).toMatchObject({ strokes: [{ strength: 0.15 }, { strength: 0.15 }] });
    // The water is in the strength of each wash there: its row does nothing.
    const before = state(at).past.length;
    expect(state(at.keys('down', 'right')).past).toHaveLength(before);
  });

  it('picks a paint, with its caution the first time, and can empty a slot', () => {
    const at = bench().keys('enter');
    expect(state(at).doing, 'the paint that is there').toMatchObject({ name: 'picking', at: 1 });
    at.keys('down', 'down', 'enter');
    expect(state(at).mixture.slots[0]?.pigment).toBe('alizarin-crimson');
    at.keys('enter', ...'pr108', 'enter');
    expect(state(at).overlay, 'it lay there before').toBeUndefined();
    at.keys('enter', ...'pb28', 'enter');
    expect(state(at).overlay).toMatchObject({ name: 'caution', pigments: ['cobalt-aluminate-blue'] });
    at.keys('enter', 'enter', ...times(90, 'up'), 'enter');
    expect(state(at).mixture.slots[0]?.pigment).toBeUndefined();
  });

  it('finds a paint by what is typed, name or code, and keeps what was there on Esc', () => {
    const at = bench().keys('enter', ...'pr108');
    expect(at.keys('enter').state.mixture.slots[0]?.pigment).toBe('cadmium-red');
    const none = bench().keys('enter', ...'zzz', 'enter');
    expect(state(none)).toMatchObject({ notice: 'No paint is called that.', doing: { text: 'zzz' } });
    expect(state(none.keys('erase', 'erase', 'erase', 'escape')).mixture).toMatchObject({
      slots: [{ pigment: 'cadmium-yellow' }, {}, {}, {}],
    });
  });

  it('takes changes back one by one', () => {
    const at = bench();
    const first = state(at).mixture;
    at.keys('right', 'down', 'right', 'u', 'u', 'u');
    expect(state(at)).toMatchObject({ mixture: first, past: [] });
  });

  it('lays a glaze sooner', () => {
    const at = mixingBench(['burnt-sienna', 'alizarin-crimson']).keys(...times(4, 'down'), 'right');
    const before = laid(at) as { layers: readonly unknown[] };
    at.keys('up', 'up', 'up', 'o');
    expect(laid(at)).toEqual({ layers: before.layers.toReversed() });
    expect(state(at).focus).toBe(0);
  });

  it('sets six swatches aside at most, and puts one back', () => {
    const at = bench();
    for (let each = 0; each < 7; each++) at.keys('s', 'right');
    expect(state(at).pins).toHaveLength(6);
    at.keys('v', 'right', 'enter');
    expect(state(at).mixture.slots[0]?.amount).toBeCloseTo(0.35);
    at.keys('v', ...times(6, 'x'));
    expect(state(at)).toMatchObject({ pins: [] });
    expect(state(at).doing).toBeUndefined();
  });

  it('looks for recipes from what lies there and lays one of them', () => {
    const at = mixingBench(['burnt-sienna']).keys('r', 'enter');
    const { doing } = state(at);
    if (doing?.name !== 'recipes' || doing.found === undefined) throw new Error('no recipes');
    const [best] = doing.found.recipes;
    at.keys('enter');
    const lies = laid(at);
    if (best === undefined || lies === undefined) throw new Error('nothing laid');
    const { lab } = seeLaid(STUDIO, lies).colour;
    expect(
      Math.hypot(lab.l - best.colour.lab.l, lab.a - best.colour.lab.a, lab.b - best.colour.lab.b),
    ).toBeLessThan(0.01);
  });

  it('says why there is no recipe', () => {
    expect(state(mixingBench(['ivory-black']).keys('r', 'right', 'enter')).notice).toMatch(
      /no colour to dull/,
    );
    const glazed = mixingBench().keys(...times(4, 'down'), 'right', 'r');
    expect(state(glazed).notice).toMatch(/start from one puddle/);
  });

  it('keeps mixtures by name, opens and takes them away', () => {
    const at = bench().keys('n', ...'harbour', 'enter', 'right', 'n', ...'tar', 'space', 'é', 'enter');
    expect(state(at).kept?.map(({ name }) => name)).toEqual(['harbour', 'tar é']);
    at.keys('l', 'enter');
    expect(state(at).mixture.slots[0]?.amount).toBeCloseTo(0.3);
    at.keys('l', 'x');
    expect(state(at).kept?.map(({ name }) => name)).toEqual(['tar é']);
    expect(state(bench().keys('n', 'space', 'enter')).notice).toBe('A name needs a letter.');
  });
});

const slot = (pigment: string, amount: number): BenchSlot => ({ pigment, amount });
const puddle: Mixture = {
  slots: [
    slot('burnt-sienna', 0.3),
    slot('alizarin-crimson', 0.25),
    slot('ultramarine-blue', 0.1),
    { amount: 0.25 },
  ],
  way: 'puddle',
  thin: 1,
};

describe('the same paint in another way', () => {
  it.each(['glaze', 'strokes'] as const)('comes back from %s as it was', (way) => {
    const back = broughtAs(STUDIO, broughtAs(STUDIO, puddle, way), 'puddle');
    for (const [at, { amount }] of puddle.slots.slice(0, 3).entries())
      expect(back.slots[at]?.amount).toBeCloseTo(amount, 9);
  });

  it('leaves some of the wash bare, and glazes no thicker than a masstone', () => {
    const thick = { ...puddle, slots: puddle.slots.map((one) => ({ ...one, amount: one.amount * 20 })) };
    const strokes = broughtAs(
      STUDIO,
      { ...thick, slots: [slot('burnt-sienna', 0.3), ...thick.slots.slice(1)] },
      'strokes',
    );
    expect(strokes.slots.slice(1, 3).reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(0.9);
    for (const { amount } of broughtAs(STUDIO, thick, 'glaze').slots.slice(1))
      expect(amount).toBeLessThanOrEqual(1);
  });
});

describe('what is laid, put on the bench', () => {
  it('is the same paint again: a puddle made of several, stirred into and thinned', () => {
    const wash = {
      paints: { 'burnt-sienna': 2, 'ultramarine-blue': 1 },
      strength: 0.4,
      add: { 'alizarin-crimson': 0.3 },
      thin: 2,
    };
    const mixture = fromLaid(STUDIO, wash);
    const again = mixture && benchLaid(mixture);
    if (again === undefined || !('paints' in again)) throw new Error('nothing laid');
    const loads = (one: typeof wash | typeof again) =>
      Object.fromEntries(washLoads(STUDIO, one).map(({ pigment, load }) => [pigment.id, load]));
    for (const [id, load] of Object.entries(loads(wash))) expect(loads(again)[id]).toBeCloseTo(load, 9);
  });

  it('reads as the recipe does, of several paints too, and when more comes in of one that is there', () => {
    const from = { paints: { 'burnt-sienna': 2, 'alizarin-crimson': 1 }, strength: 0.3 };
    const wish = { from, aim: 'rich', darker: 1 } as const;
    const means = {
      paints: ['burnt-sienna', 'alizarin-crimson', 'ultramarine-blue'],
      ways: ['puddle'] as const,
      most: 6,
    };
    const found = recipesFor(STUDIO, wish, means);
    let checked = 0;
    for (const recipe of found.recipes) {
      const words = sayAll(recipeTold(STUDIO, found, recipe, from), WRITTEN).join(' ');
      const told =
        /stir in (.*?) \(parts to one of burnt sienna(?: that is there)?\)/i.exec(words)?.[1] ?? '';
      const stirred = told.match(/[\d.]+:[\d.]+/g) ?? [];
      const mixture = fromLaid(STUDIO, recipe.laid) as Mixture;
      const rows = mixture.slots.flatMap(({ pigment }, row) =>
        row > 0 && pigment !== undefined ? [rowWords(mixture, row)] : [],
      );
      // The crimson of the wash is a half of the sienna, and is not said anew.
      expect(rows).toEqual(['1:2', ...stirred]);
      const again = benchLaid(mixture) as Wash;
      for (const { pigment, load } of washLoads(STUDIO, recipe.laid as Wash))
        expect(washLoads(STUDIO, again).find((one) => one.pigment === pigment)?.load).toBeCloseTo(load, 6);
      checked += stirred.length;
    }
    expect(checked).toBeGreaterThan(1);
  });

  it('keeps layers and strokes, and refuses what the bench cannot lay', () => {
    for (const way of ['glaze', 'strokes'] as const) {
      const lies = benchLaid(broughtAs(STUDIO, puddle, way));
      if (lies === undefined) throw new Error('nothing laid');
      const again = fromLaid(STUDIO, lies);
      expect(again && benchLaid(again)).toEqual(lies);
    }
    const mixed = { paints: { 'burnt-sienna': 1, 'ultramarine-blue': 1 }, strength: 0.3 };
    expect(fromLaid(STUDIO, { layers: [mixed, mixed] })).toBeUndefined();
  });
});
