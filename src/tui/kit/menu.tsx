/** A menu of commands on a page. */
import { Box, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { useSurroundings } from './surroundings.js';
import { styleOf } from './theme.js';

export interface MenuItem {
  readonly value: string;
  readonly label: string;
}

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

/** The digit that chooses an entry; there are nine. */
const numberOf = (index: number): string => (index < 9 ? `${index + 1} ` : '  ');

/** A menu that loses no more than a repeated arrow when keys come quickly: good enough for a page of commands. */
export function Menu({ items, onSelect }: MenuProps): React.JSX.Element {
  const { state } = useSurroundings();
  return (
    <SelectInput
      items={items.map(({ value, label }, index) => ({ value, label: `${numberOf(index)}${label}` }))}
      isFocused={state.overlay === undefined}
      indicatorComponent={Indicator}
      itemComponent={Item}
      onSelect={({ value }) => onSelect(value)}
    />
  );
}
