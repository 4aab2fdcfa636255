/** The screens of practice by name: their keys, what the keys do, how they look. */
import { Text } from 'ink';
import { boxes } from '../boxes/screen.js';
import { drillKeys } from '../drill/keys.js';
import { updateDrill } from '../drill/update.js';
import { Drill } from '../drill/view.js';
import { families } from '../families/screen.js';
import { home } from '../home/screen.js';
import { back } from '../kit/keys.js';
import { help, progress } from '../pages/screen.js';
import { painting } from '../paint-it/screen.js';
import { resultKeys } from '../result/keys.js';
import { updateResult } from '../result/update.js';
import { Result } from '../result/view.js';
import { settings } from '../settings/screen.js';
import { summary } from '../summary/screen.js';
import { welcome } from '../welcome/screen.js';
import { Why } from '../why/view.js';
import { show } from './moves.js';
import type { PracticeScreen, Screen } from './state.js';
import { drillSide, drillTitle, resultSide } from './titles.js';

const drill: PracticeScreen<'drill'> = {
  keys: drillKeys,
  update: updateDrill,
  view: (state, world, screen, glyphs) => ({
    title: drillTitle(world, screen),
    side: drillSide(state, screen, glyphs),
    body: <Drill screen={screen} />,
  }),
};

const result: PracticeScreen<'result'> = {
  keys: resultKeys,
  update: updateResult,
  view: (state, world, screen, glyphs) => ({
    title: drillTitle(world, screen.answered).map((title) =>
      state.settings.screenReader ? `Result. ${title}` : title,
    ),
    side: resultSide(state, screen, glyphs),
    body: <Result screen={screen} />,
  }),
};

const why: PracticeScreen<'why'> = {
  keys: () => [
    {
      keys: { escape: 'back', enter: 'back', w: 'back', q: 'back', erase: 'back' },
      show: 'Enter',
      does: 'back to the result',
    },
  ],
  update: (state, _world, screen) => show(state, screen.back),
  view: (_state, _world, { back: { answered } }) => ({
    title: 'Why it comes out so',
    body: <Why drill={answered.drill} answer={answered.answer} />,
  }),
};

const waiting: PracticeScreen<'waiting'> = {
  keys: () => [back('home')],
  update: (state) => show(state, { name: 'home' }),
  view: () => ({ title: 'Mudlark', body: <Text>Choosing the drills ...</Text> }),
};

const SCREENS: { readonly [N in Screen['name']]: PracticeScreen<N> } = {
  home,
  families,
  settings,
  boxes,
  welcome,
  progress,
  help,
  waiting,
  drill,
  result,
  why,
  painting,
  summary,
};

/** What is known of the screen in front. */
export const screenOf = <S extends Screen>({ name }: S): PracticeScreen<S['name']> =>
  SCREENS[name] as unknown as PracticeScreen<S['name']>;
