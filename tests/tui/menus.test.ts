import { describe, expect, it } from 'vitest';
import { homeMenu } from '../../src/tui/home/screen.js';
import { settingsMenu } from '../../src/tui/settings/screen.js';
import { Bench, fakeDeps, items } from './fakes.js';

describe('home and settings', () => {
  it('leads to every screen and back', () => {
    const bench = new Bench();
    for (const value of ['families', 'progress', 'settings', 'help']) {
      expect(bench.menu(value).state.screen.name).toBe(value);
      expect(bench.keys('escape').state.screen.name).toBe('home');
    }
  });

  it('goes by arrows, however quickly they come, round the ends, and takes what is in front', () => {
    const at = (...keys: string[]) => new Bench().keys(...keys).state.screen;
    expect(at('down', 'down', 'down')).toEqual({ name: 'home', selected: 3 });
    expect(at('down', 'down', 'down', 'enter').name).toBe('progress');
    expect(new Bench().keys('up', 'enter').state.ending, 'the last entry').toBe(0);
    expect(at('up', 'j')).toEqual({ name: 'home', selected: 0 });
    expect(at('9'), 'no such entry').toEqual({ name: 'home' });
    expect(at('down', '5', 'escape'), 'coming back begins anew').toEqual({ name: 'home' });
    const settings = new Bench().menu('settings').keys('down', 'down', 'enter', 'enter');
    expect(settings.state).toMatchObject({
      screen: { name: 'settings', selected: 2 },
      settings: { colour: '16' },
    });
  });

  it('quits with code 0', () => {
    expect(new Bench().menu('quit').state.ending).toBe(0);
    for (const key of ['q', 'escape']) expect(new Bench().keys(key).state.ending).toBe(0);
  });

  it('goes on with the bench', () => {
    expect(new Bench().menu('bench').state.ending).toBe('bench');
  });

  it('offers to go on only with a set that has something left', () => {
    const values = (bench: Bench): string[] => homeMenu(bench.state, bench.world).map(({ value }) => value);
    expect(values(new Bench())).not.toContain('go-on');
    const bench = new Bench().set(items(['one', 'two'])).keys('enter', 'escape');
    expect(values(bench)[0]).toBe('go-on');
    expect(values(bench.menu('go-on').keys('enter', 'escape'))).not.toContain('go-on');
  });

  it('changes a setting at once and asks for it to be kept', () => {
    const bench = new Bench().menu('settings').menu('valueScale').menu('screenReader');
    expect(bench.state.settings).toMatchObject({ valueScale: 'black-first', screenReader: true });
    expect(bench.asked).toMatchObject([
      { type: 'save-settings', patch: { valueScale: 'black-first' } },
      { type: 'save-settings', patch: { screenReader: true } },
    ]);
  });

  it('walks the colour levels and draws with them', () => {
    const bench = new Bench().menu('settings');
    const levels = ['none', '16', '256', 'full', 'auto'].map((setting) => {
      bench.menu('colour');
      expect(bench.state.settings.colour).toBe(setting);
      return bench.state.colourLevel;
    });
    expect(levels).toEqual([0, 1, 2, 3, 3]);
  });

  it('leaves colours alone that are decided outside, and says by what', () => {
    const bench = new Bench(fakeDeps({ env: { TERM: 'xterm-256color', FORCE_COLOR: '2' } })).menu('settings');
    const label = () => settingsMenu(bench.state, bench.world)[2]?.label;
    expect(label()).toMatch(/ 256 colours \(set from outside\)$/);
    bench.menu('colour');
    expect(bench.asked).toEqual([]);
    expect(bench.state.notice).toMatch(/FORCE_COLOR/);
    expect(label()).toMatch(/ 256 colours/);
  });

  it('starts a set of the family chosen', () => {
    const bench = new Bench().menu('families').keys('down', 'down', 'enter');
    expect(bench.asked.at(-1)).toMatchObject({ type: 'start-set', choice: { family: 'dull-on-purpose' } });
  });

  it('starts a set at the level picked, by arrows or by number', () => {
    const bench = new Bench().menu('families').keys('right', 'right', 'right', 'down', 'enter');
    expect(bench.asked.at(-1)).toMatchObject({ choice: { family: 'three-values', level: 3 } });
    const number = new Bench().menu('families').keys('5', 'left', 'enter');
    expect(number.asked.at(-1)).toMatchObject({ choice: { level: 4 } });
    const level = (...keys: string[]) => new Bench().menu('families').keys(...keys).state.screen;
    for (const keys of [['left'], ['right', 'left'], ['5', '0'], ['7'], ['1', 'left', 'left']])
      expect(level(...keys), 'the learner’s own').not.toHaveProperty('level');
    expect(level(...Array<string>(9).fill('right'))).toMatchObject({ level: 5 });
  });

  it('offers the placing round while it is open, and not beside one that is under way', () => {
    const values = (bench: Bench) => homeMenu(bench.state, bench.world).map(({ value }) => value);
    const bench = new Bench(fakeDeps({ placingIsOpen: () => true }));
    expect(values(bench).at(-2)).toBe('placing');
    bench.menu('placing');
    expect(bench.asked.at(-1)).toMatchObject({ type: 'start-set', choice: { placing: true } });
    expect(bench.state.screen.name).toBe('drill');
    expect(values(bench.keys('escape', 'enter'))).not.toContain('placing');
    expect(values(new Bench())).not.toContain('placing');
  });

  it('ignores a menu choice under a panel', () => {
    const bench = new Bench().keys('?').menu('quit');
    expect(bench.state.ending).toBeUndefined();
  });

  it('comes home with the reason when the set cannot be made', () => {
    const bench = new Bench();
    bench.state = { ...bench.state, screen: { name: 'waiting' } };
    bench.send({ type: 'notice', text: 'the palette is gone' });
    expect(bench.state).toMatchObject({ screen: { name: 'home' }, notice: 'the palette is gone' });
  });
});

describe('the welcome', () => {
  const fresh = (env = {}): Bench =>
    new Bench(fakeDeps({ firstRun: true, env: { TERM: 'xterm-256color', COLORTERM: 'truecolor', ...env } }));

  it('goes to coarser colours until the ramp can be told apart', () => {
    const bench = fresh().keys('enter');
    expect(bench.state.screen).toMatchObject({ step: 'colours' });
    expect(bench.keys('2').state.colourLevel).toBe(2);
    expect(bench.keys('2').state.colourLevel).toBe(1);
    bench.keys('2');
    expect(bench.state).toMatchObject({ colourLevel: 0, screen: { step: 'palette' } });
  });

  it('turns to words alone when they are wished for', () => {
    expect(fresh().keys('enter', '3').state).toMatchObject({ settings: { colour: 'none' }, colourLevel: 0 });
  });

  it('has no ramp to ask about where there are no colours', () => {
    expect(fresh({ NO_COLOR: '1' }).keys('enter').state.screen).toMatchObject({ step: 'palette' });
  });

  it('keeps what was answered and does not come again', () => {
    const bench = fresh().keys('enter', '1', '2', '2');
    const patches = bench.asked.flatMap((effect) => (effect.type === 'save-settings' ? [effect.patch] : []));
    expect(Object.assign({}, ...patches)).toEqual({
      palette: 'twelve',
      valueScale: 'black-first',
      welcomed: true,
    });
    expect(bench.drill.worked).toBe(true);
  });

  it('ends with the offer of a placing round, and starts no set unasked', () => {
    const deps = () => fakeDeps({ firstRun: true, placingIsOpen: () => true });
    const offered = () => new Bench(deps()).keys('enter', '1', '2', '1', 'enter', 'enter');
    expect(offered().state.screen).toMatchObject({ name: 'welcome', step: 'placing' });
    expect(offered().asked.filter(({ type }) => type === 'start-set')).toEqual([]);
    expect(offered().keys('enter').asked.at(-1)).toMatchObject({ choice: { placing: true } });
    for (const key of ['2', 'escape']) expect(offered().keys(key).state.screen.name).toBe('home');
    const skipped = new Bench(deps()).keys('enter', '1', '2', '1', 'escape');
    expect(skipped.state.screen, 'the example skipped').toMatchObject({ step: 'placing' });
    expect(fresh().keys('enter', '1', '2', '1', 'enter', 'enter').state.screen.name).toBe('home');
  });

  it('can be skipped at any point', () => {
    for (const keys of [['escape'], ['2'], ['enter', 'escape'], ['enter', '1', 'escape']]) {
      const bench = fresh().keys(...keys);
      expect(bench.state.screen.name).toBe('home');
      expect(bench.asked.at(-1)).toMatchObject({ type: 'save-settings', patch: { welcomed: true } });
    }
  });
});
