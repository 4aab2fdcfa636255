/** Settings: a plain menu with its values. */
import { Text } from 'ink';
import { Frame } from '../kit/frame.js';
import { Menu } from '../kit/menu.js';
import { useSurroundings } from '../kit/surroundings.js';
import { styleOf } from '../kit/theme.js';
import { settingsMenu } from './menu.js';

const ABOUT =
  'Changes hold at once and are kept for next time. Colours: a coarser choice helps where greys run together; words and numbers are there in any case.';

export function SettingsScreen({
  onSelect,
}: {
  readonly onSelect: (value: string) => void;
}): React.JSX.Element {
  const { state, world } = useSurroundings();
  return (
    <Frame title="Settings">
      <Menu items={settingsMenu(state, world)} onSelect={onSelect} />
      <Text> </Text>
      <Text {...styleOf('muted')}>{ABOUT}</Text>
    </Frame>
  );
}
