import { describe, expect, it } from 'vitest';
import { ASCII, UNICODE } from '../../src/tui/kit/glyphs.js';
import { keyNames } from '../../src/tui/kit/key-names.js';
import { type Binding, commandIn, shownKeys } from '../../src/tui/kit/keys.js';
import { Bench, fakeDeps, items, mixingBench } from './fakes.js';
import type { Pressed } from './pressed.js';

// biome-ignore lint/suspicious/noExplicitAny: programs of two kinds, each with its own state
type Any = Pressed<any, any, any>;
const bindings = ({ program, state }: Any): readonly Binding[] => program.keys(state);

/** One bench on every screen and under every panel. */
function everywhere(): [string, Any][] {
  const set = (): Bench => new Bench().set(items(['one', 'two']));
  return [
    ['home', new Bench()],
    ['settings', new Bench().menu('settings')],
    ['families', new Bench().menu('families')],
    ['bench', mixingBench()],
    ['bench picker', mixingBench().keys('enter')],
    ['progress', new Bench().menu('progress')],
    ['help', new Bench().menu('help')],
    ['families with a level', new Bench().menu('families').keys('right')],
    [
      'placing offered',
      new Bench(fakeDeps({ firstRun: true, placingIsOpen: () => true })).keys('1', '1', '1', '1', 'escape'),
    ],
    ['welcome', new Bench(fakeDeps({ firstRun: true }))],
    ['drill', set()],
    ['drill with scales only', new Bench().set(items(['bare']))],
    ['result', set().keys('enter')],
    ['why', set().keys('enter', 'w')],
    ['summary', set().keys('enter', 'n', 'enter', 'n')],
    ['keys', set().keys('?')],
    ['leave', set().keys('escape')],
    ['caution', set().keys('3', 'enter')],
  ];
}

describe('the table of keys', () => {
  it.each(everywhere())('gives every key on %s one command', (_, bench) => {
    const keys = bindings(bench).flatMap((binding) => Object.keys(binding.keys));
    expect(keys.length).toBe(new Set(keys).size);
  });

  it.each(everywhere())('says of every binding on %s what it does, in signs of one column', (_, bench) => {
    for (const binding of bindings(bench)) {
      expect(binding.does.length).toBeGreaterThan(2);
      expect(shownKeys(binding, UNICODE)).not.toMatch(/[{}]/);
      expect(shownKeys(binding, ASCII)).toMatch(/^[ -~]+$/);
    }
  });

  it.each(everywhere())('stops on Ctrl+C from %s with code 130', (_, bench) => {
    expect(bench.keys('ctrl-c').state.ending).toBe(130);
  });

  it.each(everywhere())('gives a way out of %s', (_, bench) => {
    expect(commandIn(bindings(bench), 'escape')).toBeDefined();
  });

  it.each(everywhere())('survives every key on %s', (_, bench) => {
    const before = bench.state;
    for (const key of [
      'up',
      'down',
      'left',
      'right',
      'tab',
      'back-tab',
      'home',
      'end',
      'page-up',
      'page-down',
      'space',
      'erase',
      ...'abcdefgijklmnopqrstuvwxyz0123456789?+-=<>',
      'enter',
      'escape',
    ]) {
      bench.state = before;
      expect(() => bench.keys(key)).not.toThrow();
    }
  });

  it('opens the list of all keys and closes it again', () => {
    const bench = new Bench().set(items(['one'])).keys('?');
    expect(bench.state.overlay).toEqual({ name: 'keys' });
    expect(bench.keys('escape').state.overlay).toBeUndefined();
  });

  it('says what goes on, and what works, while a wash is being laid down', () => {
    const bench = new Bench().set(items(['one']));
    bench.state = { ...bench.state, screen: { ...bench.drill, laying: true } };
    const laying = bindings(bench);
    const shown = laying.filter(({ quiet }) => quiet !== true).map(({ show, does }) => `${show} ${does}`);
    expect(shown).toEqual(['? keys', 'Ctrl+C stop; the wash is being laid down']);
  });

  it('offers a hint only where there is one left', () => {
    const shows = (bench: Bench): boolean => bindings(bench).some(({ does }) => does === 'hint');
    const bench = new Bench().set(items(['one']));
    expect(shows(bench)).toBe(true);
    expect(shows(bench.keys('h', 'h'))).toBe(false);
  });
});

describe('keys of one read', () => {
  it('splits quick typing, and takes a return inside it as Enter', () => {
    expect(keyNames('jj\r', {})).toEqual(['j', 'j', 'enter']);
    expect(keyNames('\u007f\u007f', {})).toEqual(['erase', 'erase']);
    expect(keyNames('3\n', {})).toEqual(['3', 'enter']);
  });

  it('takes Backspace under the flag that Ink 6 gives it', () => {
    expect(keyNames('', { delete: true })).toEqual(['erase']);
    expect(keyNames('', { backspace: true })).toEqual(['erase']);
  });

  it('sees Esc although meta is set with it', () => {
    expect(keyNames('', { escape: true, meta: true })).toEqual(['escape']);
  });

  it('drops Alt combinations, focus and paste reports, and control characters', () => {
    expect(keyNames('x', { meta: true })).toEqual([]);
    expect(keyNames('[I', {})).toEqual([]);
    expect(keyNames('[200~', {})).toEqual([]);
    expect(keyNames('\u0001\u202e', {})).toEqual([]);
  });

  it('knows Ctrl+C in both forms', () => {
    expect(keyNames('c', { ctrl: true })).toEqual(['ctrl-c']);
    expect(keyNames('z', { ctrl: true })).toEqual(['ctrl-z']);
    expect(keyNames('jj\u001a', {})).toEqual(['j', 'j', 'ctrl-z']);
    expect(keyNames('\u0003', {})).toEqual(['ctrl-c']);
  });

  it('tells Tab from Shift+Tab', () => {
    expect(keyNames('', { tab: true })).toEqual(['tab']);
    expect(keyNames('', { tab: true, shift: true })).toEqual(['back-tab']);
  });
});
