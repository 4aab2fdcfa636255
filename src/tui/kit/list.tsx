/** A list of which one line is in front. */
import { Box } from 'ink';
import { fitText, padText, widthOf, wrapText } from '../../text/wrap.js';
import { innerColumns } from './layout.js';
import { bodyRows } from './notes.js';
import { type Piece, Row, Rows } from './row.js';
import { useSurroundings } from './surroundings.js';
import { windowAround } from './window.js';

/** One line of a list. */
export interface ListItem {
  readonly key: string;
  /** A sign or a mark before the text, and how it is drawn. */
  readonly lead: Piece;
  readonly text: string;
  /** At the right. */
  readonly side: string;
}

interface ItemListProps {
  /** Above the list. */
  readonly head: readonly string[];
  readonly items: readonly ListItem[];
  /** Absent: nothing can be picked. */
  readonly selected?: number;
}

export function ItemList({ head, items, selected }: ItemListProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const columns = innerColumns(state.size);
  const top = head.flatMap((text) => (text === '' ? [''] : wrapText(text, columns)));
  const rows = Math.max(3, bodyRows(state) - top.length - 1);
  const spoken = state.settings.screenReader;
  const seen = spoken
    ? { from: 0, to: items.length, moreBefore: false, moreAfter: false }
    : windowAround(items.length, selected ?? 0, rows);
  const side = Math.max(0, ...items.map((item) => widthOf(item.side)));
  const line = (item: ListItem, index: number): Piece[] => {
    const isHere = index === selected;
    if (spoken)
      return [
        {
          text: [isHere ? 'Now at' : '', item.lead.text.trim(), item.text, item.side]
            .filter(Boolean)
            .join(' '),
        },
      ];
    const room = columns - 2 - widthOf(item.lead.text) - side - 2;
    return [
      { text: isHere ? `${glyphs.pointer} ` : '  ', role: 'here' },
      item.lead,
      { text: padText(fitText(item.text, room, glyphs.cut), room), role: isHere ? 'selected' : 'plain' },
      { text: ` ${item.side}`, role: 'muted' },
    ];
  };
  const more = `${seen.moreBefore ? glyphs.upMark : ' '} ${seen.moreAfter ? `${glyphs.downMark} more` : ''}`;
  return (
    <>
      <Rows lines={top.map((text): Piece[] => [{ text: text || ' ' }])} />
      <Box flexDirection="column" flexShrink={0}>
        {items.slice(seen.from, seen.to).map((item, offset) => (
          <Row key={item.key} pieces={line(item, seen.from + offset)} />
        ))}
      </Box>
      {more.trim() === '' ? null : <Row pieces={[{ text: more, role: 'key' }]} />}
    </>
  );
}
