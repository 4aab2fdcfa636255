import { describe, expect, it } from 'vitest';
import { UsageError } from '../../src/errors.js';
import { withBoxes } from '../../src/paints/index.js';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { perform } from '../../src/tui/practice/perform.js';
import type { Action, Effect, PaintingScreen } from '../../src/tui/practice/state.js';
import { STUDIO } from '../studio.js';
import { Bench, fakeDeps, items, OWN_BOX } from './fakes.js';
import { practice } from './routes.js';

const ownDeps = {
  ...practice,
  studio: withBoxes(STUDIO, [OWN_BOX]),
  settings: { ...fakeDeps().settings, palette: OWN_BOX.id },
  readings: { keep: () => [] },
};
const onResult = (extra: Partial<TuiDeps> = ownDeps, ...keys: readonly string[]): Bench =>
  new Bench(fakeDeps(extra)).keys(...keys, 'enter');
const screenOf = ({ state }: Bench): PaintingScreen => {
  if (state.screen.name !== 'painting') throw new Error(`on ${state.screen.name}`);
  return state.screen;
};
const keysOf = (bench: Bench): string[] =>
  bench.program.keys(bench.state).flatMap(({ keys }) => Object.keys(keys));
const keptBy = (bench: Bench): Effect[] => bench.asked.filter(({ type }) => type === 'keep-reading');

describe('painting the mixture of a result', () => {
  it('opens with the best, goes to yours and back, and to the result', () => {
    const bench = onResult().keys('d');
    expect(screenOf(bench)).toMatchObject({ at: 0, field: 'alone' });
    expect(screenOf(bench.keys('right')).at).toBe(1);
    expect(screenOf(bench.keys('right')).at).toBe(0);
    expect(bench.keys('escape').result.answered.drill.id).toBe('one');
  });

  it('is not offered where nothing is stirred in one puddle, nor after the worked example', () => {
    expect(keysOf(onResult({ ...ownDeps, nextSet: () => items(['bare']) }))).not.toContain('d');
    const welcome = new Bench(fakeDeps({ firstRun: true })).keys(...new Array<string>(5).fill('enter'));
    expect(welcome.result.worked).toBe(true);
    expect(keysOf(welcome)).not.toContain('d');
  });

  it('shows the best alone where yours is a glaze', () => {
    const bench = onResult(ownDeps, 'tab', 'tab', '2');
    expect(bench.result.answered.answer['way']).toBe('glaze');
    expect(screenOf(bench.keys('d')).typed).toHaveLength(1);
    expect(keysOf(bench)).not.toContain('right');
  });

  it('takes digits and one point, a few of them, and Backspace takes one back', () => {
    const bench = onResult().keys('d', ...'3.x.5', 'tab', ...'123456789');
    expect(screenOf(bench).typed[0]).toEqual({ alone: '3.5', mixed: '12345' });
    bench.keys('erase', 'up', 'erase', 'erase', 'erase', 'erase');
    expect(screenOf(bench).typed[0]).toEqual({ alone: '', mixed: '1234' });
  });

  it('keeps what was typed of each mixture with that mixture, once', () => {
    const bench = onResult().keys('d', ...'3.5', 'down', ...'6', 'right', ...'5', 'left', 'enter', 'enter');
    expect(keptBy(bench)).toEqual([
      {
        type: 'keep-reading',
        wash: {
          paints: { 'burnt-sienna': 1 },
          strength: 0.3,
          add: { 'alizarin-crimson': 1 },
          thin: 2,
        },
        texts: { alone: '3.5', mixed: '6' },
      },
    ]);
    expect(screenOf(bench).typed[1]).toEqual({ alone: '', mixed: '5' });
    bench.send({ type: 'reading-kept', told: ['The mixture: yours 6.0, predicted 6.2.'] });
    expect(screenOf(bench).told).toHaveLength(1);
    expect(bench.keys('enter').state.screen.name).toBe('result');
  });

  it('says in a line what could not be kept, and loses nothing', async () => {
    const said = 'the mixture: 99 is not on the scale';
    const keep = (): never => {
      throw new UsageError(said);
    };
    const bench = onResult({ ...ownDeps, readings: { keep } }).keys('d', 'down', ...'99', 'enter');
    const [effect] = keptBy(bench);
    const actions: Action[] = [];
    await perform(effect as Effect, bench.state, bench.deps, bench.world, (action) => actions.push(action));
    expect(actions).toEqual([{ type: 'notice', text: said }]);
    bench.send(actions[0] as Action);
    expect(bench.state.notice).toBe(said);
    expect(screenOf(bench).typed[0]?.mixed).toBe('99');
    expect(keptBy(bench.keys('enter'))).toHaveLength(2);
  });

  it('hands on the learner’s scale, and shows what it told without control characters', async () => {
    const scales: string[] = [];
    const keep: NonNullable<TuiDeps['readings']>['keep'] = (_wash, _texts, { scale }) => {
      scales.push(scale);
      return ['Your \u001b[2Jtube'];
    };
    const settings = { ...ownDeps.settings, valueScale: 'black-first' } as const;
    const bench = onResult({ ...ownDeps, settings, readings: { keep } }).keys('d', '6', 'enter');
    const actions: Action[] = [];
    const effect = keptBy(bench)[0] as Effect;
    await perform(effect, bench.state, bench.deps, bench.world, (action) => actions.push(action));
    expect(scales).toEqual(['black-first']);
    expect(JSON.stringify(actions)).not.toContain('\\u001b');
  });

  it.each([
    ['a shipped box', { ...practice, readings: ownDeps.readings }],
    ['nothing that can be kept', practice],
  ])('asks nothing with %s', (_, deps) => {
    const bench = onResult(deps).keys('d');
    expect(keysOf(bench)).not.toContain('1');
    expect(bench.keys('1', 'enter').state.screen.name).toBe('result');
    expect(keptBy(bench)).toEqual([]);
  });

  it('warns of a paint before it is handled, once, and tells of all with c', () => {
    // The first wash was not chosen in the drill.
    const hazard = {
      level: 'avoid',
      metals: [],
      source: 'invented',
      note: 'Wear gloves when you handle it.',
    } as const;
    const paints = STUDIO.paints.map((paint) => (paint.id === 'burnt-sienna' ? { ...paint, hazard } : paint));
    const bench = onResult({ ...ownDeps, studio: { ...ownDeps.studio, paints } }).keys('d');
    expect(bench.state.overlay).toEqual({ name: 'caution', pigments: ['burnt-sienna'], onward: 'paint' });
    expect(screenOf(bench.keys('enter')).at).toBe(0);
    expect(bench.state.overlay).toBeUndefined();
    expect(bench.keys('escape', 'd').state.overlay).toBeUndefined();
    expect(bench.keys('c').state.overlay).toMatchObject({
      pigments: ['burnt-sienna', 'alizarin-crimson'],
      onward: 'close',
    });
  });
});
