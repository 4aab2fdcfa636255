import { describe, expect, it } from 'vitest';
import { withBoxes } from '../../src/paints/index.js';
import { benchPaints, pickable } from '../../src/tui/bench/state.js';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { perform } from '../../src/tui/practice/perform.js';
import type { Action } from '../../src/tui/practice/state.js';
import { STUDIO } from '../studio.js';
import { Bench, type FakeDeps, fakeDeps, items, mixingBench, OWN_BOX } from './fakes.js';

const studio = withBoxes(STUDIO, [OWN_BOX]);
const own = { studio };
const toOwn = STUDIO.palettes.map(() => 'down');
const boxes = (deps = fakeDeps(own)): Bench => new Bench(deps).menu('settings').menu('palette');
const toSienna = new Array<string>(STUDIO.paints.findIndex(({ id }) => id === 'burnt-sienna')).fill('down');

/** The boxes with the own one in front; which paints it holds, and what it is called, follows what is asked. */
function ownBoxes(extra: Partial<TuiDeps> = {}): Bench {
  let box = OWN_BOX;
  const deps: FakeDeps = {
    ...fakeDeps(extra),
    get studio() {
      return withBoxes(STUDIO, [box]);
    },
  };
  const toFront = extra.settings === undefined ? toOwn : [];
  const bench = boxes(deps).keys(...toFront);
  const send = bench.send.bind(bench);
  let done = bench.asked.length;
  bench.send = (action) => {
    send(action);
    for (const effect of bench.asked.slice(done)) {
      done = bench.asked.length;
      if (effect.type !== 'change-box') continue;
      const { add = [], remove = [], name = box.id } = effect.change;
      const pigments = [...box.pigments.filter((id) => !remove.includes(id)), ...add];
      box = { ...box, id: name, pigments };
      send({ type: 'boxes-changed', before: effect.id, id: name });
    }
    return bench;
  };
  return bench;
}
const ownPaints = (): Bench => ownBoxes().keys('e');
const held = ({ world }: Bench) => world.studio.palettes.at(-1);

describe('the boxes', () => {
  it('open at the one in use, and use another at once', () => {
    const bench = boxes(fakeDeps({ ...own, settings: { ...fakeDeps().settings, palette: 'twelve' } }));
    expect(bench.state.screen).toEqual({ name: 'boxes', selected: 1 });
    bench.keys('down', 'enter');
    expect(bench.state.settings.palette).toBe('harbour');
    expect(bench.asked).toEqual([{ type: 'save-settings', patch: { palette: 'harbour' } }]);
    expect(bench.keys('escape').state.screen).toEqual({ name: 'settings' });
  });

  it('tick the paints of an own one, each kept at once', () => {
    const bench = ownPaints();
    const first = STUDIO.paints[0]?.id ?? '';
    bench.keys('space', ...toSienna, 'enter');
    expect(bench.asked).toEqual([
      { type: 'change-box', id: OWN_BOX.id, change: { add: [first] } },
      { type: 'change-box', id: OWN_BOX.id, change: { remove: ['burnt-sienna'] } },
    ]);
    expect(held(bench)?.pigments).toEqual(['ultramarine-violet', 'alizarin-crimson', first]);
    expect(bench.keys('escape').state.screen).toEqual({ name: 'boxes', selected: STUDIO.palettes.length });
  });

  it('bring a paint back with its name and strength', () => {
    const bench = ownPaints().keys(...toSienna, 'enter', 'enter');
    expect(bench.asked.at(-1)).toEqual({
      type: 'change-box',
      id: OWN_BOX.id,
      change: {
        add: ['burnt-sienna'],
        nameOf: [`burnt-sienna=${OWN_BOX.names?.['burnt-sienna']}`],
        strength: ['burnt-sienna=0.625'],
      },
    });
  });

  it('take a name and a strength for a paint of the box, what there is standing there already', () => {
    const bench = ownPaints().keys(...toSienna, 'n');
    expect(bench.state.screen).toMatchObject({
      typing: { what: 'name', text: OWN_BOX.names?.['burnt-sienna'] },
    });
    bench.keys(...new Array<string>(30).fill('erase'), ...'Siena', 'space', ...'n?q', 'space', 'ä', 'enter');
    bench.keys('s', ...new Array<string>(5).fill('erase'), ...'1.4', 'enter');
    bench.keys('s', ...new Array<string>(6).fill('erase'), 'enter', 'n', 'escape');
    expect(bench.asked).toEqual(
      [
        { nameOf: ['burnt-sienna=Siena n?q ä'] },
        { strength: ['burnt-sienna=1.4'] },
        { strength: ['burnt-sienna=1'] },
      ].map((change) => ({ type: 'change-box', id: OWN_BOX.id, change })),
    );
    expect(bench.state.screen).not.toHaveProperty('typing');
  });

  it('name no paint that is not in the box', () => {
    expect(ownPaints().keys('n', 's').state.screen).not.toHaveProperty('typing');
  });

  it('let what was typed stand when it is refused', () => {
    const deps = fakeDeps(own);
    const bench = boxes(deps).keys(...toOwn, 'r', 'erase', 'enter');
    bench.send({ type: 'notice', text: 'no' });
    expect(bench.state.screen).toMatchObject({ typing: { what: 'box', refused: 'no' } });
    expect(bench.keys('erase').state.screen).toEqual({
      name: 'boxes',
      selected: STUDIO.palettes.length,
      typing: { what: 'box', text: OWN_BOX.id.slice(0, -2) },
    });
  });

  it('call one otherwise, and it stays in use', () => {
    const used = { ...fakeDeps().settings, palette: OWN_BOX.id };
    const bench = ownBoxes({ settings: used }).keys('r', ...new Array<string>(30).fill('erase'), ...'quay');
    bench.keys('enter');
    expect(bench.asked).toEqual([{ type: 'change-box', id: OWN_BOX.id, change: { name: 'quay' } }]);
    expect(bench.state.settings.palette).toBe('quay');
    expect(bench.state.screen).not.toHaveProperty('typing');
    const other = ownBoxes().keys('r', 'erase', 'enter');
    expect(other.state.settings.palette).toBe('six');
  });

  it('put a new one together from the one in front, under a name that is free', () => {
    const bench = boxes().keys('n');
    expect(bench.asked).toEqual([{ type: 'copy-box', id: 'my-box', from: 'six' }]);
    const taken = withBoxes(STUDIO, [{ ...OWN_BOX, id: 'my-box' }]);
    const [asked] = boxes(fakeDeps({ studio: taken })).keys('n').asked;
    expect(asked).toMatchObject({ id: 'my-box-2' });
  });

  it('show the list where a new one could not be kept', () => {
    const bench = boxes().keys('n', 'up', 'enter');
    expect(bench.asked.at(-1)).toEqual({ type: 'save-settings', patch: { palette: OWN_BOX.id } });
  });

  it('change no shipped one', () => {
    expect(boxes().keys('e', 'r').state.screen).toEqual({ name: 'boxes', selected: 0 });
  });

  it('keep none of fewer than two paints', () => {
    const two = { ...OWN_BOX, pigments: STUDIO.paints.slice(0, 2).map(({ id }) => id) };
    const bench = boxes(fakeDeps({ studio: withBoxes(STUDIO, [two]) })).keys(...toOwn, 'e', 'enter');
    expect(bench.state.notice).toBe('A box holds 2 to 60 paints, not 1.');
    expect(bench.asked).toEqual([]);
  });

  it('say when one could not be kept, and what it is called where it could', async () => {
    const said: Action[] = [];
    const full = () => ({ saved: false, note: 'the disk is full' });
    const deps = fakeDeps({ changeBox: full, copyBox: () => ({ saved: true, id: 'y' }) });
    const { state, world } = new Bench(deps);
    const add = (action: Action): unknown => said.push(action);
    await perform({ type: 'change-box', id: 'x', change: {} }, state, deps, world, add);
    await perform({ type: 'copy-box', id: 'x', from: 'six' }, state, deps, world, add);
    await perform({ type: 'change-box', id: 'x', change: {} }, state, fakeDeps(), world, add);
    expect(said).toEqual([
      { type: 'notice', text: 'the disk is full' },
      { type: 'boxes-changed', before: 'x', id: 'y' },
      { type: 'boxes-changed', before: 'x', id: 'x' },
    ]);
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
    expect(pickable({ studio }, OWN_BOX.id, '')).toEqual([undefined, ...OWN_BOX.pigments]);
    expect(pickable({ studio }, 'six', '')).toHaveLength(1 + STUDIO.paints.length);
  });

  it('starts with paints of the box', () => {
    const settings = { ...fakeDeps().settings, palette: OWN_BOX.id };
    const bare = withBoxes(STUDIO, [{ ...OWN_BOX, pigments: ['viridian', 'raw-umber', 'sap-green'] }]);
    const { mixture } = mixingBench(undefined, fakeDeps({ studio: bare, settings })).state;
    expect(benchPaints(mixture)).toEqual(['viridian', 'raw-umber']);
    const last = mixingBench(['viridian', 'burnt-sienna'], fakeDeps({ studio, settings })).state;
    expect(benchPaints(last.mixture)).toEqual(['burnt-sienna']);
  });
});

it('a set of which nothing could be made ends at home, and says so', () => {
  const nothing = { drillId: 'made', feedback: 'each', why: 'new', drill: undefined } as const;
  const bench = new Bench(fakeDeps({ nextSet: () => [nothing, nothing] })).menu('practise');
  expect(bench.state).toMatchObject({ screen: { name: 'home' } });
  expect(bench.state.notice).toBe('No drill for this choice; try another family or box.');
  expect(bench.state.set).toBeUndefined();
});
