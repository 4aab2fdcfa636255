/** The screen in front, or the panel over it. */
import { useSurroundings } from '../surroundings.js';
import { Bench } from './bench.js';
import { Drill } from './drill.js';
import { Home, SettingsScreen } from './home.js';
import { Families, TextScreen } from './pages.js';
import { Panel, Waiting } from './panels.js';
import { Result } from './result.js';
import { Summary } from './summary.js';
import { Welcome } from './welcome.js';
import { Why } from './why.js';

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
