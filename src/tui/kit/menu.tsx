/** A menu of commands on a page. */
import { Box, Text } from 'ink';
import SelectInput from 'ink-select-input';
import { fitWords } from '../../text/wrap.js';
import { innerColumns } from './layout.js';
import type { MenuItem } from './menu-keys.js';
import { useSurroundings } from './surroundings.js';
import { styleOf } from './theme.js';

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

/**
 * A menu as it stands. Its keys are the screen's: the list's own ear hears nothing between its first frame and the moment after it, and
 * of two arrows in one read only one.
 */
export function Menu({
  items,
  selected,
}: {
  readonly items: readonly MenuItem[];
  /** The entry in front, from 0. */
  readonly selected: number;
}): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  // What is read aloud has no columns to keep to.
  const room = state.settings.screenReader ? Number.POSITIVE_INFINITY : innerColumns(state.size) - LEAD;
  return (
    <SelectInput
      // Drawn anew for each entry in front: the list takes it at the beginning alone.
      key={selected}
      isFocused={false}
      initialIndex={selected}
      items={items.map(({ value, label }, index) => ({
        value,
        label: fitWords(`${numberOf(index)}${label}`, room, glyphs.cut),
      }))}
      indicatorComponent={Indicator}
      itemComponent={Item}
    />
  );
}
