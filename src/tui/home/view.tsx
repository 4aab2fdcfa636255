/** Home and settings: plain menus. */
import { Box, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { Frame } from '../kit/frame.js';
import { isAiry } from '../kit/layout.js';
import { Row } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { styleOf } from '../kit/theme.js';
import { homeMenu, type MenuItem, settingsMenu } from './menus.js';

interface MenuProps {
  readonly items: readonly MenuItem[];
  readonly onSelect: (value: string) => void;
}

function Indicator({ isSelected = false }: { readonly isSelected?: boolean }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  return <Text aria-hidden>{isSelected ? `${glyphs.pointer} ` : '  '}</Text>;
}

function Item({
  isSelected = false,
  label,
}: {
  readonly isSelected?: boolean;
  readonly label: string;
}): React.JSX.Element {
  return (
    <Box aria-role="listitem" aria-state={{ selected: isSelected }}>
      <Text {...styleOf(isSelected ? 'selected' : 'plain')} wrap="truncate">
        {label}
      </Text>
    </Box>
  );
}

/** A menu that loses no more than a repeated arrow when keys come quickly: good enough for a page of commands. */
function Menu({ items, onSelect }: MenuProps): React.JSX.Element {
  const { state } = useSurroundings();
  return (
    <SelectInput
      items={[...items]}
      isFocused={state.overlay === undefined}
      indicatorComponent={Indicator}
      itemComponent={Item}
      onSelect={({ value }) => onSelect(value)}
    />
  );
}

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
