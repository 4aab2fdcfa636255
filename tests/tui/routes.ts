/** How to get to every screen, for tests that look at all of them. */
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { items } from './fakes.js';
import { DOWN, ENTER, ESC, RIGHT } from './stage.js';

export const FULL = { TERM: 'xterm-256color', COLORTERM: 'truecolor', LANG: 'C.UTF-8' };
export const practice = { startAt: { screen: 'practice' } } as const;
const menu = (entry: number): string[] => [String(entry)];

/** How to get to every screen, and a text that shows one is there. */
export const ROUTES: readonly {
  name: string;
  deps?: Partial<TuiDeps>;
  keys: readonly string[];
  shows: string | RegExp;
}[] = [
  { name: 'home', keys: [], shows: 'Mixing bench' },
  { name: 'families', keys: menu(2), shows: /practise it/ },
  { name: 'families with a level', keys: [...menu(2), DOWN, RIGHT, RIGHT], shows: '2 two options' },
  {
    name: 'home with the placing round',
    deps: { placingIsOpen: () => true },
    keys: [],
    shows: 'Placing round',
  },
  { name: 'bench', keys: menu(3), shows: 'ON THE BENCH' },
  { name: 'bench picker', keys: [...menu(3), ENTER], shows: /Enter take it/ },
  { name: 'progress', keys: menu(4), shows: 'row 1' },
  { name: 'settings', keys: menu(5), shows: /Screen reader +off/ },
  { name: 'help', keys: menu(6), shows: 'Mudlark asks one' },
  { name: 'greeting', deps: { firstRun: true }, keys: [], shows: 'Welcome to Mudlark' },
  { name: 'ramp', deps: { firstRun: true }, keys: [ENTER], shows: /2 of 3|ten greys/ },
  {
    name: 'worked example',
    deps: { firstRun: true },
    keys: ['1', '1', '1', '1', '1'],
    shows: 'worked example',
  },
  {
    name: 'placing offered',
    deps: { firstRun: true, placingIsOpen: () => true },
    keys: ['1', '1', '1', '1', '1', ENTER, ENTER],
    shows: 'Where to begin',
  },
  { name: 'drill', deps: practice, keys: [], shows: /SECOND PAINT/ },
  { name: 'drill with its hint', deps: practice, keys: ['h', 'h'], shows: 'Hint: Look' },
  {
    name: 'drill of nine rows',
    deps: { ...practice, nextSet: () => items(['bare']) },
    keys: [],
    shows: /AREA 0/,
  },
  { name: 'keys', deps: practice, keys: ['?'], shows: 'Keys that work here' },
  { name: 'leave', deps: practice, keys: [ESC], shows: 'Leave this set?' },
  { name: 'caution', deps: practice, keys: ['3', ENTER], shows: 'safety data sheet' },
  { name: 'result', deps: practice, keys: [ENTER], shows: '0 of 100' },
  {
    name: 'result compared with the last',
    deps: {
      ...practice,
      saveAnswer: () => ({
        saved: false,
        note: 'Nothing is saved: the disk is full.',
        compared: 'Value 0.3 steps off now; last time it was 0.2.',
      }),
    },
    keys: [ENTER],
    shows: 'last time it was 0.2.',
  },
  { name: 'result with the plane', deps: practice, keys: [ENTER, 'p'], shows: '0 of 100' },
  { name: 'result scrolled', deps: practice, keys: [ENTER, DOWN, DOWN], shows: '0 of 100' },
  {
    name: 'result without colours to show',
    deps: { ...practice, nextSet: () => items(['bare']) },
    keys: [ENTER],
    shows: '50 of 100',
  },
  { name: 'why', deps: practice, keys: [ENTER, 'w'], shows: 'the mixture' },
  { name: 'painting', deps: practice, keys: [ENTER, 'd'], shows: 'Make a wash of 1 part burnt sienna' },
  {
    name: 'summary',
    deps: { ...practice, nextSet: () => items(['one', 'two']) },
    keys: [ENTER, 'n', ENTER, 'n'],
    shows: 'The set is done',
  },
];
