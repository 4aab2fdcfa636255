/** Screens that sitting and room share: plain pages, lists, the list of keys. */
import { Box } from 'ink';
import { fitText, padText, widthOf, wrapText } from '../../text/wrap.js';
import { Frame } from '../kit/frame.js';
import { shownKeys } from '../kit/keys.js';
import { frameParts, innerColumns } from '../kit/layout.js';
import { notesOf } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { windowAround } from '../kit/window.js';
import type { QuizBinding } from './quiz-keys.js';

/** Lines that the body of the frame has. */
export function useBodyRows(): number {
  const { state } = useSurroundings();
  return frameParts(state, notesOf(state).length).body;
}

/** Paragraphs; an empty one is a blank line. */
export function Paragraphs({ texts }: { readonly texts: readonly string[] }): React.JSX.Element {
  const { state } = useSurroundings();
  const columns = Math.min(90, innerColumns(state.size));
  const lines = texts.flatMap((text) => (text === '' ? [''] : wrapText(text, columns)));
  return (
    <Frame title="">
      <Rows
        lines={lines
          .slice(0, useBodyRows())
          .filter((text) => text !== '' || !state.settings.screenReader)
          .map((text): Piece[] => [{ text: text || ' ' }])}
      />
    </Frame>
  );
}

/** All keys of a screen. */
export function KeyList({ bindings }: { readonly bindings: readonly QuizBinding[] }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  return (
    <Frame title="">
      <Rows
        lines={bindings.map((binding): Piece[] => [
          { text: padText(shownKeys(binding, glyphs), 12), role: 'key' },
          { text: binding.does },
        ])}
      />
    </Frame>
  );
}

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

/** A list of which one line is in front. */
export function ItemList({ head, items, selected }: ItemListProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const columns = innerColumns(state.size);
  const top = head.flatMap((text) => (text === '' ? [''] : wrapText(text, columns)));
  const rows = Math.max(3, useBodyRows() - top.length - 1);
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
    <Frame title="">
      <Rows lines={top.map((text): Piece[] => [{ text: text || ' ' }])} />
      <Box flexDirection="column" flexShrink={0}>
        {items.slice(seen.from, seen.to).map((item, offset) => (
          <Row key={item.key} pieces={line(item, seen.from + offset)} />
        ))}
      </Box>
      {more.trim() === '' ? null : <Row pieces={[{ text: more, role: 'key' }]} />}
    </Frame>
  );
}
