/** A menu of commands on a page. */
import { Box, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { fitWords } from '../../text/wrap.js';
import { innerColumns } from './layout.js';
import { useSurroundings } from './surroundings.js';
import { styleOf } from './theme.js';

export interface MenuItem {
  readonly value: string;
  readonly label: string;
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
      <Text {...styleOf(isSelected ? 'selected' : 'plain')}>{label}</Text>
    </Box>
  );
}

/** Columns of the pointer. */
const LEAD = 2;

/** The digit that chooses an entry; there are nine. */
const numberOf = (index: number): string => (index < 9 ? `${index + 1} ` : '  ');

/** A menu that loses no more than a repeated arrow when keys come quickly: good enough for a page of commands. */
export function Menu({ items }: { readonly items: readonly MenuItem[] }): React.JSX.Element {
  const { state, glyphs, onChoice } = useSurroundings();
  // What is read aloud has no columns to keep to.
  const room = state.settings.screenReader ? Number.POSITIVE_INFINITY : innerColumns(state.size) - LEAD;
  return (
    <SelectInput
      items={items.map(({ value, label }, index) => ({
        value,
        label: fitWords(`${numberOf(index)}${label}`, room, glyphs.cut),
      }))}
      indicatorComponent={Indicator}
      itemComponent={Item}
      onSelect={({ value }) => onChoice(value)}
    />
  );
}
