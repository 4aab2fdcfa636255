/** Progress and help: texts to scroll through. */
import { Text } from 'ink';
import { back, scroll } from '../kit/keys.js';
import { type Page, scrolled } from '../kit/page.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import { show } from '../practice/moves.js';
import type { PracticeScreen, PracticeWorld, Screen, State } from '../practice/state.js';
import { helpPage, progressPage } from './texts.js';

type TextScreen = Extract<Screen, { readonly name: 'progress' | 'help' }>;

function TextBody({ page, top }: { readonly page: Page; readonly top: number }): React.JSX.Element {
  const { state } = useSurroundings();
  if (!state.settings.screenReader) return <TextPage page={page} top={top} />;
  return <Text>{page.lines.slice(top, top + page.rows).join('\n')}</Text>;
}

function textScreen<N extends TextScreen['name']>(
  title: string,
  pageOf: (state: State, world: PracticeWorld, screen: Screen & { readonly name: N }) => Page,
): PracticeScreen<N> {
  return {
    keys: () => [scroll(false), back('home')],
    update: (state, world, screen, { command }) => {
      if (command === 'back') return show(state, { name: 'home' });
      const { top } = screen as TextScreen;
      return { ...state, screen: { ...screen, top: scrolled(pageOf(state, world, screen), top, command) } };
    },
    view: (state, world, screen) => ({
      title,
      body: <TextBody page={pageOf(state, world, screen)} top={(screen as TextScreen).top} />,
    }),
  };
}

export const progress = textScreen<'progress'>('Progress', (state, _world, { text = '' }) =>
  progressPage(state, text),
);
export const help = textScreen<'help'>('How to read the screens', (state, world) => helpPage(state, world));
