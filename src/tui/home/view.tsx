/** Home: where everything starts. */
import { Frame } from '../kit/frame.js';
import { isAiry } from '../kit/layout.js';
import { Menu } from '../kit/menu.js';
import { Row } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { homeMenu } from './menu.js';

export function Home({ onSelect }: { readonly onSelect: (value: string) => void }): React.JSX.Element {
  const { state, world, version, learner } = useSurroundings();
  const airy = isAiry(state.size) && !state.settings.screenReader;
  return (
    <Frame title="Mudlark" side={[learner, version].filter(Boolean).join('  ')}>
      <Row pieces={[{ text: 'Decide the mixture before the brush touches the paper.', role: 'muted' }]} />
      {airy ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Menu items={homeMenu(state, world)} onSelect={onSelect} />
    </Frame>
  );
}
