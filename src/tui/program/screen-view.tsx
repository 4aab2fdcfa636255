/** The screen in front, or the panel over it. */

import { Bench } from '../bench/view.js';
import { Drill } from '../drill/view.js';
import { Families } from '../families/view.js';
import { Home } from '../home/view.js';
import { Panel, Waiting } from '../kit/panels.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextScreen } from '../pages/view.js';
import { Result } from '../result/view.js';
import { SettingsScreen } from '../settings/view.js';
import { Summary } from '../summary/view.js';
import { Welcome } from '../welcome/view.js';
import { Why } from '../why/view.js';

export function ScreenView({ onSelect }: { readonly onSelect: (value: string) => void }): React.JSX.Element {
  const { state } = useSurroundings();
  const { screen, overlay } = state;
  if (overlay !== undefined) return <Panel overlay={overlay} />;
  switch (screen.name) {
    case 'home':
      return <Home onSelect={onSelect} />;
    case 'settings':
      return <SettingsScreen onSelect={onSelect} />;
    case 'families':
      return <Families screen={screen} />;
    case 'welcome':
      return <Welcome step={screen.step} selected={screen.selected} />;
    case 'drill':
      return <Drill screen={screen} />;
    case 'result':
      return <Result screen={screen} />;
    case 'why':
      return <Why screen={screen} />;
    case 'summary':
      return <Summary screen={screen} />;
    case 'bench':
      return <Bench screen={screen} />;
    case 'progress':
      return <TextScreen title="Progress" top={screen.top} />;
    case 'help':
      return <TextScreen title="How to read the screens" top={screen.top} />;
    case 'waiting':
      return <Waiting />;
  }
}
