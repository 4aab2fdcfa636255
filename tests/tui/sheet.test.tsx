/** The picture of a scene on the screens of practice: where it stands, what its keys do, and what it keeps to itself. */
import { afterEach, describe, expect, it } from 'vitest';
import type { Drill } from '../../src/drills/kinds/index.js';
import { inWords } from '../../src/pictures/index.js';
import { drillLayout } from '../../src/tui/drill/layout.js';
import { fieldParts } from '../../src/tui/kit/field-parts.js';
import type { State } from '../../src/tui/practice/state.js';
import { resultLayout } from '../../src/tui/result/layout.js';
import { WRITTEN } from '../../src/words/voice.js';
import { some } from '../cases.js';
import { Bench, fakeDeps } from './fakes.js';
import { ASCII, expectInside, PLAIN, SIXTEEN } from './inside.js';
import { FULL } from './routes.js';
import { drillCalled, PICTURED, withPicture } from './scenes.js';
import { DOWN, ENTER, RIGHT, Stage, strike } from './stage.js';
import { resultOf } from './walk.js';

afterEach(strike);

const ROOF = drillCalled('harbour-roof-shade');
const SMALL = { columns: 60, rows: 20 };
const MIDDLE = { columns: 80, rows: 24 };
const LARGE = { columns: 120, rows: 40 };

const stageOf = (drill: Drill, size: State['size'], env = FULL, screenReader = false): Stage => {
  const { settings } = fakeDeps();
  return new Stage(size, fakeDeps({ ...withPicture(drill), env, settings: { ...settings, screenReader } }));
};

/** Screen colours of the frame, as triples. */
const triples = (raw: string): string[][] =>
  [...raw.matchAll(/[34]8;2;(\d+);(\d+);(\d+)m/g)].map(([, ...triple]) => triple);
const hasColour = (raw: string): boolean => triples(raw).some(([r, g, b]) => r !== g || g !== b);

describe.each([
  ['colours', FULL],
  ['no colours', PLAIN],
])('with %s', (_, env) => {
  it('every drill with a picture shows it at 120 by 40 and more, larger where there is more room, and no text or choice makes way', () => {
    for (const drill of some(PICTURED, 3)) {
      const bench = new Bench(fakeDeps({ ...withPicture(drill), env }));
      const result = resultOf(bench, drill, bench.world.kindOf(drill).best(drill));
      const isStill = bench.world.sceneOf(drill)?.still !== undefined;
      const at = (size: State['size']) => {
        const state: State = { ...bench.state, size };
        const layout = drillLayout(state, bench.world, bench.drill);
        expect(layout.cutAt, drill.id).toBeUndefined();
        const { parts, after } = fieldParts(bench.drill.fields, 0, layout.fieldColumns, layout.fieldRows);
        expect([after, parts.filter(({ form }) => form === 'folded')], drill.id).toEqual([0, []]);
        const shown = resultLayout(state, bench.world, result);
        // Of what no answer changes the question shows it.
        if (!isStill) expect(shown.sheet, drill.id).toBeDefined();
        if (!isStill) expect(shown.isPair, `${drill.id}: yours beside the best`).toBe(true);
        return layout.sheet?.columns ?? 0;
      };
      const columns = [at(LARGE), at({ columns: 200, rows: 60 })] as const;
      expect(columns[0], drill.id).toBeGreaterThanOrEqual(28);
      expect(columns[1], drill.id).toBeGreaterThan(Math.max(columns[0], 60));
    }
  });
});

it('only labels too long for their column keep the picture off a wide screen', () => {
  const above = PICTURED.filter((drill) => {
    const bench = new Bench(fakeDeps({ ...withPicture(drill), env: FULL }));
    return !drillLayout({ ...bench.state, size: { columns: 100, rows: 30 } }, bench.world, bench.drill)
      .beside;
  });
  expect(above.length).toBeLessThanOrEqual(1);
});

describe.each([
  ['all colours', FULL],
  ['16 colours', SIXTEEN],
  ['no colours', PLAIN],
  ['ASCII', ASCII],
])('in %s', (_, env) => {
  it.each([
    ['drill', [], ROOF.title],
    ['result', [ENTER], ' of 100'],
    ['the sheet', ['v'], 'Roofs above the harbour'],
    ['the sheet of a result', [ENTER, 'v', 'b'], 'Roofs above the harbour'],
  ] as const)('%s keeps inside the smallest and a large screen', async (name, keys, shows) => {
    const deps = withPicture(ROOF);
    for (const size of [{ columns: 60, rows: 18 }, LARGE]) {
      await expectInside({ name, deps, keys, shows }, size, env);
      strike();
    }
  });
});

describe('g', () => {
  it('takes the colour out of the picture, and brings it back', async () => {
    const stage = stageOf(ROOF, SMALL);
    await stage.type(['v'], 'Roofs above the harbour');
    expect(hasColour(stage.raw)).toBe(true);
    await stage.type(['g'], /g colours/);
    expect(hasColour(stage.raw)).toBe(false);
    expect(new Set(triples(stage.raw).map(([r]) => r)).size, 'more than one grey').toBeGreaterThan(4);
    await stage.type(['g'], /g greys/);
    expect(hasColour(stage.raw)).toBe(true);
  });

  it('turns the picture where it stands, and leaves the patches', async () => {
    const stage = stageOf(ROOF, LARGE);
    await stage.type([], 'open: the roof');
    const before = new Set(triples(stage.raw).map(String));
    await stage.type(['g'], 'open: the roof');
    const after = new Set(triples(stage.raw).map(String));
    expect([...before].filter((triple) => !after.has(triple)).length).toBeGreaterThan(4);
    expect(hasColour(stage.raw), 'the swatches stay').toBe(true);
  });

  it('goes by signs where there are too few colours for greys, and is not offered without any', async () => {
    const sixteen = stageOf(ROOF, SMALL, SIXTEEN);
    await sixteen.type(['v', 'g'], 'denser is darker');
    const none = stageOf(ROOF, SMALL, PLAIN);
    await none.type(['v'], 'denser is darker');
    expect(none.text).not.toMatch(/g greys/);
  });
});

describe('the large sheet', () => {
  it('is opened by v, and by g in grey where the picture has no room; any other key goes back', async () => {
    const stage = stageOf(ROOF, MIDDLE);
    await stage.type([], 'SECOND PAINT');
    expect(stage.text).not.toContain('open: ');
    await stage.type(['g'], /open: the roof's turned side/);
    expect(hasColour(stage.raw)).toBe(false);
    await stage.type(['x'], 'SECOND PAINT');
    await stage.type(['v'], /open: the roof's turned side/);
    expect(hasColour(stage.raw)).toBe(true);
    await stage.type([DOWN], /❯ 1/);
  });

  it('shows yours, then the best by b', async () => {
    const stage = stageOf(ROOF, MIDDLE);
    await stage.type([RIGHT, RIGHT, ENTER, 'v'], 'yours: ');
    const yours = stage.raw;
    await stage.type(['b'], 'best: ');
    expect(triples(stage.raw)).not.toEqual(triples(yours));
  });
});

it('a key that changes nothing in the picture does not draw it anew', async () => {
  let drawn = 0;
  const given = withPicture(ROOF);
  const scene = given.sceneOf?.(ROOF);
  if (scene === undefined) throw new Error('a drill without a picture');
  const { looks } = scene.painted;
  // Whoever draws a picture asks what its areas look like.
  const counted = Object.defineProperty({ ...scene.painted }, 'looks', {
    get: () => {
      drawn += 1;
      return looks;
    },
  });
  const stage = new Stage(
    LARGE,
    fakeDeps({ ...given, env: FULL, sceneOf: () => ({ ...scene, painted: counted }) }),
  );
  await stage.type([], 'SECOND PAINT');
  const once = drawn;
  expect(once).toBeGreaterThan(0);
  await stage.type([DOWN, DOWN, RIGHT], /❯ 3/);
  expect(drawn).toBe(once);
  await stage.type(['g'], 'open: the roof');
  expect(drawn).toBe(2 * once);
});

describe('before the answer', () => {
  it('what is asked is open, to the eye and to the ear', async () => {
    for (const drill of some(PICTURED, 3)) {
      const bench = new Bench(fakeDeps(withPicture(drill)));
      const scene = bench.world.sceneOf(drill);
      if (scene?.passage === undefined) continue;
      expect(scene.painted.looks[scene.passage], drill.id).toEqual({ kind: 'open' });
    }
    const spoken = stageOf(ROOF, MIDDLE, FULL, true);
    await spoken.type([], "The roof's turned side: left open.");
  });

  it('no figure is said of washes that are to be judged by eye', () => {
    const judged = PICTURED.filter(({ kind }) => kind === 'diagnosis');
    expect(judged.length).toBeGreaterThan(5);
    for (const drill of judged) {
      const bench = new Bench(fakeDeps(withPicture(drill)));
      const { painted, unread } = bench.world.sceneOf(drill) as NonNullable<
        ReturnType<typeof bench.world.sceneOf>
      >;
      const said = inWords(painted, WRITTEN, unread);
      for (const [at, { id }] of painted.picture.areas.entries())
        expect(/\d/.test(said[at] as string), said[at]).toBe(!unread.includes(id));
    }
  });
});

it('a drill without a picture has no keys for one', () => {
  const bench = new Bench();
  bench.set([{ drillId: 'one', feedback: 'each', why: '' }]);
  const before = bench.state;
  expect(bench.keys('v', 'g', 'b').state).toBe(before);
});
