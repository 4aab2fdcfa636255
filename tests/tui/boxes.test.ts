import { describe, expect, it } from 'vitest';
import { withBoxes } from '../../src/paints/index.js';
import { benchOrder } from '../../src/tui/bench/state.js';
import { perform } from '../../src/tui/practice/perform.js';
import type { Action } from '../../src/tui/practice/state.js';
import { STUDIO } from '../studio.js';
import { Bench, fakeDeps, items, mixingBench, OWN_BOX } from './fakes.js';

const studio = withBoxes(STUDIO, [OWN_BOX]);
const own = { studio };
const toOwn = STUDIO.palettes.map(() => 'down');
const boxes = (deps = fakeDeps(own)): Bench => new Bench(deps).menu('settings').menu('palette');

describe('the boxes', () => {
  it('open at the one in use, and use another at once', () => {
    const bench = boxes(fakeDeps({ ...own, settings: { ...fakeDeps().settings, palette: 'twelve' } }));
    expect(bench.state.screen).toEqual({ name: 'boxes', selected: 1 });
    bench.keys('down', 'enter');
    expect(bench.state.settings.palette).toBe('harbour');
    expect(bench.asked).toEqual([{ type: 'save-settings', patch: { palette: 'harbour' } }]);
    expect(bench.keys('escape').state.screen).toEqual({ name: 'settings' });
  });

  it('tick the paints of an own one, and keep them when it is left', () => {
    const bench = boxes().keys(...toOwn, 'e');
    // The first paint of the library comes in, burnt sienna goes.
    const sienna = STUDIO.paints.findIndex(({ id }) => id === 'burnt-sienna');
    bench.keys('space', ...new Array<string>(sienna).fill('down'), 'enter');
    expect(bench.asked).toEqual([]);
    bench.keys('escape');
    expect(bench.asked).toEqual([
      {
        type: 'keep-box',
        id: OWN_BOX.id,
        paints: ['ultramarine-violet', 'alizarin-crimson', STUDIO.paints[0]?.id],
      },
    ]);
    expect(bench.state.screen).toEqual({ name: 'boxes', selected: STUDIO.palettes.length });
  });

  it('put a new one together from the one in front, under a name that is free', () => {
    const bench = boxes().keys('n', 'escape');
    const [six] = STUDIO.palettes;
    expect(bench.asked).toEqual([{ type: 'keep-box', id: 'my-box', paints: six?.pigments, from: 'six' }]);
    const taken = withBoxes(STUDIO, [{ ...OWN_BOX, id: 'my-box' }]);
    const [asked] = boxes(fakeDeps({ studio: taken })).keys('n', 'escape').asked;
    expect(asked).toMatchObject({ id: 'my-box-2' });
  });

  it('change no shipped one', () => {
    expect(boxes().keys('e').state.screen).toEqual({ name: 'boxes', selected: 0 });
  });

  it('keep none of fewer than two paints', () => {
    const two = { ...OWN_BOX, pigments: STUDIO.paints.slice(0, 2).map(({ id }) => id) };
    const bench = boxes(fakeDeps({ studio: withBoxes(STUDIO, [two]) })).keys(
      ...toOwn,
      'e',
      'enter',
      'escape',
    );
    expect(bench.state.notice).toBe('A box holds 2 to 60 paints, not 1.');
    expect(bench.asked).toEqual([]);
    expect(bench.keys('enter', 'escape').asked).toHaveLength(1);
  });

  it('say when one could not be kept', async () => {
    const said: Action[] = [];
    const deps = fakeDeps({ keepBox: () => ({ saved: false, note: 'the disk is full' }) });
    const { state, world } = new Bench(deps);
    const effect = { type: 'keep-box', id: 'x', paints: [] } as const;
    await perform(effect, state, deps, world, (action) => said.push(action));
    await perform(effect, state, fakeDeps(), world, (action) => said.push(action));
    expect(said).toEqual([{ type: 'notice', text: 'the disk is full' }, { type: 'boxes-changed' }]);
  });
});

it('how many drills are left out is said with the first drill of a set, and not with the second', () => {
  const note = 'With the studio box 9 of 260 written drills are left out: 9 need other paints.';
  const startAt = { screen: 'practice' } as const;
  const bench = new Bench(fakeDeps({ startAt, setNote: () => note, nextSet: () => items(['one', 'two']) }));
  expect(bench.drill.message).toBe(note);
  expect(bench.keys('enter').drill.message).toBeUndefined();
  bench.keys('enter', 'n');
  expect(bench.drill.message).toBeUndefined();
});

describe('the bench', () => {
  it('keeps to an own box, and lists the others’ paints first', () => {
    expect(benchOrder({ studio }, OWN_BOX.id)).toEqual(OWN_BOX.pigments);
    expect(benchOrder({ studio }, 'six')).toHaveLength(STUDIO.paints.length);
  });

  it('starts with paints of the box', () => {
    const settings = { ...fakeDeps().settings, palette: OWN_BOX.id };
    const bare = withBoxes(STUDIO, [{ ...OWN_BOX, pigments: ['viridian', 'raw-umber', 'sap-green'] }]);
    const { slots } = mixingBench(undefined, fakeDeps({ studio: bare, settings })).state;
    expect(slots.flatMap(({ pigment }) => pigment ?? [])).toEqual(['viridian', 'raw-umber']);
    const last = mixingBench(['viridian', 'burnt-sienna'], fakeDeps({ studio, settings })).state;
    expect(last.slots.flatMap(({ pigment }) => pigment ?? [])).toEqual(['burnt-sienna']);
  });
});

it('a set of which nothing could be made ends at home, and says so', () => {
  const nothing = { drillId: 'made', feedback: 'each', why: 'new', drill: undefined } as const;
  const bench = new Bench(fakeDeps({ nextSet: () => [nothing, nothing] })).menu('practise');
  expect(bench.state).toMatchObject({ screen: { name: 'home' } });
  expect(bench.state.notice).toBe('No drill for this choice; try another family or box.');
  expect(bench.state.set).toBeUndefined();
});
