import { describe, expect, it } from 'vitest';
import { paintOf } from '../../src/paints/index.js';
import { aboutPaint } from '../../src/words/about-paint.js';
import { STUDIO } from '../studio.js';
import { Bench, fakeDeps, items } from './fakes.js';

const started = (): Bench => new Bench().set(items(['one', 'two', 'three']));

describe('answering a drill', () => {
  it('starts with the first option everywhere and nothing laid', () => {
    expect(started().drill.answer).toEqual({ second: 'alizarin-crimson', amount: '1:32', way: 'puddle' });
  });

  it('walks the tray with up and down and stops at its ends', () => {
    const bench = started().keys('down', 'j');
    expect(bench.drill.answer['second']).toBe('cadmium-red');
    expect(bench.keys('down', 'down', 'down').drill.answer['second']).toBe('ivory-black');
    expect(bench.keys('up', 'k', 'up', 'up', 'up').drill.answer['second']).toBe('alizarin-crimson');
  });

  it('sets the amount with left and right without leaving the tray', () => {
    const bench = started().keys('right', '+', '=', 'left');
    expect(bench.drill.answer['amount']).toBe('1:8');
    expect(bench.drill.focus).toBe(0);
    expect(bench.keys('-', 'left', 'left', 'left').drill.answer['amount']).toBe('1:32');
  });

  it('moves through the fields with Tab, and left and right then act on the field in focus', () => {
    const bench = started().keys('tab', 'tab', 'right');
    expect(bench.drill.focus).toBe(2);
    expect(bench.drill.answer).toMatchObject({ way: 'glaze', amount: '1:32' });
    expect(bench.keys('tab').drill.focus).toBe(0);
    expect(bench.keys('back-tab').drill.focus).toBe(2);
  });

  it('picks list options by number and ignores numbers beyond the list', () => {
    const bench = started().keys('3');
    expect(bench.drill.answer['second']).toBe('cadmium-red');
    expect(bench.keys('9').drill.answer['second']).toBe('cadmium-red');
    expect(bench.keys('tab', '2').drill.answer['second'], 'a scale leaves numbers to the tray').toBe(
      'ultramarine-blue',
    );
  });

  it('goes from row to row with up and down where options stand on one line', () => {
    const bench = new Bench().set(items(['bare'])).keys('right', 'down', 'right', 'right', 'down');
    expect(bench.drill.answer).toMatchObject({ 'area-0': 'middle', 'area-1': 'dark', 'area-2': 'light' });
    expect(bench.drill.focus).toBe(2);
  });

  it('names the price of a hint before it shows it', () => {
    const bench = started();
    expect(bench.keys('h').drill.hint).toBe('offered');
    expect(bench.keys('h').drill.hint).toBe('shown');
    expect(bench.keys('enter').result.answered.hints).toBe(1);
  });

  it('does not charge for a hint that was only offered', () => {
    expect(started().keys('h', 'enter').result.answered.hints).toBe(0);
  });

  it('takes no further keys between laying down and the result, except Ctrl+C', () => {
    const bench = started();
    const laying = { ...bench.drill, laying: true };
    bench.state = { ...bench.state, screen: laying };
    expect(bench.keys('down', 'right', 'enter', 'h').state.screen).toEqual(laying);
    expect(bench.keys('ctrl-c').state.ending).toBe(130);
  });

  it('is ready for the keys again when laying down failed, and says why', () => {
    const bench = started();
    bench.state = { ...bench.state, screen: { ...bench.drill, laying: true } };
    bench.send({ type: 'laying-failed', message: 'the drill has no such choice' });
    expect(bench.drill.laying).toBe(false);
    expect(bench.state.notice).toBe('the drill has no such choice');
  });

  it('asks before it leaves the set, and stays on Esc', () => {
    const bench = started().keys('escape');
    expect(bench.state.overlay).toEqual({ name: 'leave' });
    expect(bench.keys('escape').state.overlay).toBeUndefined();
    expect(bench.drill.drill.id).toBe('one');
    expect(bench.keys('q', 'enter').state.screen.name).toBe('home');
  });
});

describe('cautions', () => {
  it('shows the caution of a paint before it is laid, once a run for each text', () => {
    const bench = started().keys('3', 'enter');
    expect(bench.state.overlay).toEqual({ name: 'caution', pigments: ['cadmium-red'], onward: 'lay' });
    expect(bench.keys('escape').state.screen.name, 'Esc lets one choose again').toBe('drill');
    bench.keys('enter');
    expect(bench.state.screen.name, 'told once').toBe('result');
    expect(bench.keys('n', '3', 'enter').state.screen.name).toBe('result');
  });

  it('lays the answer down when the caution is read', () => {
    const bench = started().keys('3', 'enter', 'enter');
    expect(bench.result.answered.answer['second']).toBe('cadmium-red');
  });

  it('tells of the paint on request, its caution too', () => {
    const bench = started().keys('3', 'enter', 'enter', 'n', '3', 'c');
    expect(bench.state.overlay).toMatchObject({ name: 'caution', onward: 'close' });
    bench.keys('enter', '4', 'c');
    expect(bench.state.overlay).toMatchObject({ name: 'caution', onward: 'close' });
    expect(aboutPaint(paintOf(STUDIO, 'cadmium-red'))).toMatch(/^cadmium red, PR108\. .* Take care: /);
  });
});

describe('the worked example', () => {
  const welcome = (): Bench =>
    new Bench(fakeDeps({ firstRun: true })).keys('enter', 'enter', 'enter', 'enter');

  it('takes the easiest drill with the best answer set', () => {
    const { drill } = welcome();
    expect(drill.worked).toBe(true);
    expect(drill.drill.level).toBe(1);
    expect(drill.answer).toEqual({ second: 'alizarin-crimson', amount: '1:1', way: 'puddle' });
  });

  it('cannot be changed, only laid down, and leads home where the placing round is not open', () => {
    const bench = welcome().keys('down', 'right', 'h', 'tab', '2');
    expect(bench.drill.answer['amount']).toBe('1:1');
    expect(bench.keys('enter').result.worked).toBe(true);
    expect(bench.keys('t').result.worked, 'nothing to try again').toBe(true);
    expect(bench.keys('enter').state.screen.name).toBe('home');
    expect(bench.state.answered, 'it is not an answer of the learner').toBe(0);
  });
});
